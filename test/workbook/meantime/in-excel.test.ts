/** @jest-environment jsdom */
/**
 * Somebody else changes the workbook between two requests of an operation, in the strict stand-in for Excel. However the two meet,
 * the workbook is as if one of them had come first, or the operation changed nothing and says so.
 */
import { OfficePort } from "../../../src/workbook/office";
import type { Book } from "../../excel/book/book";
import { putBehind } from "../../excel/library";
import type { StrictExcel } from "../../excel/strict-excel";
import { seen } from "../office/meantime/book-as-text";
import { bookBefore, standInOf } from "./before";
import { called, once, type Compared, type End } from "./ends";
import { carryOut, FAULTS } from "./faults";
import { OPERATIONS, type Operation } from "./operations";
import { SEEN } from "./seen-in-excel";
import { expectEnds, tried, upTo } from "./tried";

const port = new OfficePort();
function endOf(excel: StrictExcel, message = ""): End {
  excel.endEdit();
  expect(excel.faults).toEqual([]);
  const { book } = excel;
  const { active, selection } = book;
  Object.assign(book, { active: "", selection: { kind: "nothing" } });
  const text = seen(excel, true);
  Object.assign(book, { active, selection });
  const cells = book.sheets.flatMap(({ cells: of }) => [...of.values()].map(({ value, formula }) => formula ?? value));
  return { book: text, cells: cells.map(String).sort(), message };
}

/** Carries the operation out; gives the sentence of a failure. */
const run = ({ work }: Operation): Promise<string> =>
  work(port).then(
    () => "",
    (error: Error) => error.message || error.constructor.name,
  );

/** The end of work on a workbook. The stand-in that is made last is Excel: it is put in its place first. */
async function of(excel: StrictExcel, work: () => Promise<string | void>): Promise<End> {
  putBehind(excel);
  const message = await work();
  return endOf(excel, message ?? "");
}

const SAYS_UNCHANGED = /as (it was|they were)\.$|[Nn]othing was (changed|written|inserted)/;

/** What hardly any request heeds: it is tried at the first request, at the last, and at one between them. */
const SELDOM = /structure|moved|filtered|added|another cell|front|manual|for a moment|password/;
/** Work of more requests than this is disturbed at every fourth one. */
const LONG = 25;

/** What is tried. Of a new sheet two-at-once.test.ts tries all: here only what may touch the sheets that it is made from, and its place. */
const faultsOf = ({ isOneSheet = false }: Operation): string[] =>
  Object.keys(FAULTS).filter((what) => !isOneSheet || !SELDOM.test(what) || /structure|added/.test(what));

/** The requests before which somebody else acts. A new sheet is made as another test has it (two-at-once.test.ts): until it is begun, and at its end. */
function requestsOf(what: string, { first, trips }: Cost): number[] {
  const all = upTo(trips);
  if (SELDOM.test(what)) return [...new Set([1, Math.ceil(trips / 2), trips])];
  if (first !== undefined) return all.filter((n) => n <= first + 1 || n >= trips - 1);
  return trips > LONG ? all.filter((n) => n % 4 === 0) : all;
}

interface Cost {
  readonly trips: number;
  /** The request that begins the new sheet that the operation is about. */
  readonly first?: number;
}

/** An operation that nobody disturbs, for every change that is compared with it. */
interface Undisturbed {
  readonly before: Book;
  readonly begun: End;
  readonly after: Book;
  readonly ours: End;
  readonly cost: Cost;
}

async function undisturbed(operation: Operation): Promise<Undisturbed> {
  const before = await bookBefore(operation);
  const begun = endOf(standInOf(before));
  const excel = standInOf(before);
  let trips = 0;
  const ours = await of(excel, async () => void ({ trips } = await excel.cost(() => operation.work(port))));
  const begins = excel.steps.find(({ line }) => line.includes("worksheets.add("))?.batch;
  const cost = { trips, ...(operation.isOneSheet && begins !== undefined && { first: begins + 1 }) };
  return { before, begun, after: excel.picture(), ours, cost };
}

async function ends(
  operation: Operation,
  what: string,
  { before, begun, after, ours, cost }: Undisturbed,
): Promise<string[]> {
  const act = FAULTS[what]!;
  const theirsOn = async (book: Book): Promise<End> => {
    const excel = standInOf(book);
    return of(excel, () => carryOut(act, excel, operation));
  };
  const compared: Compared = {
    ...{ what, begun, ours },
    theirs: once(() => theirsOn(before)),
    oursFirst: once(() => theirsOn(after)),
    theirsFirst: once(async () => {
      const first = standInOf(before);
      return of(first, async () => {
        await carryOut(act, first, operation);
        return run(operation);
      });
    }),
  };
  const all: string[] = [];
  for (const n of tried(requestsOf(what, cost), !SELDOM.test(what))) {
    const excel = standInOf(before);
    let theirs: Promise<void> | undefined;
    excel.beforeRequest(n, () => (theirs = carryOut(act, excel, operation)));
    const end = await of(excel, async () => {
      const message = await run(operation);
      await theirs;
      return message;
    });
    if (!operation.tellsMore && SAYS_UNCHANGED.test(end.message)) expect(end.book).toBe((await compared.theirs()).book);
    all.push(await called(end, compared));
  }
  return all;
}

describe.each(Object.entries(OPERATIONS))("%s", (name, operation) => {
  let made: Undisturbed;
  beforeAll(async () => void (made = await undisturbed(operation)));

  test.each(faultsOf(operation))("%s", async (what) => {
    expectEnds(await ends(operation, what, made), SEEN[name]?.[what] ?? "done");
  });
});
