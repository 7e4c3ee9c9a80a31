/**
 * `tsx src/host/build/first-workbook.ts FILE`: writes the workbook on which the page of `npm start` opens. Made at build, it need not be made
 * at every start, which takes a quarter of the page's time until the demonstration stands.
 */
import { writeFileSync } from "node:fs";
import { demoSheet } from "../../datasheet";
import { asText, EmbeddedPort, newWorkbook } from "../../workbook/embedded";
import { haveGroupBy } from "./group-by";

async function make(file: string): Promise<void> {
  haveGroupBy();
  const port = new EmbeddedPort(newWorkbook(undefined, { isOnlyCopied: true }));
  await port.insertSheet(demoSheet("SI"));
  writeFileSync(file, asText(port.workbook));
}

void make(process.argv[2]!);
