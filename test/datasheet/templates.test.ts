/** The templates as a general-purpose library reads them, and as files. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { isDeepStrictEqual } from "node:util";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { boxAddress, boxOf, cellAddress } from "../../src/workbook/address";
import { blankSheet } from "../../src/datasheet";
import { templateBytes, TEMPLATES } from "../../src/datasheet/templates";
import { ADD_IN_VERSION, TEMPLATE_VERSION } from "../../src/specification/versions";
import { storedFormula } from "../../src/datasheet/xlsx";
import { MARGINS, pagesOf } from "../../src/workbook/look/pages";

const committed = (file: string) => readFileSync(path.join(__dirname, "../../templates", file));

test("formulas have Excel's form for formulas of an add-in", () => {
  expect(storedFormula('=IF({a}="","",CLAY.SWELLING_INDEX({b},B4)*{c})')).toBe(
    'IF(a="","",_xldudf_CLAY_SWELLING_INDEX(b,B4)*c)',
  );
});

describe.each(TEMPLATES)("the template $file", ({ file, system, language }) => {
  const plan = blankSheet(system, { language });
  const isGerman = language === "de";
  let sheet: ExcelJS.Worksheet;
  let workbook: ExcelJS.Workbook;
  let parts: Record<string, Uint8Array>;
  const part = (name: string) => strFromU8(parts[name]);

  beforeAll(async () => {
    const bytes = committed(file);
    parts = unzipSync(new Uint8Array(bytes));
    workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer);
    sheet = workbook.worksheets[0];
  });

  test("is what `npm run templates` writes now, byte for byte", async () => {
    const [once, again] = [await templateBytes(system, language), await templateBytes(system, language)];
    expect(Buffer.from(once).equals(Buffer.from(again))).toBe(true);
    expect(Buffer.from(once).equals(committed(file))).toBe(true);
  });

  test("has every value, formula, format, note, list and unlocked input of the plan", () => {
    expect(workbook.worksheets.map(({ name }) => name)).toEqual([plan.name]);
    const faults: unknown[] = [];
    for (const planned of plan.cells) {
      const address = cellAddress(planned.row, planned.col);
      const cell = sheet.getCell(address);
      const compare = (what: string, found: unknown, wanted: unknown): void => {
        if (!isDeepStrictEqual(found, wanted)) faults.push([address, what, found, wanted]);
      };
      if (planned.formula) compare("formula", cell.formula, storedFormula(planned.formula));
      // A blank unit leaves its cell empty: even an empty text would keep the text at its left from continuing over it.
      else compare("value", cell.value, planned.value === "" ? null : (planned.value ?? null));
      if (planned.format) compare("format", cell.numFmt, planned.format);
      if (planned.note) compare("has a note", cell.note !== undefined && cell.note !== null, true);
      if (planned.choices) compare("list", cell.dataValidation.formulae, [`"${planned.choices.join(",")}"`]);
      compare("locked", cell.protection?.locked, planned.kind === "input" ? false : undefined);
    }
    expect(faults).toEqual([]);
  });

  test("has every name, local to the sheet, and no name twice", () => {
    const found = [...part("xl/workbook.xml").matchAll(/<definedName name="([^"]+)" localSheetId="0">([^<]+)</g)];
    const names = new Map(found.map(([, name, target]) => [name, target]));
    expect(names.size).toBe(found.length);
    for (const [name, box] of Object.entries(plan.names))
      expect([name, names.get(name)]).toEqual([name, `'${plan.name}'!${boxAddress(box)}`]);
    expect(names.size).toBe(Object.keys(plan.names).length + 1);
  });

  test("marks formulas of the add-in as dynamic arrays, with the metadata that the mark needs", () => {
    const cells = [...part("xl/worksheets/sheet1.xml").matchAll(/<c r="([A-Z]+\d+)"([^>]*)><f([^>]*)>([^<]*)</g)];
    const own = cells.filter(([, , , , formula]) => formula.includes("_xldudf_CLAY_"));
    expect(own.length).toBe(plan.cells.filter(({ formula }) => formula?.includes("CLAY.")).length);
    // An array is not allowed in merged cells: a formula there gives one value.
    const merged = new Set(plan.merges.map(({ row, col }) => cellAddress(row, col)));
    for (const [, address, cell, form] of own) {
      const array = merged.has(address) ? "" : ` t="array" ref="${address}"`;
      expect([address, cell.includes('cm="1"'), form]).toEqual([address, !merged.has(address), array]);
    }
    expect(own.some(([, address]) => merged.has(address))).toBe(true);
    expect(part("xl/metadata.xml")).toContain("XLDAPR");
    expect(part("[Content_Types].xml")).toContain("/xl/metadata.xml");
    expect(part("xl/_rels/workbook.xml.rels")).toContain("metadata.xml");
  });

  test("shows units before the first calculation, and no result", () => {
    const shown = (name: string, right = 0) => {
      const { row, col } = plan.names[name];
      return sheet.getCell(cellAddress(row, col + right)).result;
    };
    expect(shown("diameter", 1)).toBe(system === "SI" ? "mm" : "in");
    expect(shown("dial_factor", 1)).toBe(`${system === "SI" ? "mm" : "in"}/${isGerman ? "Skt" : "div"}`);
    expect(shown("preconsolidation_stress") || "").toBe("");
  });

  test("prints the pages of the plan on its own paper, with file, page numbers and versions", () => {
    const area = /<definedName name="_xlnm.Print_Area"[^>]*>([^<]*)</.exec(part("xl/workbook.xml"))![1];
    // VBA takes at most 255 characters for a print area.
    expect(area.length).toBeLessThan(255);
    const breaks = (kind: string): number[] => {
      const list = new RegExp(`<${kind} .*?</${kind}>`).exec(part("xl/worksheets/sheet1.xml"))![0];
      return [...list.matchAll(/<brk id="(\d+)"/g)].map(([, at]) => Number(at));
    };
    const areas = area.split(",").map((one) => boxOf(one.split("!")[1])!);
    const pages = pagesOf({ areas, rowBreaks: breaks("rowBreaks"), colBreaks: breaks("colBreaks") });
    expect(pages).toEqual(plan.pages);
    const paperSize = system === "SI" ? 9 : 1;
    expect(sheet.pageSetup).toMatchObject({ paperSize, orientation: "landscape" });
    expect(part("xl/worksheets/sheet1.xml")).not.toContain("fitToPage");
    expect(sheet.pageSetup.scale).toBeGreaterThan(80);
    expect(sheet.pageSetup.scale).toBeLessThanOrEqual(100);
    const said = isGerman ? ["Seite &P von &N", "Gedruckt", "Datenblatt"] : ["Page &P of &N", "Printed", "Data sheet"];
    for (const part_ of ["&F", ...said, ` ${TEMPLATE_VERSION}, Clayledger ${ADD_IN_VERSION}`])
      expect(sheet.headerFooter.oddFooter).toContain(part_);
  });

  test("prints the table of picks on one page, below its headings", () => {
    const { row, col, rows } = plan.names.pick_load;
    // Above the rows: the title, two rows of headings, and the row of units.
    const [page, ...others] = plan.pages!.filter((one) => one.col === col);
    expect([page, others]).toEqual([{ row: row - 4, col, rows: rows + 4, cols: 8 }, []]);
    const paper = system === "SI" ? 595.3 : 612;
    const high = ((rows + 4) * 12.75 * sheet.pageSetup.scale!) / 100;
    expect(high).toBeLessThanOrEqual(paper - 72 * (MARGINS.top + MARGINS.bottom));
  });

  test("is protected without a password, and every input is open, down to the last row of readings", () => {
    expect(part("xl/worksheets/sheet1.xml")).toMatch(/<sheetProtection sheet="1"(?![^>]*(password|hashValue))[^>]*>/);
    const { row, rows } = plan.names.readings_24;
    const open = new Set(
      [...part("xl/worksheets/sheet1.xml").matchAll(/<row r="(\d+)" s="(\d+)" customFormat="1"\/>/g)].map(
        ([, r, s]) => {
          const xf = [
            ...part("xl/styles.xml")
              .split("<cellXfs")[1]
              .matchAll(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/g),
          ][Number(s)][0];
          expect(xf).toContain('locked="0"');
          return Number(r) - 1;
        },
      ),
    );
    for (let index = row; index < row + rows; index++)
      expect([
        index,
        open.has(index) || sheet.getCell(cellAddress(index, plan.names.readings_24.col)).protection?.locked === false,
      ]).toEqual([index, true]);
  });

  test("accepts dates from 1990-01-01 to 2099-12-31 in cells for dates", () => {
    const dates = (plan.entries ?? []).filter(({ kind }) => kind === "date");
    expect(dates.length).toBeGreaterThan(5);
    for (const { box } of dates)
      for (const row of [box.row, box.row + box.rows - 1]) {
        const { type, operator = "between", formulae } = sheet.getCell(cellAddress(row, box.col)).dataValidation;
        expect({ type, operator, formulae }).toEqual({
          ...{ type: "date", operator: "between" },
          formulae: [new Date(Date.UTC(1990, 0, 1)), new Date(Date.UTC(2099, 11, 31))],
        });
      }
  });

  test("refuses an entry that is not a number in a cell for numbers, and says what the cell accepts", () => {
    for (const { box, message } of plan.entries ?? []) {
      const { dataValidation } = sheet.getCell(cellAddress(box.row, box.col));
      expect(dataValidation).toMatchObject({ showErrorMessage: true, errorStyle: "stop", error: message });
      expect(message.length).toBeLessThanOrEqual(225);
    }
    expect(
      sheet.getCell(cellAddress(plan.names.ring_mass.row, plan.names.ring_mass.col)).dataValidation.error,
    ).toContain(
      isGerman ? "Ring: Zahl über 0 bis 20000 eingeben" : "Ring: enter a number greater than 0 and not more than 20000",
    );
  });
});
