/** All complaints of the schemas, the package rules and Excel's rules about an .xlsx file; empty for a sound file. */
import { execFileSync } from "node:child_process";
import path from "node:path";
import { CHART_RULES } from "./chart-rules";
import { CONTAINER_RULES } from "./container-rules";
import { EXCEL_RULES } from "./excel-rules";
import { Package } from "./package";
import { PACKAGE_RULES, type Rule } from "./package-rules";
import { REPAIR_RULES } from "./repair-rules";

/** The schema of a part by its content type. A drawing of notes (VML) and core properties have none here. */
const SCHEMAS: readonly (readonly [RegExp, string])[] = [
  [/spreadsheetml\.(sheet\.main|worksheet|styles|sharedStrings|sheetMetadata|comments|table)\+xml$/, "sml.xsd"],
  [/officedocument\.drawing\+xml$/, "dml-spreadsheetDrawing.xsd"],
  [/drawingml\.chart\+xml$/, "dml-chart.xsd"],
  [/theme\+xml$/, "dml-main.xsd"],
  [/extended-properties\+xml$/, "shared-documentPropertiesExtended.xsd"],
  [/relationships\+xml$/, "opc-relationships.xsd"],
];
const WITHOUT_SCHEMA = /vmlDrawing$|core-properties\+xml$|^image\//;

const RULES: Readonly<Record<string, Rule>> = {
  ...CONTAINER_RULES,
  ...PACKAGE_RULES,
  ...EXCEL_RULES,
  ...REPAIR_RULES,
  ...CHART_RULES,
};

interface Job {
  readonly path: string;
  readonly schema: string;
  readonly text: string;
}

/** The complaints of the schemas about each part, file by file. One process checks all files: it reads the schemas once. */
export function schemaComplaintsOfEach(files: readonly Package[]): string[][] {
  const said: string[][] = files.map(() => []);
  const jobs: (Job & { readonly about: string[] })[] = [];
  for (const [index, file] of files.entries())
    for (const at of file.paths) {
      const about = said[index];
      const type = at === "[Content_Types].xml" ? "" : (file.typeOf(at) ?? "none");
      const schema = type === "" ? "opc-contentTypes.xsd" : SCHEMAS.find(([pattern]) => pattern.test(type))?.[1];
      if (schema) jobs.push({ path: at, schema, text: file.text(at), about });
      else if (!WITHOUT_SCHEMA.test(type)) about.push(`${at} is of type ${type}, for which there is no schema`);
    }
  const answers: string[][] = JSON.parse(
    execFileSync(process.execPath, [path.join(__dirname, "validate.mjs")], {
      input: JSON.stringify(jobs.map(({ schema, text }) => ({ schema, text }))),
      encoding: "utf8",
      maxBuffer: 1e9,
    }),
  );
  for (const [index, list] of answers.entries()) {
    const { about, path: at } = jobs[index];
    about.push(...list.map((one) => `${at}: ${one}`));
  }
  return said;
}

/** The complaints of the package rules and of Excel's rules. */
export const ruleComplaints = (file: Package): string[] => Object.values(RULES).flatMap((rule) => rule(file));

/** All complaints about each file. */
export function complaintsOfEach(given: readonly Uint8Array[]): string[][] {
  const files = given.map((bytes) => new Package(bytes));
  return schemaComplaintsOfEach(files).map((said, index) => [...said, ...ruleComplaints(files[index])]);
}

export const complaintsOf = (given: Uint8Array): string[] => complaintsOfEach([given])[0];
