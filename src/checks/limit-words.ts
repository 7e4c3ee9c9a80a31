/**
 * The names of the limits in words, as the sheet of limits shows them: "Q05, explain beyond" for the limit that
 * code calls Q05.explain. A sheet in another language has them in its language.
 */
import { LANGUAGE_TAGS } from "../record/cell-rows";
import { told } from "../record/told";
import { asTyped, verbatim, type Message } from "../reduction/message";

/**
 * Each kind of limit, with its words behind a bar where they are not those of its name. One text takes half the bytes of a
 * table.
 */
const KINDS = `note_below
note_above
explain_below
explain_above
stop_above
stop_below
under_load|counts as unloaded up to
doubt|doubt of the specific gravity
explain|explain beyond
stop|stop beyond
points
relative|explain beyond this share of w
explain_share|explain beyond this share
stop_share|stop beyond this share
diameter_over_height
diameter
height
height_bs|height, BS 1377-5
allowance|allowance on the sizes
share
same|numbers alike
least_unloading|fewest unloading steps
tolerance
enough|share that fits another unit
few|share that fits as typed
steps|explain beyond this many steps
stretch|times longer than
shrink|times shorter than
latest|latest first reading
readings|fewest readings
cycles|fewest log cycles
times|explain beyond this many times
saturation|explain saturation below
drift|explain drift beyond
reach|explain a reach below
unreliable|unreliable beyond
ratio_above
change
strain
spread|spread of the correlations`;

const WORDS: ReadonlyMap<string, string> = new Map(
  KINDS.split("\n").map((line) => {
    const [kind = "", words = kind.replaceAll("_", " ")] = line.split("|");
    return [kind, words];
  }),
);

/** "Q05, explain beyond" of "Q05.explain". A name that belongs to no limit is returned unchanged. */
export function limitCalled(name: string): Message {
  const [id = "", kind = ""] = name.split(".");
  const words = WORDS.get(kind);
  return words ? { said: ["", `, ${words}`], values: [verbatim(id)] } : asTyped(name);
}

/**
 * Reads the names of limits: "Q05.explain" of "Q05, explain beyond", in the language of the sheet or in English, or of
 * "Q05.explain" itself, as older sheets have it. One reader serves a whole list, because it asks for the words of every kind in every language.
 */
export function limitReader(): (called: string) => string {
  const kinds = new Map<string, string>();
  for (const language of ["en", ...LANGUAGE_TAGS])
    for (const kind of WORDS.keys()) kinds.set(told(limitCalled(`.${kind}`), language), kind);
  return (called) => {
    const name = called.trim();
    const [, id = "", words = ""] = /^(.*?)\s*,\s*(.*)$/.exec(name) ?? [];
    const kind = kinds.get(`, ${words}`);
    return kind ? `${id}.${kind}` : name;
  };
}
