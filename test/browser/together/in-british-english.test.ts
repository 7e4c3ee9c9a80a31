import { runTogether } from "./run-together";

runTogether("in-british-english");
