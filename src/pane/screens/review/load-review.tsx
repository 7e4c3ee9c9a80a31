/** One load under review: its plot with handles, the numbers, the picks as fields, whose cv counts, and what is saved. */
import { makeStyles, mergeClasses, Radio, RadioGroup, Text, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { dialSense, loadCurve } from "../../../record/load-curve";
import { procedureOfLoad } from "../../../specification/pick-table";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { rulesOf } from "../../../specification/versions";
import {
  PICK_NAMES,
  TIME_METHODS,
  type Picks,
  type TimeMethod,
} from "../../../reduction/increment/constructions/picks";
import { PROCEDURES, type Procedure } from "../../../reduction/increment/constructions/procedure";
import { reduceIncrement, type Increment } from "../../../reduction/increment/reduce";
import { convert } from "../../../reduction/units";
import type { NamedColumns } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { ReviewFields } from "./pick-fields";
import { ReviewFigure } from "./figure-with-handles";
import { handlesOf } from "./handles";
import { cvBy, cvOnSheet, cvUnitsOf, methodOfTest, outcomeOf, plotOf, valueNow, type CvUnits } from "./increment";
import { ReviewMethod } from "./cv-choice";
import { shown } from "../../text/digits";
import {
  changesOf,
  methodWith,
  picksWith,
  savedOf,
  withPick,
  type Draft,
  type PickOf,
  type PicksTable,
} from "./pick-changes";
import { ReviewSave, type Telling } from "./save-picks";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

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
  remarks: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  switch: { marginLeft: "-8px", flexWrap: "wrap" },
});

export interface ReviewLoadProps {
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly table: PicksTable;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
  /** The plot that was chosen for this or another load; without one, that of the construction whose cv counts. */
  readonly plotChosen: TimeMethod | undefined;
  readonly onPlot: (plot: TimeMethod) => void;
  /** "Load 3, 100 kPa" */
  readonly nameOf: (load: number) => string;
  readonly sheet: string;
  readonly busy: boolean;
  readonly telling: Telling | undefined;
  /** Writes cells of the table of picks; `done` is told when it has. `saves`: the draft is what is written. */
  readonly onWrite: (cells: NamedColumns, done: string, saves: boolean) => void;
}

export function ReviewLoad({ record, load, table, draft, onDraft, plotChosen, onPlot, ...rest }: ReviewLoadProps) {
  const shared = useSharedStyles();
  const styles = useStyles();
  const saved = useMemo(() => savedOf(table.rows, load.number), [table, load]);
  const ofTest = methodOfTest(record);
  const sense = dialSense(record);
  const plot = plotChosen ?? methodWith(saved, {}, ofTest);

  const curve = useMemo(() => loadCurve(load), [load]);
  const counted = procedureOfLoad(record, load.number);
  const [procedureChosen, setProcedure] = useState<Procedure>();
  const procedure = procedureChosen ?? counted;
  const { zerosCount } = rulesOf(record);
  const reduce = useMemo(
    () => (picks: Picks, by: Procedure) => reduceIncrement(curve.times, curve.readings, picks, by, zerosCount),
    [curve, zerosCount],
  );
  const automatic = useMemo(() => reduce({}, procedure), [reduce, procedure]);
  const before = useMemo(() => reduce(saved.picks, counted), [reduce, saved, counted]);
  const picks = useMemo(() => picksWith(saved, draft), [saved, draft]);
  const both = useMemo((): Both => ({ aided: reduce(picks, "aided"), drawn: reduce(picks, "drawn") }), [reduce, picks]);
  const increment = both[procedure];
  const drawn = useMemo(
    () => plotOf(curve, increment, plot, { readingLabel: words.readingLabel, sense }),
    [curve, increment, plot, sense],
  );
  const set = useMemo(() => handlesOf(increment, automatic, picks, plot), [increment, automatic, picks, plot]);

  const units = cvUnitsOf(record, load);
  const method = methodWith(saved, draft, ofTest);
  const pick = (of: PickOf, value: number | string | undefined): void => onDraft(withPick(draft, saved, of, value));
  const byHand = useMemo(() => new Set(PICK_NAMES.filter((name) => picks[name] !== undefined)), [picks]);
  const outcome = outcomeOf(increment, plot);
  const changes = changesOf(draft, valueNow(before, methodWith(saved, {}, ofTest)));
  const unusable = TIME_METHODS.map((one) => outcomeOf(both[counted], one)).find(
    (one) => !one.ok && one.fault === "input",
  );

  return (
    <>
      <RadioGroup
        aria-label={words.plot}
        layout="horizontal"
        className={styles.switch}
        value={plot}
        onChange={(_, { value }) => onPlot(value as TimeMethod)}
      >
        {TIME_METHODS.map((one) => (
          <Radio key={one} value={one} label={words.plots[one]} />
        ))}
      </RadioGroup>
      <RadioGroup
        aria-label={words.procedure}
        layout="horizontal"
        className={styles.switch}
        value={procedure}
        onChange={(_, { value }) => setProcedure(value as Procedure)}
      >
        {PROCEDURES.map((one) => (
          <Radio key={one} value={one} label={words.procedures[one]} />
        ))}
      </RadioGroup>
      {drawn.ok ? (
        <ReviewFigure
          spec={drawn.value}
          set={set}
          byHand={byHand}
          unit={words.readingUnit}
          onPick={(name, value) => pick(name, value)}
          onDrop={(name) => pick(name, undefined)}
        />
      ) : (
        <Notice intent="error">{sentence(inWords(drawn.reason))}</Notice>
      )}
      {!outcome.ok && (
        <Notice
          intent={outcome.fault === "input" ? "error" : "warning"}
          title={outcome.fault === "input" && byHand.size > 0 ? words.refusedPick : words.refusedTitle}
        >
          {sentence(inWords(outcome.reason))}
        </Notice>
      )}
      <Numbers both={both} load={load} record={record} units={units} method={method} counted={counted} />
      {outcome.ok && outcome.remarks.length > 0 && (
        <section aria-label={words.remarks}>
          <ul className={styles.remarks}>
            {[...new Set(outcome.remarks.map(inWords))].map((remark) => (
              <li key={remark}>
                <Text>{sentence(remark)}</Text>
              </li>
            ))}
          </ul>
        </section>
      )}

      {set.handles.length > 0 && (
        <Step title={words.pickTitle}>
          <ReviewFields handles={set.handles} saved={saved} draft={draft} onPick={pick} />
          {byHand.has("d0") && (
            <Text block className={shared.quiet}>
              {words.d0Both}
            </Text>
          )}
        </Step>
      )}

      <Step title={words.methodTitle}>
        <ReviewMethod
          increment={both[counted]}
          saved={saved}
          draft={draft}
          ofTest={ofTest}
          cv={(one) => cvBy(both[counted], one, units)}
          cvUnit={units.unit}
          onPick={pick}
        />
      </Step>

      <ReviewSave
        table={table}
        load={load.number}
        changes={changes}
        standing={saved.standing}
        unusable={unusable !== undefined}
        onDiscard={() => onDraft({})}
        {...rest}
      />
    </>
  );
}

