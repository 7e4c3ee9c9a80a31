/** Questions about the specimen: masses, sizes, water contents, specific gravity, void ratio and saturation. */
import { cellNamed, nameOf, type NumberName, type TestRecord } from "../../record/record";
import { density, GS, USUAL, waterContent } from "../../reduction/specimen";
import { say, fixed, listed, type Message } from "../../reduction/message";
import { given, then } from "../../reduction/outcome";
import {
  agree,
  ask,
  cannotAsk,
  check,
  COMMON,
  figure,
  gravest,
  shown,
  within,
  type Answer,
  type Question,
} from "../check";
import { inputs, type Reduced } from "../../record/reduced-test";

/**
 * Compares the registered and the measured numbers of the ring only if the former came from a register. If one person
 * typed both, the comparison would only show that the person typed the same number twice.
 */
const fromRegister = ({ registerSource }: TestRecord): boolean => registerSource !== undefined;
const TYPED_TWICE = say`the register's values were typed on the sheet, and did not come from a register (${nameOf("register_source")}): what one person types twice is not compared`;

const NO_FINAL_HEIGHT: Answer = cannotAsk(
  say`there is no final height: it needs readings, or the measured final height`,
);

/** Whether the sheet names the British standard, which requires the thicker specimen. */
const isBritish = ({ words }: TestRecord): boolean => /\bBS\s*1377\b/i.test(words.standard ?? "");

/**
 * The water content is measured after dismantling, the void ratio under the last load. A specimen that is taken out
 * under more than its seating stress takes up water, so the two belong to different states. Common practice, no source.
 */
function outUnderLoad(record: TestRecord, { loads }: Reduced, share: number): Message | undefined {
  const stresses = loads.flatMap(({ record: { stress }, end }) => (stress !== undefined && end.ok ? [stress] : []));
  const last = stresses[stresses.length - 1] ?? 0;
  if (last <= share * Math.max(...stresses)) return undefined;
  const stress = shown(figure(record, say`last load`, last, "stress"));
  return say`the specimen was dismantled under ${stress} and takes up water when this load is taken off: the final water content belongs to a looser state`;
}

/** Saturation, specific gravity, water contents, and the void ratio by water. */
const waterQuestions = (): Readonly<Record<string, Question>> => ({
  Q01: {
    question: say`Was the specimen saturated, and not more than saturated, before the test?`,
    about: ["saturation_initial", "ring_and_wet_before"],
    severity: "stop",
    basis: say`${COMMON} for intact soil from below the water table`,
    units: {
      note_below: "ratio",
      note_above: "ratio",
      explain_below: "ratio",
      explain_above: "ratio",
      stop_above: "ratio",
    },
  },
  Q02: {
    question: say`Does the final water content fill the final voids?`,
    about: ["saturation_final", "ring_and_wet_after"],
    severity: "explain",
    basis: COMMON,
    units: { explain_below: "ratio", explain_above: "ratio", under_load: "last stress over the greatest" },
  },
  Q03: {
    question: say`Is the specific gravity that of a soil?`,
    about: ["specific_gravity"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "", explain_above: "", stop_below: "", stop_above: "" },
  },
  Q04: {
    question: say`Was the specific gravity measured?`,
    about: ["specific_gravity_basis"],
    severity: "note",
    basis: say`AGS4 dictionary 4.1.1: CONG_PDEN carries # where the particle density is assumed`,
    units: { doubt: "" },
  },
  Q05: {
    question: say`Do the trimmings give the same dry mass as the oven?`,
    about: ["dry_mass", "dry_mass_trimmings"],
    severity: "stop",
    basis: COMMON,
    units: { explain: "ratio", stop: "ratio" },
  },
  Q06: {
    question: say`Do the trimmings have the water content of the specimen?`,
    about: ["water_content_initial", "water_content_trimmings"],
    severity: "explain",
    basis: COMMON,
    units: { points: "ratio", relative: "ratio of w" },
  },
  Q07: {
    question: say`Do the readings and the final water content give the same final void ratio?`,
    about: ["void_ratio_final", "void_ratio_final_by_water"],
    severity: "stop",
    basis: COMMON,
    units: {
      explain: "e",
      explain_share: "ratio of e",
      stop: "e",
      stop_share: "ratio of e",
      under_load: "last stress over the greatest",
    },
  },
});

