/**
 * Every kind of .xlsx file that the project writes: no complaint from schemas and rules, and equal cells, names, entry
 * rules and merged cells in two readers that this project did not make.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { templateBytes, TEMPLATES } from "../../../src/datasheet/templates";
import { ruleComplaints, schemaComplaintsOfEach } from "../complaints";
import { Package } from "../package";
import { exceljsDifferences, libreOfficeDifferences } from "./compare";
import { storedContents, type StoredContents } from "./contents";
import { readByExceljs } from "./exceljs-reader";
import { readByLibreOffice, type OfficeContents } from "./libreoffice-reader";
import { LINES, PAGE_FILES } from "./page-files";

const FILES: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  ...Object.fromEntries(
    TEMPLATES.map(({ file, system, language }) => [`the template ${file}`, () => templateBytes(system, language)]),
  ),
  ...PAGE_FILES,
};
const NAMES = Object.keys(FILES);

const made = new Map<string, Uint8Array>();
const stored = new Map<string, StoredContents>();
const complaints = new Map<string, string[]>();
beforeAll(async () => {
  // The parts of a file are parsed once for all that is asked of them.
  const packages: Package[] = [];
  for (const [name, make] of Object.entries(FILES)) {
    const bytes = await make();
    made.set(name, bytes);
    const file = new Package(bytes);
    stored.set(name, storedContents(file));
    complaints.set(name, ruleComplaints(file));
    file.letGo();
    packages.push(file);
  }
  for (const [index, list] of schemaComplaintsOfEach(packages).entries()) complaints.get(NAMES[index])!.push(...list);
});

/** The template with one cell, one name, one rule and one merged cell that differ from the sheet. */
function changed(): Uint8Array {
  const entries = unzipSync(made.get("the template clayledger-si.xlsx")!);
  const edit = (at: string, from: RegExp, to: string): void => {
    const before = strFromU8(entries[at]);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${at} has nothing like ${from}`);
    entries[at] = strToU8(after);
  };
  edit("xl/workbook.xml", /(name="ring_mass"[^>]*>[^<]*!)[^<]*/, "$1$$Z$$99");
  edit("xl/worksheets/sheet1.xml", /<formula1>32874</, "<formula1>32875<");
  edit("xl/worksheets/sheet1.xml", /<mergeCell ref="[^"]*"\/>/, "");
  edit("xl/sharedStrings.xml", />Project</, ">Object<");
  return zipSync(entries);
}
const SEEN = [/name ring_mass/, /rule of/, /merged/, /cell A\d+.*Object/].map((one) => expect.stringMatching(one));

test("the committed templates are the ones tested here", () => {
  for (const { file } of TEMPLATES) {
    const committed = readFileSync(path.join(__dirname, "../../../templates", file));
    expect(committed.equals(made.get(`the template ${file}`)!)).toBe(true);
  }
});

test.each(NAMES)("schemas and rules have no complaint about %s", (name) => {
  expect(complaints.get(name)).toEqual([]);
});

test.each(NAMES)("exceljs reads the cells, names, rules and merged cells of %s", async (name) => {
  expect(exceljsDifferences(await readByExceljs(made.get(name)!), stored.get(name)!)).toEqual([]);
});

test("exceljs notices a changed file", async () => {
  const found = exceljsDifferences(await readByExceljs(changed()), stored.get("the template clayledger-si.xlsx")!);
  expect(found).toEqual(expect.arrayContaining(SEEN));
});

const CHANGED = "a changed template";
const isLeftOut = process.env.CLAYLEDGER_NO_LIBREOFFICE === "1" && !process.env.CI;

(isLeftOut ? describe.skip : describe)("LibreOffice", () => {
  const read = new Map<string, OfficeContents>();
  beforeAll(() => {
    const { CLAYLEDGER_LIBREOFFICE: program, CLAYLEDGER_LIBREOFFICE_MISSING: missing } = process.env;
    if (!program) throw new Error(missing ?? "the set-up of these tests has not run");
    const files = [...NAMES.map((name) => made.get(name)!), changed()];
    const contents = readByLibreOffice(program, files);
    [...NAMES, CHANGED].forEach((name, index) => read.set(name, contents[index]));
  });

  test.each(NAMES)("reads the cells, names, rules, merged cells and charts of %s", (name) => {
    expect(libreOfficeDifferences(read.get(name)!, stored.get(name)!)).toEqual([]);
  });

  test("notices a changed file", () => {
    const found = libreOfficeDifferences(read.get(CHANGED)!, stored.get("the template clayledger-si.xlsx")!);
    expect(found).toEqual(expect.arrayContaining(SEEN));
  });
});

test("every line of a logger's file is in the saved file as it was read", () => {
  const { sheets } = stored.get("kept lines of a logger")!;
  const [, { cells }] = [...sheets].find(([name]) => name.startsWith("Readings"))!;
  const column = [...cells].filter(([at]) => /^A\d+$/.test(at)).map(([, { value }]) => value);
  expect(column.slice(-LINES.length)).toEqual(LINES);
});
