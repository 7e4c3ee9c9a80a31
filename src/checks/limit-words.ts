/**
 * The names of the limits in words, as the sheet of limits shows them: "Q05, explain beyond" for the limit that
 * code calls Q05.explain. A sheet in another language has them in its language.
 */
import { LANGUAGE_TAGS } from "../record/cell-rows";
import { told } from "../record/told";
import { asTyped, verbatim, type Message } from "../reduction/message";

/** The words of each kind of limit. */
export const LIMIT_WORDS = {
  note_below: "note below",
  note_above: "note above",
  explain_below: "explain below",
  explain_above: "explain above",
  stop_above: "stop above",
  stop_below: "stop below",
  under_load: "counts as unloaded up to",
  doubt: "doubt of the specific gravity",
  explain: "explain beyond",
  stop: "stop beyond",
  points: "points",
  relative: "explain beyond this share of w",
  explain_share: "explain beyond this share",
  stop_share: "stop beyond this share",
  diameter_over_height: "diameter over height",
  diameter: "diameter",
  height: "height",
  height_bs: "height, BS 1377-5",
  allowance: "allowance on the sizes",
  share: "share",
  same: "numbers alike",
  least_unloading: "fewest unloading steps",
  tolerance: "tolerance",
  enough: "share that fits another unit",
  few: "share that fits as typed",
  steps: "explain beyond this many steps",
  stretch: "times longer than",
  shrink: "times shorter than",
  latest: "latest first reading",
  readings: "fewest readings",
  cycles: "fewest log cycles",
  times: "explain beyond this many times",
  saturation: "explain saturation below",
  drift: "explain drift beyond",
  reach: "explain a reach below",
  unreliable: "unreliable beyond",
  ratio_above: "ratio above",
  change: "change",
  strain: "strain",
  spread: "spread of the correlations",
};

const words: Readonly<Record<string, string>> = LIMIT_WORDS;

/** "Q05, explain beyond" of "Q05.explain". A name that belongs to no limit is returned unchanged. */
export function limitCalled(name: string): Message {
  const [id = "", key = ""] = name.split(".");
  return words[key] === undefined ? asTyped(name) : { said: ["", `, ${words[key]}`], values: [verbatim(id)] };
}

/** "Q05.explain" of "Q05, explain beyond", in the language of the sheet or in English, or of "Q05.explain" itself, as older sheets have it. */
export function limitNamed(called: string): string {
  const name = called.trim();
  const said = name.replace(/\s*,\s*/, ", ");
  const [id] = said.split(",");
  let key: string | undefined;
  for (const language of ["en", ...LANGUAGE_TAGS])
    key ??= Object.keys(words).find((one) => told(limitCalled(`${id}.${one}`), language) === said);
  return key === undefined ? name : `${id}.${key}`;
}
