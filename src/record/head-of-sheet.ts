/**
 * What the head of a data sheet says of its inputs, as messages made from the values of its cells: the screens repeat it in their
 * own language, whatever the language of the sheet. The rules are those of the formulas in `specification/head/impossible` and
 * `specification/head/missing`, and a test compares both. Numbers are in the units of the sheet.
 */
import { listed, listWord, verbatim, type Message, type Value } from "../reduction/message";
import { CURVE_PICK_NAMES, OF_CURVE } from "../reduction/curve/picks";
import {
  AUTOMATIC,
  METHOD_PICK,
  PICK_NAMES,
  pickNamed,
  PROCEDURE_PICK,
} from "../reduction/increment/constructions/picks";
import { density, WETTEST } from "../reduction/specimen";
import type { Column, Field } from "../specification/field";
import * as sentences from "../specification/sentences/of-head";
import { CHECKED_ENTRIES } from "../specification/head/entries";
import { CHECKED_INPUTS, limitsIn, type PickWords } from "../specification/head/impossible";
import { everyWord } from "../specification/list-words";
import { DATE_LIMITS, type Limits } from "../specification/measures";
import { BULK, MM_IN, SIZE_LIMITS, type SizeLimits } from "../specification/head/sizes";
import { HEAVIER, MISSING_IN_FULL, NEEDED_INPUTS, WET_MASSES, type Heavier } from "../specification/head/missing";
import { SIZE_REMARK, UNUSUAL_REMARK } from "../specification/formulas";
import { convert, unitNamed, UNITS } from "../reduction/units";
import { isError } from "../workbook/cell-error";
import { asColumn } from "../workbook/lists";
import type { CellValue, SheetName } from "../workbook/port";
import { englishWord } from "./cells";
import { readingsName, timesName } from "../specification/readings";
import { boxesByName, cellBeside } from "./places";
import type { LoadRecord, NamedValues, TestRecord } from "./record";
import { jumpsIn, reduced, rowAt } from "./reduced-test";
import { firstSlip, firstSwelled, numbersOutside } from "./sheet-remarks";

/** A sentence of the head, with the first cell that it names. */
export interface HeadSentence {
  readonly kind: "impossible" | "entry" | "unusual" | "jump" | "missing" | "running";
  readonly sentence: Message;
  /** The address of the cell, such as "N19". */
  readonly address?: string;
  /** The entries that the sentence says cannot be; none if it is about what follows from entries. */
  readonly cells?: readonly NamedCell[];
}

/** A cell of the sheet, with its name. */
export interface NamedCell {
  readonly name: string;
  readonly address: string;
}

/** A data sheet as the pane reads it. Without its names, a sentence has the names of cells in the place of addresses. */
interface ReadSheet {
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly names?: readonly SheetName[];
}

const isNumber = (value: CellValue | undefined): value is number => typeof value === "number";

/** The cells of a sheet, and what its sentences call them. */
class Cells {
  readonly #values: NamedValues;
  readonly #names: readonly SheetName[];

  constructor({ values, names = [] }: ReadSheet) {
    this.#values = values;
    this.#names = names;
  }

