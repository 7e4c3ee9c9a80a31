/**
 * `npm run licences`: prints the licence of each package in dist, one line each. The texts are in dist/licences.txt.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import { listOf } from "./components";

process.stdout.write(listOf(readFileSync(path.join(__dirname, "../../../../dist/licences.txt"), "utf8")));
