/**
 * Files that are damaged, of another kind, or malicious, all made here from one sound file. Each is refused with a
 * sentence that says what is wrong and what to do, or opens with every cell unchanged.
 */
import { english } from "../../../../src/reduction/message";
import fc from "../../../properties";
import { strToU8, unzipSync, zipSync } from "fflate";
import { EmbeddedPort, newWorkbook, openXlsx } from "../../../../src/workbook/embedded";
import { WorkbookError } from "../../../../src/workbook/port";
import { workLimit } from "../../../../src/workbook/embedded/xlsx/cells";
import { baseFile, contentsOf, fileOf, textsOf, type Texts } from "./base-file";
import { rawZip, type RawEntry } from "./raw-zip";

let file: Uint8Array;
let texts: Texts;
let contents: ReturnType<typeof contentsOf>;

beforeAll(async () => {
  file = await baseFile();
  texts = textsOf(file);
  contents = contentsOf(openXlsx(file).workbook);
});

const SENTENCE = /^[A-Z][^]*[:.] .*The workbook on the page is as it was\.$/;

/** The result of opening: the sentence of the refusal, or the contents and the remarks. */
function opened(bytes: Uint8Array): { refusal?: string; contents?: ReturnType<typeof contentsOf>; told: string } {
  try {
    const { workbook, remarks } = openXlsx(bytes);
    return { contents: contentsOf(workbook), told: remarks.map(english).join(" ") };
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    expect(error.message).toMatch(SENTENCE);
    return { refusal: error.message, told: "" };
  }
}

/** Expects a refusal, or all the contents. */
function expectSafe(bytes: Uint8Array): void {
  const found = opened(bytes);
  if (found.refusal === undefined) expect(found.contents).toEqual(contents);
}

const edited = (path: string, change: (text: string) => string): Uint8Array => {
  const changed = change(texts[path]!);
  expect(changed).not.toBe(texts[path]);
  return fileOf({ ...texts, [path]: changed });
};
const FIRST = "xl/worksheets/sheet1.xml";

/** The parts of the file as entries of an archive; the entry of the part `changed` is altered. */
const entriesWith = (change: Partial<RawEntry>, changed: string): RawEntry[] =>
  Object.entries(unzipSync(file)).map(([path, content]) => ({ path, content, ...(path === changed && change) }));

