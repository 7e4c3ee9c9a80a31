import { runTogether } from "./run-together";

runTogether("host-and-keys");
