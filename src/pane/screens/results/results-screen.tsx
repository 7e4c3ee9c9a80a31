/**
 * Shows the numbers of a test at a glance: their spread, the assumptions, and what is missing and why. Each number is a
 * link to its cell.
 */
import { Link, makeStyles, Text, tokens } from "@fluentui/react-components";
import { useMemo, useState, type ReactNode } from "react";
import type { MethodName } from "../../../reduction/curve/method-words";
import { firstOf } from "../../../reduction/numeric/lists";
import { inRuns } from "../../../reduction/message";
import { labelOnSheet } from "../../live/sheet-language";
import type { Reading } from "../../live/workbook-store";
import { addressInList } from "../../../workbook/lists";
import type { Box, SheetName, WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { HeadNotice } from "../head-notice";
import { RecordFrame } from "../record-frame";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { LOAD_COLUMNS, resultsOf, type Absence, type Line, type Results, type Shown, type Source } from "./results";
import { useLineStyles } from "./line-styles";
import { AdoptPart } from "./adopt-part";
import { MethodStrip } from "./method-strip";
import { ResultsLoads, type GoTo } from "./load-results";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { numberText } from "../../text/number";
import { useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";

const words = text.results;

const useStyles = makeStyles({
  main: { fontSize: tokens.fontSizeBase500, fontWeight: tokens.fontWeightSemibold },
  words: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "6px" },
});

/** The number with its unit, such as "812.3 kPa". */
const said = ({ value, format, unit }: Pick<Shown, "value" | "format" | "unit">): string =>
  `${numberText(value, format)} ${unit}`.trim();

function Figure({ shown, what, goTo, className }: { shown: Shown; what: string; goTo: GoTo; className?: string }) {
  const go = goTo(shown);
  return go ? (
    <Link as="button" inline className={className} aria-label={words.goTo(`${what}: ${said(shown)}`)} onClick={go}>
      {said(shown)}
    </Link>
  ) : (
    <span className={className}>{said(shown)}</span>
  );
}

function why(name: string, absence: Absence): string {
  switch (absence.why) {
    case "no cell":
      return words.absent.noCell(labelOnSheet(name));
    case "needs a cell":
      return words.absent.needsCell(absence.cell);
    case "error":
      return words.absent.error(absence.code);
    case "blank inputs":
      return words.absent.blank(absence.cells.join(", "));
    case "impossible inputs":
      return words.absent.impossible;
    case "no answer":
      return words.absent.noAnswer;
  }
}

/** Where a value comes from, if it is not that of the constructions without picks. */
function sourceSaid(source: Source): string {
  if (source.from === "adopted") return words.adopted(source.by, source.reason);
  const by = source.method && words.byMethod(text.plot.methods[source.method]);
  return [by, source.isPicked ? words.picked : undefined].filter((said) => said !== undefined).join(", ");
}

function ResultLine({ line: { name, shown, low, high, over, source, absence }, goTo }: { line: Line; goTo: GoTo }) {
  const styles = useStyles();
  const list = useLineStyles();
  // Only results whose name is a key of these words are shown.
  const label = words.names[name as keyof typeof words.names];
  return (
    <div className={list.line}>
      <dt>{label}</dt>
      {shown ? (
        <dd>
          <Figure
            shown={shown}
            what={label}
            goTo={goTo}
            className={name === "preconsolidation_stress" ? styles.main : undefined}
          />
        </dd>
      ) : (
        <dd className="why">{absence && why(name, absence)}</dd>
      )}
      {shown && source && sourceSaid(source) !== "" && <dd className="why">{sourceSaid(source)}</dd>}
      {over && (
        <dd className="why">
          {words.over} <Figure shown={over.from} what={words.over} goTo={goTo} /> {words.to}{" "}
          <Figure shown={over.to} what={words.over} goTo={goTo} />
        </dd>
      )}
      {low && high && (
        <dd className="why">
          {words.interval}: <Figure shown={low} what={words.interval} goTo={goTo} /> {words.to}{" "}
          <Figure shown={high} what={words.interval} goTo={goTo} />
        </dd>
      )}
    </div>
  );
}

interface MethodsProps {
  readonly methods: Results["methods"];
  /** The range that the points allow. */
  readonly range: readonly [low: number, high: number] | undefined;
  /** The method whose stress the sheet reports. */
  readonly chosen: MethodName;
  readonly goTo: GoTo;
}

function Methods({ methods, range, chosen, goTo }: MethodsProps) {
  const shared = useSharedStyles();
  if (!methods) return <Text className={shared.quiet}>{words.noSpread}</Text>;
  const { least, greatest, median, count, format, unit } = methods;
  const figure = (value: number): string => said({ value, format, unit });
  return (
    <section aria-label={words.methods} className={shared.column}>
      <Text>{words.spread(count, numberText(least, format), figure(greatest), figure(median))}</Text>
      <MethodStrip
        rows={methods.methods.map(({ method, shown }) => ({
          method,
          stress: shown?.value,
          shown: shown ? <Figure shown={shown} what={text.plot.methods[method]} goTo={goTo} /> : words.methodNone,
        }))}
        range={range}
        chosen={chosen}
      />
      <Text size={200} className={shared.quiet}>
        {range && `${words.bandHint} `}
        {words.spreadHint}
      </Text>
    </section>
  );
}

function VirginCv({ cv, isSingle, goTo }: { cv: Results["virginCv"]; isSingle: boolean; goTo: GoTo }) {
  const shared = useSharedStyles();
  // A range whose ends have the same text is shown as one number.
  const isRange = cv !== undefined && said(cv.least) !== said(cv.greatest);
  return (
    <Step title={words.cv}>
      {cv ? (
        <Text>
          <Figure shown={cv.least} what={words.cv} goTo={goTo} />
          {isRange && ` ${words.to} `}
          {isRange && <Figure shown={cv.greatest} what={words.cv} goTo={goTo} />}
          {`; ${words.cvCount(cv.count)}`}
        </Text>
      ) : (
        <Text className={shared.quiet}>{words.noCv}</Text>
      )}
      {isSingle && <Text>{words.singleDrainage}</Text>}
    </Step>
  );
}

/** The position of each name; names that belong to the sheet itself come first. */
function placesIn(names: readonly SheetName[]): ReadonlyMap<string, Box> {
  const found = new Map<string, Box>();
  for (const { name, place } of names) if (place !== "lost" && !found.has(name)) found.set(name, place);
  return found;
}

export function ResultsScreen({ port }: { port: WorkbookPort }) {
  const followed = useTest(RECORD);
  const { reading } = followed;
  const [failure, setFailure] = useState<string>();
  const places = useMemo(() => placesIn(reading?.names ?? []), [reading?.names]);
  const results = useMemo(() => reading && resultsOf(reading.values, reading.record), [reading]);

  const goTo: GoTo = ({ name, row, col }) => {
    const box = places.get(name);
    if (!box || !reading) return undefined;
    return () => {
      setFailure(undefined);
      port
        .show(reading.sheet, addressInList({ ...box, col: box.col + col }, row))
        .catch((reason: unknown) => setFailure(sentenceOf(reason)));
    };
  };

  return (
    <RecordFrame words={words} followed={followed} failure={failure}>
      {reading && results && (
        <AllResults
          reading={reading}
          results={results}
          goTo={goTo}
          adopt={<AdoptPart key={reading.id} {...{ port, reading, methods: results.methods, again: followed.again }} />}
        />
      )}
    </RecordFrame>
  );
}

/** The range that the points allow for the preconsolidation stress. */
function rangeOf({ groups }: Results): readonly [low: number, high: number] | undefined {
  const line = groups.flatMap(({ lines }) => lines).find(({ name }) => name === "preconsolidation_stress");
  return line?.low && line.high && [line.low.value, line.high.value];
}

interface AllResultsProps {
  readonly reading: Reading;
  readonly results: Results;
  readonly goTo: GoTo;
  /** The form that adopts a value. */
  readonly adopt: ReactNode;
}

function AllResults({ reading, results, goTo, adopt }: AllResultsProps) {
  const styles = useStyles();
  const list = useLineStyles();
  const shared = useSharedStyles();
  const { basis, loads, remarks, loadRemarks, assumed, overridden, faults } = results;
  const lines = (group: Results["groups"][number]["group"]) => (
    <dl className={list.lines}>
      {results.groups
        .filter((one) => one.group === group)
        .flatMap(({ lines: own }) => own)
        .map((line) => (
          <ResultLine key={line.name} line={line} goTo={goTo} />
        ))}
    </dl>
  );
  return (
    <>
      <Text className={shared.quiet}>{words.promise}</Text>
      {!results.hasReadings && <Notice intent="info">{words.noLoads}</Notice>}
      <HeadNotice reading={reading} saysMissing />
      <Step title={words.groups.yield}>
        {lines("yield")}
        {(results.methods || !results.hasImpossible) && (
          <Methods methods={results.methods} range={rangeOf(results)} chosen={results.chosen} goTo={goTo} />
        )}
      </Step>
      <Step title={words.groups.indices}>{lines("indices")}</Step>
      {(results.virginCv || !results.hasImpossible) && (
        <VirginCv cv={results.virginCv} isSingle={results.isSingleDrained} goTo={goTo} />
      )}
      {adopt}
      <Step title={words.groups.specimen}>{lines("specimen")}</Step>
      <Step title={words.assumedHeading}>
        <Text className={shared.quiet}>
          {words.basis(basis.curve ?? words.unsaid, basis.method ?? words.unsaid, basis.drainage ?? words.unsaid)}
        </Text>
        <ul className={styles.words}>
          {assumed.map(({ what, shown }) => (
            <li key={what}>
              {words.assumed[what]} {shown && <Figure shown={shown} what={words.assumedHeading} goTo={goTo} />}
            </li>
          ))}
          {assumed.length === 0 && <li>{words.nothingAssumed}</li>}
          {overridden > 0 && <li>{words.overridden(overridden)}</li>}
        </ul>
      </Step>
      <Step title={words.remarksHeading}>
        {remarks.length + loadRemarks.length === 0 && <Text>{words.noRemarks}</Text>}
        <ul className={styles.words}>
          {remarks.map(({ name, remark }) => (
            <li key={name}>{`${words.remarks[name]}: ${inWords(remark)}`}</li>
          ))}
          {loadRemarks.map(({ loads: of, remark }) => (
            <li key={firstOf(of)}>{`${words.loadRemark(of.length, inWords(inRuns(of)))}: ${inWords(remark)}`}</li>
          ))}
        </ul>
      </Step>
      {faults.length > 0 && (
        <Step title={words.faultsHeading(faults.length)}>
          <ul className={styles.words}>
            {faults.map(inWords).map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </Step>
      )}
      {loads.length > 0 && <ResultsLoads loads={loads} columns={LOAD_COLUMNS} goTo={goTo} />}
    </>
  );
}
