/**
 * What the whole pane knows of the workbook: its data sheets, which of them is the current test, and what that one holds. It
 * reads while somebody follows it, a moment after the last change, and only what has changed; what is equal stays the same object.
 */
import { readRecord, type NamedValues, type TestRecord } from "../../record/record";
import { DATA_SHEET_NAME } from "../../specification/load-table";
import type {
  Change,
  FoundSheet,
  HiddenLines,
  Looked,
  SheetName,
  Unsubscribe,
  WorkbookPort,
} from "../../workbook/port";
import { sentenceOf } from "../text/sentence";
import { chosen, currentTest, followed, isTest, type Choice, type CurrentTest } from "./current-test";
import { kept } from "./kept";
import { asksFor, covers, marksOf, together, type Want } from "./want";

/** Milliseconds without a change before the workbook is read again. */
const PAUSES: Readonly<Record<Change, number>> = { values: 400, front: 100, sheets: 150 };

/** What the current test holds. */
export interface Reading {
  readonly id: string;
  readonly sheet: string;
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly names: readonly SheetName[];
  /** Empty where they were not wanted. */
  readonly contents: NamedValues;
  readonly hidden: HiddenLines;
  /** The sheets beside it that were wanted. */
  readonly beside: readonly Looked[];
  /** What it was read for. */
  readonly read: Want;
}

export interface Snapshot {
  readonly current: CurrentTest;
  readonly reading?: Reading;
  readonly error?: string;
}

const NOTHING_HIDDEN: HiddenLines = { rows: [], cols: [] };

function readingOf(
  id: string,
  { sheet, values, names = [], contents, hidden = NOTHING_HIDDEN }: Looked,
  beside: readonly Looked[],
  read: Want,
  before: Reading | undefined,
): Reading {
  const same = kept(before?.values, values);
  const record = before && same === before.values ? before.record : readRecord(same);
  return kept(before, { id, sheet, values: same, record, names, contents, hidden, beside, read });
}

/** What was found of a data sheet, and of the sheets beside it. */
async function lookAt(
  port: WorkbookPort,
  sheet: string,
  want: Want,
  sheets: readonly FoundSheet[],
): Promise<[Looked, ...Looked[]]> {
  const [looked, ...beside] = await port.lookAt(asksFor(sheet, want, sheets));
  if (!looked) throw new Error(`nothing was answered of the sheet "${sheet}"`);
  return [looked, ...beside];
}

/** A data sheet as it stands now, whichever test is current. */
export async function readTest(port: WorkbookPort, sheet: string, want: Want): Promise<Reading> {
  const sheets = await port.findSheets(marksOf([want]));
  const [looked, ...beside] = await lookAt(port, sheet, want, sheets);
  const id = sheets.find((one) => one.sheet === looked.sheet)?.id ?? looked.sheet;
  return readingOf(id, looked, beside, want, undefined);
}

export class WorkbookStore {
  readonly #port: WorkbookPort;
  #sheets: readonly FoundSheet[] | undefined;
  #choice: Choice = { isPinned: false };
  /** What is shown of the current test. */
  #reading: Reading | undefined;
  /** The last reading of each test by its id, for what is equal in the next. It may be old, and is not shown. */
  readonly #earlier = new Map<string, Reading>();
  #error: string | undefined;
  #snapshot: Snapshot = { current: { isPinned: false } };
  readonly #followers = new Map<() => void, Want | undefined>();
  readonly #stale = new Set<Change>(["values", "sheets"]);
  /** Names that sheets were looked for by. */
  #marks: readonly string[] = [];
  #holds = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #looking: Promise<void> | undefined;
  /** A look was asked for while another one was under way. */
  #isAskedAgain = false;
  #leave: Promise<Unsubscribe> | undefined;

  constructor(port: WorkbookPort) {
    this.#port = port;
  }

  snapshot = (): Snapshot => this.#snapshot;

