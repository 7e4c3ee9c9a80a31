/** Masses that contradict each other, or the size of the ring. */
import { WETTEST } from "../../reduction/specimen";
import * as sentences from "../../specification/sentences/of-head";
import { WET_MASSES, type Heavier } from "../../specification/head/missing";
import { type HeadSentence, isNumber, Cells } from "./cells";

export function ofHeavier(cells: Cells, { more, less, called, orAsHeavy }: Heavier): HeadSentence[] {
  const masses = cells.numbers({ more, less });
  if (!masses || masses.more > masses.less || (orAsHeavy && masses.more === masses.less)) return [];
  const sentence = orAsHeavy ? sentences.mustBeAsHeavy : sentences.mustBeHeavier;
  const said = sentence(sentences.AT_START[more], cells.at(more), called, cells.at(less));
  return [cells.oneOf("impossible", said, [more, less])];
}

export function ofSolids(cells: Cells): HeadSentence[] {
  const heights = cells.numbers({ solids: "solids_height", initial: "initial_height" });
  if (!heights || heights.solids < heights.initial) return [];
  const [height, diameter] = [cells.at("initial_height"), cells.at("diameter")];
  const [ring, dry, gravity] = [cells.at("ring_mass"), cells.at("ring_and_dry"), cells.at("specific_gravity")];
  return [cells.impossible(sentences.solidsFill(height, diameter, ring, dry, gravity), "initial_height")];
}

export function ofWetMass(cells: Cells, { content, mass }: (typeof WET_MASSES)[number]): HeadSentence[] {
  const given = cells.cell(content);
  if (!isNumber(given) || given <= WETTEST) return [];
  const sentence = sentences.tooWet(sentences.WITHIN[mass], cells.at(mass));
  return [cells.impossible(sentence, mass)];
}
