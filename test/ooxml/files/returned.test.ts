/**
 * Workbooks of ours that LibreOffice and exceljs have opened and saved: they come back into the page with what the page
 * promises to keep. `OTHERS` lists what the other program changes, with its reason.
 */
import "../../workbook/embedded/engine-in-node";
import { isDeepStrictEqual } from "node:util";
import ExcelJS from "exceljs";
import { demoSheet } from "../../../src/datasheet";
import { openXlsx, saveXlsx, type OpenWorkbook } from "../../../src/workbook/embedded";
import { protectionOf } from "../../../src/workbook/embedded/protection";
import { addressOf, type Zone } from "../../../src/workbook/embedded/zones";
import { reported } from "../../report/report-in-engine";
import { opened } from "../../workbook/embedded/opened";
import { contentsOf } from "../../workbook/embedded/xlsx/base-file";
import { savedByLibreOffice } from "./libreoffice-reader";

const OURS: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  "the SI demonstration": async () => saveXlsx((await opened(demoSheet("SI"))).port.workbook),
  "the German demonstration": async () => saveXlsx((await opened(demoSheet("SI", "de"))).port.workbook),
  "a US report": async () => saveXlsx((await reported(demoSheet("US"), { paper: "Letter" })).port.workbook),
};
const NAMES = Object.keys(OURS);

/** What the page promises to keep of a sheet. */
interface Promised {
  readonly name: string;
  /** Formula or constant, and value, by address. */
  readonly cells: Readonly<Record<string, readonly [text: string, value: unknown]>>;
  readonly names: readonly string[];
  readonly notes: readonly string[];
  readonly merges: readonly string[];
  /** Cells by what the rule asks, as ranges of one column each. */
  readonly rules: Readonly<Record<string, readonly Zone[]>>;
  readonly isProtected: boolean;
  /** The cells open to entries, as ranges of one column each. */
  readonly open: readonly Zone[];
  readonly widths: readonly number[];
}

const sortedTexts = (list: readonly unknown[]): string[] => list.map((one) => JSON.stringify(one)).sort();

/** The same cells as ranges of one column each, as long as can be: programs divide ranges in different ways. */
function inColumns(zones: readonly Zone[]): Zone[] {
  const single = zones
    .flatMap(({ left, right, top, bottom }) =>
      Array.from({ length: right - left + 1 }, (_, i) => ({ left: left + i, right: left + i, top, bottom })),
    )
    .sort((a, b) => a.left - b.left || a.top - b.top);
  const joined: Zone[] = [];
  for (const zone of single) {
    const last = joined.at(-1);
    if (last?.left === zone.left && zone.top <= last.bottom + 1)
      joined.splice(-1, 1, { ...last, bottom: Math.max(last.bottom, zone.bottom) });
    else joined.push(zone);
  }
  return joined;
}

function promised(workbook: OpenWorkbook): Promised[] {
  const { getters } = workbook.model;
  return contentsOf(workbook).map(({ name, cells, names, notes, merges }, index) => {
    const sheetId = getters.getSheetIds()[index]!;
    const rules = new Map<string, Zone[]>();
    for (const { ranges, criterion } of getters.getDataValidationRules(sheetId)) {
      const bounds = criterion.values.map((bound) => (Number.isFinite(Number(bound)) ? String(Number(bound)) : bound));
      const asks = [criterion.type, ...bounds].join(" ");
      rules.set(asks, [...(rules.get(asks) ?? []), ...ranges.map(({ zone }) => zone)]);
    }
    const { on, open } = protectionOf(workbook.model, sheetId);
    const columns = Array.from({ length: getters.getNumberCols(sheetId) }, (_, column) => column);
    return {
      name,
      cells: Object.fromEntries(Object.entries(cells).map(([at, [text, value]]) => [at, [text as string, value]])),
      names: sortedTexts(names),
      notes: sortedTexts(notes),
      merges: merges.map(addressOf).sort(),
      rules: Object.fromEntries([...rules].map(([asks, zones]) => [asks, inColumns(zones)])),
      isProtected: on,
      open: inColumns(open),
      widths: columns.map((column) => getters.getColSize(sheetId, column)),
    };
  });
}

/** A change by another program: what it does, with the reason, and the contents as they are alike before and after it. */
interface Change {
  readonly what: string;
  readonly why: string;
  readonly alike: (sheet: Promised) => Promised;
}

const upTo = (zones: readonly Zone[], last: number): Zone[] =>
  zones.flatMap((zone) => (zone.top >= last ? [] : [{ ...zone, bottom: Math.min(zone.bottom, last - 1) }]));
const cellsBy = (sheet: Promised, one: (text: string, value: unknown) => [string, unknown]): Promised => ({
  ...sheet,
  cells: Object.fromEntries(Object.entries(sheet.cells).map(([at, [text, value]]) => [at, one(text, value)])),
});

