/** The page of `npm start`: the open-source sheet beside the pane, open on the worked demonstration. */
import {
  decimalMarkIn,
  decimalMarkOf,
  drawChartsWith,
  EmbeddedPort,
  fromText,
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
} from "../workbook/embedded";
import { translateAnswers } from "../pane/live/sheet-language";
import { engineWords, hostWords } from "../pane/text/host";
import { keptLanguage, LOCALES } from "../pane/text/language";
import { timeStamp } from "../workbook/time-stamp";
import { Desk, element } from "./desk";
import { makeDivider } from "./divider";
import { drawChart } from "./draw-chart";
import "./host.css";
import { describeAgain, fetchText, loadFunctions } from "./load-functions";
import { keysToSheet } from "./keys-to-sheet";
import { makeLongWork } from "./long-work";
import { makeRefusals } from "./refusals";
import { switchByKey } from "./switch-part";
import { keepUnsaved } from "./unsaved";
import { makeVoice } from "./voice";
import { followLanguage, showWords, takeLanguage } from "./words";

/** With ?blankAs=0 the functions get blank cells as 0, like in desktop Excel; with ?blankAs= as "". */
function settingsOf(query: URLSearchParams): FunctionSettings {
  const asked = query.get("blankAs");
  return { blankAs: asked === "0" ? 0 : asked === "" ? "" : null };
}

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

/** Opens the pane in its frame; it reads the port from this window. `inLanguage` is called when the person chooses another language. */
function openPane({ port, view }: Desk, inLanguage: () => void): void {
  const frame = element<HTMLIFrameElement>("pane");
  followLanguage(frame, () => {
    showWords();
    inLanguage();
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
  const refusals = makeRefusals(element("refusals"), toSheet);
  const voice = makeVoice(element("message"), element<HTMLDialogElement>("question"), toSheet, refusals);
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
  element("licences-open").addEventListener("click", () => element<HTMLDialogElement>("licences").showModal());
  makeDivider(element("divider"), document.querySelector<HTMLElement>(".desk")!);

  const open = async (bytes: Uint8Array, name: string) => desk.show(await works.read(bytes, name), name);
  Object.assign(window, { clayledger: { port, open, save: works.save, settings } });
  const copies = keepUnsaved(desk, works.read);
  openPane(desk, () => {
    refusals.sayAgain();
    copies();
  });
}

takeLanguage("");
speakWith(engineWords);
showWords();
start().catch((error) => {
  const message = element("message");
  message.textContent = hostWords().notStarted(String(error));
  message.classList.add("is-failure");
});
