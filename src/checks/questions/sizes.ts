/** Questions about the sizes of the specimen, the ring, the largest particle, the masses, and the densities from them. */
import { cellNamed, nameOf, type NumberName, type TestRecord } from "../../record/record";
import { density, USUAL, waterContent } from "../../reduction/specimen";
import { say, listed } from "../../reduction/message";
import { given, then } from "../../reduction/outcome";
import { agree, ask, cannotAsk, check, COMMON, figure, gravest, within, type Answer, type Question } from "../check";
import { inputs } from "../../record/reduced/inputs";
import { OWN_MASSES } from "./other-tests";

/**
 * Compares the registered and the measured numbers of the ring only if the former came from a register. If one person
 * typed both, the comparison would only show that the person typed the same number twice.
 */
const fromRegister = ({ registerSource }: TestRecord): boolean => registerSource !== undefined;
const TYPED_TWICE = say`the register's values were typed on the sheet (${nameOf("register_source")}): what one person types twice is not compared`;

/** Whether the sheet names the British standard, which requires the thicker specimen. */
const isBritish = ({ words }: TestRecord): boolean => /\bBS\s*1377\b/i.test(words.standard ?? "");

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

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const sizeQuestions = (): Readonly<Record<string, Question>> => ({
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
    about: OWN_MASSES,
    severity: "explain",
    basis: COMMON,
    units: { same: "numbers" },
  },
});

/** How each question is answered. */
export const SIZE_CHECKS = [
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
  // One sheet does not show it: the table of questions compares with the other data sheets (`other-tests.ts`).
  check("Q16", { same: 1 }, () =>
    cannotAsk(say`it needs the data sheet of another specimen: the pane compares the masses`),
  ),
];