/** Heights, the ring, the largest particle, the masses, and the densities from them. */
const sizeQuestions = (): Readonly<Record<string, Question>> => ({
  Q08: {
    question: say`Is the measured final height the one that the readings give?`,
    about: ["final_height_measured", "final_height"],
    severity: "stop",
    basis: COMMON,
    units: { explain: "mm", stop: "mm" },
  },
  Q09: {
    question: say`Are diameter and height those of the ring in the register?`,
    about: ["diameter", "initial_height", "registered_diameter", "registered_height"],
    severity: "stop",
    basis: COMMON,
    units: { explain: "ratio", stop: "ratio" },
  },
  Q10: {
    question: say`Is the mass of the ring that of the register?`,
    about: ["ring_mass", "registered_ring_mass"],
    severity: "explain",
    basis: COMMON,
    units: { explain: "g" },
  },
  Q11: {
    question: say`Is the specimen of a size and shape that the standards allow?`,
    about: ["diameter", "initial_height"],
    severity: "explain",
    basis: say`ASTM D2435 and ISO 17892-5: height 12 mm; BS 1377-5: 18 mm, where the sheet names it; diameter 2.5 times the height in all (BS 1377-5 says it as a height of 0.4 diameters); from memory: check the edition that applies`,
    units: { diameter_over_height: "", diameter: "mm", height: "mm", height_bs: "mm, BS 1377-5", allowance: "ratio" },
  },
  Q12: {
    question: say`Is the largest particle small against the height?`,
    about: ["largest_particle", "initial_height"],
    severity: "explain",
    basis: say`ASTM D2435 (a tenth of the height) and BS 1377-5 (a fifth), from memory: check the edition that applies`,
    units: { share: "ratio of the height" },
  },
  Q13: {
    question: say`Is everything wet heavier than everything dry, and everything dry heavier than its container?`,
    about: ["ring_and_wet_before", "ring_and_dry"],
    severity: "stop",
    basis: say`logic`,
  },
  Q14: {
    question: say`Are the densities those of a soil?`,
    about: ["density_initial", "dry_density_initial"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "Mg/m3", explain_above: "Mg/m3" },
  },
  Q15: {
    question: say`Is the initial void ratio that of a soil?`,
    about: ["void_ratio_initial"],
    severity: "stop",
    basis: COMMON,
    units: { explain_below: "", explain_above: "", stop_below: "" },
  },
  Q16: {
    question: say`Are the masses this specimen's own, not left from another test?`,
    about: ["ring_and_wet_before", "ring_and_dry"],
    severity: "explain",
    basis: COMMON,
    units: { same: "numbers" },
  },
});

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const specimenQuestions = (): Readonly<Record<string, Question>> => ({
  ...waterQuestions(),
  ...sizeQuestions(),
});