  /** Follows which test is current and, with a want, what it holds. The listener hears that the snapshot is another. */
  follow(listener: () => void, want?: Want): Unsubscribe {
    const own = (): void => listener();
    this.#followers.set(own, want);
    this.#listen();
    void this.#look();
    return () => {
      this.#followers.delete(own);
      if (this.#followers.size === 0) this.#hush();
    };
  }

  /** Reads everything again. The promise is kept once that is done. */
  again(): Promise<void> {
    this.#stale.add("values").add("sheets");
    return this.#look();
  }

  /** Leaves the workbook alone, while the pane itself writes, until the hold is let go. */
  hold(): () => void {
    this.#holds++;
    let isHeld = true;
    return () => {
      if (!isHeld) return;
      isHeld = false;
      this.#holds--;
      if (this.#stale.size > 0) this.#soon(0);
    };
  }

  pin(isPinned: boolean): void {
    this.#choose(
      isPinned ? { ...this.#choice, isPinned } : followed({ ...this.#choice, isPinned }, this.#sheets ?? []),
    );
  }

  /** Makes the data sheet of that name the current test. */
  choose(name: string): void {
    this.#choose(chosen(name, this.#choice, this.#sheets ?? []));
  }

  #choose(choice: Choice): void {
    this.#choice = choice;
    this.#publish();
    void this.#look();
  }

  #listen(): void {
    if (this.#leave) return;
    this.#stale.add("values").add("sheets");
    this.#leave = this.#port.onChange((change) => {
      this.#stale.add(change);
      // The current test may have another name, and its cells too.
      if (change === "sheets") this.#stale.add("values");
      this.#soon(PAUSES[change]);
    });
    this.#leave.catch((error: unknown) => this.#fail(error));
  }

  #hush(): void {
    clearTimeout(this.#timer);
    this.#leave?.then(
      (leave) => leave(),
      () => undefined,
    );
    this.#leave = undefined;
  }

  #soon(pause: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#look(), pause);
  }

  /** One look after another. */
  #look(): Promise<void> {
    if (this.#holds > 0 || this.#followers.size === 0) return Promise.resolve();
    this.#isAskedAgain = true;
    this.#looking ??= this.#lookNow().finally(() => (this.#looking = undefined));
    return this.#looking;
  }

  async #lookNow(): Promise<void> {
    // What was asked for together is looked at together.
    await Promise.resolve();
    try {
      do {
        this.#isAskedAgain = false;
        const isListed = await this.#list();
        this.#publish();
        await this.#read(isListed);
        this.#error = undefined;
        this.#publish();
      } while (this.#isAskedAgain || this.#stale.has("sheets") || this.#isWanting());
    } catch (error) {
      this.#fail(error);
    }
  }

  get #wants(): Want[] {
    return [...this.#followers.values()].filter((want) => want !== undefined);
  }

  /** Whether somebody who came meanwhile wants what was not read, or another test was chosen. */
  #isWanting(): boolean {
    return this.#holds === 0 && (this.#lacksList() || this.#lacksReading());
  }

  #lacksList(): boolean {
    return !this.#sheets || marksOf(this.#wants).some((mark) => !this.#marks.includes(mark));
  }

  #lacksReading(): boolean {
    const wants = this.#wants;
    if (this.#choice.id === undefined || wants.length === 0) return false;
    return this.#reading?.id !== this.#choice.id || !covers(this.#reading.read, together(wants));
  }

  /** Finds the data sheets, where that is called for. Gives whether it looked at every sheet. */
  async #list(): Promise<boolean> {
    // Without a test, names that were given by hand are found when something is typed.
    if (this.#stale.has("values") && this.#choice.id === undefined) this.#stale.add("sheets");
    if (!this.#stale.has("sheets") && !this.#lacksList()) {
      if (!this.#stale.has("front")) return false;
      if (await this.#follow()) return false;
    }
    const marks = marksOf(this.#wants);
    this.#stale.delete("sheets");
    this.#stale.delete("front");
    try {
      this.#sheets = await this.#port.findSheets([DATA_SHEET_NAME, ...marks]);
    } catch (error) {
      this.#stale.add("sheets");
      throw error;
    }
    this.#marks = marks;
    this.#choice = followed(this.#choice, this.#sheets);
    return true;
  }

  /** Follows another sheet to the front, where that is a data sheet that is known: no other sheet is asked then. */
  async #follow(): Promise<boolean> {
    this.#stale.delete("front");
    const front = await this.#port.activeSheet().catch(() => undefined);
    const sheets = this.#sheets?.map((one) => ({ ...one, isActive: one.sheet === front }));
    if (!sheets?.some((one) => one.isActive && isTest(one))) return false;
    this.#sheets = sheets;
    this.#choice = followed(this.#choice, sheets);
    return true;
  }

  /**
   * Reads the current test, where that is called for. Not every host tells of a sheet that was renamed, or that has lost its
   * names: where the list may be old, the sheets are looked for again.
   */
  async #read(isListed: boolean): Promise<void> {
    const { id, sheet } = currentTest(this.#choice, this.#sheets ?? []);
    const wants = this.#wants;
    if (id === undefined || sheet === undefined || wants.length === 0) return;
    if (!this.#stale.has("values") && !this.#lacksReading()) return;
    this.#stale.delete("values");
    const want = together(wants);
    try {
      const [looked, ...beside] = await lookAt(this.#port, sheet, want, this.#sheets ?? []);
      if (looked.values[DATA_SHEET_NAME] || isListed) {
        this.#reading = readingOf(id, looked, beside, want, this.#earlier.get(id));
        this.#earlier.set(id, this.#reading);
        return;
      }
    } catch (error) {
      this.#stale.add("values");
      if (isListed) throw error;
    }
    this.#stale.add("sheets");
  }

  #fail(error: unknown): void {
    this.#error = sentenceOf(error);
    this.#publish();
  }

  /** What was read of another test is never shown under the name of this one. */
  #publish(): void {
    const current: CurrentTest = this.#sheets ? currentTest(this.#choice, this.#sheets) : { isPinned: false };
    const reading = this.#reading?.id === current.id ? this.#reading : undefined;
    const next: Snapshot = {
      current: kept(this.#snapshot.current, current),
      ...(reading && { reading }),
      ...(this.#error !== undefined && { error: this.#error }),
    };
    const before = this.#snapshot;
    if (next.current === before.current && next.reading === before.reading && next.error === before.error) return;
    this.#snapshot = next;
    [...this.#followers.keys()].forEach((listener) => listener());
  }
}
