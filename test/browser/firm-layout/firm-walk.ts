/**
 * In the pane, the form of another firm becomes a working data sheet: names, formulas, free cells for the other
 * results. Its results are those of the demonstration.
 */
import path from "node:path";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import type { FrameLocator, Page } from "playwright-core";
import { NAMES_WITH_FORMULAS, spillOf } from "../../../src/specification/placed-formulas";
import { asColumn } from "../../../src/workbook/lists";
import { firmForm, type FirmForm, type Selected } from "./firm-form";
import { paneViolations, readNames, selectRange, showSheet, takePicture, withBrowser, type HostPage } from "../page";

/** The cells of the tables and of results, and the inputs of the specimen, which stand in both forms alike. */
const partsOf = (cells: readonly Selected[]): [Selected[], Selected[]] => {
  const isAlike = ({ name, address }: Selected): boolean => /^D\d/.test(address) && !NAMES_WITH_FORMULAS.includes(name);
  return [cells.filter((one) => !isAlike(one)), cells.filter(isAlike)];
};

export const firmWalk = (lies: "down" | "across"): void =>
  withBrowser(`a firm's own layout whose tables lie ${lies}`, (openPage) => {
    const picture = (name: string): string => (lies === "down" ? name : `${name}-across`);
    let host: HostPage;
    let page: Page;
    let pane: FrameLocator;
    let form: FirmForm;

    const told = (words: string | RegExp) =>
      // By attribute: a search by role would ask for the role of every element of the pane, for each of the 78 names.
      pane.locator("[role=status], [role=alert]").filter({ hasText: words }).first().waitFor();

    beforeAll(async () => {
      host = await openPage();
      page = host.page;
      pane = page.frameLocator("#pane");
      form = await firmForm(lies);
      await pane.getByRole("tab", { name: "Data sheet" }).click();
    });

    test("the file is inserted, and the check says what its sheet lacks", async () => {
      const file = path.join(mkdtempSync(path.join(tmpdir(), "form-")), "form.xlsx");
      writeFileSync(file, form.file);
      const [chooser] = await Promise.all([
        page.waitForEvent("filechooser"),
        pane.getByRole("button", { name: "Insert sheets from a file…" }).click(),
      ]);
      await chooser.setFiles(file);
      await told(`Inserted: “${form.sheet}”.`);
      await pane
        .getByRole("region", { name: "Needed first" })
        .getByRole("button", { name: "Mass of the ring (ring_mass)" })
        .waitFor();
      await takePicture(page, picture("pane-firm-form"));
      expect(await paneViolations(page)).toEqual([]);
    });

    test("a search finds a name by its label, and a click chooses it", async () => {
      await pane.getByRole("searchbox", { name: "Search" }).fill("specific grav");
      await pane.getByRole("button", { name: "Specific gravity of solids (specific_gravity)" }).click();
      expect(await pane.getByRole("combobox", { name: "Name" }).inputValue()).toBe("specific_gravity");
      await pane.getByRole("searchbox", { name: "Search" }).fill("");
    });

    test("names are attached to the cells of the form, and results wait for the names that they need", async () => {
      const [byPane, known] = lies === "down" ? [form.cells, []] : partsOf(form.cells);
      // What stands in both forms alike is attached in the pane by the walk whose tables lie down.
      await page.evaluate(([sheet, names]) => (globalThis as any).clayledger.port.nameAll(sheet, names), [
        form.sheet,
        known,
      ] as const);
      for (const { name, address } of byPane) {
        await selectRange(page, address);
        await pane.getByRole("combobox", { name: "Name" }).selectOption(name);
        await pane.getByRole("button", { name: "Attach to the selected cells", exact: true }).click();
        await told(`${name} is now at ${address} of “${form.sheet}”.`);
      }
      await selectRange(page, form.readings);
      await pane
        .getByRole("button", {
          name: lies === "down" ? "Attach to the selected columns" : "Attach to the selected rows",
        })
        .click();
      await told(/The readings of loads 1 to \d+ have their names/);
      await takePicture(page, picture("pane-firm-named"));
      expect(await paneViolations(page)).toEqual([]);
    });

    test("results without a cell are laid out from a free cell on, and all missing formulas are written", async () => {
      await selectRange(page, form.free);
      await pane.getByRole("button", { name: "Lay out the rest from the selected cell" }).click();
      await told(/results were laid out on/);
      await pane.getByRole("button", { name: /^Write all \d+ missing formulas$/ }).click();
      await told(/formulas are written on/);
      await takePicture(page, picture("pane-firm-written"));
      expect(await paneViolations(page)).toEqual([]);
    });

    test("the results are those of the demonstration", async () => {
      await pane.getByRole("button", { name: "Insert worked demonstration" }).click();
      await told("“Demonstration 2”");
      const [firm, demo] = [
        await readNames(page, form.sheet, [...NAMES_WITH_FORMULAS]),
        await readNames(page, "Demonstration", [...NAMES_WITH_FORMULAS]),
      ];
      const compared = NAMES_WITH_FORMULAS.filter((name) => firm[name] !== undefined);
      expect(compared.length).toBeGreaterThan(80);
      for (const name of compared) {
        const own = spillOf(name) ? firm[name]! : asColumn(firm[name]!);
        expect([name, own]).toEqual([name, demo[name]?.slice(0, own.length)]);
      }
    });

    test("the check names a formula that was overwritten, and a button repairs it", async () => {
      await showSheet(page, form.sheet);
      const { address } = form.cells.find(({ name }) => name === "void_ratio_initial")!;
      const before = await readNames(page, form.sheet, ["void_ratio_initial"]);
      await page.evaluate(
        async ([sheet, row, col]) =>
          (globalThis as any).clayledger.port.writeCells(sheet, [{ row, col, value: 0.5 }], true),
        [form.sheet, Number(/\d+/.exec(address)![0]) - 1, 3] as const,
      );
      await pane.getByRole("button", { name: "Check the sheet in front" }).click();
      await pane.getByRole("button", { name: `Write the formula of ${address}` }).click();
      await told(`The formula is written into ${address}`);
      expect(await readNames(page, form.sheet, ["void_ratio_initial"])).toEqual(before);
    });

    test("the page reported no error and sent no request to the network", () => expect(host.complaints).toEqual([]));
  });
