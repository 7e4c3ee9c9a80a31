import { whileShown } from "../../../src/pane/live/while-shown";
import { FakePort } from "../fake-port";

test("a hidden screen hears nothing, and once of what it missed when it is shown again", async () => {
  const port = new FakePort();
  const hushed = whileShown(port);
  const heard = jest.fn();
  hushed.setShown(true);
  const stop = await hushed.port.onChange(heard);
  port.select([[1]]);
  expect(heard).toHaveBeenCalledTimes(1);

  hushed.setShown(false);
  port.select([[2]]);
  port.select([[3]]);
  expect(heard).toHaveBeenCalledTimes(1);
  hushed.setShown(true);
  expect(heard).toHaveBeenCalledTimes(2);
  hushed.setShown(false);
  hushed.setShown(true);
  expect(heard).toHaveBeenCalledTimes(2);

  stop();
  expect(port.listeners.size).toBe(0);
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
