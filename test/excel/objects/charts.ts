/** Charts of a sheet, their axes, series and points. */
import type { Box } from "../book/address";
import { keyOf, type Chart as Held, type Series as HeldSeries, type Sheet } from "../book/book";
import { mayChange } from "../book/cells";
import { invalidArgument, notFound, Refusal } from "../refusal";
import { Bag, Being, checkColor, Collection, type BagRules, type Host } from "./being";
import { areasOf, Range } from "./range";

const numberIn = (value: unknown, least: number, most: number, what: string): void => {
  if (typeof value !== "number" || value < least || value > most)
    throw invalidArgument(`${what} goes from ${least} to ${most}, not ${String(value)}.`);
};

const isLog = (axis: Bag): boolean => axis.get("scaleType") === "Logarithmic";

function checkBounds(axis: Bag, minimum: unknown, maximum: unknown): void {
  for (const bound of [minimum, maximum]) {
    if (bound === undefined || bound === "" || bound === null) continue;
    if (typeof bound !== "number" || !Number.isFinite(bound))
      throw invalidArgument(`An axis does not end at ${JSON.stringify(bound)}.`);
    if (isLog(axis) && bound <= 0) throw invalidArgument(`A logarithmic axis begins above 0, not at ${bound}.`);
  }
}

const positive = (_: Bag, value: unknown): void => {
  if (value !== "" && !(typeof value === "number" && value > 0))
    throw invalidArgument(`A step of an axis is greater than 0, not ${String(value)}.`);
};

const letters = (_: Bag, size: unknown): void => numberIn(size, 1, 409, "The size of letters");

const RULES: BagRules = {
  defaults: {
    "ChartAxis.scaleType": "Linear",
    "ChartAxis.visible": true,
    "ChartAxis.reversePlotOrder": false,
    "ChartAxis.position": "Automatic",
    "ChartTitle.visible": true,
    "ChartLegend.visible": true,
    "ChartGridlines.visible": false,
    "Chart.displayBlanksAs": "NotPlotted",
    "Chart.plotVisibleOnly": true,
  },
  checks: {
    "ChartAxis.minimum": (axis, value) => checkBounds(axis, value, axis.get("maximum")),
    "ChartAxis.maximum": (axis, value) => checkBounds(axis, axis.get("minimum"), value),
    "ChartAxis.logBase": (axis, value) => {
      numberIn(value, 2, 1000, "The base of a logarithmic axis");
      // Office-js issue 3695; its code from memory.
      if (!isLog(axis))
        throw new Refusal("InvalidOperation", "This operation is not permitted for the current object.");
    },
    "ChartAxis.scaleType": (axis, value) => {
      if (
        value === "Logarithmic" &&
        ["minimum", "maximum"].some((end) => typeof axis.get(end) === "number" && (axis.get(end) as number) <= 0)
      )
        throw invalidArgument("A logarithmic axis begins above 0.");
    },
    "ChartAxis.majorUnit": positive,
    "ChartAxis.minorUnit": positive,
    "ChartFont.size": letters,
    // Typings: "The name's length should not be greater than 31 characters".
    "ChartFont.name": (_, name) => {
      if (String(name).length > 31) throw invalidArgument("The name of a font takes at most 31 characters.");
    },
    "ChartLineFormat.weight": (_, value) => numberIn(value, 0, 1584, "The weight of a line"),
    "ChartSeries.markerSize": (_, value) => numberIn(value, 2, 72, "The size of a marker"),
  },
  methods: {
    "ChartFill.setSolidColor": (bag, color) => {
      bag.mayChange();
      checkColor(color);
      bag.put("solidColor", color);
    },
    "ChartFill.clear": (bag) => {
      bag.mayChange();
      bag.put("solidColor", "");
    },
    "ChartLineFormat.clear": (bag) => {
      bag.mayChange();
      bag.put("color", "");
      bag.put("lineStyle", "None");
      // Clearing the line of a series may clear the borders of its markers too (not documented): here it does.
      if (bag.path === "format.line.") bag.held.markerForegroundColor = "";
    },
  },
};

