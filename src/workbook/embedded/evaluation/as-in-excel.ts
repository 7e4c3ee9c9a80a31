/**
 * Ordinary functions and operators answer as in Excel where the engine answers otherwise. A table of formulas with their answers is
 * `test/workbook/embedded/evaluation/ordinary-functions.ts`, which names the sources.
 * Casts: the engine's type of a computation does not tell the arguments of one function.
 */
import { EvaluationError } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import { computeOf, errorIn, functionRegistry, isError, isRange, single, type Compute } from "./held";
import { fullSize, type Size } from "./full-size";
import "./aggregate";
import "./array-functions";
import "./distributions";
import "./more-functions";

/** Gives a function another computation, made from the engine's own. */
function change(name: string, make: (compute: Compute) => Compute): void {
  const known = functionRegistry.get(name);
  const compute = make(computeOf(name));
  functionRegistry.replace(name, { ...known, compute: compute as typeof known.compute });
}

const noNumber = (): EvaluationError =>
  new EvaluationError(wordFor("An empty text is no number: it cannot be calculated with."), "#VALUE!");

/** The kinds of an argument for which an empty text is an error; the engine takes it for 0, or for FALSE. */
const NUMBERS = new Set(["NUMBER", "BOOLEAN", "DATE"]);

/** An empty text is no number and no truth value: ""+1 is #VALUE!. */
function refuseEmptyTexts(): void {
  for (const name of functionRegistry.getKeys()) {
    const { args } = functionRegistry.get(name) as unknown as {
      readonly args: readonly { readonly type: readonly string[] }[];
    };
    const isNumber = args.map(({ type }) => type.length > 0 && type.every((one) => NUMBERS.has(one)));
    if (name === "IF") isNumber[0] = true;
    if (name === "TEXT" || !isNumber.includes(true)) continue;
    change(
      name,
      (compute) =>
        function (...given) {
          const isWrong = given.some(
            (one, at) => isNumber[Math.min(at, isNumber.length - 1)] && single(one)?.value === "",
          );
          return isWrong ? noNumber() : compute.apply(this, given);
        },
    );
  }
}

/** Functions whose answer is the error that one of their arguments holds, whatever the others hold. */
for (const name of ["AND", "OR", "XOR", "SUMPRODUCT"])
  change(
    name,
    (compute) =>
      function (...given) {
        return errorIn(given) ?? compute.apply(this, given);
      },
  );

/**
 * Functions that look into a cell otherwise than at a value of the formula: a blank, a text or a truth value in a cell does not
 * count. The engine takes a cell that INDEX or INDIRECT gives for a value.
 */
for (const name of [
  "COUNT",
  "COUNTA",
  "SUM",
  "AVERAGE",
  "MIN",
  "MAX",
  "PRODUCT",
  "MEDIAN",
  "STDEV",
  "VAR",
  "AND",
  "OR",
])
  change(
    name,
    (compute) =>
      function (...given) {
        return compute.apply(
          this,
          given.map((one) => (!isRange(one) && one?.position !== undefined ? [[one]] : one)),
        );
      },
  );

/** Where the conditions of a function stand: the first, and the distance between two. */
const CONDITIONS: Readonly<Record<string, readonly [number, number]>> = {
  ...{ COUNTIF: [1, Infinity], SUMIF: [1, Infinity], AVERAGEIF: [1, Infinity] },
  ...{ COUNTIFS: [1, 2], SUMIFS: [2, 2], AVERAGEIFS: [2, 2] },
};

/** A blank cell as a condition asks for 0. */
for (const [name, [first, step]] of Object.entries(CONDITIONS))
  change(
    name,
    (compute) =>
      function (...given) {
        const isCondition = (at: number): boolean => at === first || (at > first && (at - first) % step === 0);
        return compute.apply(
          this,
          given.map((one, at) => (isCondition(at) && one && single(one)?.value === null ? { value: 0 } : one)),
        );
      },
  );

/** A range has the rows and columns that it has in Excel. */
for (const [name, kind] of [
  ["ROWS", "rows"],
  ["COLUMNS", "columns"],
] as const satisfies readonly (readonly [string, keyof Size])[])
  change(
    name,
    (compute) =>
      function (...given) {
        return fullSize(given[0])?.[kind] ?? compute.apply(this, given);
      },
  );