/** One load reduced in both ways. */
type Both = Readonly<Record<Procedure, Increment>>;

interface NumbersProps {
  readonly both: Both;
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly units: CvUnits;
  readonly method: TimeMethod;
  /** The procedure whose numbers the sheet reports. */
  readonly counted: Procedure;
}

/** Readings are told to a part of a division, times and cv to what a hand construction is good for. */
const digits = (value: number | undefined, count: number): string =>
  value === undefined ? "–" : shown(value, count, count);

const marksOf = (increment: Increment) => ({
  log: increment.logTime.ok ? increment.logTime.value : undefined,
  root: increment.rootTime.ok ? increment.rootTime.value : undefined,
});

/** Both constructions, and both ways to make each of them, side by side in the sheet's units. */
function Numbers({ both, record, load, units, method, counted }: NumbersProps) {
  const shared = useSharedStyles();
  const styles = useStyles();
  const chosen = marksOf(both[counted]);
  const marks = method === "log time" ? chosen.log : chosen.root;
  const height = marks && units.height(marks);
  const lengthUnit = record.words.length_unit ?? "mm";
  const columns = TIME_METHODS.flatMap((of) => PROCEDURES.map((by) => ({ of, by, key: `${of} ${by}` })));
  const row = (
    name: string,
    unit: string,
    count: number,
    value: (of: TimeMethod, by: Procedure) => number | undefined,
  ) => (
    <tr key={name} className={name === "cv" ? "main" : undefined}>
      <th scope="row">
        {name}
        <span className={styles.unit}>{unit}</span>
      </th>
      {columns.map(({ of, by, key }) => (
        <td key={key} className="number">
          {digits(value(of, by), count)}
        </td>
      ))}
    </tr>
  );
  const log = (by: Procedure) => marksOf(both[by]).log;
  const root = (by: Procedure) => marksOf(both[by]).root;
  const either = (of: TimeMethod, by: Procedure) => (of === "log time" ? log(by) : root(by));
  return (
    <div>
      <table className={styles.table}>
        <caption>{words.numbers}</caption>
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
            {columns.map(({ of, by, key }) => (
              <th key={key} scope="col" className="number">
                {words.procedures[by]}
                {of === method && by === counted ? " *" : ""}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {row("d0", words.readingUnit, 4, (of, by) => either(of, by)?.d0)}
          {row("d90", words.readingUnit, 4, (of, by) => (of === "root time" ? root(by)?.d90 : undefined))}
          {row("d100", words.readingUnit, 4, (of, by) => either(of, by)?.d100)}
          {row("t50", words.minutes, 3, (of, by) => (of === "log time" ? log(by)?.t50 : undefined))}
          {row("t90", words.minutes, 3, (of, by) => (of === "root time" ? root(by)?.t90 : undefined))}
          {row("cv", units.unit, 3, (of, by) => cvBy(both[by], of, units))}
          {row(words.cvOnSheet, units.unit, 3, (of, by) => (by === counted ? cvOnSheet(load, of, units) : undefined))}
        </tbody>
      </table>
      <Text size={200} block className={mergeClasses(shared.quiet, styles.below)}>
        {height === undefined
          ? words.noHeight
          : `${words.height(shown(convert(height, "length", "mm", lengthUnit), 5), lengthUnit, words.drainage[units.drainage])} ${words.counts(`${words.methods[method]}, ${words.procedures[counted]}`)}`}
      </Text>
      <Text size={200} block className={mergeClasses(shared.quiet, styles.below)}>
        {words.proceduresMean}
      </Text>
    </div>
  );
}
