/** What the modules of the pane and the helpers of its tests expect around them, outside of Jest. */
import { createRequire } from "node:module";
import { JSDOM } from "jsdom";

const { window } = new JSDOM("<!doctype html><body></body>", { pretendToBeVisual: true, url: "https://localhost/" });
for (const name of Object.getOwnPropertyNames(window))
  if (!(name in globalThis))
    Object.defineProperty(globalThis, name, { value: window[name as never], configurable: true, writable: true });
Object.assign(globalThis, {
  window,
  IS_REACT_ACT_ENVIRONMENT: true,
  jest: { requireActual: createRequire(__filename), spyOn: () => ({ mockImplementation: () => undefined }) },
});
// The engine of the embedded sheet tells its timings there; the answer of this program is the only text of its output.
console.debug = () => undefined;
