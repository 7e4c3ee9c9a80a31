/**
 * A strict stand-in for Excel, for tests: the real object model of @microsoft/office-js on a workbook that is plain
 * data, which refuses what Excel refuses, with Excel's codes. A test file begins with `@jest-environment jsdom`, and:
 *
 *   const excel = new StrictExcel({ sheets: ["Sheet1"], version: "1.13", platform: "web" });
 *   excel.sheet("Sheet1").put("A1", [["mass", 120.5], ["'00123", "=B1*2"]]);   // as a person types it
 *   await new OfficePort().insertSheet(plan);
 *   excel.sheet("Test").cell("B4");        // { value, formula, format, locked, look(path), note, rule }
 *   excel.lines;                           // 'workbook.worksheets.getItem("Test").activate()', as the code reads
 *   expect(excel.faults).toEqual([]);      // words, keys and members that the typings do not have, sets not asked for
 *
 * Members: `book` is the workbook as data, `picture()` a copy to compare with later, `cost(work)` counts round trips.
 * Switches: `failures` (refuse, failAt, closeAt), `evaluation` (evaluator, isAddInLate, busyFor), `switches` (no
 * printer, print area, another window in front), `startEdit`/`endEdit` (a cell is being edited), `select`, `selectChart`, `selectNothing`,
 * `structure(password)`, `sheet(name).protect(options, password)`. It was written from Microsoft's documentation and
 * issue threads; a code that they do not give is from memory (test/excel/rules.test.ts marks these).
 */
import { Batch, type Office, type Step } from "./batch";
import { boxOf } from "./book/address";
import { copyOf, newSheet, sheetByName, type Book, type Sheet } from "./book/book";
import { evaluate, type Evaluation, type Evaluator } from "./book/evaluation";
import type { Moved } from "./book/lines";
import { costOf, type Cost, type Trip } from "./counts";
import { putBehind, reported, selectionMoved, type Behind, type Request } from "./library";
import type { HostEvent, Platform, Switches } from "./objects/being";
import { Range } from "./objects/range";
import { Workbook } from "./objects/workbook";
import { Requirements } from "./requirements";
import { Failures } from "./switches";
import { SheetHandle } from "./sheet-handle";

export interface Options {
  readonly sheets?: readonly string[];
  /** Version of ExcelApi; the newest if omitted. */
  readonly version?: string;
  readonly platform?: Platform;
  readonly locale?: string;
  readonly evaluator?: Evaluator;
  /** Requirement sets in place of those of manifest.xml. */
  readonly declared?: Readonly<Record<string, string>>;
  /** A workbook that another stand-in has made, to begin with a copy of it; `sheets` is left out then. */
  readonly book?: Book;
}

const NEWEST = "1.20";
/**
 * The most bytes of a request, and of an answer, in Excel on the web (Microsoft: Resource limits and performance
 * optimization).
 */
const LARGEST = 5 * 1024 * 1024;
const DELAY_FOR_CELL_EDIT = 64;

const PLATFORMS: Readonly<Record<Platform, string>> = { web: "OfficeOnline", desktop: "PC", mac: "Mac" };

/** A number above those of the ids in a workbook that is copied, and of what was deleted from it. */
const idsTaken = ({ sheets }: Book): number =>
  1_000_000 +
  Math.max(
    ...sheets.flatMap(({ id, charts }) =>
      [id, ...charts.map((chart) => chart.id)].map((one) => Number(/\d+/.exec(one))),
    ),
  );

export class StrictExcel implements Office, Behind {
  readonly book: Book;
  readonly steps: Step[] = [];
  readonly trips: Trip[] = [];
  readonly faults: string[] = [];
  readonly failures = new Failures();
  readonly requirements: Requirements;
  readonly platform: Platform;
  readonly locale: string;
  readonly evaluation: Evaluation;
  readonly switches: Switches = {
    hasNoPrinter: false,
    limitsPrintArea: false,
    listSeparator: ",",
    countsFrom1904: false,
    numberedColumns: undefined,
    isInBackground: false,
  };
  readonly kept: Office["kept"] = new Map();
  readonly root = new Workbook(this);
  private ids: number;
  private isStale = false;
  private events = new Set<HostEvent>();
  private visit: { readonly at: number; readonly act: () => void | Promise<void> } | undefined;
  private requests = 0;
  private gone: { readonly at: number; readonly tell: () => void } | undefined;
  private edit: { readonly ended: Promise<void>; readonly end: () => void } | undefined;

