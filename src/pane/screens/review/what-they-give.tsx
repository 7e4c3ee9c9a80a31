/** The results of both constructions of a load by both procedures, side by side in the units of the sheet. */
import { makeStyles, mergeClasses, Text, tokens } from "@fluentui/react-components";
import { outcomeOf } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { TIME_METHODS, type TimeMethod } from "../../../reduction/increment/constructions/picks";
import { PROCEDURES, type Procedure } from "../../../reduction/increment/constructions/procedure";
import type { Increment } from "../../../reduction/increment/reduce";
import type { Outcome } from "../../../reduction/outcome";
import { convert } from "../../../reduction/units";
import { text } from "../../text";
import { shown } from "../../text/digits";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { cvBy, cvOnSheet, type CvUnits } from "./increment";
import type { Both } from "./use-load";

const words = text.review;

const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    "& caption": { textAlign: "left", paddingBottom: "4px", fontWeight: tokens.fontWeightSemibold },
    "& th, & td": {
      padding: "3px 6px 3px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      textAlign: "left",
      fontWeight: tokens.fontWeightRegular,
      fontSize: tokens.fontSizeBase300,
    },
    "& thead th": { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
    "& .number": { textAlign: "right" },
    "& tr.main > *": { fontWeight: tokens.fontWeightSemibold },
  },
  below: { marginTop: "6px" },
  unit: { display: "block", color: tokens.colorNeutralForeground3, fontSize: tokens.fontSizeBase200 },
});

/**
 * A number with significant digits: four for readings, three for times and cv, which is the precision of a
 * construction.
 */
const digits = (value: number | undefined, count: number): string =>
  value === undefined ? "–" : shown(value, count, count);

interface Marks {
  readonly d0: number;
  readonly d90?: number;
  readonly d100: number;
  readonly t50?: number;
  readonly t90?: number;
}

/** The marks of a construction, with the same names for both constructions; undefined if the construction refuses. */
function marksOf(increment: Increment, of: TimeMethod): Marks | undefined {
  const found: Outcome<Marks> = outcomeOf(increment, of);
  return found.ok ? found.value : undefined;
}

/** The marks in the table, with units and significant digits. */
const MARKS = [
  { name: "d0", unit: words.readingUnit, count: 4 },
  { name: "d90", unit: words.readingUnit, count: 4 },
  { name: "d100", unit: words.readingUnit, count: 4 },
  { name: "t50", unit: words.minutes, count: 3 },
  { name: "t90", unit: words.minutes, count: 3 },
] as const;

const COLUMNS = TIME_METHODS.flatMap((of) => PROCEDURES.map((by) => ({ of, by, key: `${of} ${by}` })));

export interface WhatTheyGiveProps {
  readonly both: Both;
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly units: CvUnits;
  readonly method: TimeMethod;
  /** The procedure whose numbers the sheet reports. */
  readonly counted: Procedure;
  readonly hasImpossible: boolean;
}

export function WhatTheyGive({ both, record, load, units, method, counted, hasImpossible }: WhatTheyGiveProps) {
  const shared = useSharedStyles();
  const styles = useStyles();
  const marks = marksOf(both[counted], method);
  const height = marks && units.height(marks);
  const lengthUnit = record.words.length_unit ?? "mm";
  const row = (
    { name, unit, count }: { name: string; unit: string; count: number },
    value: (of: TimeMethod, by: Procedure) => number | undefined,
  ) => (
    <tr key={name} className={name === "cv" ? "main" : undefined}>
      <th scope="row">
        {name}
        <span className={styles.unit}>{unit}</span>
      </th>
      {COLUMNS.map(({ of, by, key }) => (
        <td key={key} className="number">
          {digits(value(of, by), count)}
        </td>
      ))}
    </tr>
  );
  const ofCv = { unit: units.unit, count: 3 };
  return (
    <div>
      <table className={styles.table}>
        <caption>{words.numbers}</caption>
        <Heads marked={`${method} ${counted}`} />
        <tbody>
          {MARKS.map((mark) => row(mark, (of, by) => marksOf(both[by], of)?.[mark.name]))}
          {row({ name: "cv", ...ofCv }, (of, by) => cvBy(both[by], of, units))}
          {row({ name: words.cvOnSheet, ...ofCv }, (of, by) =>
            by === counted ? cvOnSheet(load, of, units) : undefined,
          )}
        </tbody>
      </table>
      <Text size={200} block className={mergeClasses(shared.quiet, styles.below)}>
        {height === undefined
          ? marks && !hasImpossible && words.noHeight
          : `${words.height(shown(convert(height, "length", "mm", lengthUnit), 5), lengthUnit, words.drainage[units.drainage])} ${words.counts(`${words.methods[method]}, ${words.procedures[counted]}`)}`}
      </Text>
      <Text size={200} block className={mergeClasses(shared.quiet, styles.below)}>
        {words.proceduresMean}
      </Text>
    </div>
  );
}

/** The headings of the columns; the column whose numbers count has a mark. */
const Heads = ({ marked }: { readonly marked: string }) => (
  <thead>
    <tr>
      <th scope="col" rowSpan={2}>
        {words.quantity}
      </th>
      {TIME_METHODS.map((one) => (
        <th key={one} scope="colgroup" colSpan={PROCEDURES.length} className="number">
          {words.methods[one]}
        </th>
      ))}
    </tr>
    <tr>
      {COLUMNS.map(({ by, key }) => (
        <th key={key} scope="col" className="number">
          {words.procedures[by]}
          {key === marked ? " *" : ""}
        </th>
      ))}
    </tr>
  </thead>
);
