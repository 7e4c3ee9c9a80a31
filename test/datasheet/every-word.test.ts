/**
 * Every word of every list, chosen in turn, gives the same values on a German sheet as on the English one, name by name; so
 * does a word of the other language, as a pasted cell has it.
 */
import { demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { typedIn } from "../../src/datasheet/typed-words";
import { isSpill, isTable } from "../../src/specification/field";
import { FIELDS_APART_FROM_READINGS } from "../../src/specification/fields";
import { wordIn } from "../../src/specification/list-words";
import { ALL_PARTS } from "../../src/specification/parts";
import { PICK_CHOICES } from "../../src/specification/pick-choices";
import type { SheetLanguage } from "../../src/specification/text/language";
import { wordsOf } from "../../src/specification/text/words";
import type { System } from "../../src/specification/measures";
import { hasWords, textOf } from "../../src/record/cells";
import { readRecord, RECORD_NAMES, type NamedValues } from "../../src/record/record";
import type { CellValue, NamedColumns } from "../../src/workbook/port";
import { isTranslation } from "./german/meaning";
import { opened, type Opened } from "../workbook/embedded/opened";

/** A load that stays at the stress of the load before it: a stage of wetting, where it is marked so. */
const WETTED = 3;
const STARTED: SheetValues = {
  load_mark: [...Array<undefined>(WETTED - 1).fill(undefined), "wetting"],
  swelling_pressure: 40,
  load_end_number: 3,
};

/** Names of cells with sentences of the sheet's own, and of what a person typed in German. */
const OWN_WORDS = new Set([
  ...ALL_PARTS.flatMap((part) =>
    isTable(part)
      ? part.columns.flatMap(({ name, kind }) => (kind === "remark" ? [name] : []))
      : !isSpill(part) && part.kind === "remark"
        ? [part.name]
        : [],
  ),
  ...Object.keys(wordsOf("de").demo),
  ...[
    "sheet_language",
    "design_from",
    "adopted_quantity",
    "adopted_cv_range",
    "wetting_stages",
    "test_summary",
    "field_recompression_from",
  ],
]);

/** The cells to write for one choice, with the words in English. */
interface Choice {
  readonly called: string;
  readonly cells: Readonly<Record<string, readonly (string | number | null)[]>>;
}

const isUnit = (name: string): boolean => name.endsWith("_unit");

const SINGLE: readonly Choice[] = FIELDS_APART_FROM_READINGS.flatMap(({ name, choices = [], column }) =>
  column || isUnit(name) ? [] : choices.map((word) => ({ called: `${name}: ${word}`, cells: { [name]: [word] } })),
);

const MARKS: readonly Choice[] = ["inundated", "wetting"].map((word) => ({
  called: `load_mark: ${word}`,
  cells: { load_mark: ["", ...Array<null>(WETTED - 2).fill(null), word] },
}));

const valueOf = (pick: string): string | number =>
  pick === "cv by" ? "root time" : pick === "procedure" ? "drawn" : / from| at$/.test(pick) ? 4 : 200;

const PICKS: readonly Choice[] = PICK_CHOICES.map((pick, index) => ({
  called: `pick_of: ${pick}`,
  cells: {
    pick_load: [/curvature|recompression|virgin|loop|unloading/.test(pick) ? "curve" : 5],
    pick_of: [pick],
    pick_after: [index % 7 === 6 ? "automatic" : valueOf(pick)],
  },
}));

const worded = (language: SheetLanguage, { cells }: Choice): NamedColumns =>
  Object.fromEntries(
    Object.entries(cells).map(([name, column]) => [
      name,
      column.map((cell) => (typeof cell === "string" ? wordIn(language, cell) : cell)),
    ]),
  );

const NAMES = [...new Set([...RECORD_NAMES, "pick_remark", "choice_remark"])];

/** What the sheet says of the first pick, in German: "used, no reason" is "gilt, ohne Begründung". */
const inGerman = (said: string): string =>
  said
    .split(/(?=, no )/)
    .map((part) => wordsOf("de").formulas[part] ?? part)
    .join("");

/** The values of a sheet with the words of its lists and states in English. */
async function valuesOf({ port, sheet }: Opened): Promise<NamedValues> {
  const values = await port.readNames(sheet, NAMES);
  return Object.fromEntries(
    Object.entries(values).map(([name, rows]) => [
      name,
      hasWords(name)
        ? rows.map((row) => row.map((cell) => (typeof cell === "string" ? textOf(name, cell) : cell)))
        : rows,
    ]),
  );
}

const COMPARED = RECORD_NAMES.filter((name) => !OWN_WORDS.has(name));

type Rows = NamedValues[string] | undefined;

/** Answers of worksheet functions are German on the German sheet. */
const meanTheSame = (one: CellValue, other: CellValue): boolean =>
  one === other ||
  (typeof one === "string" && typeof other === "string" && (isTranslation(one, other) || isTranslation(other, one)));

const areEqual = (one: Rows, other: Rows): boolean =>
  one === other ||
  (one?.length === other?.length &&
    one!.every(
      (row, at) =>
        // Blank rows are one list.
        row === other![at] ||
        (row.length === other![at].length && row.every((cell, col) => meanTheSame(cell, other![at][col]))),
    ));

/** The names whose values differ. */
const differing = (one: NamedValues, other: NamedValues): string[] =>
  COMPARED.filter((name) => !areEqual(one[name], other[name]));

async function openedIn(system: System, language: SheetLanguage): Promise<Opened> {
  const plan = demoSheet(system, language);
  const stresses = plan.cells.filter(({ col }) => col === plan.names.load_stress.col);
  const first = plan.names.load_stress.row;
  const kept = Number(stresses.find(({ row }) => row === first + WETTED - 2)?.value);
  const loads = Array.from({ length: WETTED }, (_, index) =>
    index === WETTED - 1 ? kept : Number(stresses.find(({ row }) => row === first + index)?.value),
  );
  return opened(fillSheet(plan, { ...typedIn(language, STARTED), load_stress: loads }));
}

/** What the cells of a choice hold on a sheet without a choice. */
const heldIn = (start: NamedValues, { cells }: Choice): NamedColumns =>
  Object.fromEntries(
    Object.entries(cells).map(([name, column]) => [name, column.map((_, row) => start[name][row][0])]),
  );

/** A sheet on which one choice after another is written; each stands alone, and is written with what the cells of the last one held. */
function choosing({ port, sheet }: Opened, start: NamedValues) {
  let last: NamedColumns = {};
  return async (choice: Choice, language: SheetLanguage): Promise<NamedValues> => {
    await port.fillNames(sheet, { ...last, ...worded(language, choice) });
    last = heldIn(start, choice);
    return valuesOf({ port, sheet });
  };
}

test.each(["SI", "US"] as const)("in %s units", async (system) => {
  const [english, german] = [await openedIn(system, "en"), await openedIn(system, "de")];
  // Picks do not depend on the units.
  const choices = [...SINGLE, ...MARKS, ...(system === "SI" ? PICKS : [])];
  const chosen = [...new Set(choices.flatMap(({ cells }) => Object.keys(cells)))];
  const onEnglish = choosing(english, await english.port.readNames(english.sheet, chosen));
  const onGerman = choosing(german, await german.port.readNames(german.sheet, chosen));
  const faults: string[] = [];
  const changing = new Set<string>();
  const start = await valuesOf(english);
  for (const choice of choices) {
    const right = await onEnglish(choice, "en");
    if (differing(start, right).some((name) => !(name in choice.cells))) changing.add(choice.called.split(":")[0]);
    const compare = (how: string, values: NamedValues): void => {
      for (const name of differing(right, values))
        faults.push(
          `${choice.called}, ${how}: ${name} ${JSON.stringify(values[name])} not ${JSON.stringify(right[name])}`,
        );
      if (values.choice_remark[0][0] !== "") faults.push(`${choice.called}, ${how}: ${values.choice_remark[0][0]}`);
      const [[said], [wanted]] = [values.pick_remark[0], right.pick_remark[0]];
      if (said !== wanted && said !== inGerman(String(wanted)))
        faults.push(`${choice.called}, ${how}: ${said} not ${wanted}`);
      for (const { kind, name } of readRecord(values).faults)
        if (kind === "choice") faults.push(`${choice.called}, ${how}: ${name} cannot be read`);
    };
    compare("German sheet", await onGerman(choice, "de"));
    if (system === "SI") {
      compare("English word on the German sheet", await onGerman(choice, "en"));
      compare("German word on the English sheet", await onEnglish(choice, "de"));
    }
  }
  expect(faults.map((fault) => fault.slice(0, 300))).toEqual([]);
  // The lists on which a value depends: the comparison would say nothing if no choice changed anything.
  expect([...changing].sort()).toEqual([
    ...["curve_from", "design_curve", "dial_sense", "drainage", "load_mark"],
    ...(system === "SI" ? ["pick_of"] : []),
    "preconsolidation_method",
    ...["seating_mark", "swelling_method", "time_method", "time_procedure", "wetting_reference"],
  ]);
});
