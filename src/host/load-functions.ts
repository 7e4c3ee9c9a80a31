/** Loads functions.js and functions.json as Excel does, and registers the functions in the sheet. */
import { collectFunctions, registerFunctions, type FunctionSettings } from "../workbook/embedded";

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

export async function loadFunctions(settings: FunctionSettings): Promise<void> {
  const { CustomFunctions, associations } = collectFunctions();
  Object.assign(window, { CustomFunctions });
  const [metadata] = await Promise.all([fetchText("functions.json"), loadScript("functions.js")]);
  registerFunctions(JSON.parse(metadata).functions, associations, settings);
}