  constructor({
    sheets = ["Sheet1"],
    version = NEWEST,
    platform = "web",
    locale = "en-US",
    evaluator,
    declared,
    book,
  }: Options = {}) {
    this.ids = book ? idsTaken(book) : 0;
    this.platform = platform;
    this.locale = locale;
    this.requirements = new Requirements(version, platform, declared);
    this.evaluation = { evaluator: evaluator ?? (() => undefined), isAddInLate: false, busyFor: 0, isManual: false };
    const made = sheets.map((name) => newSheet(this.newId("sheet"), name));
    this.book = book
      ? copyOf(book)
      : {
          sheets: made,
          names: [],
          structure: { on: false },
          active: made[0].id,
          selection: { kind: "cells", sheet: made[0].id, boxes: [{ row: 0, col: 0, rows: 1, cols: 1 }] },
          settings: new Map(),
        };
    putBehind(this);
  }

  // --- Observations of a test

  get lines(): string[] {
    return this.steps.map(({ line }) => line);
  }

  get sheetNames(): string[] {
    return this.book.sheets.map(({ name }) => name);
  }

  sheet(name: string): SheetHandle {
    const found = sheetByName(this.book, name);
    if (!found) throw new Error(`the workbook has no sheet "${name}", only ${this.sheetNames.join(", ")}`);
    return new SheetHandle(this, found);
  }

  /** A copy of the whole workbook, to compare with another. */
  picture(): Book {
    this.settle();
    return copyOf(this.book);
  }

  /** The cost of a piece of work in round trips and bytes. */
  async cost(work: () => Promise<unknown>): Promise<Cost> {
    const before = this.trips.length;
    await work();
    return costOf(this.trips.slice(before));
  }

  // --- Actions of a person, and accidents of Excel

  /** Selects blocks of a sheet ("B4", "B4:C18", "B4:B9,D4:D9", "B:C"), and brings the sheet to the front. */
  select(sheet: string, address: string): void {
    const { id } = this.sheet(sheet).sheet;
    const boxes = address.split(",").map((part) => boxOf(part)!);
    const isOther = this.book.active !== id;
    this.book.active = id;
    this.book.selection = { kind: "cells", sheet: id, boxes };
    if (isOther) this.tell("activated");
    selectionMoved();
  }

  /** A person copies a sheet to the end: the copy has its names, which lead to the copy. */
  copySheet(name: string, as: string): SheetHandle {
    const from = this.sheet(name).sheet;
    const made: Sheet = { ...copyOf(from), id: this.newId("sheet"), name: as };
    for (const one of made.names)
      if (one.refers.kind === "cells")
        one.refers = {
          kind: "cells",
          areas: one.refers.areas.map((area) => (area.sheet === from.id ? { ...area, sheet: made.id } : area)),
        };
    this.book.sheets.push(made);
    this.tell("added");
    return this.sheet(as);
  }

  selectChart(sheet: string, index = 0): void {
    const { id, charts } = this.sheet(sheet).sheet;
    this.book.active = id;
    this.book.selection = { kind: "chart", sheet: id, chart: charts[index]?.id ?? "picture" };
    selectionMoved();
  }

  selectNothing(): void {
    this.book.selection = { kind: "nothing" };
    selectionMoved();
  }

  /** A cell is being edited: batches wait if they were made to wait, and are refused otherwise. */
  startEdit(): void {
    let end!: () => void;
    const ended = new Promise<void>((resolve) => void (end = resolve));
    this.edit = { ended, end };
  }

  endEdit(): void {
    this.edit?.end();
    this.edit = undefined;
  }

  /**
   * Somebody else changes the workbook before Excel carries out the n-th request from now on (1 is the next one). `act` may
   * be work of several requests, of a second pane.
   */
  beforeRequest(n: number, act: () => void | Promise<void>): void {
    this.visit = { at: this.requests + n, act };
  }

  /**
   * The pane is closed before Excel carries out its n-th request from now on: the pane never hears of it or of a later
   * one. Resolves then. `comesUp` lets the next pane work.
   */
  closesBefore(n: number): Promise<void> {
    return new Promise((tell) => void (this.gone = { at: this.requests + n, tell }));
  }

  comesUp(): void {
    this.gone = undefined;
  }

  /** Protects the structure of the workbook, with or without a password. */
  structure(on: boolean, password?: string): void {
    this.book.structure = { on, ...(password !== undefined && { password }) };
  }

