import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { isDeepStrictEqual } from "node:util";
import "../../workbook/embedded/engine-in-node";
import { demoSheet } from "../../../src/datasheet";
import { asText, EmbeddedPort, fromText, newWorkbook, type OpenWorkbook } from "../../../src/workbook/embedded";
import { plainData } from "../../../src/workbook/embedded/engine";
import { haveRealFunctions } from "../../workbook/embedded/real-functions";

const root = path.join(__dirname, "../../..");

/** What the sheet in front shows, by cell. */
function shownIn({ model: { getters } }: OpenWorkbook): Record<string, unknown> {
  const sheetId = getters.getActiveSheetId();
  const cells = getters.getCells(sheetId).map(({ id }) => getters.getCellPosition(id));
  const shown = cells.map((cell) => [`${cell.col},${cell.row}`, getters.getEvaluatedCell(cell)] as const);
  return Object.fromEntries(
    shown.flatMap(([at, { value, formattedValue }]) => (formattedValue === "" ? [] : [[at, [value, formattedValue]]])),
  );
}

/** All that a workbook holds, and what it shows; the sheet that was made, and the last revision, have an id by chance. */
function contents(workbook: OpenWorkbook) {
  const { model, localNames } = workbook;
  const front = model.getters.getActiveSheetId();
  const names = [...localNames].map(([sheetId, local]) => [sheetId, [...local]]);
  const held: unknown = JSON.parse(
    JSON.stringify([{ ...plainData(model), revisionId: "" }, names, front]).replaceAll(front, "front"),
  );
  return { held, shown: shownIn(workbook) };
}

describe("the workbook on which the page opens", () => {
  let text: string;
  beforeAll(async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "first-"));
    const file = path.join(folder, "first-workbook.json");
    const script = path.join(root, "src/host/build/first-workbook.ts");
    execFileSync(process.execPath, ["--import", "tsx", script, file], { cwd: root, stdio: "ignore" });
    text = readFileSync(file, "utf8");
    rmSync(folder, { recursive: true });
    await haveRealFunctions();
  });

  test.each([undefined, ","] as const)(
    "is the demonstration as the pane inserts it, with its values and names; decimal mark: %s",
    async (mark) => {
      const port = new EmbeddedPort(newWorkbook(mark));
      await port.insertSheet(demoSheet("SI"));
      // The engine joins borders of neighbours when it reads them, so what was inserted is written and read as well.
      const [found, expected] = [fromText(text, mark), fromText(asText(port.workbook))].map(contents);
      // Jest takes seconds to compare cell by cell what is equal.
      if (!isDeepStrictEqual(found, expected)) expect(found).toEqual(expected);
      const shown = shownIn(port.workbook);
      if (!isDeepStrictEqual(found.shown, shown)) expect(found.shown).toEqual(shown);
    },
  );

  test("has no step to undo", () => {
    expect(fromText(text).model.getters.canUndo()).toBe(false);
  });
});
