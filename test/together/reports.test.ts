import { runTogether } from "./run-together";

runTogether("reports");
