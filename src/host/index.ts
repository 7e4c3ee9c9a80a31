/** The page of `npm start`: the open-source sheet beside the pane, open on the worked demonstration. */
import {
  decimalMarkIn,
  decimalMarkOf,
  drawChartsWith,
  EmbeddedPort,
  fromText,
  lastStep,
  onLongRedo,
  opening,
  redoSlowly,
  saveXlsx,
  setDecimalMark,
  sheetView,
  speakWith,
  wordErrorsAgain,
  type DecimalMark,
  type FunctionSettings,
  type Opened,
} from "../workbook/embedded";
import { inSlices, Stopped } from "../workbook/in-slices";
import { translateAnswers } from "../pane/live/sheet-language";
import { engineWords, hostWords } from "../pane/text/host";
import { inWords } from "../pane/text/messages";
import { WorkbookError } from "../workbook/port";
import { timeStamp } from "../workbook/time-stamp";
import { makeDivider } from "./divider";
import { drawChart } from "./draw-chart";
import "./host.css";
import { describeAgain, fetchText, loadFunctions } from "./load-functions";
import { copyKeeper } from "./keep-copy";
import { holdCopy, keptCopies, type KeptCopy } from "./kept-copies";
import { keysToSheet } from "./keys-to-sheet";
import { makeLongWork } from "./long-work";
import { offerCopies } from "./offer-copy";
import { switchByKey } from "./switch-part";
import { makeVoice, type Sentence } from "./voice";
import { keptLanguage, LOCALES } from "../pane/text/language";
import { followLanguage, showWords, takeLanguage } from "./words";

/** An element of index.html with this id and of this type. */
const element = <T extends HTMLElement = HTMLElement>(id: string): T => document.getElementById(id) as T;

/** With ?blankAs=0 the functions get blank cells as 0, like in desktop Excel; with ?blankAs= as "". */
function settingsOf(query: URLSearchParams): FunctionSettings {
  const asked = query.get("blankAs");
  return { blankAs: asked === "0" ? 0 : asked === "" ? "" : null };
}

/** A failure as a sentence. */
const sentenceOf = (error: unknown): Sentence =>
  error instanceof WorkbookError ? error.said : hostWords().failedInside(String(error));

