/** `npm run licences`: the licences of all that dist holds, a line for each package. The texts stand in dist/licences.txt. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { listOf } from "./components";

process.stdout.write(listOf(readFileSync(path.join(__dirname, "../../../dist/licences.txt"), "utf8")));