/** The last row with a cell of the data sheets here is 165: below are blank rows for longer readings, to row 2123. */
const LAST_WITH_CELLS = 165;
/** The last column of the picks, counted from 0: right of it stand the workings of the remarks, and below them nothing. */
const LAST_OF_PICKS = 55;
const OPENS_BESIDE: Change = {
  what: "opens blank cells below the workings of the remarks",
  why: "empty cells without a style are not in its file, so they have that of their row, which is open; nothing reads them",
  alike: (sheet) => ({ ...sheet, open: sheet.open.filter(({ left }) => left <= LAST_OF_PICKS) }),
};
const OTHERS: Readonly<Record<"LibreOffice" | "exceljs", readonly Change[]>> = {
  LibreOffice: [
    {
      what: "spells FALSE as FALSE()",
      why: "both are the same value",
      alike: (sheet) => cellsBy(sheet, (text, value) => [text.replace(/\b(TRUE|FALSE)\(\)/g, "$1"), value]),
    },
    {
      what: "keeps 15 digits of a constant",
      why: "our file has up to 17; what is calculated from them is compared to 12",
      alike: (sheet) =>
        cellsBy(sheet, (text, value) => [text, typeof value === "number" ? Number(value.toPrecision(12)) : value]),
    },
    {
      what: "ends rules 1,000 rows below the last row with cells",
      why: "the rows are not in its file; the readings of the longest loads are entered there without a rule",
      alike: (sheet) => ({
        ...sheet,
        rules: Object.fromEntries(
          Object.entries(sheet.rules).map(([asks, zones]) => [asks, upTo(zones, LAST_WITH_CELLS + 1000)]),
        ),
      }),
    },
    {
      what: "locks the rows more than 1,000 below the last row with cells",
      why: "the look of these rows is not in its file; the page says how protection is lifted",
      alike: (sheet) => ({ ...sheet, open: upTo(sheet.open, LAST_WITH_CELLS + 1000) }),
    },
    OPENS_BESIDE,
  ],
  exceljs: [
    {
      what: "locks the rows below the last row with cells",
      why: "the look of rows without cells is not in its file; the page says how protection is lifted",
      alike: (sheet) => ({ ...sheet, open: upTo(sheet.open, LAST_WITH_CELLS) }),
    },
    OPENS_BESIDE,
  ],
};
const alike = (sheets: readonly Promised[], changes: readonly Change[]): Promised[] =>
  sheets.map((sheet) => changes.reduce((so, change) => change.alike(so), sheet));

const before = new Map<string, Uint8Array>();
const wanted = new Map<string, Promised[]>();
beforeAll(async () => {
  for (const [name, make] of Object.entries(OURS)) {
    before.set(name, await make());
    wanted.set(name, promised(openXlsx(before.get(name)!).workbook));
  }
});

function comesBack(program: keyof typeof OTHERS, found: ReadonlyMap<string, Promised[]>): void {
  const changes = OTHERS[program];
  test.each(NAMES)("%s has the same cells, names, rules, notes, merged cells, protection and widths", (name) => {
    expect(alike(found.get(name)!, changes)).toEqual(alike(wanted.get(name)!, changes));
  });
  test.each(changes.map((change) => [change.what, change] as const))("%s", (_, change) => {
    const others = changes.filter((one) => one !== change);
    const isSame = (name: string): boolean =>
      isDeepStrictEqual(alike(found.get(name)!, others), alike(wanted.get(name)!, others));
    expect(NAMES.every(isSame)).toBe(false);
  });
}

describe("saved by exceljs", () => {
  const found = new Map<string, Promised[]>();
  beforeAll(async () => {
    for (const [name, bytes] of before) {
      const workbook = new ExcelJS.Workbook();
      await workbook.xlsx.load(new Uint8Array(bytes).buffer);
      found.set(name, promised(openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer())).workbook));
    }
  });
  comesBack("exceljs", found);
});

const isLeftOut = process.env.CLAYLEDGER_NO_LIBREOFFICE === "1" && !process.env.CI;

(isLeftOut ? describe.skip : describe)("saved by LibreOffice", () => {
  const found = new Map<string, Promised[]>();
  beforeAll(() => {
    const { CLAYLEDGER_LIBREOFFICE: program, CLAYLEDGER_LIBREOFFICE_MISSING: missing } = process.env;
    if (!program) throw new Error(missing ?? "the set-up of these tests has not run");
    const after = savedByLibreOffice(program, [...before.values()]);
    NAMES.forEach((name, index) => found.set(name, promised(openXlsx(after[index]!).workbook)));
  });
  comesBack("LibreOffice", found);
});
