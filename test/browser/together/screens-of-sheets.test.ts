import { runTogether } from "./run-together";

runTogether("screens-of-sheets");
