/**
 * The order of the test files. Jest starts with those that took longest in the last run, and on a new machine with the
 * largest ones; the files below come first in any case, so that no processor waits for a long file at the end.
 */
import Sequencer from "@jest/test-sequencer";

/** By processor time, longest first. */
const LONG = [
  "together/embedded",
  "ooxml/files/files",
  "together/datasheet",
  "together/reports",
  "together/excel",
  "together/office",
  "together/screens",
  "together/reduction",
  "together/pane",
  "together/files",
  "together/host",
  "ooxml/files/returned",
  "workbook/embedded/upkeep",
  "datasheet/impossible",
  "datasheet/sheet-check",
  "datasheet/growth",
  "report/charts/series",
  "workbook/office/whole-sheets",
  "summary/summary",
  "workbook/office/trips",
  "pane/screens/readings/readings",
  "workbook/embedded/xlsx/damaged",
  "checks/integrity",
  "workbook/office/meantime/half-made",
  "datasheet/demo",
  "workbook/embedded/steps/many-cells",
  "report/issue",
  "workbook/office/meantime/two-at-once",
  "workbook/embedded/xlsx",
  "ooxml/files/saved-elsewhere",
  "report/report",
  "pane/screens/data-sheet/sheet-check",
  "browser/whole-job/whole-job",
  "browser/together/layouts",
  "browser/together/screens-of-sheets",
  "browser/together/host-and-keys",
  "browser/together/in-british-english",
  "browser/together/screens-of-curves",
  "browser/walk/every-screen",
  "browser/walk/whole-walk",
  "browser/host/host",
  "browser/walk/german",
  "browser/host/keys-after-undo",
];

const place = ({ path }) => {
  const at = LONG.findIndex((one) => path.endsWith(`/test/${one}.test.ts`));
  return at < 0 ? LONG.length : at;
};

export default class LongestFirst extends Sequencer {
  sort(tests) {
    return [...super.sort(tests)].sort((a, b) => place(a) - place(b));
  }
}
