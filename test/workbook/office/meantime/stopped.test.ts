/** @jest-environment jsdom */
/** A person stops long work in Excel in the middle, at each place at which it can be stopped. */
import { Stopped, type Course } from "../../../../src/workbook/in-slices";
import { OfficePort } from "../../../../src/workbook/office";
import { StrictExcel } from "../../../excel/strict-excel";
import { PLAN } from "../plan";

/** A course that is stopped when the work tells its share for the n-th time; `told` are the shares. */
function stoppedAt(n: number): Course & { readonly told: readonly number[] } {
  const controller = new AbortController();
  const told: number[] = [];
  const tell = (share: number): void => {
    told.push(share);
    if (told.length === n) controller.abort();
  };
  return { tell, told, signal: controller.signal };
}

/** Stops the work at each place; `look` examines the workbook after it. Returns the shares that the whole work tells. */
async function atEachPlace(
  open: () => StrictExcel,
  work: (course: Course) => Promise<unknown>,
  look: (excel: StrictExcel, before: unknown) => void,
): Promise<readonly number[]> {
  const whole = stoppedAt(Infinity);
  open();
  await work(whole);
  expect(whole.told).toEqual([...whole.told].sort((a, b) => a - b));
  for (let n = 1; n < whole.told.length; n++) {
    const excel = open();
    const before = excel.picture();
    await expect(work(stoppedAt(n))).rejects.toBeInstanceOf(Stopped);
    look(excel, before);
    expect(excel.faults).toEqual([]);
  }
  return whole.told;
}

const port = new OfficePort();

test("a sheet that is stopped half made is deleted again: the workbook is as it was", async () => {
  const open = (): StrictExcel => new StrictExcel({ sheets: ["Data"], platform: "desktop" });
  const many = Array.from({ length: 8 }, (_, col) =>
    Array.from({ length: 100 }, (_, row) => ({
      row,
      col,
      kind: "note" as const,
      value: `${col} ${"x".repeat(6_000)}`,
    })),
  );
  const plan = { ...PLAN, rows: 100, cols: 8, cells: many.flat(), names: {}, merges: [] };
  const told = await atEachPlace(
    open,
    (course) => port.insertSheet(plan, () => undefined, course),
    (excel, before) => expect(excel.picture()).toEqual(before),
  );
  expect(told.length).toBeGreaterThan(4);
});

test("formulas that are stopped half entered: the protection is on again, and the next time enters the others", async () => {
  const open = (): StrictExcel => {
    const excel = new StrictExcel({ sheets: ["Data"], platform: "desktop", evaluator: () => 7 });
    const formulas = Array.from({ length: 2_500 }, (_, row) => [`=_xldudf_CLAY_STRAIN(B${row + 1})`]);
    excel.sheet("Data").put("A1", formulas).protect({ allowInsertRows: true });
    return excel;
  };
  let last: StrictExcel | undefined;
  const told = await atEachPlace(
    open,
    (course) => port.reenterFormulas("Data", course),
    (excel, before) => {
      expect(excel.picture().sheets[0].protection).toEqual((before as typeof excel.book).sheets[0].protection);
      last = excel;
    },
  );
  expect(told.length).toBeGreaterThan(2);
  expect((await port.reenterFormulas("Data")).left).toBe(0);
  expect(last!.sheet("Data").values("A1:A2500").flat()).toEqual(Array(2_500).fill(7));
});
