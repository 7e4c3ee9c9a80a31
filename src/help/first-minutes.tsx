/** The first ten minutes in Excel: twelve steps, what the reader must see at each, and what to report otherwise. */
import type { ReactElement, ReactNode } from "react";
import { check } from "../pane/text/en/check";
import { pane } from "../pane/text/en/pane";
import { plot } from "../pane/text/en/plot";
import { results } from "../pane/text/en/results";
import { sheet } from "../pane/text/en/sheet";
import { firstOf, lastOf } from "../reduction/numeric/lists";
import type { Result } from "./evaluate";

interface Step {
  readonly title: string;
  readonly action: ReactNode;
  readonly seen: ReactNode;
  readonly otherwise: ReactNode;
}

/** Values of the worked demonstration (SI); test/help compares them with the calculated demonstration. */
export const DEMONSTRATION = {
  preconsolidation_stress: "125",
  compression_index: "0.56",
  void_ratio_initial: "1.45",
} as const;

/** The number of the pane's screens. */
const SCREENS = Object.keys(pane.tabs).filter((name) => name !== "label").length;

const WATER_CONTENT = "=CLAY.WATER_CONTENT(152.4,121.9,31.2)";
const SWAPPED = "=CLAY.WATER_CONTENT(121.9,152.4,31.2)";
const SCHEDULE = "=CLAY.LOAD_SCHEDULE(12.5,3200)";

const code = (text: string): ReactElement => <code>{text}</code>;
const bold = (text: string): ReactElement => <strong>{text}</strong>;

/** The add-in is there. */
const PANE_STEPS: readonly Step[] = [
  {
    title: "The ribbon",
    action: <>Open an empty workbook and look at the Home tab.</>,
    seen: <>At the right end stands a group “Clayledger” with the button “Open ledger”.</>,
    otherwise: (
      <>
        Excel has not loaded the add-in. Report how the manifest was given to Excel (shared folder, wef folder, upload,
        administrator), and what Home, Add-ins lists.
      </>
    ),
  },
  {
    title: "The pane",
    action: <>Press “Open ledger”.</>,
    seen: (
      <>
        A pane opens within a few seconds. It has {SCREENS} tabs, {bold(pane.tabs.next)} to {bold(pane.tabs.about)} (in
        German where Excel is German).
      </>
    ),
    otherwise: (
      <>
        A blank pane usually means that the certificate is not trusted, or that the browser was not allowed to reach the
        local network. Open <a href="taskpane.html">taskpane.html</a> in a browser on the same machine: it must open
        without a warning. Report the warning.
      </>
    ),
  },
];

type Calculate = (formula: string) => Result;

/** The first cell of each row that a formula of the page gives. */
function spilled(calculate: Calculate, formula: string): string[] {
  const result = calculate(formula);
  if ("code" in result) throw new Error(`${formula} is refused: ${result.reason}`);
  return result.rows.map(([cell]) => String(cell));
}

/** Why a formula of the page is refused. */
function refusal(calculate: Calculate, formula: string): string {
  const result = calculate(formula);
  if (!("code" in result)) throw new Error(`${formula} is not refused`);
  return result.reason;
}

/** The functions answer in cells, and refuse with a reason. */
function answerSteps(calculate: Calculate): readonly Step[] {
  const stresses = spilled(calculate, SCHEDULE);
  return [
    {
      title: "A function",
      action: <>Type {code(WATER_CONTENT)} into a cell.</>,
      seen: (
        <>
          While you type, Excel offers the functions that begin with {code("CLAY.")}. The cell shows{" "}
          {bold(Number(spilled(calculate, WATER_CONTENT)[0]).toFixed(6))} (more or fewer digits, as the cell is wide).
        </>
      ),
      otherwise: (
        <>
          {code("#NAME?")}: the functions are not registered; close Excel, open it again and try once more.{" "}
          {code("#BUSY!")} that stays: the functions’ file is out of reach. Report which of the two.
        </>
      ),
    },
    {
      title: "A function that spills",
      action: <>Type {code(SCHEDULE)} into a cell with nine empty cells below it.</>,
      seen: (
        <>
          {stresses.length} cells fill from {bold(firstOf(stresses))} to {bold(lastOf(stresses))}, each twice the one
          above.
        </>
      ),
      otherwise: <>One cell alone: this Excel has no dynamic arrays. Report its version.</>,
    },
    {
      title: "A refusal",
      action: <>Type {code(SWAPPED)} into a cell, and point at the mark beside it.</>,
      seen: (
        <>
          The cell shows {code("#VALUE!")}, and the mark says: “{refusal(calculate, SWAPPED)}”.
        </>
      ),
      otherwise: <>Report what the mark says.</>,
    },
  ];
}

/** The functions name an error of another cell, and have their help. */
const ERROR_AND_HELP_STEPS: readonly Step[] = [
  {
    title: "An error in another cell",
    action: (
      <>
        Type {code("=1/0")} into H1 and {code("=CLAY.WATER_CONTENT(150,H1)")} into H2.
      </>
    ),
    seen: (
      <>
        H2 shows {code("#VALUE!")}, and its mark names the dry mass and {code("#DIV/0!")}.
      </>
    ),
    otherwise: (
      <>
        H2 shows {code("#DIV/0!")}, or its mark says nothing of the dry mass: this Excel does not hand errors to an
        add-in. The numbers are not affected. Report the version.
      </>
    ),
  },
  {
    title: "Help",
    action: (
      <>
        Select the cell of step 3, press fx beside the formula bar, and then “Help on this function”. In the pane, open
        the tab {bold(pane.tabs.about)} and follow “Help”.
      </>
    ),
    seen: (
      <>
        The window of fx tells of each argument. The first link opens{" "}
        <a href="help.html#water_content">the help of WATER_CONTENT</a>, the second one the whole page.
      </>
    ),
    otherwise: <>Report which link led where.</>,
  },
];

