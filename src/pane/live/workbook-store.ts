/**
 * Knows the state of the workbook for the whole pane: the data sheets, which of them is the current test, and its
 * contents. It reads only while somebody follows it, a short time after the last change, and only what has changed.
 * Equal parts stay the same object.
 */
import { readRecord, type NamedValues, type TestRecord } from "../../record/record";
import { DATA_SHEET_NAME } from "../../specification/readings";
import { languageOf } from "../../specification/text/language";
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
import { speakOfSheet } from "./sheet-language";
import { asksFor, covers, marksOf, together, type Want } from "./want";

/** The time in milliseconds without a further change before the workbook is read again. */
const PAUSES: Readonly<Record<Change, number>> = { values: 400, front: 100, sheets: 150 };

/** The contents of the current test. */
export interface Reading {
  readonly id: string;
  readonly sheet: string;
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly names: readonly SheetName[];
  /** Empty if no screen wanted them. */
  readonly contents: NamedValues;
  readonly hidden: HiddenLines;
  /** True if the host calculates only when it is asked: the values may be old. */
  readonly isOnRequest: boolean;
  /** The other sheets that a screen wanted. */
  readonly beside: readonly Looked[];
  /** The want for which the reading was made. */
  readonly read: Want;
}

export interface Snapshot {
  readonly current: CurrentTest;
  readonly reading?: Reading;
  readonly error?: string;
}

/** How many tests keep their last reading. */
const MOST_EARLIER = 3;

const NOTHING_HIDDEN: HiddenLines = { rows: [], cols: [] };

function readingOf(
  id: string,
  { sheet, values, names = [], contents, hidden = NOTHING_HIDDEN, isOnRequest = false }: Looked,
  beside: readonly Looked[],
  read: Want,
  before: Reading | undefined,
): Reading {
  const same = kept(before?.values, values);
  const record = before && same === before.values ? before.record : readRecord(same);
  return kept(before, { id, sheet, values: same, record, names, contents, hidden, isOnRequest, beside, read });
}

/** Reads a data sheet and the other sheets that are wanted. */
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

/** Reads a data sheet as it is now, even if another test is current. */
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
  /** The reading of the current test that the screens show. */
  #reading: Reading | undefined;
  /**
   * The last readings of the tests shown last, by id, so that equal parts stay the same object. They may be out of date
   * and are not shown. A reading takes about 6 MB: those of 40 tests would take 240.
   */
  readonly #earlier = new Map<string, Reading>();
  #error: string | undefined;
  #snapshot: Snapshot = { current: { isPinned: false } };
  readonly #followers = new Map<() => void, Want | undefined>();
  readonly #stale = new Set<Change>(["values", "sheets"]);
  /** The names by which sheets were last looked for. */
  #marks: readonly string[] = [];
  #holds = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #looking: Promise<void> | undefined;
  /** True if another read was requested during a read. */
  #isAskedAgain = false;
  #leave: Promise<Unsubscribe> | undefined;

  constructor(port: WorkbookPort) {
    this.#port = port;
  }

  snapshot = (): Snapshot => this.#snapshot;

  /**
   * Follows which test is current and, with a want, its contents. The listener is called when the snapshot has changed.
   */
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

  /** Reads everything again. The promise resolves when this is done. */
  again(): Promise<void> {
    this.#stale.add("values").add("sheets");
    return this.#look();
  }

  /** Stops reading from the workbook while the pane itself writes. Returns the function that allows it again. */
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

  /** Makes the data sheet with this name the current test. */
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
      // The current test may have another name and other contents.
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

  /** Reads; never twice at the same time. */
  #look(): Promise<void> {
    if (this.#holds > 0 || this.#followers.size === 0) return Promise.resolve();
    this.#isAskedAgain = true;
    this.#looking ??= this.#lookNow().finally(() => (this.#looking = undefined));
    return this.#looking;
  }

  async #lookNow(): Promise<void> {
    // Waits, so that requests made at the same time share one read.
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

  /** True if a new follower wants something that was not read, or if another test was chosen. */
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

  /** Finds the data sheets if necessary. Returns true if it looked at every sheet. */
  async #list(): Promise<boolean> {
    // Without a current test, the pane looks for names that a person defined whenever something is typed.
    if (this.#stale.has("values") && this.#choice.id === undefined) this.#stale.add("sheets");
    if (!this.#stale.has("sheets") && !this.#lacksList()) {
      if (!this.#stale.has("front")) return false;
      if (await this.#follow()) return false;
    }
    const marks = marksOf(this.#wants);
    this.#stale.delete("sheets");
    this.#stale.delete("front");
    try {
      this.#sheets = await this.#port.findSheets([...new Set([DATA_SHEET_NAME, ...marks])]);
    } catch (error) {
      this.#stale.add("sheets");
      throw error;
    }
    this.#marks = marks;
    this.#choice = followed(this.#choice, this.#sheets);
    return true;
  }

  /**
   * Follows a change of the active sheet if the new one is a known data sheet; in this case it reads no other sheet.
   */
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
   * Reads the current test if necessary. Not every host reports that a sheet was renamed or lost its names; therefore,
   * if the list of sheets may be out of date, they are looked for again.
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
        speakOfSheet(languageOf(looked.values));
        this.#keep(id, this.#reading);
        return;
      }
    } catch (error) {
      this.#stale.add("values");
      if (isListed) throw error;
    }
    this.#stale.add("sheets");
  }

  #keep(id: string, reading: Reading): void {
    this.#earlier.delete(id);
    this.#earlier.set(id, reading);
    const [oldest] = this.#earlier.keys();
    if (this.#earlier.size > MOST_EARLIER && oldest !== undefined) this.#earlier.delete(oldest);
  }

  #fail(error: unknown): void {
    this.#error = sentenceOf(error);
    this.#publish();
  }

  /** Publishes a new snapshot. A reading of another test is never shown under the name of the current one. */
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
