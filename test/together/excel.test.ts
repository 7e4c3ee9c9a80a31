/** @jest-environment jsdom */
import { runTogether } from "./run-together";

runTogether("excel");
