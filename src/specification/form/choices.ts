/** The choices that the engineer makes about the reduction of the test. */
import { PROCEDURES } from "../../reduction/increment/constructions/procedure";
import { METHOD_CHOICES } from "../results/adopted";
import { END_RULES } from "./end-rules";
import { input, panels } from "../form-fields";
import { MOST, positive } from "../measures";
import { WETTING_CHOICES } from "./wetting";

/** The cell with the curve that the design values are read from. */
export const DESIGN_CURVE = "design_curve";

export const CHOICES = panels(
  [
    input(
      "in_situ_stress",
      "In-situ effective stress",
      "stress",
      "Vertical effective stress in the ground at the depth of the specimen.",
      { limits: positive(MOST.stress) },
    ),
    input(
      "curve_from",
      "Curve drawn from",
      "text",
      "What the compression curve shows: void ratios at the end of each load, or at d100.",
      {
        choices: ["end of load", "d100"],
        value: "end of load",
      },
    ),
    input("c_alpha_load", "C alpha of load number", "count", "Number of the load whose C alpha is reported.", {
      limits: (loads) => ({ least: 1, most: loads }),
    }),
  ],
  [
    input(
      "time_method",
      "d100 and cv by",
      "text",
      "The construction whose d100 and cv are reported and used further; both are shown.",
      {
        choices: ["log time", "root time"],
        value: "log time",
      },
    ),
    input(
      "time_procedure",
      "Constructions made",
      "text",
      "aided: theory helps to choose the readings and straightens a short tail. drawn: as a hand repeats them with a ruler, through raw readings. A load may have its own in the table of picks.",
      { choices: PROCEDURES, value: PROCEDURES[0] },
    ),
    input(
      "field_factor",
      "Field curve meets at",
      "ratio",
      "Share of e0 at which the field curve meets the laboratory line: 0.42 by Schmertmann (1955); some use 0.40.",
      {
        value: 0.42,
        limits: { least: 0, above: true, most: 1 },
      },
    ),
  ],
  [
    input(
      "preconsolidation_method",
      "Preconsolidation stress by",
      "text",
      "The construction whose preconsolidation stress is used further unless another value is adopted; every method is shown among the results.",
      { choices: METHOD_CHOICES, value: "Casagrande" },
    ),
    input(
      "design_increase",
      "Increase for design",
      "stress",
      "Rise of stress above the in-situ stress over which the design values are given; blank counts as 100 kPa.",
    ),
    input(
      "load_end_rule",
      "Load ends by",
      "text",
      "The contract's rule for the end of a load, by which the running load is judged; blank counts as the load duration above.",
      { choices: END_RULES },
    ),
  ],
  [
    ...WETTING_CHOICES,
    input(
      "load_end_number",
      "  min, or times t100",
      "typed",
      "Minutes of a fixed time (blank counts as a day), or how many times t100; the other rules need no number.",
      { limits: positive(MOST.time) },
    ),
  ],
  [
    input(
      DESIGN_CURVE,
      "Design values from",
      "text",
      "laboratory: e, mv, M and CR from the laboratory loading curve; field: from Schmertmann's field curve. RR and SR are those of the test.",
      { choices: ["laboratory", "field"], value: "laboratory" },
    ),
    input(
      "curve_shown",
      "Curve shown in",
      "text",
      "What the plots of the pane and the first page of the report show; the other curve stands beside it, and every number in both.",
      { choices: ["void ratio", "strain"], value: "void ratio" },
    ),
  ],
);
