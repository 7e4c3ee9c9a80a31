import { runTogether } from "./run-together";

runTogether("pane");
