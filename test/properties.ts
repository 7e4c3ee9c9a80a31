/**
 * fast-check with one seed, so that a property that passed passes again on every machine. `PROPERTY_SEED=7` tries the
 * cases of another seed, and `PROPERTY_SEED=new` those of a seed of the moment; a failure prints its seed.
 */
import fc from "fast-check";

const ALWAYS = 20_261_129;
const asked = process.env.PROPERTY_SEED;

fc.configureGlobal({ seed: asked === "new" ? Date.now() : Number(asked ?? ALWAYS) });

export default fc;
