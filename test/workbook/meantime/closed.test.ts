/** @jest-environment jsdom */
/**
 * The pane is closed or reloaded before a request of an operation, in the strict stand-in for Excel: the requests from there on are
 * never sent. The workbook is as it was or as it should be, or the next pane says what is half done.
 */
import { OfficePort } from "../../../src/workbook/office";
import { cutOff } from "../../../src/pane/live/unfinished";
import { turns } from "../../turns";
import { withoutNotes } from "../office/meantime/book-as-text";
import { bookBefore, standInOf } from "./before";
import { OPERATIONS } from "./operations";
import { expectEnds, tried, upTo } from "./tried";

const port = new OfficePort();

/** What is seen, in the order of the requests; "says" is what the next pane says of. An operation that is not named: as it was. */
const SEEN: Readonly<Record<string, string>> = {
  "insert a German data sheet": "as it was; half done, says: sheet of Kompressionsversuch",
  "insert the sheet of limits": "as it was; half done, says: sheet of Limits",
  "insert a calculation book":
    "as it was; half done, says: sheet of Calculation book; done, says: sheet of Calculation book",
  "insert charts": "as it was; half done, says: sheet of Charts",
  "insert a sheet to print": "as it was; half done, says: sheet of Readings Data",
  "insert a register": "as it was; half done, says: sheet of Register",
  "make the reports of all tests": "as it was; half done, says: sheet of Report Data; done",
  "answer the first question": "as it was; half done, says: sheet of Answers to checks",
  "sign the first comparison": "as it was; half done, says: sheet of Comparison by hand",
  "attach a name": "as it was; half done",
  "lay out results":
    "as it was; as it was, says: layout of Data; half done, says: layout of Data; done, says: layout of Data",
  "enter formulas again": "as it was; done",
  "insert a summary":
    "as it was; half done, says: sheet of Summary; half done, says: sheet of Summary, summary of Summary; done, says: sheet of Summary, summary of Summary; done, says: sheet of Summary",
  "bring a summary up to date": "as it was; as it was, says: summary of Summary; done, says: summary of Summary",
  "add files to a summary": "as it was; as it was, says: summary of Summary; done, says: summary of Summary",
  "insert the charts of a summary":
    "as it was; half done, says: sheet of Summary charts; done, says: sheet of Summary charts",
  "import readings and keep the lines":
    "as it was; as it was, says: readings of Data; half done, says: readings of Data, sheet of Readings Data; half done, says: readings of Data; done, says: readings of Data",
  "add new readings of a file":
    "as it was; as it was, says: readings again of Data; half done, says: readings again of Data; done, says: readings again of Data",
  "lock a report as an issue": "as it was; half done, says: sheet of Report Data",
  "insert a file": "as it was; done",
};

test.each(Object.entries(OPERATIONS))("%s", async (name, operation) => {
  const before = await bookBefore(operation);
  const whole = standInOf(before);
  const untouched = withoutNotes(whole);
  const { trips } = await whole.cost(() => operation.work(port));
  const after = withoutNotes(whole);
  expect(whole.book.settings.size).toBe(0);
  const ends: string[] = [];
  for (const n of tried(upTo(trips))) {
    const excel = standInOf(before);
    const isClosed = excel.closesBefore(n);
    await Promise.race([isClosed, operation.work(port).catch(() => undefined)]);
    // A request that is on its way is carried out.
    await turns(5);
    excel.comesUp();
    const said = (await cutOff(new OfficePort())).map(({ kind, sheet }) => `${kind} of ${sheet}`);
    const book = withoutNotes(excel);
    const end = book === untouched ? "as it was" : book === after ? "done" : "half done";
    const told = said.length > 0 ? `${end}, says: ${said.join(", ")}` : end;
    ends.push(told);
  }
  expectEnds(ends, SEEN[name] ?? "as it was", "; ");
});