  /**
   * The add-in is loaded: its functions are known from now on. Cells that a file stored stay unchanged until they are
   * typed again.
   */
  addInArrives(): void {
    this.evaluation.isAddInLate = false;
    this.recalculate();
  }

  // --- The host of the object model

  newId(prefix: string): string {
    return `{${prefix}-${++this.ids}}`;
  }

  recalculate(): void {
    this.isStale = true;
  }

  calculate(): void {
    this.isStale = false;
    evaluate(this.book, this.evaluation, true);
  }

  /** Calculates the formulas again if anything changed. */
  settle(): void {
    if (!this.isStale) return;
    this.isStale = false;
    evaluate(this.book, this.evaluation);
  }

  moved(sheet: Sheet, to: Moved): void {
    const ranges = [...this.kept.values()].flatMap(({ being }) => (being instanceof Range ? [being] : []));
    for (const range of new Set(ranges)) if (range.sheet === sheet) range.follow(to);
  }

  raise(event: HostEvent): void {
    this.events.add(event);
  }

  before(step: Step): void {
    if (step.verb !== "set") this.settle();
    this.failures.before(step);
  }

  get officePlatform(): string {
    return PLATFORMS[this.platform];
  }

  isSetSupported(set: string, version: string | undefined, isByLibrary: boolean): boolean {
    return isByLibrary ? this.requirements.has(set, version) : this.requirements.ask(set, version);
  }

  async execute(body: Request, flags: number): Promise<unknown> {
    if (this.gone && this.requests + 1 >= this.gone.at) {
      this.gone.tell();
      return new Promise(() => undefined);
    }
    // Requests travel as JSON: NaN, undefined and a Date arrive as JSON has them.
    const text = JSON.stringify(body);
    const sent = Buffer.byteLength(text);
    if (this.requests + 1 === this.visit?.at) {
      const { act } = this.visit;
      this.visit = undefined;
      await act();
    }
    if (this.edit && flags & DELAY_FOR_CELL_EDIT) await this.edit.ended;
    if (this.failures.isClosed) return this.answered({ sent }, "InvalidOrTimedOutSession", "The session is gone.");
    if (this.edit) return this.answered({ sent }, "InvalidOperationInCellEditMode", "Excel is in cell-editing mode.");
    if (this.platform === "web" && sent > LARGEST)
      return this.answered(
        { sent },
        "RequestPayloadSizeLimitExceeded",
        "The request payload size has exceeded the limit.",
      );
    const request: Request = JSON.parse(text);
    this.requests += 1;
    const { results, traces, refused } = await new Batch(this, request, this.trips.length, this.steps).carryOut();
    if (this.evaluation.busyFor > 0 && --this.evaluation.busyFor === 0) {
      this.recalculate();
      this.raise("calculated");
    }
    this.settle();
    this.tellEvents();
    const Body = {
      Results: results,
      TraceIds: traces,
      ...(refused ? { Error: { ...refused, HttpStatusCode: 400 } } : {}),
    };
    const answer = JSON.stringify(Body);
    const received = Buffer.byteLength(answer);
    if (this.platform === "web" && received > LARGEST)
      return this.answered(
        { sent, received },
        "ResponsePayloadSizeLimitExceeded",
        "The response payload size has exceeded the limit.",
      );
    const names = new Set(request.Actions.map(({ Name }) => Name).filter((name) => name !== ""));
    this.trips.push({ sent, received, isRelease: names.size === 1 && names.has("_RemoveReference") });
    return {
      HttpStatusCode: refused ? 400 : 200,
      Headers: {},
      Body: JSON.parse(answer),
      ErrorCode: "",
      ErrorMessage: "",
    };
  }

  private answered(
    { sent, received = 0 }: { sent: number; received?: number },
    code: string,
    message: string,
  ): unknown {
    this.trips.push({ sent, received, isRelease: false });
    const Body = {
      Results: [],
      TraceIds: [],
      Error: { Code: code, Message: message, Location: "", ActionIndex: -1, HttpStatusCode: 400 },
    };
    return { HttpStatusCode: 400, Headers: {}, Body, ErrorCode: "", ErrorMessage: "" };
  }

  /** Excel calls its listeners after the batch. */
  private tellEvents(): void {
    const events = [...this.events];
    this.events = new Set();
    for (const event of events) setTimeout(() => this.tell(event), 0);
  }

  /** Excel reports that something happened. */
  tell(event: HostEvent): void {
    if (event === "selection") selectionMoved();
    else reported(event);
  }
}
