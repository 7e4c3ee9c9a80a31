/** The worksheet functions of the project in the engine, with metadata generated as in the build. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { collectFunctions, registerFunctions, type FunctionSettings } from "../../../src/workbook/embedded/functions";

const folder = path.join(__dirname, "../../../src/functions");

export async function registerRealFunctions(settings: FunctionSettings): Promise<void> {
  const files = readdirSync(folder)
    .map((file) => path.join(folder, file))
    .filter((file) => file.endsWith(".ts") && readFileSync(file, "utf8").includes("@customfunction"));
  const { metadataJson } = await generateCustomFunctionsMetadata(files);
  const { CustomFunctions, associations } = collectFunctions();
  Object.assign(globalThis, { CustomFunctions });
  await import("../../../src/functions/index");
  registerFunctions(JSON.parse(metadataJson).functions, associations, settings);
}
