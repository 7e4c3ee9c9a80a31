import { runTogether } from "./run-together";

runTogether("files");
