import { runTogether } from "./run-together";

runTogether("datasheet");
