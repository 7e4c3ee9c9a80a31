/**
 * fast-check with one seed, so that a property that passed passes again on every machine. `PROPERTY_SEED=7` tries the
 * cases of another seed, and `PROPERTY_SEED=new` those of a seed of the moment; a failure prints its seed.
 */
import fc from "fast-check";

const ALWAYS = 20_261_129;
const asked = process.env.PROPERTY_SEED;

fc.configureGlobal({ seed: asked === "new" ? Date.now() : Number(asked ?? ALWAYS) });

/** The number of characters before the halves of pairs, and of these halves. */
const [BEFORE, HALVES] = [0xd800, 0x800];
const LAST = 0x10ffff - HALVES;

/**
 * Any character of Unicode: the `unit` of a text. It gives the same cases as fast-check's unit "binary", which lists all 1.1 million
 * characters to find the place of one, and takes two seconds of processor time for it.
 */
export const anyCharacter = fc.nat({ max: LAST }).map(
  (place) => String.fromCodePoint(place < BEFORE ? place : place + HALVES),
  (value) => {
    const code = typeof value === "string" ? (value.codePointAt(0) ?? NaN) : NaN;
    if (String.fromCodePoint(code) !== value) throw new Error("this is not one character");
    if (code >= BEFORE && code < BEFORE + HALVES) throw new Error("this is half of a pair");
    return code < BEFORE ? code : code - HALVES;
  },
);

export default fc;