  /** The cells of a column; none if the sheet lacks its name. */
  column(name: string): readonly CellValue[] {
    return asColumn(this.#values[name] ?? []).map(([value = ""]) => value);
  }

  /** A single cell; undefined if the sheet lacks its name. */
  cell(name: string): CellValue | undefined {
    return this.column(name)[0];
  }

  /** The numbers of these cells; undefined unless each has one. */
  numbers<N extends string>(names: Readonly<Record<N, string>>): Readonly<Record<N, number>> | undefined {
    const found = Object.entries<string>(names).map(([key, name]) => [key, this.cell(name)] as const);
    if (!found.every(([, value]) => isNumber(value))) return undefined;
    // Object.fromEntries types the keys as strings; they are those of the names.
    return Object.fromEntries(found) as Record<N, number>;
  }

  address(name: string, row = 1): string {
    return cellBeside(this.#names, name, row) ?? name;
  }

  at(name: string, row?: number): Value {
    return verbatim(this.address(name, row));
  }

  named(name: string, row?: number): NamedCell {
    return { name, address: this.address(name, row) };
  }

  /** A sentence about an impossible input. */
  impossible(sentence: Message, name: string, row?: number): HeadSentence {
    const cell = this.named(name, row);
    return { kind: "impossible", sentence, address: cell.address, cells: [cell] };
  }

  /** A sentence about two inputs of which one is wrong; it leads to the first of them. */
  oneOf(kind: HeadSentence["kind"], sentence: Message, names: readonly [string, string]): HeadSentence {
    return { kind, sentence, address: this.address(names[0]), cells: names.map((name) => this.named(name)) };
  }

  /** A sentence about what follows from inputs that are each possible, with the cell that it names first. */
  contradiction(sentence: Message, name: string, row?: number): HeadSentence {
    return { kind: "impossible", sentence, address: this.address(name, row) };
  }

  /** The row of the sheet in which a column begins. */
  firstRow(name: string): Value {
    const box = boxesByName(this.#names).get(name);
    return box ? box.row + 1 : verbatim(name);
  }
}

/** The label of a field: the pane calls the field as the sheet does. */
function quoted({ name, label }: Pick<Field, "name" | "label">): Value {
  const alone = label.trim();
  return { verbatim: alone, cell: name, label: alone };
}

const fits = (value: CellValue, { least, above, most }: Limits): boolean =>
  isNumber(value) &&
  (least === undefined || (above ? value > least : value >= least)) &&
  (most === undefined || value <= most);

/** Whether a cell has this word of a list, in any language of a sheet. */
const isSame = (value: CellValue, word: string): boolean =>
  englishWord(String(value)).toLowerCase() === word.toLowerCase();

/** Whether a cell has a word of its list in any language of a sheet, or a unit of it, which `englishWord` leaves as it is. */
const isOnList = (value: CellValue, { choices = [] }: Pick<Field, "choices">): boolean =>
  choices.flatMap(everyWord).some((choice) => isSame(value, choice));

/** The row, from 1, of the last cell for which this holds; undefined if there is none. */
const lastRow = (
  cells: readonly CellValue[],
  holds: (value: CellValue, index: number) => boolean,
): number | undefined =>
  cells.reduce<number | undefined>((last, value, index) => (holds(value, index) ? index + 1 : last), undefined);

function outOfLimits(cells: Cells, field: Pick<Field, "name" | "label">, limits: Limits, row?: number): HeadSentence {
  const sentence = sentences.enterNumber(quoted(field), cells.at(field.name, row), sentences.numberWithin(limits));
  return cells.impossible(sentence, field.name, row);
}

function ofNumber(cells: Cells, field: Field): HeadSentence[] {
  const value = cells.cell(field.name) ?? "";
  const limits = limitsIn(field);
  return value === "" || isError(value) || fits(value, limits) ? [] : [outOfLimits(cells, field, limits)];
}

/** A column names its lowest impossible cell alone. */
function ofColumn(cells: Cells, column: Column): HeadSentence[] {
  const limits = limitsIn(column);
  const isWrong = (value: CellValue): boolean => value !== "" && !isError(value) && !fits(value, limits);
  const row = lastRow(cells.column(column.name), isWrong);
  return row === undefined ? [] : [outOfLimits(cells, column, limits, row)];
}

function ofLoadNumber(cells: Cells): HeadSentence[] {
  const { ofLoad } = CHECKED_INPUTS;
  const value = cells.cell(ofLoad.name) ?? "";
  if (value === "" || cells.column("load_number").some((one) => isSame(one, String(value)))) return [];
  const sentence = sentences.enterNumber(quoted(ofLoad), cells.at(ofLoad.name), sentences.LOAD_NUMBER);
  return [cells.impossible(sentence, ofLoad.name)];
}

function ofWord(cells: Cells, field: Field): HeadSentence[] {
  const value = cells.cell(field.name) ?? "";
  if (value === "" || isError(value) || isOnList(value, field)) return [];
  return [cells.impossible(sentences.chooseWord(quoted(field), cells.at(field.name)), field.name)];
}

function ofPick(cells: Cells, { pick, words }: PickWords): HeadSentence[] {
  const of = cells.column("pick_of");
  const isWrong = (value: CellValue, index: number): boolean =>
    isSame(of[index] ?? "", pick) && !["", AUTOMATIC, ...words].some((word) => isSame(value, word));
  const row = lastRow(cells.column("pick_after"), isWrong);
  if (row === undefined) return [];
  const [one, other] = words;
  const at = cells.at("pick_after", row);
  const sentence = sentences.pickWord(listWord(pick), at, listWord(one), listWord(other), listWord(AUTOMATIC));
  return [cells.impossible(sentence, "pick_after", row)];
}

function ofHeavier(cells: Cells, { more, less, called, orAsHeavy }: Heavier): HeadSentence[] {
  const masses = cells.numbers({ more, less });
  if (!masses || masses.more > masses.less || (orAsHeavy && masses.more === masses.less)) return [];
  const sentence = orAsHeavy ? sentences.mustBeAsHeavy : sentences.mustBeHeavier;
  const said = sentence(sentences.AT_START[more], cells.at(more), called, cells.at(less));
  return [cells.oneOf("impossible", said, [more, less])];
}

function ofSolids(cells: Cells): HeadSentence[] {
  const heights = cells.numbers({ solids: "solids_height", initial: "initial_height" });
  if (!heights || heights.solids < heights.initial) return [];
  const [height, diameter] = [cells.at("initial_height"), cells.at("diameter")];
  const [ring, dry, gravity] = [cells.at("ring_mass"), cells.at("ring_and_dry"), cells.at("specific_gravity")];
  return [cells.impossible(sentences.solidsFill(height, diameter, ring, dry, gravity), "initial_height")];
}

function ofWetMass(cells: Cells, { content, mass }: (typeof WET_MASSES)[number]): HeadSentence[] {
  const given = cells.cell(content);
  if (!isNumber(given) || given <= WETTEST) return [];
  const sentence = sentences.tooWet(sentences.WITHIN[mass], cells.at(mass), 100 * WETTEST);
  return [cells.impossible(sentence, mass)];
}

/** The last load that was read and gives no point of the curve. */
function ofCurve(cells: Cells): HeadSentence[] {
  const sizes = cells.numbers({
    ...{ solids: "solids_height", initial: "initial_height" },
    ...{ factor: "dial_factor", zero: "zero_reading" },
  });
  if (!sizes || sizes.initial <= sizes.solids || sizes.factor <= 0) return [];
  const points = cells.column("void_ratio_curve");
  const row = lastRow(cells.column("end_reading"), (value, index) => isNumber(value) && !isNumber(points[index]));
  const load = row === undefined ? undefined : cells.column("load_number")[row - 1];
  if (row === undefined || !isNumber(load)) return [];
  if (isNumber(cells.column("corrected_deformation")[row - 1])) {
    const [height, zero] = [cells.at("initial_height"), cells.at("zero_reading")];
    const reason = sentences.notAboveSolids(height, zero, cells.at("dial_factor"), cells.at("dial_sense"));
    return [cells.contradiction(sentences.noPoint(load, reason), "initial_height")];
  }
  const [table, stress] = [cells.at("apparatus_stress"), cells.at("load_stress", row)];
  const reason = sentences.beyondTable(table, stress, cells.at("seating_stress"));
  return [cells.contradiction(sentences.noPoint(load, reason), "apparatus_stress")];
}

/** Whether the sheet tells of unusual numbers, of slips and of picks that cannot be used: sheets up to version 9 do not. */
const tellsUnusual = (cells: Cells): boolean => cells.cell(UNUSUAL_REMARK) !== undefined;

/** A curve that cannot be used, because its greatest void ratio is that under the greatest stress. */
function ofHighest(cells: Cells, record: TestRecord): HeadSentence[] {
  if (!tellsUnusual(cells)) return [];
  const [points, stresses] = [cells.column("void_ratio_curve"), cells.column("load_stress")];
  const numbers = points.filter(isNumber);
  const load = firstSwelled(record);
  const ofGreatest = points[stresses.indexOf(Math.max(...stresses.filter(isNumber)))];
  if (numbers.length < 3 || load === undefined) return [];
  const { constructedStress: found } = reduced(record);
  if (ofGreatest !== Math.max(...numbers) || found.ok || found.fault !== "input") return [];
  const sentence = sentences.highestUnderGreatest(load, cells.at("dial_sense"));
  return [cells.contradiction(sentence, readingsName(load))];
}

/** The first load that has what looks like a slip. */
function ofSlip(cells: Cells, record: TestRecord): HeadSentence[] {
  const found = firstSlip(record);
  if (!found) return [];
  const { number, row } = found.load;
  const address = {
    times: () => cells.address(timesName(number)),
    stress: () => cells.address("load_stress", row),
    readings: () => cells.address(readingsName(number)),
  }[found.slip.of]();
  return [{ kind: "unusual", sentence: sentences.ofLoad(number, found.slip.said), address }];
}

/** The first load whose readings jump, with its first reading after the jump. */
function ofJump(cells: Cells, record: TestRecord): HeadSentence[] {
  const [found] = jumpsIn(record);
  if (!found) return [];
  const { load, jump } = found;
  const { number } = load.record;
  const address = cells.address(readingsName(number), rowAt(load.record, jump.time));
  return [{ kind: "jump", sentence: sentences.ofLoad(number, jump.said), address }];
}

/** The first load of which a row has a number that no time, or no reading, can be. */
function ofReadings(cells: Cells, { loads }: TestRecord): HeadSentence[] {
  const load = loads.find((one) => numbersOutside(one).length > 0);
  const [found] = load ? numbersOutside(load) : [];
  if (!load || !found) return [];
  const cell = cells.named(found.isTime ? timesName(load.number) : readingsName(load.number), found.row);
  return [{ kind: "entry", sentence: sentences.ofLoad(load.number, found.said), address: cell.address, cells: [cell] }];
}

/** The last load that has readings and no stress, if the load after it has no stress either. */
const withoutStress = (cells: Cells, { loads }: TestRecord): LoadRecord | undefined =>
  loads
    .filter(
      ({ number, row, readings }) =>
        cells.column("load_stress")[row - 1] === "" &&
        readings.some(({ reading }) => reading !== undefined) &&
        !loads.some((next) => next.number === number + 1 && (next.stress ?? 0) > 0),
    )
    .at(-1);

/** The list of what is missing, with its first cell. */
function missing(cells: Cells, record: TestRecord): HeadSentence[] {
  const inputs = NEEDED_INPUTS.filter(([name]) => cells.cell(name) === "");
  const stresses = cells.column("load_stress");
  const lacksStresses = stresses.length > 0 && !stresses.some(isNumber);
  const bare = withoutStress(cells, record);
  const load = cells.cell("next_load");
  const items = [
    ...inputs.map(([name, words]) => sentences.inputMissing(words, cells.at(name))),
    ...(lacksStresses ? [sentences.stressesMissing(cells.at("load_stress"))] : []),
    ...(bare && !lacksStresses ? [sentences.stressMissing(bare.number, cells.at("load_stress", bare.row))] : []),
    ...(isNumber(load) ? [sentences.readingsMissing(load, cells.firstRow("times_01"))] : []),
  ];
  if (items.length === 0) return [];
  const first = inputs[0]?.[0] ?? (lacksStresses || bare ? "load_stress" : undefined);
  const row = inputs[0] || lacksStresses ? 1 : bare?.row;
  const sentence = sentences.missing(listed(items, "; "));
  return [{ kind: "missing", sentence, ...(first !== undefined && { address: cells.address(first, row) }) }];
}

/** Sheets that are older than the line at the head say nothing. */
const hasHead = ({ values }: ReadSheet): boolean => MISSING_IN_FULL.name in values;

/** The cells of these fields that are not blank and that do not fit, one after the other. */
function notFitting<F extends Pick<Field, "name">>(
  cells: Cells,
  fields: readonly F[],
  isRight: (value: CellValue, field: F) => boolean,
): NamedCell[] {
  return fields.flatMap((field) => {
    const isWrong = (value: CellValue): boolean => value !== "" && !isError(value) && !isRight(value, field);
    const row = lastRow(cells.column(field.name), isWrong);
    return row === undefined ? [] : [cells.named(field.name, row)];
  });
}

/** A sentence that lists these cells; none if there is no cell. */
function listing(
  kind: HeadSentence["kind"],
  sentence: (cells: Value) => Message,
  named: readonly NamedCell[],
): HeadSentence[] {
  const addresses = named.map(({ address }) => address);
  const [address] = addresses;
  if (address === undefined) return [];
  return [{ kind, sentence: sentence(verbatim(addresses.join(" "))), address, cells: named }];
}

/** The cells of a row of the table of picks. */
interface PickCells {
  readonly load: CellValue;
  readonly of: CellValue;
  readonly after: CellValue;
}

/**
 * The cells of the table of picks that cannot be used: those that need a number, and those that need a word of a list. A column
 * names its lowest cell. Sheets up to version 9 have no sentence for them.
 */
function picksNotFitting(cells: Cells): readonly [numbers: NamedCell[], words: NamedCell[]] {
  if (!tellsUnusual(cells)) return [[], []];
  const columns = { load: cells.column("pick_load"), of: cells.column("pick_of"), after: cells.column("pick_after") };
  const numbers = cells.column("load_number");
  const isLoad = (value: CellValue): boolean =>
    isSame(value, OF_CURVE) || numbers.some((load) => isSame(load, String(value)));
  const isOfWords = (of: CellValue): boolean => [METHOD_PICK, PROCEDURE_PICK].some((pick) => isSame(of, pick));
  const isValue = (value: CellValue, of: CellValue): boolean =>
    isNumber(value) || isSame(value, AUTOMATIC) || isOfWords(of);
  const isPick = (of: CellValue, load: CellValue): boolean => {
    const names: readonly string[] = isSame(load, OF_CURVE) ? CURVE_PICK_NAMES : PICK_NAMES;
    return names.includes(pickNamed(englishWord(String(of))));
  };
  const lowest = (name: string, column: readonly CellValue[], isWrong: (row: PickCells) => boolean): NamedCell[] => {
    const row = lastRow(column, (value, index) => {
      const [load = "", of = "", after = ""] = [columns.load[index], columns.of[index], columns.after[index]];
      return value !== "" && !isError(value) && isWrong({ load, of, after });
    });
    return row === undefined ? [] : [cells.named(name, row)];
  };
  // A row that is unfinished says that itself.
  const isFinished = ({ load, of, after }: PickCells): boolean =>
    load !== "" && of !== "" && after !== "" && after !== 0;
  return [
    [
      ...lowest("pick_load", columns.load, ({ load }) => !isLoad(load)),
      ...lowest("pick_after", columns.after, ({ of, after }) => !isValue(after, of)),
    ],
    lowest("pick_of", columns.of, (row) => {
      const { load, of, after } = row;
      return isFinished(row) && isLoad(load) && isValue(after, of) && !isOfWords(of) && !isPick(of, load);
    }),
  ];
}

/** The entries from which no result follows, and that cannot be; a column names its lowest cell. */
function otherEntries(cells: Cells): HeadSentence[] {
  const { dates, dateColumns, numbers, words, wordColumns } = CHECKED_ENTRIES;
  const [numbersPicked, wordsPicked] = picksNotFitting(cells);
  const datesAmiss = notFitting(cells, [...dates, ...dateColumns], (value) => fits(value, DATE_LIMITS));
  const numbersAmiss = notFitting(cells, numbers, (value, field) => fits(value, limitsIn(field)));
  const wordsAmiss = notFitting(cells, [...words, ...wordColumns], isOnList);
  return [
    ...listing("entry", sentences.enterDates, datesAmiss),
    ...listing("entry", sentences.enterNumbers, [...numbersAmiss, ...numbersPicked]),
    ...listing("entry", sentences.chooseWords, [...wordsAmiss, ...wordsPicked]),
  ];
}

/** mm in the unit of length of the sheet, or kPa in its unit of stress; 1 where the cell has no such unit. */
function unitOfLimits(cells: Cells, quantity: SizeLimits["quantity"]): number {
  if (quantity === "length") return MM_IN[String(cells.cell("length_unit")).toLowerCase()] ?? 1;
  const unit = unitNamed(String(cells.cell("stress_unit")), Object.keys(UNITS.stress));
  return unit === undefined ? 1 : convert(1, "stress", unit, "kPa");
}

/** A sentence that lists the sizes and stresses for which this holds. */
function sizesWhere(
  cells: Cells,
  kind: "impossible" | "unusual",
  sentence: (cells: Value) => Message,
  isWrong: (value: number, limits: SizeLimits, unit: number) => boolean,
): HeadSentence[] {
  const named = SIZE_LIMITS.flatMap((limits) => {
    const unit = unitOfLimits(cells, limits.quantity);
    const row = lastRow(cells.column(limits.name), (value) => isNumber(value) && isWrong(value, limits, unit));
    return row === undefined ? [] : [cells.named(limits.name, row)];
  });
  return listing(kind, sentence, named);
}

/** Sizes and stresses that no oedometer test has. */
const noTest = (cells: Cells): HeadSentence[] =>
  sizesWhere(cells, "impossible", sentences.noTest, (value, { most = Infinity }, unit) => value > most / unit);

/** Sizes and stresses that few oedometer tests have. */
const fewTests = (cells: Cells): HeadSentence[] =>
  sizesWhere(cells, "unusual", sentences.fewTests, (value, { most = Infinity, usual = {} }, unit) => {
    const isHigh = value > (usual.most ?? Infinity) / unit && !(value > most / unit);
    return isHigh || (value > 0 && value < (usual.least ?? 0) / unit);
  });

/** A specimen that is not wider than high. */
function notWide(cells: Cells): HeadSentence[] {
  const sizes = cells.numbers({ diameter: "diameter", height: "initial_height" });
  if (!sizes || sizes.height < sizes.diameter) return [];
  const sentence = sentences.maybeSwapped(cells.at("initial_height"), cells.at("diameter"));
  return [cells.oneOf("unusual", sentence, ["initial_height", "diameter"])];
}

/** A bulk density that no soil has. Where the solids alone would fill the ring, `ofSolids` says that. */
function oddDensity(cells: Cells): HeadSentence[] {
  const found = cells.numbers({
    diameter: "diameter",
    height: "initial_height",
    wet: "ring_and_wet_before",
    ring: "ring_mass",
    solids: "solids_height",
  });
  if (!found) return [];
  const { diameter, height, wet, ring, solids } = found;
  const unit = unitOfLimits(cells, "length");
  const bulk = density(wet - ring, diameter * unit, height * unit);
  if (solids >= height || !bulk.ok || (bulk.value >= BULK.least && bulk.value <= BULK.most)) return [];
  const sentence = sentences.lightOrHeavy(
    Math.round(bulk.value * 100) / 100,
    cells.at("ring_and_wet_before"),
    cells.at("ring_mass"),
    cells.at("diameter"),
    cells.at("initial_height"),
  );
  return [cells.oneOf("unusual", sentence, ["ring_and_wet_before", "ring_mass"])];
}

/** What few tests have, and what looks like a slip; it counts. */
const unusual = (cells: Cells, record: TestRecord, { sizes, curve }: Impossible): HeadSentence[] =>
  tellsUnusual(cells)
    ? [
        ...fewTests(cells),
        ...(sizes.length > 0 ? [] : [...notWide(cells), ...oddDensity(cells)]),
        ...(curve.length > 0 ? [] : ofSlip(cells, record)),
      ]
    : [];

/** The entries that cannot be, each by itself. */
function impossibleEntries(cells: Cells, sizes: readonly HeadSentence[]): HeadSentence[] {
  const { numbers, columns, words, picks, classes, cvColumns } = CHECKED_INPUTS;
  return [
    ...numbers.flatMap((field) => ofNumber(cells, field)),
    ...ofLoadNumber(cells),
    ...columns.flatMap((column) => ofColumn(cells, column)),
    ...words.flatMap((field) => ofWord(cells, field)),
    ...picks.flatMap((pick) => ofPick(cells, pick)),
    ...classes.flatMap((field) => ofNumber(cells, field)),
    ...cvColumns.flatMap((column) => ofColumn(cells, column)),
    ...(cells.cell(SIZE_REMARK) === undefined ? [] : sizes),
  ];
}

/** What is impossible on a sheet, by what follows from it. */
interface Impossible {
  /** The sizes and stresses that no test has. */
  readonly sizes: readonly HeadSentence[];
  /** The entries that cannot be, each by itself. */
  readonly entries: readonly HeadSentence[];
  /** The load that was read and gives no point of the curve. */
  readonly curve: readonly HeadSentence[];
  /** Why the curve gives no preconsolidation stress, if a value of it cannot be used. */
  readonly refusal?: Message;
}

/** A curve is refused only if it has the points of all loads, and every entry can be. */
function impossibleOn(cells: Cells, record: TestRecord): Impossible {
  const sizes = noTest(cells);
  const entries = impossibleEntries(cells, sizes);
  const curve = [...ofCurve(cells), ...ofHighest(cells, record)];
  const hasCurve = cells.column("void_ratio_curve").some(isNumber) && curve.length === 0;
  if (isNumber(cells.cell("preconsolidation_stress")) || !hasCurve || entries.length > 0)
    return { sizes, entries, curve };
  const { preconsolidation: found } = reduced(record);
  return { sizes, entries, curve, ...(!found.ok && found.fault === "input" && { refusal: found.reason }) };
}

function impossibleSentences(cells: Cells, { entries, curve, refusal }: Impossible): HeadSentence[] {
  return [
    ...entries,
    ...HEAVIER.flatMap((pair) => ofHeavier(cells, pair)),
    ...ofSolids(cells),
    ...WET_MASSES.flatMap((one) => ofWetMass(cells, one)),
    ...curve,
    ...(refusal ? [cells.contradiction(sentences.wrongCurve(cells.at("load_stress"), refusal), "load_stress")] : []),
  ];
}

const isNotFarEnough = (cells: Cells, { entries, refusal }: Impossible): boolean =>
  isSame(cells.cell("test_state") ?? "", "running") &&
  cells.cell("preconsolidation_stress") === "" &&
  cells.column("void_ratio_curve").some(isNumber) &&
  entries.length === 0 &&
  refusal === undefined;

/** The impossible inputs, each with its cell and the remedy. */
export function impossibleInputs(sheet: ReadSheet): HeadSentence[] {
  if (!hasHead(sheet)) return [];
  const cells = new Cells(sheet);
  return impossibleSentences(cells, impossibleOn(cells, sheet.record));
}

/**
 * What the head of a sheet says, in this order: impossible inputs, entries from which no result follows and that cannot be,
 * unusual numbers, readings that cannot be, a load whose readings jump, what is missing, and whether further loads are needed.
 */
export function headOf(sheet: ReadSheet): HeadSentence[] {
  if (!hasHead(sheet)) return [];
  const cells = new Cells(sheet);
  const impossible = impossibleOn(cells, sheet.record);
  const running = isNotFarEnough(cells, impossible)
    ? [{ kind: "running", sentence: sentences.NOT_FAR_ENOUGH } as const]
    : [];
  return [
    ...impossibleSentences(cells, impossible),
    ...otherEntries(cells),
    ...unusual(cells, sheet.record, impossible),
    ...ofReadings(cells, sheet.record),
    ...ofJump(cells, sheet.record),
    ...missing(cells, sheet.record),
    ...running,
  ];
}
