/** The format of cells: settings are checked first, then stored for each cell. */
import type { Box } from "../book/address";
import type { Sheet } from "../book/book";
import { mayChange, mustBeOpen } from "../book/cells";
import { lookOf, setLook, sharedLook } from "../book/looks";
import { invalidArgument, NotModelled } from "../refusal";
import { memberOf } from "../typings";
import { Being, checkColor, Collection, type Host } from "./being";

/** Points (Excel specifications and limits); characters of the default font for the width of a column. */
const MOST = { rowHeight: 409, columnWidth: 255 * 7.5, size: 409 };
const DEFAULT = { rowHeight: 15, columnWidth: 48 };

const isSize = (value: unknown, most: number): boolean => typeof value === "number" && value >= 0 && value <= most;

export class RangeFormat extends Being {
  readonly className: string = "RangeFormat";
  protected readonly boxes: readonly Box[];
  protected readonly path: string = "format.";
  constructor(
    host: Host,
    protected readonly sheet: Sheet,
    ...boxes: Box[]
  ) {
    super(host);
    this.boxes = boxes;
  }

  get font(): Part {
    return new Part(this.host, "RangeFont", "format.font.", this.sheet, this.boxes);
  }
  get fill(): Part {
    return new Part(this.host, "RangeFill", "format.fill.", this.sheet, this.boxes);
  }
  get protection(): Part {
    return new Part(this.host, "FormatProtection", "format.protection.", this.sheet, this.boxes);
  }
  get borders(): Borders {
    return new Borders(this.host, this.sheet, this.boxes);
  }
  get columnWidth(): number | null {
    return sameOf(lines(this.boxes, "col", "cols"), this.sheet.widths, DEFAULT.columnWidth);
  }
  set columnWidth(points: number) {
    mayChange(this.sheet, "allowFormatColumns");
    if (!isSize(points, MOST.columnWidth)) throw invalidArgument(`A column cannot be ${points} points wide.`);
    for (const col of lines(this.boxes, "col", "cols")) this.sheet.widths.set(col, points);
  }
  get rowHeight(): number | null {
    return sameOf(lines(this.boxes, "row", "rows"), this.sheet.heights, DEFAULT.rowHeight);
  }
  set rowHeight(points: number) {
    mayChange(this.sheet, "allowFormatRows");
    if (!isSize(points, MOST.rowHeight)) throw invalidArgument(`A row cannot be ${points} points high.`);
    for (const row of lines(this.boxes, "row", "rows")) this.sheet.heights.set(row, points);
  }
  autofitColumns(): void {
    mayChange(this.sheet, "allowFormatColumns");
  }
  autofitRows(): void {
    mayChange(this.sheet, "allowFormatRows");
  }

  override read(member: string): unknown {
    if (member in this) return super.read(member);
    return sharedLook(this.sheet, this.boxes[0], `format.${member}`);
  }

  override write(member: string, value: unknown): void {
    if (member in this) return super.write(member, value);
    this.changesOf(member, value)();
  }

  private changesOf(member: string, value: unknown): () => void {
    mayChange(this.sheet, "allowFormatCells");
    return () => this.boxes.forEach((box) => setLook(this.sheet, box, `format.${member}`, value));
  }

  /** The changes of a nested record of properties, checked but not yet made. */
  changes(properties: Record<string, unknown>): (() => void)[] {
    return Object.entries(properties).flatMap(([key, value]) => {
      if (value === null || value === undefined) return [];
      if (key === "columnWidth" || key === "rowHeight") return [() => this.write(key, value)];
      if (key === "borders") return this.borders.changes(value as Record<string, Record<string, unknown>>);
      const part = key === "font" || key === "fill" || key === "protection" ? this[key] : undefined;
      if (!part) return [this.changesOf(key, value)];
      return Object.entries(value as Record<string, unknown>).map(([name, one]) => part.change(name, one));
    });
  }

  /** The properties that a nested record asks for. */
  asked(wanted: Record<string, unknown>): Record<string, unknown> {
    return Object.fromEntries(
      Object.entries(wanted).flatMap(([key, one]) => {
        if (!one) return [];
        // Of the protection the typings take no single property: true asks for all.
        if (one === true && key === "protection") return [[key, { locked: (this.read(key) as Being).read("locked") }]];
        if (one === true) return [[key, this.read(key)]];
        const part = this.read(key) as Being;
        return [[key, Object.fromEntries(Object.keys(one).map((name) => [name, part.read(name)]))]];
      }),
    );
  }
}