describe("a damaged file", () => {
  test("the sound file opens unchanged, from either kind of archive", () => {
    expect(contents[1]!.cells).toMatchObject({ A3: ["2360", 2360, ""], B4: [" spaces  ", " spaces  ", ""] });
    expectSafe(rawZip(entriesWith({}, "")));
    expect(opened(rawZip(entriesWith({ method: 0 }, FIRST))).contents).toEqual(contents);
  });

  test("a file cut at any tenth of its length is safe", () => {
    for (let tenth = 0; tenth < 10; tenth++)
      expect(opened(file.slice(0, Math.floor((file.length * tenth) / 10))).refusal).toMatch(/damaged|empty/);
  });

  test("a file with any single bit flipped is safe", () =>
    fc.assert(
      fc.property(fc.nat(file.length * 8 - 1), (bit) => {
        const turned = file.slice();
        turned[bit >> 3]! ^= 1 << (bit & 7);
        expectSafe(turned);
      }),
      { seed: 17, numRuns: 150 },
    ));

  test("a file with some bytes overwritten anywhere is safe", () =>
    fc.assert(
      fc.property(fc.nat(file.length - 1), fc.uint8Array({ minLength: 1, maxLength: 40 }), (at, bytes) => {
        const changed = file.slice();
        changed.set(bytes.subarray(0, file.length - at), at);
        expectSafe(changed);
      }),
      { seed: 17, numRuns: 100 },
    ));

  test("if a part is missing, the refusal names it, a remark tells of the loss, or nothing is lost", () => {
    for (const path of Object.keys(texts)) {
      const rest = Object.entries(texts).filter(([other]) => other !== path);
      const found = opened(fileOf(Object.fromEntries(rest)));
      // Without its relationships a sheet loses its notes, and the file no longer says where they were.
      const isTold = found.told.includes(path) || (/sheets\/_rels/.test(path) && /names parts that/.test(found.told));
      if (found.refusal === undefined && !isTold) expect([path, found.contents]).toEqual([path, contents]);
    }
  });

  test("a file with any part doubled is safe", () => {
    for (const [path, content] of Object.entries(unzipSync(file))) {
      const twice = rawZip([...entriesWith({}, ""), { path, content }]);
      expect(opened(twice).refusal).toMatch(/two parts that are called/);
    }
  });

  test.each<[string, Partial<RawEntry>, RegExp]>([
    ["a wrong check sum", { crc: 1 }, /check sum differs/],
    ["a part that is longer than it claims", { size: 100 }, /not as long as the file says/],
    ["a part that is shorter than it claims", { size: 200_000 }, /not as long as the file says/],
    ["a part that is not as long, unpacked", { size: 1000, method: 0 }, /not as long as the file says/],
    ["a part that is locked", { flags: 1 }, /locked with a password/],
    ["a part packed in another way", { method: 14 }, /method 14/],
  ])("%s", (_, change, sentence) => {
    expect(opened(rawZip(entriesWith(change, FIRST))).refusal).toMatch(sentence);
  });

  test.each<[string, string, (text: string) => string, RegExp]>([
    [
      "a text that is not in the file",
      FIRST,
      (t) => t.replace(/t="s">\s*<v>\d+/, 't="s"><v>999'),
      /cell [A-Z]+\d+ of the sheet "First" shows text 999/,
    ],
    ["a text with a number that is none", FIRST, (t) => t.replace(/t="s">\s*<v>\d+/, 't="s"><v>x'), /shows text x/],
    ["a number that is none", FIRST, (t) => t.replace("<v>2360</v>", "<v>2 360</v>"), /holds "2 360" as a number/],
    [
      "a number larger than any",
      FIRST,
      (t) => t.replace("<v>2360</v>", "<v>1e999</v>"),
      /holds 1e999, and no number is larger/,
    ],
    ["a kind of cell that is none", FIRST, (t) => t.replace('t="s"', 't="z"'), /unknown kind "z"/],
    ["two cells in one place", FIRST, (t) => t.replace('r="A3"', 'r="A2"'), /two cells A2/],
    ["a cell beyond the last row", FIRST, (t) => t.replace('r="A3"', 'r="A1048577"'), /a cell A1048577/],
    ["a cell beyond the last column", FIRST, (t) => t.replace('r="A3"', 'r="XFE3"'), /a cell XFE3/],
    ["a row that is none", FIRST, (t) => t.replace('<row r="3"', '<row r="0"'), /a row 0/],
    [
      "a foreign root of the texts",
      "xl/sharedStrings.xml",
      (t) => t.replace(/xmlns="[^"]*"/, 'xmlns="urn:other"'),
      /sharedStrings\.xml is none of a workbook/,
    ],
    [
      "a foreign root of a sheet",
      FIRST,
      (t) => t.replace(/xmlns="[^"]*"/, 'xmlns="urn:other"'),
      /sheet1\.xml is none of a workbook/,
    ],
    [
      "a relationship that leaves the file",
      "xl/_rels/workbook.xml.rels",
      (t) => t.replace("worksheets/sheet1.xml", "../../../etc/passwd"),
      /sheet "First" is missing/,
    ],
    ["no sheet", "xl/workbook.xml", (t) => t.replace(/<sheets>[^]*<\/sheets>/, "<sheets/>"), /no sheet of cells/],
    ["bytes that are no text", FIRST, (t) => t.replace("<sheetData>", "<sheetData>\0"), /not valid XML/],
  ])("%s", (_, path, change, sentence) => {
    expect(opened(edited(path, change)).refusal).toMatch(sentence);
  });
});

