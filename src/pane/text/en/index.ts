/** Every text of the pane in English, with a file for each screen in `screens`. */
import { about } from "./screens/about";
import { adopt } from "./screens/adopt";
import { again } from "./screens/again";
import { bench } from "./screens/bench";
import { byHand } from "./screens/by-hand";
import { check } from "./screens/check";
import { checks } from "./screens/checks";
import { head } from "./head";
import { many } from "./screens/many";
import { next } from "./screens/next";
import { pane } from "./pane";
import { plot } from "./screens/plot";
import { readings } from "./screens/readings";
import { register } from "./screens/register";
import { report } from "./screens/report";
import { results } from "./screens/results";
import { review } from "./screens/review";
import { sheet } from "./screens/sheet";
import { summary } from "./screens/summary";

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
