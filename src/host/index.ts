/** The page of `npm start`: the open-source sheet beside the pane, open on the worked demonstration. */
import { demoSheet } from "../datasheet";
import {
  decimalMarkIn,
  decimalMarkOf,
  drawChartsWith,
  EmbeddedPort,
  freshHistory,
  lastStep,
  newWorkbook,
  opening,
  saveXlsx,
  setDecimalMark,
  sheetView,
  speakWith,
  type FunctionSettings,
  type Opened,
} from "../workbook/embedded";
import { Stopped } from "../workbook/in-slices";
import { engineWords, hostWords } from "../pane/text/host";
import { inWords } from "../pane/text/messages";
import { WorkbookError } from "../workbook/port";
import { timeStamp } from "../workbook/time-stamp";
import { makeDivider } from "./divider";
import { drawChart } from "./draw-chart";
import "./host.css";
import { fetchText, loadFunctions } from "./load-functions";
import { makeLongWork } from "./long-work";
import { switchByKey } from "./switch-part";
import { makeVoice, type Sentence } from "./voice";
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

/** What a copy with values says of itself, in English as all cells are. */
const valuesNotice = (fileName: string, when: string): string[] => [
  "This file is a copy with values.",
  `Every formula of ${fileName} was replaced by the value that it showed on ${when}.`,
  "Nothing here follows a change: change the workbook itself, and save a new copy.",
];

function download(bytes: Uint8Array<ArrayBuffer>, name: string): void {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

async function start(): Promise<void> {
  const voice = makeVoice(element("message"), element<HTMLDialogElement>("question"));
  const settings = settingsOf(new URLSearchParams(location.search));
  const [templates] = await Promise.all([fetchText("vendor/o-spreadsheet/o_spreadsheet.xml"), loadFunctions(settings)]);

  drawChartsWith(drawChart);
  const usual = decimalMarkIn(navigator.language);
  // The demonstration is calculated once: in the copy without undo steps, and not where it is inserted.
  const port = new EmbeddedPort(newWorkbook(usual === "," ? usual : undefined, { isOnlyCopied: true }));
  await port.insertSheet(demoSheet("SI"));
  port.attach(freshHistory(port.workbook));
  const view = sheetView(element("sheet"), templates, voice);
  await view.show(port.workbook.model);

  let fileName = "demonstration.xlsx";
  const nameFile = (name: string) => {
    fileName = name;
    element("file-name").textContent = name;
  };
  nameFile(fileName);

  /** The last step when the workbook was last saved. */
  let saved = lastStep(port.workbook.model);
  const isSaved = () => lastStep(port.workbook.model) === saved;
  window.addEventListener("beforeunload", (event) => {
    if (!isSaved()) event.preventDefault();
  });

  const show = async ({ workbook, remarks }: Opened, name: string) => {
    await view.show(workbook.model);
    port.attach(workbook);
    saved = lastStep(workbook.model);
    nameFile(name);
    voice.tell([hostWords().isOpen(name), ...remarks.map(inWords)].join(" "));
  };
  const work = makeLongWork({
    box: element("work"),
    words: element("work-words"),
    share: element<HTMLProgressElement>("work-share"),
    stop: element<HTMLButtonElement>("work-stop"),
    beginners: ["open", "save", "save-values"].map((id) => element<HTMLButtonElement>(id)),
  });
  const read = (bytes: Uint8Array, name: string) =>
    work.run(hostWords().opening(name), opening(bytes, usual === "," ? usual : undefined));
  const open = async (bytes: Uint8Array, name: string) => show(await read(bytes, name), name);
  const save = () => work.around(hostWords().saving(fileName), (run) => saveXlsx(port.workbook, run));
  const saveValues = (name: string) =>
    work.around(hostWords().saving(name), (run) =>
      saveXlsx(port.workbook, run, valuesNotice(fileName, timeStamp(new Date()))),
    );

  const attempt = (action: () => Promise<void>) => () =>
    void action().catch((error) =>
      error instanceof Stopped ? voice.tell(hostWords().stopped) : voice.fail(sentenceOf(error)),
    );
  const chooser = element<HTMLInputElement>("file");
  element("open").addEventListener("click", () => chooser.click());
  chooser.addEventListener(
    "change",
    attempt(async () => {
      const file = chooser.files?.[0];
      if (!file) return;
      chooser.value = "";
      const opened = await read(new Uint8Array(await file.arrayBuffer()), file.name);
      const showIt = attempt(() => show(opened, file.name));
      if (isSaved()) showIt();
      else
        voice.ask(hostWords().unsaved(fileName, file.name), showIt, () => voice.tell(hostWords().notOpened(file.name)));
    }),
  );
  element("save").addEventListener(
    "click",
    attempt(async () => {
      const bytes = await save();
      saved = lastStep(port.workbook.model);
      download(bytes, fileName);
      voice.tell(hostWords().saved(fileName));
    }),
  );
  element("save-values").addEventListener(
    "click",
    attempt(async () => {
      const name = fileName.replace(/(\.xlsx)?$/i, " values.xlsx");
      download(await saveValues(name), name);
      voice.tell(hostWords().savedValues(name));
    }),
  );
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
  element("licences-open").addEventListener("click", () => element<HTMLDialogElement>("licences").showModal());
  makeDivider(element("divider"), document.querySelector<HTMLElement>(".desk")!);

  // The pane in the frame reads the port from this window.
  Object.assign(window, { clayledger: { port, open, save, settings } });
  const frame = element<HTMLIFrameElement>("pane");
  followLanguage(frame, () => {
    showWords();
    void view.show(port.workbook.model);
  });
  switchByKey(frame, () => {
    window.focus();
    // What is typed goes to the editor of the cells, which is there all the time.
    document.querySelector<HTMLElement>(".o-grid-composer .o-composer")?.focus();
  });
  frame.src = "pane.html";
}

takeLanguage("");
speakWith(engineWords);
showWords();
start().catch((error) => {
  const message = element("message");
  message.textContent = hostWords().notStarted(String(error));
  message.classList.add("is-failure");
});
