/**
 * A workbook port that gives the columns of a data sheet as columns even if they lie in rows on the sheet. The screens
 * therefore need not know how a firm's table lies.
 */
import { FIELDS, MORE_FIELDS } from "../../specification/fields";
import { asColumn } from "../../workbook/lists";
import type { Looked, WorkbookPort } from "../../workbook/port";

const LISTS = new Set([
  "load_number",
  ...[...FIELDS, ...MORE_FIELDS].filter(({ column }) => column).map(({ name }) => name),
]);

type Named = Looked["values"];

const upright = (values: Named): Named =>
  Object.fromEntries(
    Object.entries(values).map(([name, cells]) => [name, LISTS.has(name.toLowerCase()) ? asColumn(cells) : cells]),
  );

export function uprightPort(port: WorkbookPort): WorkbookPort {
  const own: Partial<WorkbookPort> = {
    readNames: async (sheet, names) => ({ ...upright(await port.readNames(sheet, names)) }),
    readContents: async (sheet, names) => ({ ...upright(await port.readContents(sheet, names)) }),
    lookAt: async (asked) =>
      (await port.lookAt(asked)).map((looked) => ({
        ...looked,
        values: upright(looked.values),
        contents: upright(looked.contents),
      })),
  };
  return new Proxy(port, {
    get(target, key) {
      // A method of the port keeps its own object: it may have private fields.
      const found: unknown = Reflect.get(own, key) ?? Reflect.get(target, key, target);
      return typeof found === "function" && !Reflect.has(own, key) ? found.bind(target) : found;
    },
  });
}
