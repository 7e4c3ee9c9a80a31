/**
 * Puts the texts of plots into the language of the reader. The labels of series are English keys; this module contains
 * their words.
 */
import { say, type Message, type Value } from "../reduction/message";

/** Puts a message into the words of a language; `english` gives English. */
export type InWords = (value: Value) => string;

const LABELS: Readonly<Record<string, Message>> = {
  // Series of plots.
  test: say`test`,
  loading: say`loading`,
  unloading: say`unloading`,
  readings: say`readings`,
  "readings less the jump": say`readings less the jump`,
  wetting: say`wetting`,
  "rate at the end": say`rate at the end`,
  cv: say`cv`,
  "C alpha": say`C alpha`,
  "cv reported": say`cv reported`,
  "C alpha of the test": say`C alpha of the test`,
  "in-situ stress": say`in-situ stress`,
  "preconsolidation stress": say`preconsolidation stress`,
  "preconsolidation stress of the sheet": say`preconsolidation stress of the sheet`,
  // The field curve.
  "laboratory curve": say`laboratory curve`,
  "laboratory loads": say`laboratory loads`,
  "field curve": say`field curve`,
  "in situ": say`in situ`,
  "yield of the field curve": say`yield of the field curve`,
  "yield of the laboratory curve": say`yield of the laboratory curve`,
  "field curve meets laboratory line": say`field curve meets laboratory line`,
  // The void index.
  "void index of the test": say`void index of the test`,
  "void index of the loads": say`void index of the loads`,
  "intrinsic compression line": say`intrinsic compression line`,
  "sedimentation compression line": say`sedimentation compression line`,
  // Constructions.
  "early parabola": say`early parabola`,
  "4:1 pair": say`4:1 pair`,
  offset: say`offset`,
  "same offset": say`same offset`,
  "steepest tangent": say`steepest tangent`,
  "secondary tail": say`secondary tail`,
  "half distance": say`half distance`,
  "straight part": say`straight part`,
  "1.15 line": say`1.15 line`,
  "1.15 abscissae": say`1.15 abscissae`,
  "root t90": say`root t90`,
  "smooth curve": say`smooth curve`,
  "virgin line": say`virgin line`,
  "greatest curvature": say`greatest curvature`,
  horizontal: say`horizontal`,
  tangent: say`tangent`,
  bisector: say`bisector`,
  "recompression line": say`recompression line`,
  "initial value": say`initial value`,
  "vertical to the curve": say`vertical to the curve`,
  "horizontal to the virgin line": say`horizontal to the virgin line`,
  "line before yield": say`line before yield`,
  "line after yield": say`line after yield`,
  "first loading": say`first loading`,
  work: say`work`,
  modulus: say`modulus`,
  "not virgin": say`not virgin`,
  virgin: say`virgin`,
  reloading: say`reloading`,
  "log time": say`log time`,
  "root time": say`root time`,
  // Headings of the columns of numbers of native charts.
  Stress: say`Stress`,
  "In-situ stress": say`In-situ stress`,
  "Preconsolidation stress": say`Preconsolidation stress`,
  "Void ratio": say`Void ratio`,
  Strain: say`Strain`,
  "Void index": say`Void index`,
  Time: say`Time`,
  "Root of time": say`Root of time`,
  Reading: say`Reading`,
  Rate: say`Rate`,
  Test: say`Test`,
  Loading: say`Loading`,
  Unloading: say`Unloading`,
  Yield: say`Yield`,
  "In situ": say`In situ`,
  Line: say`Line`,
  line: say`line`,
  bend: say`bend`,
  meeting: say`meeting`,
  stress: say`stress`,
  "Intrinsic line": say`Intrinsic line`,
  "Sedimentation line": say`Sedimentation line`,
  "Field curve": say`Field curve`,
  Construction: say`Construction`,
  "Stress before": say`Stress before`,
  "Greatest before": say`Greatest before`,
  "Mean stress": say`Mean stress`,
  "1 virgin, 0 not, -1 unloading or wetting": say`1 virgin, 0 not, -1 unloading or wetting`,
};

/** A label in the language; "log time, virgin" is translated part by part. A symbol such as d50 stays. */
export const labelIn = (words: InWords, label: string): string =>
  (LABELS[label] ? [label] : label.split(", "))
    .map((part) => {
      const known = LABELS[part];
      return known ? words(known) : part;
    })
    .join(", ");
