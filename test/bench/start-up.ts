/** Prints the milliseconds from the text of dist/functions.js to the last function that it registers. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";

const code = readFileSync(join(__dirname, "../../dist/functions.js"), "utf8");
const host = createContext({ CustomFunctions: { associate: () => undefined } });
const start = performance.now();
runInContext(code, host);
console.log(performance.now() - start);
