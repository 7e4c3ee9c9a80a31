/**
 * One load under review: its plot with handles, the numbers, the picks as fields, the choice of cv, and the saved
 * changes.
 */
import { Text } from "@fluentui/react-components";
import { TIME_METHODS, type TimeMethod } from "../../../reduction/increment/constructions/picks";
import { PROCEDURES } from "../../../reduction/increment/constructions/procedure";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { ReviewFields } from "./picks/pick-fields";
import { ReviewFigure } from "./figure-with-handles";
import { InSight } from "./in-sight";
import { cvBy } from "./increment";
import { ReviewMethod } from "./cv-choice";
import { withPick, type Draft, type PickOf } from "./picks/pick-changes";
import type { Handle } from "./handles";
import { Refusal, Remarks, Switch } from "./review-parts";
import { ReviewSave, type ReviewedThing } from "./picks/save-picks";
import { useLoad, type Tried } from "./use-load";
import { WhatTheyGive } from "./what-they-give";
import { shown } from "../../text/digits";
import { sentence } from "../../text/sentence";
import { unitOnSheet } from "../../live/sheet-language";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.review;

export interface ReviewLoadProps extends Tried, ReviewedThing {
  readonly onPlot: (plot: TimeMethod) => void;
  /** True if an input of the sheet cannot be: the notice above says which. */
  readonly hasImpossible: boolean;
}

export function ReviewLoad(props: ReviewLoadProps) {
  const { record, load, table, draft, plotChosen, onDraft, onPlot, hasImpossible, ...rest } = props;
  const tried = useLoad({ record, load, table, draft, plotChosen });
  const { saved, both, counted, units, readingUnit, method } = tried;
  const pick = (of: PickOf, value: number | string | undefined): void => onDraft(withPick(draft, saved, of, value));
  return (
    <>
      <Switch label={words.plot} options={TIME_METHODS} names={words.plots} value={tried.plot} onChoose={onPlot} />
      <Switch
        label={words.procedure}
        options={PROCEDURES}
        names={words.procedures}
        value={tried.procedure}
        onChoose={tried.setProcedure}
      />
      <Drawing
        tried={tried}
        title={words.figureTitle(rest.nameOf(load.number), words.plots[tried.plot])}
        onPick={pick}
      />
      <WhatTheyGive {...{ both, load, record, units, readingUnit, method, counted, hasImpossible }} />
      <Remarks outcome={tried.outcome} />
      <Picks tried={tried} draft={draft} onPick={pick} />
      <Step title={words.methodTitle}>
        <ReviewMethod
          increment={both[counted]}
          saved={saved}
          draft={draft}
          ofTest={tried.ofTest}
          cv={(one) => cvBy(both[counted], one, units)}
          cvUnit={unitOnSheet(units.unit)}
          onPick={pick}
        />
      </Step>
      <ReviewSave
        table={table}
        thing={load.number}
        changes={tried.changes}
        standing={saved.standing}
        unusable={tried.isUnusable}
        onDiscard={() => onDraft({})}
        {...rest}
      />
      <InSight
        label={words.inSight}
        values={[
          {
            what: words.cvOf(words.methods[tried.plot]),
            unit: unitOnSheet(units.unit),
            now: tried.cvNow,
            before: tried.cvBefore,
            none: words.noCv,
          },
        ]}
        changes={tried.changes}
      />
    </>
  );
}

/** The unit of a handle on a time curve whose readings have this unit. */
const unitOnTime =
  (ofReadings: string) =>
  ({ kind }: Handle): string =>
    kind === "level" ? ofReadings : words.minutes;

interface OfTried {
  readonly tried: ReturnType<typeof useLoad>;
  readonly onPick: (of: PickOf, value: number | string | undefined) => void;
}

/** The plot with its handles, or the reason why there is no construction. */
function Drawing({ tried, title, onPick }: OfTried & { readonly title: string }) {
  const { drawn, set, byHand, outcome, units, readingUnit, cvNow } = tried;
  return (
    <>
      {drawn.ok ? (
        <ReviewFigure
          title={title}
          spec={drawn.value}
          set={set}
          byHand={byHand}
          unitOf={unitOnTime(readingUnit)}
          keys={words.keys}
          result={cvNow === undefined ? words.noCv : words.cvOf(words.cv(shown(cvNow, 3, 3), unitOnSheet(units.unit)))}
          onPick={onPick}
          onDrop={(name) => onPick(name, undefined)}
        />
      ) : (
        <Notice intent="error">{sentence(inWords(drawn.reason))}</Notice>
      )}
      <Refusal outcome={outcome} isPicked={byHand.size > 0} />
    </>
  );
}

function Picks({ tried: { set, saved, byHand, readingUnit }, draft, onPick }: OfTried & { readonly draft: Draft }) {
  const shared = useSharedStyles();
  if (set.handles.length === 0) return null;
  return (
    <Step title={words.pickTitle}>
      <ReviewFields
        handles={set.handles}
        saved={saved}
        draft={draft}
        unitOf={unitOnTime(readingUnit)}
        onPick={onPick}
      />
      {byHand.has("d0") && (
        <Text block className={shared.quiet}>
          {words.d0Both}
        </Text>
      )}
    </Step>
  );
}