describe("a malicious file", () => {
  test("entities that expand without end are refused", () => {
    const entities = Array.from({ length: 9 }, (_, i) => `<!ENTITY a${i + 1} "${`&a${i};`.repeat(10)}">`).join("");
    const doctype = `<?xml version="1.0"?><!-- a --> <!DOCTYPE worksheet [<!ENTITY a0 "lol">${entities}]>`;
    const swelling = edited(FIRST, (text) => doctype + text.replace("<v>2360</v>", "<v>&a9;</v>"));
    expect(opened(swelling).refusal).toMatch(/sheet1\.xml declares a document type/);
  });

  test("a part that expands far beyond its stated size is abandoned when that size is reached", () => {
    const zeros = { path: FIRST, content: new Uint8Array(200e6), size: 1024, crc: 0 };
    const bomb = rawZip([...entriesWith({}, "").filter(({ path }) => path !== FIRST), zeros]);
    expect(bomb.length).toBeLessThan(500_000);
    expect(opened(bomb).refusal).toMatch(/not as long as the file says/);
  });

  test("a part with a stated size of 4 GB, and many of 200 MB together, are refused", () => {
    expect(opened(rawZip(entriesWith({ size: 0xfffffff0 }, FIRST))).refusal).toMatch(/more than 300 MB/);
    const many = entriesWith({}, "").map((entry) => ({ ...entry, size: 100e6 }));
    expect(opened(rawZip(many)).refusal).toMatch(/more than 300 MB|not as long/);
  });

  test("names that lead out of the file, and parts without a relationship, are not read", () => {
    const evil = {
      ...texts,
      "../../evil.xml": "<!DOCTYPE x>",
      "/xl/worksheets/sheet9.xml": "no XML",
      "xl/vbaProject.bin": "MZ",
    };
    expect(opened(fileOf(evil)).contents).toEqual(contents);
  });

  test("more sheets than can be shown are refused", () => {
    const many = edited("xl/workbook.xml", (text) =>
      text.replace("</sheets>", `${'<sheet name="x" sheetId="9" r:id="rId1"/>'.repeat(10_000)}</sheets>`),
    );
    expect(opened(many).refusal).toMatch(/10003 sheets, and at most 250/);
  });

  test("more styles than Excel allows are refused, and as many as it allows are accepted", () => {
    const withStyles = (count: number) =>
      edited("xl/styles.xml", (text) =>
        text.replace(
          "</cellXfs>",
          `${'<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>'.repeat(count)}</cellXfs>`,
        ),
      );
    expect(opened(withStyles(1_000_000)).refusal).toMatch(/cell formats, and Excel takes at most 65490/);
    expect(opened(withStyles(2000)).contents).toEqual(contents);
  });

  test("numbers of styles, formats and colours that do not exist do no harm", () => {
    const odd = edited("xl/styles.xml", (text) =>
      text
        .replace(/<cellXfs[^>]*>/, '$&<xf numFmtId="4000000000" fontId="999" fillId="999" borderId="999"/>')
        .replace("</fonts>", '<font><color theme="99"/></font></fonts>')
        .replace("</fills>", "<fill/></fills>"),
    );
    expect(Object.keys(opened(odd).contents![1]!.cells)).toEqual(Object.keys(contents[1]!.cells));
    const look = edited(FIRST, (text) => text.replace(/ s="\d+"/, ' s="70000"'));
    expect(opened(look).told).toMatch(/The look of 1 cells of "First" is not in the file/);
  });

  test("ranges to the last cell of a sheet are cut to the used part, with a remark", () => {
    const far = edited(FIRST, (text) =>
      text
        .replace(/<mergeCells[^>]*>/, '$&<mergeCell ref="F20:XFD1048576"/>')
        .replace(/(<dataValidation [^>]*sqref=")[^"]*/, "$1A1:XFD1048576")
        .replace(/<f t="array" ref="[^"]*">IF/, '<f t="array" ref="C4:XFD4">IF'),
    );
    const named = fileOf({
      ...textsOf(far),
      "xl/workbook.xml": texts["xl/workbook.xml"]!.replace(
        "<definedNames>",
        '<definedNames><definedName name="far">First!$A$1:$XFD$1048576</definedName><definedName name="last">First!$XFD$1048576</definedName>',
      ),
    });
    const { workbook, remarks } = openXlsx(named);
    const { getters } = workbook.model;
    const sheetId = getters.getSheetIdByName("First")!;
    expect(getters.getNumberRows(sheetId) * getters.getNumberCols(sheetId)).toBeLessThan(10_000);
    expect(remarks.map(english).join(" ")).toMatch(/name far leads to A1:XFD1048576.*name last leads to XFD1048576/);
    expect(remarks.map(english).join(" ")).toMatch(/Merged cells of "First"/);
  });

  test("a value in the last row opens, and the sheet ends there", () => {
    const tall = edited(FIRST, (text) =>
      text.replace("</sheetData>", '<row r="1048576"><c r="A1048576"><v>7</v></c></row></sheetData>'),
    );
    const { model } = openXlsx(tall).workbook;
    const sheetId = model.getters.getSheetIdByName("First")!;
    expect(model.getters.getNumberRows(sheetId)).toBe(1_048_576);
    expect(model.getters.getEvaluatedCell({ sheetId, col: 0, row: 1_048_575 }).value).toBe(7);
  });

  test.each([
    ["8,192 characters", `1${`+1.${"0".repeat(17)}`.repeat(409)}`, 410],
    ["2,000 operators", `1${"+1".repeat(2000)}`, 2001],
    ["4,000 brackets, one in the other", `${"(".repeat(4000)}1${")".repeat(4000)}`, undefined],
    ["a text of 8,000 characters", `LEN("${"x".repeat(8000)}")`, 8000],
  ])("a formula of %s", (_, formula, value) => {
    const found = opened(edited(FIRST, (text) => text.replace(/<f[^>]*>IF[^<]*<\/f>/, `<f>${formula}</f>`)));
    expect(found.contents![1]!.cells.A3).toEqual(["2360", 2360, ""]);
    if (value !== undefined) expect(found.contents![1]!.cells.C4![1]).toBe(value);
  });

  test("a formula with more operators than the engine can take keeps its value, with a remark", () => {
    const formula = `<f>${"-".repeat(8000)}1</f><v>1</v>`;
    const found = opened(edited(FIRST, (text) => text.replace(/<f[^>]*>IF[^<]*<\/f>\s*<v>[^<]*<\/v>/, formula)));
    expect(found.told).toMatch(/1 formulas of "First" have too many operators/);
    expect(found.contents![1]!.cells.C4![1]).toBe("1");
  });

  test("formulas that differ only in their cells and texts, as of sheets in two languages, count once", () => {
    const isLight = workLimit();
    const formula = (word: string, cell: string) => `=IF(${cell}="${word}",${"1+".repeat(4000)}1)`;
    expect(isLight(formula("wetting", "C90"))).toBe(true);
    expect(isLight(formula("Wässern", "C91"))).toBe(true);
    expect(isLight(`${formula("wetting", "C92")}-1`)).toBe(false);
  });

  test("elements nested 100,000 deep are refused", () => {
    expectSafe(
      edited(FIRST, (text) => text.replace("</sheetData>", `</sheetData>${"<a>".repeat(1e5)}${"</a>".repeat(1e5)}`)),
    );
  });
});

