/** Every word of the pane in English, a file for each screen. */
import { about } from "./about";
import { check } from "./check";
import { pane } from "./pane";
import { plot } from "./plot";
import { readings } from "./readings";
import { report } from "./report";
import { results } from "./results";
import { review } from "./review";
import { sheet } from "./sheet";

export const en = { ...pane, about, check, plot, readings, report, results, review, sheet };
