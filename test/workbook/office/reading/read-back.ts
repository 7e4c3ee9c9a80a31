/**
 * Reads a sheet of the strict stand-in for Excel back cell by cell and compares it with its plan. Differences are given
 * in sentences; a sheet that follows its plan gives none.
 */
import { addressOf, cellsOf, holds, inside, overlap, type Box } from "../../../excel/book/address";
import { keyOf, placeOf } from "../../../excel/book/book";
import { admits, ruleAt } from "../../../excel/book/rules";
import type { SheetHandle } from "../../../excel/sheet-handle";
import type { StrictExcel } from "../../../excel/strict-excel";
import { isLandscape } from "../../../../src/workbook/look/paper";
import { LOOKS } from "../../../../src/workbook/look/look";
import type { CellPlan, ChartCells, ChartPlan, ChartSeries, EntryRule, SheetPlan } from "../../../../src/workbook/port";

/**
 * The font for which column widths and row heights were made (otherwise Excel gives a new sheet the font of the
 * workbook).
 */
const FONT = { name: "Arial", size: 9 };

const place = (row: number, col: number): string => addressOf({ row, col, rows: 1, cols: 1 });
const sorted = (list: readonly string[]): string[] => [...list].sort();

/** Excel's rule for names: a name that reads like an address of a cell gets an underscore. */
const named = (name: string): string =>
  /^([a-z]{1,3}\d+|(r\d*)?(c\d*)?)$/i.test(name) && !/^[a-z]{4,}|^(x[f-z][e-z]|[y-z]..)\d/i.test(name)
    ? `${name}_`
    : name;

export function differences(excel: StrictExcel, name: string, plan: SheetPlan, hasNotes: boolean): string[] {
  const found: string[] = [];
  const sheet = excel.sheet(name);
  excel.settle();
  const tell = (what: string, is: unknown, planned: unknown): void => {
    if (is === planned) return;
    const [a, b] = [JSON.stringify(is), JSON.stringify(planned)];
    if (a !== b) found.push(`${what} is ${a}, planned ${b}`);
  };
  cells(sheet, plan, hasNotes, tell);
  const boxes = Object.fromEntries(Object.entries(plan.names).map(([one, box]) => [named(one), address(name, box)]));
  for (const one of new Set([...Object.keys(boxes), ...Object.keys(sheet.names)]))
    tell(`the name ${one}`, sheet.names[one], boxes[one]);
  tell(
    "merged cells",
    sorted(sheet.sheet.merges.map((box) => addressOf(box))),
    sorted(plan.merges.map((box) => addressOf(box))),
  );
  for (const [col, characters] of Object.entries(plan.columnWidths))
    tell(`the width of column ${col}`, sheet.sheet.widths.get(Number(col)), (7 * characters + 5) * 0.75);
  tell("columns of a width of their own", sheet.sheet.widths.size, Object.keys(plan.columnWidths).length);
  for (const [row, points] of Object.entries(plan.rowHeights ?? {}))
    tell(`the height of row ${row}`, sheet.sheet.heights.get(Number(row)), points);
  tell("rows of a height of their own", sheet.sheet.heights.size, Object.keys(plan.rowHeights ?? {}).length);
  tell("frozen rows", sheet.sheet.frozen, { rows: plan.freezeRows, cols: 0 });
  tell("its protection", sheet.sheet.protection.on, plan.isProtected ?? false);
  tell("a password", sheet.sheet.protection.password, undefined);
  tell("in front", sheet.isActive, !plan.behind);
  rules(sheet, plan, tell);
  pages(sheet, plan, tell);
  charts(excel, sheet, plan, tell);
  return found;
}

type Tell = (what: string, is: unknown, planned: unknown) => void;