/** How each question is answered. */
export const SPECIMEN_CHECKS = [
  check(
    "Q01",
    { note_below: 0.95, note_above: 1.02, explain_below: 0.9, explain_above: 1.05, stop_above: 1.1 },
    (record, reduced, l) =>
      ask(reduced.specimen, ({ S0 }) =>
        within(
          record,
          say`initial saturation S0`,
          S0,
          "percent",
          l,
          say`check the height, the diameter, the masses and the specific gravity`,
        ),
      ),
  ),
  check("Q02", { explain_below: 0.95, explain_above: 1.05, under_load: 0.1 }, (record, reduced, l) =>
    ask(reduced.specimen, ({ Sf }) => {
      const loose = outUnderLoad(record, reduced, l.under_load);
      return Sf === undefined
        ? NO_FINAL_HEIGHT
        : within(
            record,
            say`final saturation Sf`,
            Sf,
            "percent",
            // Too much water is not a fault if the specimen was taken out under load.
            loose ? { explain_below: l.explain_below, note_above: l.explain_above } : l,
            Sf > l.explain_above && loose
              ? say`${loose}; unload to the seating stress before dismantling`
              : say`check the final height, and that free water was wiped off and no soil lost before weighing`,
          );
    }),
  ),
  check(
    "Q03",
    { explain_below: GS.low, explain_above: GS.high, stop_below: GS.least, stop_above: GS.most },
    (record, _reduced, l) =>
      ask(inputs(record, "specific_gravity"), ({ specific_gravity }) =>
        within(
          record,
          say`specific gravity`,
          specific_gravity,
          "ratio",
          l,
          say`confirm that it was measured on this soil, and its unit`,
        ),
      ),
  ),
  check("Q04", { doubt: 0.03 }, (record, reduced, l) => {
    const basis = record.words.specific_gravity_basis;
    if (basis === undefined) return cannotAsk(say`it needs ${cellNamed("specific_gravity_basis")}`);
    return ask(inputs(record, "specific_gravity"), ({ specific_gravity: Gs }): Answer => {
      const found = figure(record, say`specific gravity`, Gs, "ratio");
      if (basis === "measured") return { status: "pass", sentence: say`the specific gravity ${Gs} was measured` };
      const doubt = say`the specific gravity ${Gs} is assumed: say so wherever e or S is reported`;
      if (!reduced.specimen.ok) return { status: "note", sentence: doubt };
      const change = ((1 + reduced.specimen.value.e0) * l.doubt) / Gs;
      return {
        status: "note",
        compared: [found, figure(record, say`change of e0 for ${l.doubt} of specific gravity`, change, "ratio")],
        sentence: say`${doubt}; ${l.doubt} more or less of it moves e0 by ${fixed(change, 3)}`,
      };
    });
  }),
  check("Q05", { explain: 0.02, stop: 0.05 }, (record, reduced, limits) =>
    ask(reduced.waterContentTrimmings, (w) =>
      ask(inputs(record, "ring_mass", "ring_and_wet_before", "ring_and_dry"), (n) => {
        const oven = n.ring_and_dry - n.ring_mass;
        const trimmed = (n.ring_and_wet_before - n.ring_mass) / (1 + w);
        return agree(
          record,
          [
            figure(record, say`dry mass by the trimmings`, trimmed, "mass"),
            figure(record, say`dry mass by the oven`, oven, "mass"),
          ],
          { value: trimmed / oven - 1, kind: "percent" },
          limits,
          say`look at the weighings, and for soil lost before drying`,
        );
      }),
    ),
  ),
  check("Q06", { points: 0.02, relative: 0.05 }, (record, reduced, limits) =>
    ask(reduced.waterContentTrimmings, (w) =>
      ask(reduced.specimen, ({ w0 }) =>
        agree(
          record,
          [
            figure(record, say`water content of the trimmings`, w, "percent"),
            figure(record, say`water content of the specimen`, w0, "percent"),
          ],
          { value: w - w0, kind: "percent" },
          { explain: Math.min(limits.points, limits.relative * w0) },
          say`the trimmings may not stand for the specimen`,
        ),
      ),
    ),
  ),
  check(
    "Q07",
    { explain: 0.02, explain_share: 0.02, stop: 0.05, stop_share: 0.05, under_load: 0.1 },
    (record, reduced, l) =>
      ask(reduced.specimen, ({ ef, wf }) => {
        if (ef === undefined) return NO_FINAL_HEIGHT;
        const byWater = wf * record.numbers.specific_gravity!;
        const loose = outUnderLoad(record, reduced, l.under_load);
        return agree(
          record,
          [
            figure(record, say`final void ratio by water`, byWater, "ratio"),
            figure(record, say`final void ratio by height`, ef, "ratio"),
          ],
          { value: byWater - ef, kind: "ratio" },
          // More water than voids is not a fault if the specimen was taken out under load; less water is.
          byWater > ef && loose
            ? { explain: l.explain + l.explain_share * ef }
            : { explain: l.explain + l.explain_share * ef, stop: l.stop + l.stop_share * ef },
          byWater > ef && loose ? loose : say`look at masses, readings and blotting`,
        );
      }),
  ),
  check("Q08", { explain: 0.1, stop: 0.3 }, (record, reduced, limits) =>
    ask(inputs(record, "final_height_measured"), ({ final_height_measured: measured }) => {
      if (!reduced.loads.some(({ end }) => end.ok)) return cannotAsk(say`it needs readings (readings_01 and on)`);
      return ask(reduced.finalHeight, (read) =>
        agree(
          record,
          [
            figure(record, say`measured final height`, measured, "length"),
            figure(record, say`final height by the readings`, read, "length"),
          ],
          { value: measured - read, kind: "length" },
          limits,
          say`look at the readings, the zero and the correction for the apparatus`,
        ),
      );
    }),
  ),
  check("Q09", { explain: 0.005, stop: 0.02 }, (record, _reduced, limits) => {
    if (!fromRegister(record)) return cannotAsk(TYPED_TWICE);
    return gravest(
      (
        [
          ["diameter", "registered_diameter"],
          ["initial_height", "registered_height"],
        ] as const
      )
        .filter(([, register]) => record.numbers[register] !== undefined)
        .map(([typed, register]) => ({
          load: say`${cellNamed(typed)}`,
          answer: ask(inputs(record, typed, register), (n) =>
            agree(
              record,
              [
                figure(record, say`as typed`, n[typed], "length"),
                figure(record, say`in the register`, n[register], "length"),
              ],
              { value: n[typed] / n[register] - 1, kind: "percent" },
              limits,
              say`measure again, and check the ring's number`,
            ),
          ),
        })),
      say`it needs the register's sizes (${listed(["registered_diameter", "registered_height"].map(nameOf))})`,
    );
  }),
  check("Q10", { explain: 0.1 }, (record, _reduced, limits) => {
    if (!fromRegister(record)) return cannotAsk(TYPED_TWICE);
    return ask(inputs(record, "ring_mass", "registered_ring_mass"), (n) =>
      agree(
        record,
        [
          figure(record, say`ring as weighed`, n.ring_mass, "mass"),
          figure(record, say`ring in the register`, n.registered_ring_mass, "mass"),
        ],
        { value: n.ring_mass - n.registered_ring_mass, kind: "mass" },
        limits,
        say`check the ring's number, and that it was clean and dry`,
      ),
    );
  }),
  check(
    "Q11",
    {
      diameter_over_height: USUAL.diameterOverHeight,
      diameter: USUAL.diameter,
      height: USUAL.height,
      height_bs: 18,
      allowance: USUAL.allowance,
    },
    (record, _reduced, l) =>
      ask(inputs(record, "diameter", "initial_height"), ({ diameter: D, initial_height: H }) => {
        const least = (limit: number) => ({ explain_below: limit * (1 - l.allowance) });
        const remedy = say`check it against the standard that you report to`;
        return gravest(
          [
            within(record, say`diameter over height`, D / H, "ratio", least(l.diameter_over_height), remedy),
            within(record, say`diameter`, D, "length", least(l.diameter), remedy),
            within(record, say`height`, H, "length", least(isBritish(record) ? l.height_bs : l.height), remedy),
          ].map((answer) => ({ load: say`size`, answer })),
        );
      }),
  ),
  check("Q12", { share: 0.1 }, (record, _reduced, l) =>
    ask(inputs(record, "largest_particle", "initial_height"), (n) =>
      within(
        record,
        say`largest particle`,
        n.largest_particle,
        "length",
        { explain_above: l.share * n.initial_height },
        say`the specimen is too thin for this soil`,
      ),
    ),
  ),
  check("Q13", {}, (record) => {
    const pairs: readonly (readonly [NumberName, NumberName])[] = [
      ["ring_and_dry", "ring_mass"],
      ["ring_and_wet_before", "ring_and_dry"],
      ["ring_and_wet_after", "ring_and_dry"],
    ];
    const rings = pairs
      .filter((pair) => pair.every((name) => record.numbers[name] !== undefined))
      .map(([heavier, lighter]) => ({ load: say`ring`, answer: ordered(record, heavier, lighter) }));
    const tins = record.tins.flatMap(({ mass, andWet, andDry }, index) => {
      if (andWet === undefined || andDry === undefined) return [];
      const wet = figure(record, say`tin and wet soil`, andWet, "mass");
      const dry = figure(record, say`tin and dry soil`, andDry, "mass");
      const w = waterContent(andWet, andDry, mass ?? 0);
      const answer: Answer = w.ok
        ? { status: "pass", compared: [wet, dry], sentence: say`the tin weighs ${andWet} g wet and ${andDry} g dry` }
        : { status: "stop", compared: [wet, dry], sentence: w.reason };
      return [{ load: say`tin ${index + 1}`, answer }];
    });
    return gravest(
      [...rings, ...tins],
      say`it needs two masses to compare (${listed(["ring_mass", "ring_and_dry"].map(nameOf))}, ...)`,
    );
  }),
  check("Q14", { explain_below: USUAL.density[0], explain_above: USUAL.density[1] }, (record, _reduced, l) =>
    ask(
      inputs(
        record,
        ...(["diameter", "initial_height", "ring_mass", "ring_and_wet_before"] as const),
        ...(["ring_and_dry", "specific_gravity"] as const),
      ),
      (n) => {
        const of = (mass: number) => density(mass - n.ring_mass, n.diameter, n.initial_height);
        const remedy = say`check the sizes, their unit and the masses`;
        return gravest(
          [
            ask(of(n.ring_and_wet_before), (bulk) => within(record, say`bulk density`, bulk, "density", l, remedy)),
            ask(of(n.ring_and_dry), (dry) =>
              within(
                record,
                say`dry density`,
                dry,
                "density",
                { stop_above: n.specific_gravity },
                say`no soil is denser than its grains: ${remedy}`,
              ),
            ),
          ].map((answer) => ({ load: say`before the test`, answer })),
        );
      },
    ),
  ),
  check(
    "Q15",
    { explain_below: USUAL.voidRatio[0], explain_above: USUAL.voidRatio[1], stop_below: 0 },
    (record, reduced, l) =>
      // The void ratio is calculated here, because the reduction refuses a void ratio below zero, which this question
      // looks for.
      ask(
        then(inputs(record, "initial_height"), ({ initial_height: H }) =>
          then(reduced.solidsHeight, (Hs) => given((H - Hs) / Hs)),
        ),
        (e0) =>
          within(
            record,
            say`initial void ratio`,
            e0,
            "ratio",
            l,
            say`check the height, the diameter, the dry mass and the specific gravity`,
          ),
      ),
  ),
  check("Q16", { same: 2 }, (record, _reduced, l, previous) => {
    if (!previous) return cannotAsk(say`it needs another test to compare with`);
    const own = [
      "ring_and_wet_before",
      "ring_and_wet_after",
      "ring_and_dry",
      "initial_height",
      "specific_gravity",
      "zero_reading",
    ] as const;
    const both = own.filter((name) => record.numbers[name] !== undefined && previous.numbers[name] !== undefined);
    if (both.length === 0) return cannotAsk(say`it needs ${listed(own.map(cellNamed))} in both tests`);
    const same = both.filter((name) => record.numbers[name] === previous.numbers[name]);
    return within(
      record,
      say`numbers equal to those of the other test`,
      same.length,
      "number",
      { explain_above: l.same },
      say`were they carried over? ${listed(same.map(cellNamed))}`,
    );
  }),
];

/** Compares one mass with another that must be smaller. */
function ordered(record: Parameters<typeof figure>[0], heavier: NumberName, lighter: NumberName): Answer {
  const [a, b] = [record.numbers[heavier]!, record.numbers[lighter]!];
  const right = a > b;
  return {
    status: right ? "pass" : "stop",
    compared: [
      figure(record, say`${cellNamed(heavier)}`, a, "mass"),
      figure(record, say`${cellNamed(lighter)}`, b, "mass"),
    ],
    sentence: right
      ? say`${cellNamed(heavier)} ${a} g is more than ${cellNamed(lighter)} ${b} g`
      : say`${cellNamed(heavier)} ${a} g is not more than ${cellNamed(lighter)} ${b} g: the two may be swapped`,
  };
}
