/** Names of new sheets that would be too long. */
import { freeSheetName } from "../../src/workbook/rules/sheet-names";

test("a name that is too long keeps the number at its end, which tells it from that of another sheet", () => {
  const names = ["Kompressionsversuch", "Kompressionsversuch 2", "Kompressionsversuch 12"].map((sheet) =>
    freeSheetName(`Ablesungen ${sheet}`, []),
  );
  expect(names).toEqual([
    "Ablesungen Kompressionsversuch",
    "Ablesungen Kompressionsversuc 2",
    "Ablesungen Kompressionsversu 12",
  ]);
  expect(names.every(({ length }) => length <= 31)).toBe(true);
  expect(freeSheetName("Ablesungen Kompressionsversuch 2", names)).toBe("Ablesungen Kompressionsvers 2 2");
});
