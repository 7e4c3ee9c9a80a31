/** The footer of a printed page: its texts do not run over each other, however long the names are. */
import { blankSheet } from "../../../src/datasheet";
import { footerOf } from "../../../src/workbook/look/footer";
import { MARGINS } from "../../../src/workbook/look/pages";
import type { SheetPlan } from "../../../src/workbook/port";
import { textWidth } from "../../datasheet/text-width";

/** The width in points of a text in 8 points; `textWidth` gives pixels, of which 12 are 9 points. */
const points = (text: string): number => (textWidth(text, "regular") * 8) / 12;
/** The width of A4 in portrait between the margins, in points. */
const ROOM = 595.3 - 72 * (MARGINS.left + MARGINS.right);

/** The longest name that a sheet can have: 31 signs. */
const SHEET = "Borehole KB-12 sample 7 spec. 2";
const FILE = "Consolidation tests of the embankment, lot 3, north side.xlsx";

const printed = (text: string): string =>
  Object.entries({ "&F": FILE, "&A": SHEET, "&P": "12", "&N": "12", "&D": "30.11.2026", "&T": "12:00 PM" }).reduce(
    (said, [code, value]) => said.replace(code, value),
    text,
  );

test.each<[string, Pick<SheetPlan, "footer" | "hostWords">]>([
  ["a data sheet", blankSheet("SI")],
  ["a German data sheet", blankSheet("SI", { language: "de" })],
  ["a report", { footer: `Report of ${SHEET}, Clayledger 0.11.0` }],
])("the names, the page number and the time on %s have room beside each other", (_, plan) => {
  const { left, right } = footerOf(plan);
  const [lines, beside] = [left, right].map((part) => printed(part).split("\n"));
  expect(lines).toHaveLength(2);
  expect(beside).toHaveLength(2);
  for (const [index, line] of lines.entries()) expect(points(`${line}  ${beside[index]}`)).toBeLessThan(ROOM);
});
