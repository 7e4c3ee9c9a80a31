/**
 * `tsx src/host/build/first-workbook.ts FILE`: writes the workbook on which the page of `npm start` opens. Made at build, it need not be made
 * at every start, which takes a quarter of the page's time until the demonstration stands.
 */
import { writeFileSync } from "node:fs";
import { demoSheet } from "../../datasheet";
import { asText, EmbeddedPort, newWorkbook } from "../../workbook/embedded";

// Node 20 lacks this function, which the engine calls.
(Object as any).groupBy ??= (items: Iterable<unknown>, keyOf: (item: unknown) => string) => {
  const groups: Record<string, unknown[]> = {};
  for (const item of items) (groups[keyOf(item)] ??= []).push(item);
  return groups;
};

async function make(file: string): Promise<void> {
  const port = new EmbeddedPort(newWorkbook(undefined, { isOnlyCopied: true }));
  await port.insertSheet(demoSheet("SI"));
  writeFileSync(file, asText(port.workbook));
}

void make(process.argv[2]!);