/** The sheets of the pane are made, calculate, and are kept. */
const SHEET_STEPS: readonly Step[] = [
  {
    title: "A blank data sheet",
    action: (
      <>
        In the pane, tab {bold(pane.tabs.sheet)}, press “{sheet.blank}” (“{sheet.language}” is English unless you choose
        German).
      </>
    ),
    seen: (
      <>
        A new sheet “Consolidation test” stands in front; the pane says “{sheet.done("Consolidation test")}”. No cell of
        it shows an error. It can be printed as it is: look at the print preview.
      </>
    ),
    otherwise: <>The pane says in a sentence why not. Report the sentence, whole.</>,
  },
  {
    title: "What may be typed",
    action: (
      <>
        On that sheet type today’s date into “Started”, then the text {code("abc")} into the cell of “Ring”, then{" "}
        {code("74.36")}.
      </>
    ),
    seen: (
      <>The date is taken. The text is refused by a message that says which number is wanted. The number is taken.</>
    ),
    otherwise: <>Report the cell, what was typed, and the message.</>,
  },
  {
    title: "The worked demonstration",
    action: (
      <>
        Press “{sheet.demo}”, then open the tab {bold(pane.tabs.results)}.
      </>
    ),
    seen: (
      <>
        A new sheet “Demonstration” is filled and calculated within about ten seconds; none of its cells shows{" "}
        {code("#NAME?")} or {code("#BUSY!")} then. The tab shows, in SI units: {results.names.preconsolidation_stress}{" "}
        {bold(DEMONSTRATION.preconsolidation_stress)} kPa, {results.names.compression_index}{" "}
        {bold(DEMONSTRATION.compression_index)}, {results.names.void_ratio_initial}{" "}
        {bold(DEMONSTRATION.void_ratio_initial)}.
      </>
    ),
    otherwise: (
      <>
        Report the cells that show an error, and how long it took. Where numbers differ in the digits given here, report
        them: that would be the gravest fault of all.
      </>
    ),
  },
  {
    title: "A chart that follows its cells",
    action: (
      <>
        Tab {bold(pane.tabs.plot)}, {plot.sheetPlots.compression}, “{plot.insert}”. Then change “Specific gravity” on
        the demonstration to {code("2.70")}, and back to {code("2.72")} by Undo.
      </>
    ),
    seen: (
      <>
        The pane draws the curve with Casagrande’s construction. A new sheet holds a chart of Excel’s own; it moves when
        the number changes, and comes back.
      </>
    ),
    otherwise: <>Report the sentence of the pane, or send a picture of the chart.</>,
  },
  {
    title: "Save and open again",
    action: (
      <>
        Save the workbook, close Excel, open the workbook again, and calculate all of it: Ctrl+Alt+F9 on Windows;
        Formulas, Calculate Now or Calculate Workbook elsewhere.
      </>
    ),
    seen: <>All numbers are there before and after. No cell shows {code("#NAME?")}.</>,
    otherwise: (
      <>
        Where cells show {code("#NAME?")}: open the pane, tab {bold(pane.tabs.sheet)}, and press “{check.reenter}”.
        Report whether that helped.
      </>
    ),
  },
];

export function FirstMinutes({
  version,
  calculate,
}: {
  version: string;
  calculate: (formula: string) => Result;
}): ReactElement {
  return (
    <>
      <header>
        <h1>The first ten minutes in Excel</h1>
        <p className="quiet">Clayledger, version {version}</p>
        <p>
          Clayledger is tested against Excel’s own object model and file formats, not inside Excel. These twelve steps
          show whether your Excel agrees. Each says what must be seen; where something else is seen, please report it.
        </p>
        <p>
          All functions are described in the <a href="help.html">help</a>. If your Excel separates arguments by
          semicolons, write semicolons.
        </p>
      </header>
      <main>
        {[...PANE_STEPS, ...answerSteps(calculate), ...ERROR_AND_HELP_STEPS, ...SHEET_STEPS].map(
          ({ title, action, seen, otherwise }, index) => (
            <section key={title} aria-labelledby={`step-${index + 1}`}>
              <h2 id={`step-${index + 1}`}>
                {index + 1}. {title}
              </h2>
              <p>{action}</p>
              <p>
                <strong>You see:</strong> {seen}
              </p>
              <p className="quiet">
                <strong>If not:</strong> {otherwise}
              </p>
            </section>
          ),
        )}
        <h2 id="report">What a report needs</h2>
        <p>
          The number of the step and what you saw instead; the version of Excel (File, Account, About Excel; on a Mac:
          Excel, About Excel; on the web: the browser and its version); Windows, Mac or the web; the language of Excel;
          the version of Clayledger, which stands at the top of this page. Send it to whoever gave you the add-in. Do
          not send a client’s workbook: the demonstration shows the same.
        </p>
      </main>
    </>
  );
}