export class ChartCollection extends Collection<Chart> {
  readonly className = "ChartCollection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
  ) {
    super(host);
  }
  get items(): Chart[] {
    return this.sheet.charts.map((chart) => new Chart(this.host, this.sheet, chart));
  }
  getItemOrNullObject(key: string): Chart | null {
    const found = this.sheet.charts.find(({ id, name }) => id === key || name === key);
    return found ? new Chart(this.host, this.sheet, found) : null;
  }
  getItem(key: string): Chart {
    const found = this.getItemOrNullObject(key);
    if (!found) throw notFound(`the chart "${key}"`);
    return found;
  }
  getItemAt(index: number): Chart {
    if (!this.items[index]) throw invalidArgument(`There is no chart ${index}.`);
    return this.items[index];
  }
  add(type: string, source: Range, seriesBy: string | null): Chart {
    mayChange(this.sheet, "allowEditObjects");
    const id = this.host.newId("chart");
    const made: Held = {
      id,
      name: `Chart ${this.sheet.charts.length + 1}`,
      type,
      properties: {},
      series: guessed(source, type, seriesBy),
    };
    this.sheet.charts.push(made);
    return new Chart(this.host, this.sheet, made);
  }
}

/**
 * Excel guesses series from the cells: in a scatter chart the first of several columns holds x; blank cells also give
 * one series.
 */
function guessed({ sheet, box }: Range, type: string, seriesBy: string | null): HeldSeries[] {
  const byColumns = seriesBy === "Columns" || (seriesBy !== "Rows" && box.rows >= box.cols);
  const lines: Box[] = byColumns
    ? Array.from({ length: box.cols }, (_, c) => ({ ...box, col: box.col + c, cols: 1 }))
    : Array.from({ length: box.rows }, (_, r) => ({ ...box, row: box.row + r, rows: 1 }));
  const isScatter = type.startsWith("XYScatter");
  const isXFirst = isScatter && lines.length > 1;
  const x = isXFirst ? lines[0] : undefined;
  const rest = isXFirst ? lines.slice(1) : lines;
  return rest.map((y, index) => ({
    name: `Series${index + 1}`,
    ...(x && { x: { sheet: sheet.id, box: x } }),
    y: { sheet: sheet.id, box: y },
    isGuessed: true,
    properties: {},
    points: {},
  }));
}

export class Chart extends Bag {
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly chart: Held,
  ) {
    super(host, "Chart", chart.properties, "", RULES, () => mayChange(sheet, "allowEditObjects"));
  }
  override read(member: string): unknown {
    if (member === "id") return this.chart.id;
    if (member === "name") return this.chart.name;
    if (member === "chartType") return this.chart.type;
    if (member === "series") return new SeriesCollection(this.host, this.sheet, this.chart);
    return super.read(member);
  }
  get id(): string {
    return this.chart.id;
  }
  override write(member: string, value: unknown): void {
    this.mayChange();
    if (member === "name") this.chart.name = String(value);
    else if (member === "chartType") this.chart.type = String(value);
    else super.write(member, value);
  }
  override call(member: string, args: readonly unknown[]): unknown {
    this.mayChange();
    if (member === "delete") return void this.sheet.charts.splice(this.sheet.charts.indexOf(this.chart), 1);
    if (member === "setPosition") {
      const [from, to = from] = args
        .filter(Boolean)
        .map((cell) => boxFor(this.host, this.sheet, cell as Range | string));
      this.chart.from = from;
      this.chart.to = to;
      return undefined;
    }
    if (member === "activate") {
      this.host.book.active = this.sheet.id;
      this.host.book.selection = { kind: "chart", sheet: this.sheet.id, chart: this.chart.id };
      return undefined;
    }
    return super.call(member, args);
  }
}

const boxFor = (host: Host, sheet: Sheet, cell: Range | string): Box =>
  cell instanceof Range ? cell.box : areasOf(host.book, sheet, cell)[0].box;

/**
 * Typings, ChartSeries.name: "The name's length should not be greater than 255 characters". From memory: a name that
 * begins with "=" is the address of the cells that hold it.
 */
