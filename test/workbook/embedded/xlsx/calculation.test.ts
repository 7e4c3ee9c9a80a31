/** A saved file says that its values are worked out, so that Excel shows them where the add-in is missing. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { english } from "../../../../src/reduction/message";
import { EmbeddedPort } from "../../../../src/workbook/embedded";
import { openXlsx } from "../../../../src/workbook/embedded/xlsx/open";
import { saveXlsx } from "../../../../src/workbook/embedded/xlsx/saving/save";
import { complaintsOfEach } from "../../../ooxml/complaints";

const WORKBOOK = "xl/workbook.xml";

/** A file with one formula, and with these attributes of calcPr. */
async function fileWith(attributes: string, formula = "SUM(B1:B2)"): Promise<Uint8Array> {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  sheet.getCell("A1").value = { formula, date1904: false, result: 3 };
  [1, 2].forEach((value, i) => (sheet.getCell(i + 1, 2).value = value));
  const parts = unzipSync(new Uint8Array(await made.xlsx.writeBuffer()));
  const before = strFromU8(parts[WORKBOOK]);
  const after = before.replace(/<calcPr [^>]*>/, attributes === "none" ? "" : `<calcPr ${attributes}/>`);
  if (after === before) throw new Error("the file has no calcPr");
  return zipSync({ ...parts, [WORKBOOK]: strToU8(after) });
}

/** The attributes of calcPr in the part of the workbook. */
function calcPrOf(file: Uint8Array): Record<string, string> {
  const [, attributes = ""] = /<calcPr ([^>]*?)\/?>/.exec(strFromU8(unzipSync(file)[WORKBOOK])) ?? [];
  return Object.fromEntries([...attributes.matchAll(/(\w+)="([^"]*)"/g)].map(([, name, value]) => [name, value]));
}

/** The files that the tests have saved: the schemas are asked once. */
const written: Uint8Array[] = [];

/** The file as the page saves it again, through the port that the page has. */
const savedAgain = async (file: Uint8Array): Promise<Uint8Array> => {
  const saved = await saveXlsx(new EmbeddedPort(openXlsx(file).workbook).workbook);
  written.push(saved);
  return saved;
};

const ID = { calcId: "191029" };

test.each([
  ["none", ID],
  ['calcId="171027" fullCalcOnLoad="1" calcCompleted="0"', ID],
  [
    'calcId="191029" calcMode="manual" calcOnSave="0" refMode="R1C1"',
    { ...ID, calcMode: "manual", calcOnSave: "0", refMode: "R1C1" },
  ],
  ['calcId="191029" calcMode="never" iterateCount="many" iterate="perhaps"', ID],
])(
  "of a file with calcPr %s the settings of a person stay, and the values are said to be worked out",
  async (given, kept) => {
    expect(calcPrOf(await savedAgain(await fileWith(given)))).toEqual(kept);
  },
);

test.each([
  [
    'calcId="191029" iterate="1" iterateCount="50" iterateDelta="1E-4"',
    { iterate: "1", iterateCount: "50", iterateDelta: "1E-4" },
  ],
  ['calcId="191029" fullPrecision="0"', { fullPrecision: "0" }],
])("where Excel calculates otherwise than the page, as with %s, it is asked to", async (given, kept) => {
  expect(calcPrOf(await savedAgain(await fileWith(given)))).toEqual({ ...kept, fullCalcOnLoad: "1" });
});

test.each([
  ['calcId="191029" calcMode="auto" iterate="0" fullPrecision="1"', []],
  ['fullPrecision="0"', [/^By the settings of this file Excel calculates with the figures as they are shown/]],
  ['iterate="true"', [/Excel calculates circular formulas step by step/]],
  [
    'calcMode="manual" iterate="1"',
    [/Excel calculates circular formulas .*, calculates only when a person asks for it.* after every entry/],
  ],
])("of a file with calcPr %s the page says how it calculates otherwise", async (given, said) => {
  const { remarks } = openXlsx(await fileWith(given));
  expect(remarks.map(english)).toEqual(said.map((one) => expect.stringMatching(one)));
});

test("so it is if the page lacks a function", async () => {
  const file = await fileWith('calcId="191029" calcMode="manual"', "OWNMACRO(B1:B2)");
  expect(calcPrOf(await savedAgain(file))).toEqual({ calcMode: "manual", fullCalcOnLoad: "1" });
});

test("the features of Excel's calculation are listed beside its number", async () => {
  const text = strFromU8(unzipSync(await savedAgain(await fileWith("none")))[WORKBOOK]);
  const names = [...text.matchAll(/feature name="microsoft\.com:(\w+)"/g)].map(([, name]) => name);
  expect(names).toEqual(["RD", "Single", "FV", "CNMTM", "LET_WF", "LAMBDA_WF", "ARRAYTEXT_WF"]);
});

test("sheets of a file that are inserted do not change how the workbook is calculated", async () => {
  const port = new EmbeddedPort(openXlsx(await fileWith("none")).workbook);
  await port.insertFile(await fileWith('calcMode="manual"'));
  expect(calcPrOf(await saveXlsx(port.workbook))).toEqual(ID);
});

test("schemas and rules have no complaint about a file saved here", () => {
  expect(written.length).toBeGreaterThan(6);
  expect(complaintsOfEach(written).flat()).toEqual([]);
});
