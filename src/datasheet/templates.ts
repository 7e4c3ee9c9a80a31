/**
 * `npm run templates` writes the blank data sheets as .xlsx files. The bytes stay the same as long as the sheet does
 * not change.
 */
import { writeFileSync } from "fs";
import { join } from "path";
import { blankSheet } from "./layout";
import type { System } from "../specification/measures";
import type { SheetLanguage } from "../specification/text/language";
import { toXlsx } from "./xlsx";

export interface Template {
  readonly file: string;
  readonly system: System;
  readonly language: SheetLanguage;
}

export const TEMPLATES: readonly Template[] = [
  { file: "clayledger-si.xlsx", system: "SI", language: "en" },
  { file: "clayledger-us.xlsx", system: "US", language: "en" },
  { file: "clayledger-si-de.xlsx", system: "SI", language: "de" },
  { file: "clayledger-us-de.xlsx", system: "US", language: "de" },
];

export const templateBytes = (system: System, language: SheetLanguage = "en"): Promise<Uint8Array> =>
  toXlsx(blankSheet(system, { language }));

async function write(folder: string): Promise<void> {
  for (const { file, system, language } of TEMPLATES)
    writeFileSync(join(folder, file), await templateBytes(system, language));
}

if (require.main === module) void write(join(__dirname, "../../templates"));
