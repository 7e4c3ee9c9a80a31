import { runTogether } from "./run-together";

runTogether("layouts");
