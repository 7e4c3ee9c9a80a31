/** The results of both constructions of a load by both procedures, side by side in the units of the sheet. */
import { makeStyles, mergeClasses, Text, tokens } from "@fluentui/react-components";
import { outcomeOf } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { TIME_METHODS, type TimeMethod } from "../../../reduction/increment/constructions/picks";
import { PROCEDURES, type Procedure } from "../../../reduction/increment/constructions/procedure";
import { decimalsOfLevels } from "../../../reduction/increment/level-decimals";
import type { Increment } from "../../../reduction/increment/reduce";
import type { Outcome } from "../../../reduction/outcome";
import { convert } from "../../../reduction/units";
import { unitOnSheet } from "../../live/sheet-language";
import { text } from "../../text";
import { shown, shownTo } from "../../text/digits";
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

/** A time or a cv has three significant digits, which is the precision of a construction. */
const threeDigits = (value: number): string => shown(value, 3, 3);

/** A level has the decimals of the readings and one more; four significant digits if the readings show no step. */
function level(value: number, { cleaned }: Increment): string {
  const decimals = decimalsOfLevels(cleaned);
  return decimals === undefined ? shown(value, 4, 4) : shownTo(value, decimals);
}

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

/** The marks in the table, with units; levels are in the unit of the readings. */
const MARKS = [
  { name: "d0", unit: undefined, write: level },
  { name: "d90", unit: undefined, write: level },
  { name: "d100", unit: undefined, write: level },
  { name: "t50", unit: words.minutes, write: threeDigits },
  { name: "t90", unit: words.minutes, write: threeDigits },
] as const;

const COLUMNS = TIME_METHODS.flatMap((of) => PROCEDURES.map((by) => ({ of, by, key: `${of} ${by}` })));

export interface WhatTheyGiveProps {
  readonly both: Both;
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly units: CvUnits;
  readonly readingUnit: string;
  readonly method: TimeMethod;
  /** The procedure whose numbers the sheet reports. */
  readonly counted: Procedure;
  readonly hasImpossible: boolean;
}

export function WhatTheyGive(props: WhatTheyGiveProps) {
  const { both, record, load, units, readingUnit, method, counted, hasImpossible } = props;
  const shared = useSharedStyles();
  const styles = useStyles();
  const marks = marksOf(both[counted], method);
  const height = marks && units.height(marks);
  const lengthUnit = record.words.length_unit ?? "mm";
  const row = (
    { name, unit }: { name: string; unit: string },
    value: (of: TimeMethod, by: Procedure) => number | undefined,
    write: (value: number, increment: Increment) => string = threeDigits,
  ) => (
    <tr key={name} className={name === "cv" ? "main" : undefined}>
      <th scope="row">
        {name}
        <span className={styles.unit}>{unit}</span>
      </th>
      {COLUMNS.map(({ of, by, key }) => {
        const found = value(of, by);
        return (
          <td key={key} className="number">
            {found === undefined ? "–" : write(found, both[by])}
          </td>
        );
      })}
    </tr>
  );
  const unit = unitOnSheet(units.unit);
  return (
    <div>
      <table className={styles.table}>
        <caption>{words.numbers}</caption>
        <Heads marked={`${method} ${counted}`} />
        <tbody>
          {MARKS.map(({ unit = readingUnit, ...mark }) =>
            row({ ...mark, unit }, (of, by) => marksOf(both[by], of)?.[mark.name], mark.write),
          )}
          {row({ name: "cv", unit }, (of, by) => cvBy(both[by], of, units))}
          {row({ name: words.cvOnSheet, unit }, (of, by) => (by === counted ? cvOnSheet(load, of, units) : undefined))}
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