/** The cells of a range that the sheet on this page does not have are blank. They count as blank cells do. */
for (const name of ["COUNTBLANK", "COUNTIF", "COUNTIFS"])
  change(
    name,
    (compute) =>
      function (...given) {
        const [first] = given;
        const only = single(first);
        // A reference that leads nowhere is an error without a cell.
        if (only && only.position === undefined && isError(only)) return only;
        const counted = compute.apply(this, given);
        const size = fullSize(first);
        if (!size || !isRange(first) || typeof counted !== "number") return counted;
        const beyond = size.rows * size.columns - first.length * (first[0]?.length ?? 0);
        const blank = compute.apply(
          this,
          given.map((one, at) => (at % 2 === 0 && isRange(one) ? [[{ value: null }]] : one)),
        );
        return counted + beyond * Number(blank);
      },
  );

/** Numbers are rounded as they are written with 15 digits: 1.005 to 1.01, though the nearest binary number lies below. */
change(
  "ROUND",
  (compute) =>
    function (...given) {
      const [number, places] = given.map((one) => single(one)?.value ?? 0);
      if (typeof number !== "number" || typeof places !== "number") return compute.apply(this, given);
      const digits = Math.abs(number).toPrecision(15);
      const rounded = Number(`${Math.round(Number(`${digits}e${Math.trunc(places)}`))}e${-Math.trunc(places)}`);
      return Number.isNaN(rounded) ? compute.apply(this, given) : { value: Math.sign(number) * rounded };
    },
);

/** Without a true condition IFS is #N/A (Microsoft, IFS; from memory), which IFNA catches; the engine has an error of its own. */
change(
  "IFS",
  (compute) =>
    function (...given) {
      const found = compute.apply(this, given);
      return given.length % 2 === 0 && found instanceof EvaluationError && found.value === "#ERROR"
        ? new EvaluationError(wordFor("No match."), "#N/A")
        : found;
    },
);

const SCIENTIFIC = /^0(?:\.(0+))?E\+00$/;

/** A number as Excel writes it in the format "0.00E+00"; undefined for another format. */
function scientific(number: number, format: string): string | undefined {
  const found = SCIENTIFIC.exec(format);
  if (!found) return undefined;
  const [mantissa = "", exponent = ""] = number.toExponential(found[1]?.length ?? 0).split("e");
  return `${mantissa}E${exponent.slice(0, 1)}${exponent.slice(1).padStart(2, "0")}`;
}

/** A text that is no number stays as it is, and a format without a sign shows nothing. */
change(
  "TEXT",
  (compute) =>
    function (...given) {
      const [shown, format] = given.map((one) => single(one)?.value);
      if (shown === "" || format === "") return "";
      const written = typeof shown === "number" ? scientific(shown, String(format)) : undefined;
      if (written !== undefined) return written;
      if (typeof shown !== "string") return compute.apply(this, given);
      try {
        return compute.apply(this, given);
      } catch {
        return shown;
      }
    },
);

/** SEARCH knows ? for any character, * for any characters, and ~ before one of these that is meant itself. */
change(
  "SEARCH",
  (compute) =>
    function (...given) {
      const [wanted, within, from = 1] = given.map((one) => single(one)?.value);
      const isPattern = typeof wanted === "string" && /[?*]/.test(wanted);
      if (!isPattern || typeof from !== "number" || from < 1) return compute.apply(this, given);
      const before = Math.trunc(from) - 1;
      const pattern = wanted.replace(/~([?*~])|([?*])|([.+^${}()|[\]\\])/g, (_, meant, any, own) =>
        meant ? `\\${meant}` : any ? (any === "?" ? "." : ".*") : `\\${own}`,
      );
      const at = String(within ?? "")
        .slice(before)
        .search(new RegExp(pattern, "is"));
      return at < 0 ? compute.call(this, { value: `${wanted}\u0000` }, given[1]) : before + at + 1;
    },
);

refuseEmptyTexts();
