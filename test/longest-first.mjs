/**
 * The order of the test files. Jest starts with those that took longest in the last run, and on a new machine with the
 * largest ones; the files below come first in any case, so that no processor waits for a long file at the end.
 */
import Sequencer from "@jest/test-sequencer";

/** By processor time, longest first. */
const LONG = [
  "ooxml/files/files",
  "datasheet/demo",
  "datasheet/specification",
  "workbook/office/whole-sheets",
  "workbook/embedded/upkeep",
  "datasheet/sheet-check",
  "report/charts/series",
  "datasheet/growth",
  "report/languages",
  "summary/summary",
  "checks/integrity",
  "workbook/office/trips",
  "reduction/increment/no-consolidation",
  "pane/screens/readings/readings",
  "pane/screens/data-sheet/sheet-check",
  "browser/host",
  "browser/walk/high-contrast",
  "browser/walk/light",
  "browser/walk/dark",
  "browser/walk/keyboard",
  "browser/plots",
  "browser/policy",
  "browser/review",
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