function download(bytes: Uint8Array<ArrayBuffer>, name: string): void {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

/** Gives the focus to the sheet. */
const toSheet = (): void => {
  window.focus();
  // What is typed goes to the editor of the cells, which is there all the time.
  document.querySelector<HTMLElement>(".o-grid-composer .o-composer")?.focus();
};

/** Words the offer of a kept copy again. */
let showOffer = (): void => undefined;

type Voice = ReturnType<typeof makeVoice>;
type View = ReturnType<typeof sheetView>;

/** The state of a workbook that is in no file, whatever its last step. */
const NEVER = Symbol("never saved");

/** What the page has in hand: the workbook by its port, its view, the name of its file, and whether it is saved. */
class Desk {
  #fileName = "";
  /** The last step when the workbook was last saved. */
  #saved: ReturnType<typeof lastStep> | typeof NEVER;

  constructor(
    readonly port: EmbeddedPort,
    readonly view: View,
    readonly voice: Voice,
  ) {
    this.#saved = lastStep(port.workbook.model);
  }

  get fileName(): string {
    return this.#fileName;
  }

  set fileName(name: string) {
    this.#fileName = name;
    element("file-name").textContent = name;
  }

  get isSaved(): boolean {
    return lastStep(this.port.workbook.model) === this.#saved;
  }

  markSaved(): void {
    this.#saved = lastStep(this.port.workbook.model);
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

  /** Makes a handler that tells what `action` throws; `stopped` says what is so after a stop. */
  attempt(action: () => Promise<void>, stopped = () => hostWords().stopped): () => void {
    return () =>
      void action().catch((error) =>
        error instanceof Stopped ? this.voice.tell(stopped()) : this.voice.fail(sentenceOf(error)),
      );
  }
}

/** The long works, with the box that shows their progress. */
function longWorks(desk: Desk, usual: DecimalMark | undefined) {
  const work = makeLongWork({
    box: element("work"),
    words: element("work-words"),
    share: element<HTMLProgressElement>("work-share"),
    stop: element<HTMLButtonElement>("work-stop"),
    beginners: ["open", "save", "save-values"].map((id) => element<HTMLButtonElement>(id)),
    toSheet,
  });
  const { port } = desk;
  return {
    read: (bytes: Uint8Array, name: string) => work.run(hostWords().opening(name), opening(bytes, usual)),
    save: () => work.around(hostWords().saving(desk.fileName), (run) => saveXlsx(port.workbook, run)),
    saveValues: (name: string) =>
      work.around(hostWords().saving(name), (run) =>
        saveXlsx(port.workbook, run, {
          sheet: hostWords().valuesSheet,
          lines: hostWords().valuesNotice(desk.fileName, timeStamp(new Date())).split("\n"),
        }),
      ),
    redo: () => work.around(hostWords().redoing, (run) => redoSlowly(port.workbook.model, run)),
  };
}

/** The buttons that open and save files. */
function followFileButtons(desk: Desk, { read, save, saveValues }: ReturnType<typeof longWorks>): void {
  const { voice } = desk;
  const chooser = element<HTMLInputElement>("file");
  element("open").addEventListener("click", () => chooser.click());
  chooser.addEventListener(
    "change",
    desk.attempt(async () => {
      const file = chooser.files?.[0];
      if (!file) return;
      chooser.value = "";
      const opened = await read(new Uint8Array(await file.arrayBuffer()), file.name);
      const showIt = desk.attempt(() => desk.show(opened, file.name));
      if (desk.isSaved) showIt();
      else
        voice.ask(hostWords().unsaved(desk.fileName, file.name), showIt, () =>
          voice.tell(hostWords().notOpened(file.name)),
        );
    }),
  );
  element("save").addEventListener(
    "click",
    desk.attempt(async () => {
      const bytes = await save();
      desk.markSaved();
      download(bytes, desk.fileName);
      voice.tell(hostWords().saved(desk.fileName));
    }),
  );
  element("save-values").addEventListener(
    "click",
    desk.attempt(async () => {
      const name = hostWords().valuesFile(desk.fileName.replace(/\.xlsx$/i, ""));
      download(await saveValues(name), name);
      voice.tell(hostWords().savedValues(name));
    }),
  );
}

/** Bytes of the workbook for a copy; undefined if it is changed meanwhile. */
async function bytesForCopy({ port: { workbook } }: Desk): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const step = lastStep(workbook.model);
  const controller = new AbortController();
  const watch = (): void => void (lastStep(workbook.model) !== step && controller.abort());
  try {
    return await saveXlsx(workbook, (steps) => inSlices(steps, watch, controller.signal));
  } catch (error) {
    if (error instanceof Stopped) return undefined;
    throw error;
  }
}

/** Keeps a copy of what is in no file, and offers the copies of pages that were closed before. */
async function keepUnsaved(desk: Desk, { read }: ReturnType<typeof longWorks>): Promise<void> {
  const { port, voice } = desk;
  const store = keptCopies();
  // Not randomUUID, which a page without https does not have.
  let own = `${Date.now()}-${Math.random().toString(36).slice(2)}`;
  holdCopy(own);
  const keepNow = copyKeeper({
    step: () => lastStep(port.workbook.model) ?? port.workbook.model,
    isSaved: () => desk.isSaved,
    keep: async () => {
      // A copy from the middle of the pane's work would have a part of it, without the note that says so.
      if (port.sheetInHand() !== undefined) return false;
      const { model } = port.workbook;
      const bytes = await bytesForCopy(desk);
      if (!bytes || port.workbook.model !== model || desk.isSaved) return false;
      await store.put({ id: own, name: desk.fileName, made: Date.now() }, bytes);
      return true;
    },
    forget: () => store.remove(own),
    failed: (error) => voice.tell(hostWords().noCopy(String(error))),
    now: () => performance.now(),
  });
  setInterval(() => void keepNow(), 1000);
  document.addEventListener("visibilitychange", () => void (document.hidden && keepNow(true)));

  const open = async (copy: KeptCopy): Promise<boolean> => {
    const isLeft = (await store.left()).some(({ id }) => id === copy.id);
    const bytes = isLeft ? await store.bytesOf(copy.id) : undefined;
    if (!bytes) {
      voice.tell(hostWords().copyGone(copy.name));
      return true;
    }
    await desk.show(await read(bytes, copy.name), copy.name);
    desk.markUnsaved();
    // The copy is now that of this page.
    await store.remove(own);
    own = copy.id;
    holdCopy(own);
    voice.tell(hostWords().copyOpen(copy.name));
    return true;
  };
  // Where the browser forbids the storage nothing was kept; the keeper says so once there is something to keep.
  const copies = await store.left().catch(() => []);
  const shown = (made: number): string => timeStamp(new Date(made));
  showOffer = offerCopies(
    copies,
    store,
    {
      box: element("kept"),
      words: element("kept-words"),
      open: element<HTMLButtonElement>("kept-open"),
      forget: element<HTMLButtonElement>("kept-forget"),
    },
    {
      sentence: ({ name, made }) => hostWords().copyKept(name, shown(made)),
      open: (copy) =>
        new Promise((resolve) => {
          const go = desk.attempt(async () => resolve(await open(copy)));
          if (desk.isSaved) go();
          else voice.ask(hostWords().unsaved(desk.fileName, copy.name), go, () => resolve(false));
        }),
      forgotten: ({ name }) => voice.tell(hostWords().copyForgotten(name)),
    },
  );
}

/** The choice of the decimal mark: it shows the mark of the workbook, and changes it. */
async function followDecimalMark({ port, voice }: Desk): Promise<void> {
  const mark = element<HTMLSelectElement>("decimal-mark");
  const showMark = (): void => void (mark.value = decimalMarkOf(port.workbook.model));
  showMark();
  await port.onChange(() => {
    showMark();
    voice.moveOn();
  });
  await port.onSelect(() => voice.moveOn());
  mark.addEventListener("change", () => {
    setDecimalMark(port.workbook.model, mark.value === "," ? "," : ".");
    // The keyboard focus returns to the cell where the person was.
    mark.blur();
  });
}

/** Opens the pane in its frame; it reads the port from this window. */
function openPane({ port, view }: Desk): void {
  const frame = element<HTMLIFrameElement>("pane");
  followLanguage(frame, () => {
    showWords();
    showOffer();
    void describeAgain();
    void wordErrorsAgain(port.workbook.model).then(() => view.show(port.workbook.model));
  });
  // A person who went to a cell by a button of the pane types there next.
  port.onShown = toSheet;
  keysToSheet(toSheet);
  switchByKey(frame, toSheet, () => {
    window.focus();
    element("open").focus();
  });
  frame.addEventListener("load", () => port.paneLeft());
  frame.src = "pane.html";
}

async function start(): Promise<void> {
  const voice = makeVoice(element("message"), element<HTMLDialogElement>("question"), toSheet);
  translateAnswers();
  const settings = settingsOf(new URLSearchParams(location.search));
  const [templates, first] = await Promise.all([
    fetchText("vendor/o-spreadsheet/o_spreadsheet.xml"),
    fetchText("first-workbook.json"),
    loadFunctions(settings),
  ]);

  drawChartsWith(drawChart);
  // The mark of the language that the person chose, otherwise of the browser; undefined for the point, the mark of the engine itself.
  const chosen = keptLanguage("");
  const usual = decimalMarkIn(chosen ? LOCALES[chosen] : navigator.language) === "," ? "," : undefined;
  const port = new EmbeddedPort(fromText(first, usual));
  const view = sheetView(element("sheet"), templates, voice);
  await view.show(port.workbook.model);

  const desk = new Desk(port, view, voice);
  desk.fileName = "demonstration.xlsx";
  window.addEventListener("beforeunload", (event) => {
    if (!desk.isSaved) event.preventDefault();
  });
  const works = longWorks(desk, usual);
  followFileButtons(desk, works);
  onLongRedo(desk.attempt(works.redo, () => hostWords().redoStopped));
  await followDecimalMark(desk);
  await keepUnsaved(desk, works);
  element("licences-open").addEventListener("click", () => element<HTMLDialogElement>("licences").showModal());
  makeDivider(element("divider"), document.querySelector<HTMLElement>(".desk")!);

  const open = async (bytes: Uint8Array, name: string) => desk.show(await works.read(bytes, name), name);
  Object.assign(window, { clayledger: { port, open, save: works.save, settings } });
  openPane(desk);
}

takeLanguage("");
speakWith(engineWords);
showWords();
start().catch((error) => {
  const message = element("message");
  message.textContent = hostWords().notStarted(String(error));
  message.classList.add("is-failure");
});
