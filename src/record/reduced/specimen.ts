/** The specimen of a record reduced: height of solids, water content of the trimmings, states before and after the test. */
import { listed, say } from "../../reduction/message";
import { badInput, given, then, type Outcome } from "../../reduction/outcome";
import { reduceSpecimen, solidsOf, waterContent, type Specimen } from "../../reduction/specimen";
import { cellNamed, nameOf, type TestRecord } from "../record";
import { inputs } from "./inputs";

/** Height of solids, mm, from the dry mass less the salt of the pore water. */
export function solidsHeightOf(record: TestRecord): Outcome<number> {
  const { test_temperature: temperature, pore_salt: saltContent, ring_and_wet_after: wetAfter } = record.numbers;
  return then(inputs(record, "ring_and_dry", "ring_mass"), ({ ring_and_dry, ring_mass }) => {
    const weighed = ring_and_dry - ring_mass;
    if (!(weighed > 0))
      return badInput(
        say`${cellNamed("ring_and_dry")} is ${ring_and_dry} g and ${cellNamed("ring_mass")} is ${ring_mass} g: the ring with dry soil must be heavier than the ring; correct one of them`,
      );
    return then(inputs(record, "specific_gravity", "diameter"), ({ specific_gravity: Gs, diameter }) => {
      const salted = wetAfter === undefined ? undefined : saltContent || undefined;
      const soil = { weighed, wetAfter: (wetAfter ?? 0) - ring_mass, Gs, diameter, temperature, saltContent: salted };
      return then(solidsOf(soil), ({ Hs }) => given(Hs));
    });
  });
}

/** The states of the specimen, from its masses and its size; `finalHeight` is asked only if these are on the sheet. */
export const specimenOf = (record: TestRecord, finalHeight: () => Outcome<number>): Outcome<Specimen> =>
  then(
    inputs(
      record,
      ...(["diameter", "initial_height", "ring_mass", "ring_and_wet_before"] as const),
      ...(["ring_and_wet_after", "ring_and_dry", "specific_gravity"] as const),
    ),
    (n) => {
      const height = finalHeight();
      return reduceSpecimen(
        {
          diameter: n.diameter,
          height: n.initial_height,
          ring: n.ring_mass,
          ringAndWetBefore: n.ring_and_wet_before,
          ringAndWetAfter: n.ring_and_wet_after,
          ringAndDry: n.ring_and_dry,
          Gs: n.specific_gravity,
          finalHeight: height.ok ? height.value : undefined,
          temperature: record.numbers.test_temperature,
          saltContent: record.numbers.pore_salt || undefined,
        },
        record.words.length_unit,
      );
    },
  );

export function trimmings(record: TestRecord): Outcome<number> {
  const contents: number[] = [];
  for (const { mass, andWet, andDry } of record.tins) {
    if (andWet === undefined || andDry === undefined) continue;
    const w = waterContent(andWet, andDry, mass ?? 0);
    if (!w.ok) return w;
    contents.push(w.value);
  }
  return contents.length
    ? given(contents.reduce((sum, w) => sum + w, 0) / contents.length)
    : badInput(say`it needs a tin of trimmings (${listed(["tin_mass", "tin_and_wet", "tin_and_dry"].map(nameOf))})`);
}
