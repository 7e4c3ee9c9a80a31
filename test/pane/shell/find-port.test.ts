import { findPort } from "../../../src/pane/shell/find-port";
import { FakePort } from "../fake-port";

const embedded = new FakePort();
const excel = new FakePort();
const office = (host: string | null) => ({ onReady: async () => ({ host }) as any }) as any;
const find = (around: unknown, of?: ReturnType<typeof office>) => findPort(around, of, () => excel);

test("beside the embedded sheet it is the port that the surrounding page offers", async () =>
  expect(await find({ clayledger: { port: embedded } }, office("Excel"))).toBe(embedded));

test("in Excel it is Excel's port, even if the surrounding page cannot be accessed", async () => {
  expect(await find({}, office("Excel"))).toBe(excel);
  const closed = {
    get clayledger(): never {
      throw new DOMException("Blocked a frame from accessing a cross-origin frame.", "SecurityError");
    },
  };
  expect(await find(closed, office("Excel"))).toBe(excel);
});

test("in a plain browser there is none", async () => {
  expect(await find({}, office(null))).toBeUndefined();
  expect(await find({})).toBeUndefined();
});