function checkSeriesName(name: string): void {
  if (name.length > 255)
    throw invalidArgument(`The name of a series takes at most 255 characters, not ${name.length}.`);
  if (name.startsWith("=") && !/^='?[^!]+!\$?[A-Z]+\$?\d+/.test(name))
    throw invalidArgument(`${name} is no address of the name of a series.`);
}

class SeriesCollection extends Collection<Series> {
  readonly className = "ChartSeriesCollection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly chart: Held,
  ) {
    super(host);
  }
  get items(): Series[] {
    return this.chart.series.map((series) => new Series(this.host, this.sheet, this.chart, series));
  }
  getItemAt(index: number): Series {
    if (!this.items[index]) throw invalidArgument(`The chart has no series ${index}.`);
    return this.items[index];
  }
  /** At most 255 series (Excel specifications and limits). */
  add(name: string | null, index: number | null): Series {
    mayChange(this.sheet, "allowEditObjects");
    if (name !== null) checkSeriesName(name);
    if (this.chart.series.length >= 255) throw invalidArgument("A chart takes at most 255 series.");
    const made: HeldSeries = { name: name ?? `Series${this.chart.series.length + 1}`, properties: {}, points: {} };
    this.chart.series.splice(index ?? this.chart.series.length, 0, made);
    return new Series(this.host, this.sheet, this.chart, made);
  }
}

class Series extends Bag {
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly chart: Held,
    private readonly series: HeldSeries,
  ) {
    super(host, "ChartSeries", series.properties, "", RULES, () => mayChange(sheet, "allowEditObjects"));
  }
  override read(member: string): unknown {
    if (member === "name") return this.series.name;
    if (member === "points") return new Points(this.host, this.sheet, this.series);
    if (member === "chartType") return this.get("chartType") ?? this.chart.type;
    return super.read(member);
  }
  override write(member: string, value: unknown): void {
    if (member === "name") {
      this.mayChange();
      checkSeriesName(String(value));
      this.series.name = String(value);
    } else super.write(member, value);
  }
  override call(member: string, args: readonly unknown[]): unknown {
    this.mayChange();
    if (member === "delete") {
      if (this.chart.series.length === 1)
        throw new Refusal("EmptyChartSeries", "The chart would have no series and lose its axes.");
      return void this.chart.series.splice(this.chart.series.indexOf(this.series), 1);
    }
    if (member === "setValues" || member === "setXAxisValues") {
      const { sheet, box } = args[0] as Range;
      if (box.rows > 1 && box.cols > 1) throw invalidArgument("The values of a series stand in one row or one column.");
      this.series[member === "setValues" ? "y" : "x"] = { sheet: sheet.id, box };
      return undefined;
    }
    if (member === "getDimensionValues") {
      const cells = args[0] === "XValues" || args[0] === "Categories" ? this.series.x : this.series.y;
      const sheet = this.host.book.sheets.find(({ id }) => id === cells?.sheet);
      if (!cells || !sheet) throw new Refusal("EmptyChartSeries", "The series has no cells.");
      const { row, col, rows, cols } = cells.box;
      return Array.from({ length: rows * cols }, (_, i) =>
        String(sheet.cells.get(cols === 1 ? keyOf(row + i, col) : keyOf(row, col + i))?.value ?? ""),
      );
    }
    return super.call(member, args);
  }
}

class Points extends Being {
  readonly className = "ChartPointsCollection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly series: HeldSeries,
  ) {
    super(host);
  }
  get count(): number {
    const box = this.series.y?.box;
    return box ? box.rows * box.cols : 0;
  }
  getCount(): number {
    return this.count;
  }
  get items(): Bag[] {
    return Array.from({ length: this.count }, (_, index) => this.getItemAt(index));
  }
  getItemAt(index: number): Bag {
    if (!(index >= 0 && index < this.count)) throw invalidArgument(`The series has no point ${index}.`);
    const held = (this.series.points[index] ??= {});
    return new Bag(this.host, "ChartPoint", held, "", RULES, () => mayChange(this.sheet, "allowEditObjects"));
  }
}
