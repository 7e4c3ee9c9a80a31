/**
 * Asks the engine how it spells formulas for Excel: one of each form, since formulas that differ only in their references and names
 * are spelled alike. All formulas of a workbook at once held the page for most of a second.
 */
import { helpers, tokenize } from "@odoo/o-spreadsheet";
import { heldText } from "../../../file/escapes";
import { writtenSheet } from "../../evaluation/export";
import { withHeldGroups, withoutHeldGroups } from "../../evaluation/tight-minus";
import { lightElements, type LightElement } from "../../../file/light-xml";

/** The number of formulas that are asked at a time. */
const AT_ONCE = 300;
/** The number of them in a row. */
const ACROSS = 100;

const named = (within: LightElement, name: string): LightElement[] =>
  within.children.flatMap((child) => [...(child.localName === name ? [child] : []), ...named(child, name)]);

/** Some formulas as cells of a sheet, which the engine writes as a file. Returns the cells. */
async function written(formulas: readonly string[]): Promise<LightElement[]> {
  const cells = Object.fromEntries(
    formulas.map((formula, i) => [helpers.toXC(i % ACROSS, Math.floor(i / ACROSS)), heldText(withHeldGroups(formula))]),
  );
  const cellValues = Object.fromEntries(Object.keys(cells).map((at) => [at, 0]));
  const size = { colNumber: ACROSS, rowNumber: Math.ceil(formulas.length / ACROSS) };
  const text = await writtenSheet({ cells, cellValues, formulaSpillRanges: {}, ...size });
  return [...lightElements(text)].flatMap((part) => named(part, "c"));
}

/** The engine's spelling of each formula. */
async function asked(formulas: readonly string[], rest: () => Promise<void>): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  for (let from = 0; from < formulas.length; from += AT_ONCE) {
    await rest();
    const part = formulas.slice(from, from + AT_ONCE);
    for (const cell of await written(part)) {
      const { row, col } = helpers.toCartesian(cell.getAttribute("r")!);
      const text = named(cell, "f")[0]?.textContent;
      if (text !== undefined) found.set(part[row * ACROSS + col]!, withoutHeldGroups(text));
    }
  }
  return found;
}

/** A formula in parts: what stands between its references and names, and these. */
interface Form {
  readonly between: readonly string[];
  readonly names: readonly string[];
}

function formOf(formula: string): Form {
  const between = [""];
  const names: string[] = [];
  const tokens = tokenize(formula);
  for (const [i, { type, value }] of tokens.entries()) {
    const isName = type === "SYMBOL" && tokens[i + 1]?.type !== "LEFT_PAREN" && !/^(?:true|false)$/i.test(value);
    if (isName || (type === "REFERENCE" && tokens[i + 1]?.type !== "LEFT_PAREN")) {
      names.push(value);
      between.push("");
    } else between.push(between.pop()! + value);
  }
  return { between, names };
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

/** The number of formulas after which the page may react. */
const IN_A_SLICE = 100;

/**
 * The spelling for Excel of each formula ("=..."), by the formula; the spelling is without "=". `rest` is called again and again: it lets
 * the page react, and ends the work by an error when somebody stops it.
 */
export async function spellings(
  formulas: Iterable<string>,
  rest: () => Promise<void> = async () => undefined,
): Promise<Map<string, string>> {
  const byForm = new Map<string, { readonly formula: string; readonly names: readonly string[] }[]>();
  let count = 0;
  for (const formula of new Set(formulas)) {
    if (++count % IN_A_SLICE === 0) await rest();
    const { between, names } = formOf(formula);
    const key = JSON.stringify(between);
    const alike = byForm.get(key);
    if (alike) alike.push({ formula, names });
    else byForm.set(key, [{ formula, names }]);
  }
  const firsts = await asked(
    [...byForm.values()].flatMap(([one]) => one?.formula ?? []),
    rest,
  );
  const found = new Map(firsts);
  const unlike: string[] = [];
  for (const [first, ...others] of byForm.values()) {
    if (++count % IN_A_SLICE === 0) await rest();
    const answer = first && firsts.get(first.formula);
    if (answer === undefined) continue;
    const { between, names } = formOf(`=${answer}`);
    // Where the engine adds or changes a name, each formula of the form is asked.
    if (!isSame(names, first!.names)) others.forEach(({ formula }) => unlike.push(formula));
    else
      for (const { formula, names: own } of others)
        found.set(formula, between.map((part, i) => part + (own[i] ?? "")).join("").slice(1)); // prettier-ignore
  }
  for (const [formula, spelling] of await asked(unlike, rest)) found.set(formula, spelling);
  return found;
}
