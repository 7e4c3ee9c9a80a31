import { runTogether } from "./run-together";

runTogether("reduction");
