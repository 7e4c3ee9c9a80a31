/** What the page has in hand: the workbook by its port, its view, the name of its file, and whether it is saved. */
import { workOf, type EmbeddedPort, type Opened, type SheetView } from "../workbook/embedded";
import { hostWords } from "../pane/text/host";
import { inWords } from "../pane/text/messages";
import { Stopped } from "../workbook/in-slices";
import { WorkbookError } from "../workbook/port";
import type { HostVoice, Sentence } from "./voice";

/** An element of index.html with this id and of this type. */
export const element = <T extends HTMLElement = HTMLElement>(id: string): T => document.getElementById(id) as T;

/** A failure as a sentence. */
const sentenceOf = (error: unknown): Sentence =>
  error instanceof WorkbookError ? error.said : hostWords().failedInside(String(error));

/** The state of a workbook that is in no file, whatever its last step. */
const NEVER = Symbol("never saved");

export class Desk {
  #fileName = "";
  /** The moment when the workbook was last saved. */
  #saved: string | undefined | typeof NEVER;

  constructor(
    readonly port: EmbeddedPort,
    readonly view: SheetView,
    readonly voice: HostVoice,
  ) {
    this.#saved = workOf(port.workbook.model);
  }

  get fileName(): string {
    return this.#fileName;
  }

  set fileName(name: string) {
    this.#fileName = name;
    element("file-name").textContent = name;
  }

  get isSaved(): boolean {
    return workOf(this.port.workbook.model) === this.#saved;
  }

  markSaved(): void {
    this.#saved = workOf(this.port.workbook.model);
  }

  markUnsaved(): void {
    this.#saved = NEVER;
  }

  /** Shows an opened workbook in place of the present one. */
  async show({ workbook, remarks }: Opened, name: string): Promise<void> {
    await this.view.show(workbook.model);
    this.port.attach(workbook);
    this.markSaved();
    this.fileName = name;
    this.voice.tell([hostWords().isOpen(name), ...remarks.map(inWords)].join(" "));
  }

  /** Does `action`, and tells what it throws; `stopped` says what is so after a stop. Gives true if it threw nothing. */
  async tried(action: () => Promise<void>, stopped = () => hostWords().stopped): Promise<boolean> {
    try {
      await action();
      return true;
    } catch (error) {
      if (error instanceof Stopped) this.voice.tell(stopped());
      else this.voice.fail(sentenceOf(error));
      return false;
    }
  }

  /** Makes a handler that tries `action`. */
  attempt(action: () => Promise<void>, stopped?: () => string): () => void {
    return () => void this.tried(action, stopped);
  }
}
