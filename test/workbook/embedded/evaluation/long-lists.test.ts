/** Lists longer than a call takes arguments, which is about 120,000. */
import "../engine-in-node";
import { registries } from "@odoo/o-spreadsheet";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { roomCommands } from "../../../../src/workbook/embedded/upkeep";

const LONG = 300_000;

test("MODE and SKEW answer for 300,000 different values", () => {
  const values = Array.from({ length: LONG }, (_, at) => ({ value: at }));
  const answer = (name: string, given: readonly object[]) =>
    // The engine's type of a computation does not tell the arguments of one function.
    (registries.functionRegistry.get(name).compute as unknown as (this: object, range: unknown) => unknown).call(
      { locale: {} },
      [given],
    );
  for (const name of ["MODE", "MODE.SNGL"]) {
    expect(answer(name, [...values, { value: 7 }, { value: 9 }])).toBe(7);
    expect(answer(name, values)).toMatchObject({ value: "#N/A" });
  }
  expect(answer("SKEW", values)).toBeCloseTo(0, 9);
});

test("a sheet gets rows for 300,000 cells that are written", () => {
  const { model } = newWorkbook();
  const rows = model.getters.getNumberRows("sheet1");
  const cells = Array.from({ length: LONG }, (_, row) => ({ row, col: 1 }));
  expect(roomCommands(model, "sheet1", cells)).toMatchObject([{ dimension: "ROW", quantity: LONG - rows }]);
});