describe("a file of another kind under the name .xlsx", () => {
  const compound = (word: string) =>
    Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0, ...[...word].flatMap((one) => [one.charCodeAt(0), 0]), 0, 0]);
  test.each<[string, () => Uint8Array, RegExp]>([
    ["locked with a password", () => compound("EncryptedPackage"), /locked with a password: open it in Excel/],
    [".xls", () => compound("Workbook"), /old \.xls kind: open it in Excel/],
    [".csv", () => strToU8("time,reading\n0,1.25\n"), /a file of text.*save it as \.xlsx; readings of a logger/],
    [".csv in UTF-16", () => Uint8Array.from([0xff, 0xfe, 0x74, 0]), /a file of text/],
    ["a web page", () => strToU8("\ufeff <html><table>"), /a web page or an XML file/],
    [".pdf", () => strToU8("%PDF-1.7"), /a PDF file/],
    ["nothing", () => new Uint8Array(), /empty/],
    ["bytes", () => Uint8Array.from([1, 0, 2, 0]), /not an \.xlsx workbook/],
    [
      ".ods",
      () =>
        zipSync({
          mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"),
          "content.xml": strToU8("<a/>"),
        }),
      /OpenDocument file.*save it as \.xlsx/,
    ],
    [".xlsb", () => zipSync({ "xl/workbook.bin": new Uint8Array(3) }), /binary \.xlsb kind/],
    [".docx", () => zipSync({ "word/document.xml": strToU8("<a/>") }), /Word or PowerPoint/],
    [
      "a zip with a workbook inside",
      () => zipSync({ "data/test.xlsx": file }),
      /holds data\/test\.xlsx: unpack it first/,
    ],
    ["a zip of something else", () => zipSync({ "a.txt": strToU8("x") }), /a zip archive and not an \.xlsx workbook/],
  ])("%s", (_, make, sentence) => {
    expect(opened(make()).refusal).toMatch(sentence);
  });
});

test("a refused file leaves the workbook on the page unchanged, and no step to undo", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const before = JSON.stringify(port.workbook.model.exportData());
  for (const bytes of [
    file.slice(0, 4000),
    edited(FIRST, (text) => text.replace("<v>2360</v>", "<v>x</v>")),
    strToU8("a,b"),
  ])
    await expect(port.insertFile(bytes)).rejects.toThrow(SENTENCE);
  expect(JSON.stringify(port.workbook.model.exportData())).toBe(before);
});
