/** `tsx src/help/make.ts [folder]`: writes help.html and first-minutes.html into dist, or into the folder given. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { createElement } from "react";
import project from "../../package.json";
import { calledBy, evaluate, loadFunctions, type Result } from "./evaluate";
import { FirstMinutes } from "./first-minutes";
import { HelpPage, type HelpEntry, type HelpGroup } from "./help-page";
import { readFunctions, titleOf, type FunctionHelp } from "./jsdoc";
import { toHtml } from "./layout";
import { drawPicture } from "./pictures";

const SOURCE = path.join(__dirname, "../functions");

export type Calculate = (formula: string) => Result;

/** The functions with their examples calculated, the groups in the order in which the add-in registers them. */
export async function helpGroups(): Promise<{ groups: HelpGroup[]; calculate: Calculate }> {
  const functions = await loadFunctions();
  const all = readFunctions(SOURCE);
  const byId = new Map<string, FunctionHelp>(all.map((one) => [one.id, one]));
  const calculate: Calculate = (formula) => {
    const help = byId.get(calledBy(formula));
    if (!help) throw new Error(`${formula}: there is no such function`);
    return evaluate(formula, help, functions);
  };
  const worked = (formulas: readonly string[], isRefused: boolean) =>
    formulas.map((formula) => {
      const result = calculate(formula);
      if ("code" in result !== isRefused)
        throw new Error(
          `${formula} ${isRefused ? "is not refused" : `is refused: ${"code" in result && result.reason}`}`,
        );
      return { formula, result };
    });
  const entries = all.map((one): HelpEntry => ({
    ...one,
    worked: worked(one.examples, false),
    refused: worked(one.refusals, true),
  }));
  const groupOf = new Map(entries.map(({ id, group }) => [id, group]));
  const names = [...new Set([...functions.keys()].map((id) => groupOf.get(id)!))];
  return {
    groups: names.map((name) => ({
      title: titleOf(SOURCE, name),
      entries: entries.filter(({ group }) => group === name),
    })),
    calculate,
  };
}

export async function makePages(folder: string): Promise<void> {
  const style = readFileSync(path.join(__dirname, "page.css"), "utf8");
  const { groups, calculate } = await helpGroups();
  const names = groups.flatMap(({ entries }) => entries.flatMap(({ pictures }) => pictures));
  const pictures = new Map([...new Set(names)].map((name) => [name, drawPicture(name)]));
  const { version } = project;
  const pages = {
    "help.html": toHtml({
      title: "Clayledger: worksheet functions",
      style,
      body: createElement(HelpPage, { version, groups, pictures }),
    }),
    "first-minutes.html": toHtml({
      title: "Clayledger: the first ten minutes in Excel",
      style,
      body: createElement(FirstMinutes, { version, calculate }),
    }),
  };
  mkdirSync(folder, { recursive: true });
  for (const [file, html] of Object.entries(pages)) writeFileSync(path.join(folder, file), html);
}

if (require.main === module) void makePages(process.argv[2] ?? path.join(__dirname, "../../dist"));
