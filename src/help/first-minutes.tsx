/** The first ten minutes in Excel: twelve steps, what the reader must see at each, and what to report otherwise. */
import type { ReactElement } from "react";
import { CATALOGUES } from "../pane/text";
import { fileIn, type Language } from "../pane/text/language";
import { translated } from "../pane/text/messages";
import { english, type Message } from "../reduction/message";
import { firstOf, lastOf } from "../reduction/numeric/lists";
import type { Calculate } from "./evaluate";
import { Languages } from "./layout";
import { cellIn, errorIn, formulaIn } from "./notation";
import { HELP_WORDS } from "./text";
import type { Facts } from "./text/words";

/** Values of the worked demonstration (SI); test/help compares them with the calculated demonstration. */
export const DEMONSTRATION = {
  preconsolidation_stress: "125",
  compression_index: "0.56",
  void_ratio_initial: "1.45",
} as const;

const WATER_CONTENT = "=CLAY.WATER_CONTENT(152.4,121.9,31.2)";
const SWAPPED = "=CLAY.WATER_CONTENT(121.9,152.4,31.2)";
const SCHEDULE = "=CLAY.LOAD_SCHEDULE(12.5,3200)";
const OF_AN_ERROR = "=CLAY.WATER_CONTENT(150,H1)";

/** The first cell of each row that a formula of the page gives. */
function spilled(calculate: Calculate, formula: string): number[] {
  const result = calculate(formula);
  if ("code" in result) throw new Error(`${formula} is refused: ${english(result.reason)}`);
  return result.rows.map(([cell]) => Number(cell));
}

/** The error that a formula of the page gives, and its reason. */
function refusal(calculate: Calculate, formula: string): { readonly code: string; readonly reason: Message } {
  const result = calculate(formula);
  if (!("code" in result)) throw new Error(`${formula} is not refused`);
  return result;
}

function factsIn(language: Language, calculate: Calculate): Facts {
  const { notation } = HELP_WORDS[language];
  const stresses = spilled(calculate, SCHEDULE);
  const { code, reason } = refusal(calculate, SWAPPED);
  const decimal = (text: string): string => text.replace(".", notation.decimal);
  return {
    screens: Object.keys(CATALOGUES[language].tabs).filter((name) => name !== "label").length,
    waterContent: {
      formula: formulaIn(notation, WATER_CONTENT),
      gives: decimal(firstOf(spilled(calculate, WATER_CONTENT)).toFixed(6)),
    },
    schedule: {
      formula: formulaIn(notation, SCHEDULE),
      count: stresses.length,
      first: cellIn(notation, firstOf(stresses)),
      last: cellIn(notation, lastOf(stresses)),
    },
    swapped: {
      formula: formulaIn(notation, SWAPPED),
      error: errorIn(notation, code),
      reason: translated(reason, language),
    },
    ofAnError: { formula: formulaIn(notation, OF_AN_ERROR), error: errorIn(notation, "#VALUE!") },
    demonstration: {
      preconsolidation_stress: decimal(DEMONSTRATION.preconsolidation_stress),
      compression_index: decimal(DEMONSTRATION.compression_index),
      void_ratio_initial: decimal(DEMONSTRATION.void_ratio_initial),
    },
    help: fileIn("help.html", language),
  };
}

interface FirstMinutesProps {
  readonly language: Language;
  readonly version: string;
  readonly calculate: Calculate;
}

export function FirstMinutes({ language, version, calculate }: FirstMinutesProps): ReactElement {
  const words = HELP_WORDS[language].firstMinutes;
  return (
    <>
      <header>
        <Languages page="first-minutes.html" shown={language} />
        <h1>{words.heading}</h1>
        <p className="quiet">{words.version(version)}</p>
        <p>{words.about}</p>
        <p>{words.help(fileIn("help.html", language))}</p>
      </header>
      <main>
        {words.steps(factsIn(language, calculate)).map(({ title, action, seen, otherwise }, index) => (
          <section key={title} aria-labelledby={`step-${index + 1}`}>
            <h2 id={`step-${index + 1}`}>
              {index + 1}. {title}
            </h2>
            <p>{action}</p>
            <p>
              <strong>{words.seen}</strong> {seen}
            </p>
            <p className="quiet">
              <strong>{words.otherwise}</strong> {otherwise}
            </p>
          </section>
        ))}
        <h2 id="report">{words.report.heading}</h2>
        <p>{words.report.about}</p>
      </main>
    </>
  );
}
