/** The worksheet functions of the project in the engine, with metadata generated as in the build. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { collectFunctions, registerFunctions, type FunctionSettings } from "../../../src/workbook/embedded/functions";
import { translateAnswers } from "../../../src/pane/live/sheet-language";
import { oncePerRun } from "../../run-folder";

const folder = path.join(__dirname, "../../../src/functions");

/** The metadata as JSON. They are made once per run: the package that makes them loads TypeScript. */
async function makeMetadata(): Promise<string> {
  const files = readdirSync(folder)
    .map((file) => path.join(folder, file))
    .filter((file) => file.endsWith(".ts") && readFileSync(file, "utf8").includes("@customfunction"));
  const { generateCustomFunctionsMetadata } = await import("custom-functions-metadata");
  return (await generateCustomFunctionsMetadata(files)).metadataJson;
}

const settings: FunctionSettings = { blankAs: null };

async function register(): Promise<void> {
  const metadata = await oncePerRun("functions.json", null, makeMetadata);
  const { CustomFunctions, associations } = collectFunctions();
  Object.assign(globalThis, { CustomFunctions });
  await import("../../../src/functions/index");
  // As the page does; the functions alone answer in English.
  translateAnswers();
  registerFunctions(JSON.parse(metadata).functions, associations, settings);
}

let registered: Promise<void> | undefined;

/** Registers the functions, once, and says how a blank cell is passed from now on. */
export async function registerRealFunctions({ blankAs }: FunctionSettings): Promise<void> {
  settings.blankAs = blankAs;
  await (registered ??= register());
}

/** Registers the functions; a blank cell is passed as null. */
export const haveRealFunctions = (): Promise<void> => registerRealFunctions({ blankAs: null });
