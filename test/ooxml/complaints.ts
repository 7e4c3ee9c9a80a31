/** All complaints of the schemas, the package rules and Excel's rules about an .xlsx file; empty for a sound file. */
import { execFileSync } from "node:child_process";
import path from "node:path";
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

export const RULES: Readonly<Record<string, Rule>> = { ...PACKAGE_RULES, ...EXCEL_RULES, ...REPAIR_RULES };

interface Job {
  readonly path: string;
  readonly schema: string;
  readonly text: string;
}

/** The complaints of the schemas about each part. */
export function schemaComplaints(file: Package): string[] {
  const said: string[] = [];
  const jobs = file.paths.flatMap((at): Job[] => {
    const type = at === "[Content_Types].xml" ? "" : (file.typeOf(at) ?? "none");
    const schema = type === "" ? "opc-contentTypes.xsd" : SCHEMAS.find(([pattern]) => pattern.test(type))?.[1];
    if (!schema && !WITHOUT_SCHEMA.test(type)) said.push(`${at} is of type ${type}, for which there is no schema`);
    return schema ? [{ path: at, schema, text: file.text(at) }] : [];
  });
  const answers: string[][] = JSON.parse(
    execFileSync(process.execPath, [path.join(__dirname, "validate.mjs")], {
      input: JSON.stringify(jobs),
      encoding: "utf8",
      maxBuffer: 1e9,
    }),
  );
  return [...said, ...answers.flatMap((list, index) => list.map((one) => `${jobs[index].path}: ${one}`))];
}

export function complaintsOf(given: Uint8Array | Package): string[] {
  const file = given instanceof Package ? given : new Package(given);
  return [...schemaComplaints(file), ...Object.values(RULES).flatMap((rule) => rule(file))];
}
