/** Every text of the pane in English, with a file for each screen. */
import { about } from "./about";
import { adopt } from "./adopt";
import { again } from "./again";
import { bench } from "./bench";
import { byHand } from "./by-hand";
import { check } from "./check";
import { checks } from "./checks";
import { head } from "./head";
import { many } from "./many";
import { next } from "./next";
import { pane } from "./pane";
import { plot } from "./plot";
import { readings } from "./readings";
import { register } from "./register";
import { report } from "./report";
import { results } from "./results";
import { review } from "./review";
import { sheet } from "./sheet";
import { summary } from "./summary";

export const en = {
  ...pane,
  about,
  adopt,
  bench,
  byHand,
  check,
  checks,
  head,
  many,
  next,
  plot,
  readAgain: again,
  readings,
  register,
  report,
  results,
  review,
  sheet,
  summary,
};