const quoted = (sheet: string): string => (/^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`);
const address = (sheet: string, box: Box): string => `=${quoted(sheet)}!${addressOf(box, "$")}`;

/** A planned formula as Excel holds it: each {name} outside texts is the name on the sheet. */
const formulaOf = (formula: string): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_]\w*)\}/g, (whole, name: string | undefined) =>
    name ? named(name) : whole,
  );

function cells(sheet: SheetHandle, plan: SheetPlan, hasNotes: boolean, tell: Tell): void {
  const planned = new Map(plan.cells.map((cell) => [keyOf(cell.row, cell.col), cell]));
  // All cells of a merged box look like its first cell.
  const looks = new Map(planned);
  for (const box of plan.merges) {
    const first = planned.get(keyOf(box.row, box.col));
    if (first) for (const [row, col] of cellsOf(box)) looks.set(keyOf(row, col), first);
  }
  for (const key of looked(sheet, plan, looks)) {
    const [row, col] = placeOf(key);
    const at = place(row, col);
    const wanted = planned.get(key);
    const held = sheet.sheet.cells.get(key);
    if (held && !held.filledFrom) {
      tell(`${at}: its formula`, held.formula, wanted?.formula && formulaOf(wanted.formula));
      if (!held.formula) tell(`${at}: its value`, held.value, wanted?.value);
    } else if (wanted?.formula || (wanted?.value !== undefined && wanted.value !== ""))
      tell(at, "", wanted.formula ?? wanted.value);
    const seen = sheet.at(row, col);
    tell(`${at}: its number format`, seen.format, wanted?.format ?? "General");
    tell(`${at}: its note`, seen.note, hasNotes ? wanted?.note : undefined);
    look(seen, looks.get(key), at, tell);
    const isOpen = looks.get(key)?.kind === "input" || (plan.open ?? []).some((box) => inside(box, row, col));
    tell(`${at}: locked`, seen.locked, !isOpen);
  }
}

/**
 * The cells to compare: planned cells, cells with content or a look, and the corners of the sheet and of open areas.
 */
function looked(sheet: SheetHandle, plan: SheetPlan, looks: ReadonlyMap<number, CellPlan>): Set<number> {
  const whole: Box = { row: 0, col: 0, rows: plan.rows, cols: plan.cols };
  const corners = [whole, ...(plan.open ?? [])].flatMap(({ row, col, rows, cols }) => [
    keyOf(row, col),
    keyOf(row + rows - 1, col + cols - 1),
  ]);
  return new Set([...looks.keys(), ...sheet.sheet.cells.keys(), ...sheet.sheet.looks.keys(), ...corners]);
}

const EDGES = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"];

function look(seen: ReturnType<SheetHandle["at"]>, cell: CellPlan | undefined, at: string, tell: Tell): void {
  const planned = cell ? LOOKS[cell.kind] : undefined;
  const rule = planned?.rule;
  tell(`${at}: its font`, seen.look("format.font.name"), FONT.name);
  tell(`${at}: the size of its letters`, seen.look("format.font.size"), planned?.size ?? FONT.size);
  tell(`${at}: bold`, seen.look("format.font.bold"), planned?.bold ?? false);
  tell(`${at}: italic`, seen.look("format.font.italic"), planned?.italic ?? false);
  if (planned) tell(`${at}: its ink`, seen.look("format.font.color"), planned.ink);
  tell(`${at}: its fill`, seen.look("format.fill.color"), planned?.fill ?? "#FFFFFF");
  const ruled = rule?.at === "around" ? EDGES : rule ? ["EdgeBottom"] : [];
  for (const edge of ruled) {
    tell(`${at}: its ${edge}`, seen.look(`format.borders.${edge}.style`), "Continuous");
    tell(`${at}: the ink of its ${edge}`, seen.look(`format.borders.${edge}.color`), rule!.ink);
  }
  const align = cell?.align;
  tell(
    `${at}: its alignment`,
    seen.look("format.horizontalAlignment"),
    align ? align[0].toUpperCase() + align.slice(1) : "General",
  );
  tell(`${at}: broken into lines`, seen.look("format.wrapText"), cell?.wrap ?? false);
}

/** Numbers around the bounds of an entry rule, each with whether it may be typed. */
function samples({ least, most }: EntryRule): number[] {
  const around = [least, most].flatMap((bound) =>
    bound === undefined ? [] : [bound - 1, bound - 1e-3, bound, bound + 1e-3, bound + 1],
  );
  return [...around, -1e9, 0, 1e-6, 1, 1e9];
}

const mayBeTyped = ({ least, above, most }: EntryRule, value: number): boolean =>
  (least === undefined || (above ? value > least : value >= least)) && (most === undefined || value <= most);

function rules(sheet: SheetHandle, plan: SheetPlan, tell: Tell): void {
  const chosen = plan.cells.flatMap(({ row, col, choices }) =>
    choices ? [{ box: { row, col, rows: 1, cols: 1 }, choices }] : [],
  );
  const entries = plan.entries ?? [];
  const boxes = [...chosen, ...entries].map(({ box }) => box);
  boxes.forEach((box, index) => {
    const other = boxes.slice(0, index).find((one) => overlap(one, box));
    if (other) tell(`rules planned for ${addressOf(box)}`, `one more at ${addressOf(other)}`, "one");
  });
  for (const { box, choices } of chosen) {
    const rule = sheet.at(box.row, box.col).rule;
    tell(
      `${addressOf(box)}: its choices`,
      (rule?.rule?.list as { source?: string } | undefined)?.source,
      choices.join(","),
    );
    tell(`${addressOf(box)}: the words of its choices`, rule?.errorAlert?.showAlert, true);
  }
  for (const entry of entries) {
    // Each cell has a rule; cells that share one are compared together.
    const held = new Set([...cellsOf(entry.box)].map(([row, col]) => ruleAt(sheet.sheet, row, col)));
    const at = addressOf(entry.box);
    for (const one of held) {
      const { rule, errorAlert } = one ?? {};
      if (!rule) {
        tell(`${at}: its rule`, undefined, entry.kind);
        continue;
      }
      tell(`${at}: the kind of its rule`, Object.keys(rule)[0], entry.kind === "date" ? "date" : "decimal");
      tell(`${at}: the words of its rule`, errorAlert?.message, entry.message);
      for (const value of samples(entry))
        tell(`${at}: whether ${value} may be typed`, admits(rule, value), mayBeTyped(entry, value));
    }
  }
  const area = (all: readonly Box[]): number => all.reduce((sum, { rows, cols }) => sum + rows * cols, 0);
  tell("cells with a rule", area(sheet.sheet.rules.map(({ box }) => box)), area(boxes));
}

function pages(sheet: SheetHandle, plan: SheetPlan, tell: Tell): void {
  const { settings } = sheet.sheet;
  const get = (path: string): unknown => settings[`pageLayout.${path}`];
  const wanted = plan.pages ?? [{ row: 0, col: 0, rows: plan.rows, cols: plan.cols }];
  const separate = wanted.map((box) => addressOf(box, "$")).join(",");
  if (get("printArea") !== separate) {
    // Many pages may be one area with breaks.
    const areas = sheet.sheet.settings["pageLayout.printArea"] as string | undefined;
    const whole = { row: 0, col: 0, rows: plan.rows, cols: plan.cols };
    tell("an area around all pages", Boolean(areas) && !areas!.includes(","), true);
    tell(
      "pages on the sheet",
      wanted.every((box) => holds(whole, box)),
      true,
    );
    const tops = [...new Set(wanted.map(({ row }) => row))].sort((a, b) => a - b).slice(1);
    tell("breaks before rows", settings.rowBreaks, tops);
  }
  tell("the paper's side", get("orientation"), isLandscape(wanted, plan.columnWidths) ? "Landscape" : "Portrait");
  tell("the paper", get("paperSize"), plan.paper);
  tell("repeated rows", get("titleRows"), plan.freezeRows > 0 ? `$1:$${plan.freezeRows}` : undefined);
  tell("the left footer", get("headersFooters.defaultForAllPages.leftFooter"), "&F\n&A");
  tell("the middle footer", get("headersFooters.defaultForAllPages.centerFooter"), "");
  const right = String(get("headersFooters.defaultForAllPages.rightFooter"));
  tell("the versions in the footer", right.startsWith(`Page &P of &N\n${plan.footer ?? "Printed"}`), true);
}

function charts(excel: StrictExcel, sheet: SheetHandle, plan: SheetPlan, tell: Tell): void {
  const wanted = (plan.charts ?? []).filter(({ series }) => series.length > 0);
  tell(
    "charts",
    sheet.sheet.charts.map(({ properties }) => properties["title.text"]),
    wanted.map(({ title }) => title),
  );
  wanted.forEach((chart, index) => {
    const held = sheet.sheet.charts[index];
    if (!held) return;
    const what = `the chart "${chart.title}"`;
    tell(`${what}: where it begins`, held.from && [held.from.row, held.from.col], [chart.box.row, chart.box.col]);
    tell(`${what}: where it ends`, held.to && [held.to.row, held.to.col], [
      chart.box.row + chart.box.rows - 1,
      chart.box.col + chart.box.cols - 1,
    ]);
    tell(
      `${what}: series`,
      held.series.map(({ name }) => name),
      chart.series.map(({ name }) => name),
    );
    axis(held.properties, "axes.categoryAxis", chart.x, what, tell);
    axis(held.properties, "axes.valueAxis", chart.y, what, tell);
    const cellsOfSeries = ({ sheet: named, box }: ChartCells): unknown => ({
      sheet: (named === undefined ? sheet : excel.sheet(named)).sheet.id,
      box,
    });
    chart.series.forEach((series, at) => {
      const one = held.series[at];
      if (!one) return;
      tell(`${what}, ${series.name}: x`, one.x, cellsOfSeries(series.x));
      tell(`${what}, ${series.name}: y`, one.y, cellsOfSeries(series.y));
      drawn(one.properties, series, `${what}, ${series.name}`, tell);
      const label = one.points[series.y.box.rows - 1];
      tell(`${what}, ${series.name}: lettered`, label?.["dataLabel.showSeriesName"] ?? false, series.lettered ?? false);
    });
  });
}

function axis(
  held: Readonly<Record<string, unknown>>,
  path: string,
  planned: ChartPlan["x"],
  what: string,
  tell: Tell,
): void {
  const get = (member: string): unknown => held[`${path}.${member}`];
  tell(
    `${what}: ${path}`,
    [get("scaleType"), get("minimum"), get("maximum"), get("reversePlotOrder"), get("title.text")],
    [planned.scale === "log" ? "Logarithmic" : "Linear", ...planned.domain, planned.reversed, planned.label],
  );
  if (planned.scale === "log") tell(`${what}: the base of ${path}`, get("logBase"), 10);
}

function drawn(
  held: Readonly<Record<string, unknown>>,
  { style, symbol = "filled", shape = "circle" }: ChartSeries,
  what: string,
  tell: Tell,
): void {
  if (style !== "points") {
    tell(
      `${what}: its line`,
      [held.markerStyle, held["format.line.lineStyle"], held["format.line.color"]],
      ["None", style === "dashed" ? "Dash" : "Continuous", "#000000"],
    );
    return;
  }
  const marker = symbol === "cross" ? "X" : shape === "triangle" ? "Triangle" : "Circle";
  tell(
    `${what}: its symbols`,
    [held.markerStyle, held.markerForegroundColor, held.markerBackgroundColor, held["format.line.lineStyle"]],
    [marker, "#000000", symbol === "open" ? "#FFFFFF" : "#000000", "None"],
  );
}
