/**
 * Leads the person through the loads of a data sheet and its compression curve, to look at every construction and
 * correct it by hand if necessary.
 */
import { Button, makeStyles, mergeClasses, Spinner, Text } from "@fluentui/react-components";
import { useMemo, useReducer, type Dispatch } from "react";
import { impossibleInputs } from "../../../record/head-of-sheet";
import { loadsRead } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { OF_CURVE } from "../../../reduction/curve/picks";
import type { PickedThing } from "../../../reduction/increment/constructions/picks";
import { convert } from "../../../reduction/units";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { ScreenTitle } from "../../ui/parts";
import { HeadNotice } from "../head-notice";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { ReviewLoad } from "./load-review";
import { LoadStepper } from "./load-stepper";
import { savedOf, tableOf, type Draft, type PicksTable } from "./picks/pick-changes";
import { ReviewCurve } from "./curve-review";
import { draftKey, reviewState, START, type ReviewAct, type ReviewState } from "./review-state";
import { useWriting } from "./use-writing";
import { shown } from "../../text/digits";
import { text } from "../../text";
import { useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";
import type { Reading } from "../../live/workbook-store";

const words = text.review;

/**
 * An element that gets the focus is scrolled so that neither the head of the pane nor the line at its foot covers it.
 */
const useStyles = makeStyles({
  clear: {
    "& input, & button, & select, & textarea, & [role=slider]": {
      scrollMarginTop: "130px",
      scrollMarginBottom: "90px",
    },
  },
});

export function ReviewScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { tests, reading, error, again } = useTest(RECORD);
  const [state, dispatch] = useReducer(reviewState, START);
  const { sheet, values, record } = reading ?? {};
  const table = useMemo(() => tableOf(values ?? {}), [values]);
  const loads = useMemo(() => (record ? loadsRead(record) : []), [record]);
  const write = useWriting({ port, sheet, table, busy: state.busy, dispatch, again });

  const [first] = loads;
  const isReading = error === undefined && (tests === undefined || (!record && tests.length > 0));
  return (
    <div className={mergeClasses(shared.column, styles.clear)}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      {error !== undefined && <Notice intent="error">{error}</Notice>}
      {error !== undefined && !record && (
        <div>
          <Button onClick={() => void again()}>{words.again}</Button>
        </div>
      )}
      {isReading && <Spinner label={words.looking} labelPosition="after" size="tiny" />}
      {!record && tests?.length === 0 && error === undefined && (
        <NothingToReview title={words.emptyTitle} remedy={words.empty} />
      )}
      {reading && <HeadNotice reading={reading} />}
      {record && !first && <NothingToReview title={words.noReadingsTitle} remedy={words.noReadings} />}
      {reading && first && (
        <Things
          {...{ reading, loads, table, state, dispatch }}
          thing={
            state.thing === OF_CURVE
              ? OF_CURVE
              : (loads.find(({ number }) => number === state.thing)?.number ?? first.number)
          }
          onWrite={write}
        />
      )}
    </div>
  );
}

function NothingToReview({ title, remedy }: { readonly title: string; readonly remedy: string }) {
  const shared = useSharedStyles();
  return (
    <>
      <Text as="h2" size={300} weight="semibold" block className={shared.title}>
        {title}
      </Text>
      <Text block>{remedy}</Text>
    </>
  );
}

interface ThingsProps {
  readonly reading: Reading;
  readonly loads: readonly LoadRecord[];
  /** The load under review, or the compression curve. */
  readonly thing: PickedThing;
  readonly table: PicksTable;
  readonly state: ReviewState;
  readonly dispatch: Dispatch<ReviewAct>;
  readonly onWrite: (cells: NamedColumns, done: string, saves?: string) => void;
}

/** The name of a load, such as "Load 3, 100 kPa", or of the curve. */
function thingName(record: TestRecord, number: PickedThing): string {
  if (number === OF_CURVE) return words.theCurve;
  const unit = record.words.stress_unit ?? "kPa";
  const stress = record.loads.find((other) => other.number === number)?.stress;
  return words.loadName(
    number,
    stress === undefined ? undefined : `${shown(convert(stress, "stress", "kPa", unit), 4)} ${unit}`,
  );
}

/** The list of loads and the curve, with a sign for changed or saved picks, and what is under review. */
function Things({ reading, loads, thing, table, state, dispatch, onWrite }: ThingsProps) {
  const { id: test, record, sheet } = reading;
  const draftOf = (one: PickedThing) => state.drafts[draftKey(test, one)] ?? {};
  const key = draftKey(test, thing);
  const nameOf = (one: PickedThing): string => thingName(record, one);
  const marked = (one: PickedThing): string => {
    const marks = [
      Object.keys(draftOf(one)).length > 0 ? [words.loadMarks.unsaved] : [],
      savedOf(table.rows, one).standing.size > 0 ? [words.loadMarks.picked] : [],
    ].flat();
    return [nameOf(one), ...marks].join(" · ");
  };
  const common = {
    ...{ record, table, nameOf, sheet, busy: state.busy, telling: state.telling },
    draft: draftOf(thing),
    onDraft: (draft: Draft) => dispatch({ does: "change", key, draft }),
    onWrite: (cells: NamedColumns, done: string, saves: boolean) => onWrite(cells, done, saves ? key : undefined),
  };
  const load = loads.find(({ number }) => number === thing);
  return (
    <>
      <LoadStepper
        things={[...loads.map(({ number }) => number), OF_CURVE]}
        shown={thing}
        nameOf={marked}
        onGo={(one) => dispatch({ does: "go", thing: one })}
      />
      {load ? (
        <ReviewLoad
          key={key}
          {...common}
          hasImpossible={impossibleInputs(reading).length > 0}
          load={load}
          plotChosen={state.plot}
          onPlot={(plot) => dispatch({ does: "draw", plot })}
        />
      ) : (
        <ReviewCurve
          key={key}
          {...common}
          methodChosen={state.method}
          onMethod={(method) => dispatch({ does: "draw method", method })}
        />
      )}
    </>
  );
}
