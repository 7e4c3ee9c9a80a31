/** Notes of a sheet (ExcelApi 1.18). */
import { addressOf } from "../book/address";
import { keyOf, placeOf, type Note as Held, type Sheet } from "../book/book";
import { mayChange } from "../book/cells";
import { invalidArgument, notFound, Refusal } from "../refusal";
import { Being, Collection, type Host } from "./being";
import { areasOf, Range } from "./range";

function checkContent(content: unknown): void {
  if (typeof content !== "string" || content === "") throw invalidArgument("A note has a text.");
  if (content.length > 32_767) throw invalidArgument("A note takes at most 32767 characters.");
}

export class NoteCollection extends Collection<Note> {
  readonly className = "NoteCollection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
  ) {
    super(host);
  }
  get items(): Note[] {
    return [...this.sheet.notes.keys()].map((key) => new Note(this.host, this.sheet, key));
  }
  private keyFor(cell: Range | string): number {
    const box = cell instanceof Range ? cell.box : areasOf(this.host.book, this.sheet, cell)[0].box;
    if (box.rows * box.cols > 1) throw invalidArgument("A note stands at one cell.");
    return keyOf(box.row, box.col);
  }
  add(cell: Range | string, content: string): Note {
    mayChange(this.sheet, "allowEditObjects");
    const key = this.keyFor(cell);
    checkContent(content);
    if (this.sheet.notes.has(key)) throw new Refusal("ItemAlreadyExists", "The cell has a note already.");
    this.sheet.notes.set(key, { content });
    return new Note(this.host, this.sheet, key);
  }
  getItemOrNullObject(cell: string): Note | null {
    const key = this.keyFor(cell);
    return this.sheet.notes.has(key) ? new Note(this.host, this.sheet, key) : null;
  }
  getItem(cell: string): Note {
    const note = this.getItemOrNullObject(cell);
    if (!note) throw notFound(`a note at ${cell}`);
    return note;
  }
  getItemAt(index: number): Note {
    if (!this.items[index]) throw invalidArgument(`There is no note ${index}.`);
    return this.items[index];
  }
}

class Note extends Being {
  readonly className = "Note";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly key: number,
  ) {
    super(host);
  }
  private get held(): Held {
    return this.sheet.notes.get(this.key)!;
  }
  get id(): string {
    const [row, col] = placeOf(this.key);
    return addressOf({ row, col, rows: 1, cols: 1 });
  }
  get content(): string {
    return this.held.content;
  }
  set content(content: string) {
    mayChange(this.sheet, "allowEditObjects");
    checkContent(content);
    this.held.content = content;
  }
  get authorName(): string {
    return "";
  }
  get width(): number {
    return this.held.width ?? 144;
  }
  set width(points: number) {
    this.size("width", points);
  }
  get height(): number {
    return this.held.height ?? 79;
  }
  set height(points: number) {
    this.size("height", points);
  }
  private size(side: "width" | "height", points: number): void {
    mayChange(this.sheet, "allowEditObjects");
    if (!(points > 0)) throw invalidArgument(`A note cannot measure ${points} points.`);
    this.held[side] = points;
  }
  get visible(): boolean {
    return this.held.visible ?? false;
  }
  set visible(visible: boolean) {
    this.held.visible = visible;
  }
  getLocation(): Range {
    const [row, col] = placeOf(this.key);
    return new Range(this.host, this.sheet, { row, col, rows: 1, cols: 1 });
  }
  delete(): void {
    mayChange(this.sheet, "allowEditObjects");
    this.sheet.notes.delete(this.key);
  }
}