function* lines(boxes: readonly Box[], first: "row" | "col", count: "rows" | "cols"): Generator<number> {
  for (const box of boxes) for (let line = box[first]; line < box[first] + box[count]; line++) yield line;
}

function sameOf(all: Iterable<number>, sizes: ReadonlyMap<number, number>, otherwise: number): number | null {
  const found = new Set([...all].map((line) => sizes.get(line) ?? otherwise));
  return found.size === 1 ? [...found][0] : null;
}

/** The font, the fill or the protection of cells. */
class Part extends Being {
  constructor(
    host: Host,
    readonly className: string,
    private readonly path: string,
    private readonly sheet: Sheet,
    private readonly boxes: readonly Box[],
  ) {
    super(host);
  }
  override read(member: string): unknown {
    return sharedLook(this.sheet, this.boxes[0], `${this.path}${member}`);
  }
  override write(member: string, value: unknown): void {
    this.change(member, value)();
  }
  change(member: string, value: unknown): () => void {
    // While the sheet is protected, locks cannot be changed, but formats may be.
    if (this.className === "FormatProtection") mustBeOpen(this.sheet);
    else mayChange(this.sheet, "allowFormatCells");
    if (!memberOf(this.className, member)) throw new NotModelled(`${this.className}.${member}`);
    if (/color$/i.test(member)) checkColor(value);
    if (this.className === "RangeFont" && member === "size" && !(isSize(value, MOST.size) && (value as number) >= 1))
      throw invalidArgument(`Letters cannot be ${String(value)} points high.`);
    if (this.className === "RangeFont" && member === "name" && (value === "" || String(value).length > 31))
      throw invalidArgument("A font's name has 1 to 31 characters.");
    return () => this.boxes.forEach((box) => setLook(this.sheet, box, `${this.path}${member}`, value));
  }
  clear(): void {
    this.change("color", "")();
  }
}

const EDGES: Readonly<Record<string, string>> = {
  top: "EdgeTop",
  bottom: "EdgeBottom",
  left: "EdgeLeft",
  right: "EdgeRight",
  horizontal: "InsideHorizontal",
  vertical: "InsideVertical",
  diagonalDown: "DiagonalDown",
  diagonalUp: "DiagonalUp",
};

class Borders extends Collection<Border> {
  readonly className = "RangeBorderCollection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly boxes: readonly Box[],
  ) {
    super(host);
  }
  get items(): Border[] {
    return Object.values(EDGES).map((edge) => this.getItem(edge));
  }
  getItem(edge: string): Border {
    return new Border(this.host, edge, this.sheet, this.boxes);
  }
  getItemAt(index: number): Border {
    return this.items[index];
  }
  changes(edges: Record<string, Record<string, unknown>>): (() => void)[] {
    return Object.entries(edges).flatMap(([edge, properties]) =>
      Object.entries(properties ?? {}).map(([name, value]) => this.getItem(EDGES[edge]).change(name, value)),
    );
  }
}

/** The cells of a box along one of its edges. */
function alongEdge({ row, col, rows, cols }: Box, edge: string): Box {
  switch (edge) {
    case "EdgeTop":
      return { row, col, rows: 1, cols };
    case "EdgeBottom":
      return { row: row + rows - 1, col, rows: 1, cols };
    case "EdgeLeft":
      return { row, col, rows, cols: 1 };
    case "EdgeRight":
      return { row, col: col + cols - 1, rows, cols: 1 };
    default:
      return { row, col, rows, cols };
  }
}

class Border extends Being {
  readonly className = "RangeBorder";
  constructor(
    host: Host,
    private readonly edge: string,
    private readonly sheet: Sheet,
    private readonly boxes: readonly Box[],
  ) {
    super(host);
  }
  get sideIndex(): string {
    return this.edge;
  }
  get id(): string {
    return this.edge;
  }
  override read(member: string): unknown {
    if (member in this) return super.read(member);
    const { row, col } = alongEdge(this.boxes[0], this.edge);
    return (
      lookOf(this.sheet, row, col, `format.borders.${this.edge}.${member}`) ?? (member === "style" ? "None" : null)
    );
  }
  override write(member: string, value: unknown): void {
    this.change(member, value)();
  }
  change(member: string, value: unknown): () => void {
    mayChange(this.sheet, "allowFormatCells");
    if (/color$/i.test(member)) checkColor(value);
    return () =>
      this.boxes.forEach((box) =>
        setLook(this.sheet, alongEdge(box, this.edge), `format.borders.${this.edge}.${member}`, value),
      );
  }
}
