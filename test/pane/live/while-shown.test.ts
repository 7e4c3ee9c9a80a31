import { whileShown } from "../../../src/pane/live/while-shown";
import { FakePort } from "../fake-port";

test("a hidden screen hears nothing, and once of what it missed when it is shown again", async () => {
  const port = new FakePort();
  const hushed = whileShown(port);
  const heard = jest.fn();
  hushed.setShown(true);
  const leave = [await hushed.port.onChange(heard), await hushed.port.onSelect(() => heard("selection"))];
  const told = (): unknown[] => heard.mock.calls.splice(0).map(([what]) => what);
  port.select([[1]]);
  expect(told()).toEqual(["values", "selection"]);

  hushed.setShown(false);
  port.select([[2]]);
  port.select([[3]]);
  expect(told()).toEqual([]);
  hushed.setShown(true);
  expect(told()).toEqual(["values", "selection"]);
  hushed.setShown(false);
  hushed.setShown(true);
  expect(told()).toEqual([]);

  leave.forEach((stop) => stop());
  expect(port.listeners.size + port.selecting.size).toBe(0);
});

test("all else is asked of the workbook itself, private fields and all", async () => {
  class Private {
    readonly host = "excel";
    readonly #sheets = ["A"];
    sheetNames = undefined as never;
    isProtected(): Promise<boolean> {
      return Promise.resolve(this.#sheets.length === 1);
    }
  }
  const { port } = whileShown(new Private() as never);
  expect(await port.isProtected("A")).toBe(true);
  expect(port.host).toBe("excel");
});
