/**
 * Loads functions.js and functions.json as Excel does, and registers the functions in the sheet; functions-de.json where
 * the page is German, and so on.
 */
import { fileIn, language } from "../pane/text/language";
import {
  collectFunctions,
  describeFunctions,
  registerFunctions,
  type FunctionMetadata,
  type FunctionSettings,
} from "../workbook/embedded";

function loadScript(source: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = source;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${source} could not be loaded`));
    document.head.append(script);
  });
}

export async function fetchText(source: string): Promise<string> {
  const response = await fetch(source);
  if (!response.ok) throw new Error(`${source} could not be loaded (${response.status})`);
  return response.text();
}

/** The functions as they are described in the language of the page. */
const described = async (): Promise<readonly FunctionMetadata[]> =>
  JSON.parse(await fetchText(fileIn("functions.json", language()))).functions;

export async function loadFunctions(settings: FunctionSettings): Promise<void> {
  const { CustomFunctions, associations } = collectFunctions();
  Object.assign(window, { CustomFunctions });
  const [metadata] = await Promise.all([described(), loadScript("functions.js")]);
  registerFunctions(metadata, associations, settings);
}

/** Describes the functions in the language that the page has now; if its file cannot be loaded, as they were described. */
export const describeAgain = (): Promise<void> => described().then(describeFunctions, () => undefined);
