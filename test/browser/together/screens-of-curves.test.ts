import { runTogether } from "./run-together";

runTogether("screens-of-curves");
