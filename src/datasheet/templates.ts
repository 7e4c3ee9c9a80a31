/**
 * `npm run templates` writes the blank data sheets as .xlsx files. The bytes stay the same as long as the sheet does
 * not change.
 */
import { writeFileSync } from "fs";
import { join } from "path";
import { blankSheet } from "./layout";
import type { System } from "../specification/measures";
import { toXlsx } from "./xlsx";

export const TEMPLATES: Readonly<Record<System, string>> = { SI: "clayledger-si.xlsx", US: "clayledger-us.xlsx" };

export const templateBytes = (system: System): Promise<Uint8Array> => toXlsx(blankSheet(system));

async function write(folder: string): Promise<void> {
  for (const [system, file] of Object.entries(TEMPLATES))
    // Object.entries returns keys of type string; these keys are the unit systems.
    writeFileSync(join(folder, file), await templateBytes(system as System));
}

if (require.main === module) void write(join(__dirname, "../../templates"));
