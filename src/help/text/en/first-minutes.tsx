/** The first ten minutes: what a reader does, must see, and reports otherwise. */
import { check } from "../../../pane/text/en/screens/check";
import { pane } from "../../../pane/text/en/pane";
import { plot } from "../../../pane/text/en/screens/plot";
import { results } from "../../../pane/text/en/screens/results";
import { sheet } from "../../../pane/text/en/screens/sheet";
import { bold, code } from "../parts";
import type { Facts, FirstMinutesWords, Step } from "../words";

/** The add-in is there. */
const paneSteps = ({ screens }: Facts): readonly Step[] => [
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
        A pane opens within a few seconds. It has {screens} tabs, {bold(pane.tabs.next)} to {bold(pane.tabs.about)} (in
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

/** The functions answer in cells, and refuse with a reason. */
const answerSteps = ({ waterContent, schedule, swapped }: Facts): readonly Step[] => [
  {
    title: "A function",
    action: <>Type {code(waterContent.formula)} into a cell.</>,
    seen: (
      <>
        While you type, Excel offers the functions that begin with {code("CLAY.")}. The cell shows{" "}
        {bold(waterContent.gives)} (more or fewer digits, as the cell is wide).
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
    action: <>Type {code(schedule.formula)} into a cell with nine empty cells below it.</>,
    seen: (
      <>
        {schedule.count} cells fill from {bold(schedule.first)} to {bold(schedule.last)}, each twice the one above.
      </>
    ),
    otherwise: <>One cell alone: this Excel has no dynamic arrays. Report its version.</>,
  },
  {
    title: "A refusal",
    action: <>Type {code(swapped.formula)} into a cell, and point at the mark beside it.</>,
    seen: (
      <>
        The cell shows {code(swapped.error)}, and the mark says: “{swapped.reason}”.
      </>
    ),
    otherwise: <>Report what the mark says.</>,
  },
];

/** The functions name an error of another cell, and have their help. */
const errorAndHelpSteps = ({ ofAnError, help }: Facts): readonly Step[] => [
  {
    title: "An error in another cell",
    action: (
      <>
        Type {code("=1/0")} into H1 and {code(ofAnError.formula)} into H2.
      </>
    ),
    seen: (
      <>
        H2 shows {code(ofAnError.error)}, and its mark names the dry mass and {code("#DIV/0!")}.
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
        <a href={`${help}#water_content`}>the help of WATER_CONTENT</a>, the second one the whole page.
      </>
    ),
    otherwise: <>Report which link led where.</>,
  },
];

/** A blank sheet is made, and takes what may be typed. */
const BLANK_SHEET_STEPS: readonly Step[] = [
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
];

/** The demonstration calculates, has its chart, and is kept. */
const demonstrationSteps = ({ demonstration }: Facts): readonly Step[] => [
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
        {bold(demonstration.preconsolidation_stress)} kPa, {results.names.compression_index}{" "}
        {bold(demonstration.compression_index)}, {results.names.void_ratio_initial}{" "}
        {bold(demonstration.void_ratio_initial)}.
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

export const firstMinutes: FirstMinutesWords = {
  title: "Clayledger: the first ten minutes in Excel",
  heading: "The first ten minutes in Excel",
  version: (version) => `Clayledger, version ${version}`,
  about:
    "Clayledger is tested against Excel’s own object model and file formats, not inside Excel. These twelve steps show whether your Excel agrees. Each says what must be seen; where something else is seen, please report it.",
  help: (link) => (
    <>
      All functions are described in the <a href={link}>help</a>. If your Excel separates arguments by semicolons, write
      semicolons.
    </>
  ),
  seen: "You see:",
  otherwise: "If not:",
  steps: (facts) => [
    ...paneSteps(facts),
    ...answerSteps(facts),
    ...errorAndHelpSteps(facts),
    ...BLANK_SHEET_STEPS,
    ...demonstrationSteps(facts),
  ],
  report: {
    heading: "What a report needs",
    about:
      "The number of the step and what you saw instead; the version of Excel (File, Account, About Excel; on a Mac: Excel, About Excel; on the web: the browser and its version); Windows, Mac or the web; the language of Excel; the version of Clayledger, which stands at the top of this page. Send it to whoever gave you the add-in. Do not send a client’s workbook: the demonstration shows the same.",
  },
};
