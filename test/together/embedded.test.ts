import { runTogether } from "./run-together";

runTogether("embedded");
