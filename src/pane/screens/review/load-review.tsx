/**
 * One load under review: its plot with handles, the numbers, the picks as fields, the choice of cv, and the saved
 * changes.
 */
import { makeStyles, Radio, RadioGroup, Text } from "@fluentui/react-components";
import type { outcomeOf } from "../../../record/load-curve";
import { TIME_METHODS, type PickedThing, type TimeMethod } from "../../../reduction/increment/constructions/picks";
import { PROCEDURES } from "../../../reduction/increment/constructions/procedure";
import type { NamedColumns } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { ReviewFields } from "./pick-fields";
import { ReviewFigure } from "./figure-with-handles";
import { InSight } from "./in-sight";
import { cvBy } from "./increment";
import { ReviewMethod } from "./cv-choice";
import { withPick, type Draft, type PickOf } from "./pick-changes";
import type { Telling } from "./review-state";
import { ReviewSave } from "./save-picks";
import { useLoad, type Tried } from "./use-load";
import { WhatTheyGive } from "./what-they-give";
import { shown } from "../../text/digits";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.review;

const useStyles = makeStyles({
  remarks: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  switch: { marginLeft: "-8px", flexWrap: "wrap" },
});

export interface ReviewLoadProps extends Tried {
  readonly onDraft: (draft: Draft) => void;
  readonly onPlot: (plot: TimeMethod) => void;
  /** The name of a load, such as "Load 3, 100 kPa". */
  readonly nameOf: (load: PickedThing) => string;
  readonly sheet: string;
  readonly busy: boolean;
  readonly telling: Telling | undefined;
  /**
   * Writes cells of the table of picks, then shows the sentence `done`. `saves` is true if the cells contain the
   * unsaved changes.
   */
  readonly onWrite: (cells: NamedColumns, done: string, saves: boolean) => void;
}

export function ReviewLoad({ record, load, table, draft, plotChosen, onDraft, onPlot, ...rest }: ReviewLoadProps) {
  const tried = useLoad({ record, load, table, draft, plotChosen });
  const { saved, both, counted, units, method } = tried;
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
      <WhatTheyGive {...{ both, load, record, units, method, counted }} />
      <Remarks outcome={tried.outcome} />
      <Picks tried={tried} draft={draft} onPick={pick} />
      <Step title={words.methodTitle}>
        <ReviewMethod
          increment={both[counted]}
          saved={saved}
          draft={draft}
          ofTest={tried.ofTest}
          cv={(one) => cvBy(both[counted], one, units)}
          cvUnit={units.unit}
          onPick={pick}
        />
      </Step>
      <ReviewSave
        table={table}
        load={load.number}
        changes={tried.changes}
        standing={saved.standing}
        unusable={tried.isUnusable}
        onDiscard={() => onDraft({})}
        {...rest}
      />
      <InSight
        what={words.cvOf(words.methods[tried.plot])}
        unit={units.unit}
        now={tried.cvNow}
        before={tried.cvBefore}
        changes={tried.changes}
      />
    </>
  );
}

interface SwitchProps<T extends string> {
  readonly label: string;
  readonly options: readonly T[];
  readonly names: Readonly<Record<T, string>>;
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

function Switch<T extends string>({ label, options, names, value, onChoose }: SwitchProps<T>) {
  const styles = useStyles();
  return (
    <RadioGroup
      aria-label={label}
      layout="horizontal"
      className={styles.switch}
      value={value}
      onChange={(_, { value: chosen }) => {
        const option = options.find((one) => one === chosen);
        if (option !== undefined) onChoose(option);
      }}
    >
      {options.map((one) => (
        <Radio key={one} value={one} label={names[one]} />
      ))}
    </RadioGroup>
  );
}

interface OfTried {
  readonly tried: ReturnType<typeof useLoad>;
  readonly onPick: (of: PickOf, value: number | string | undefined) => void;
}

/** The plot with its handles, or the reason why there is no construction. */
function Drawing({ tried, title, onPick }: OfTried & { readonly title: string }) {
  const { drawn, set, byHand, outcome, units, cvNow } = tried;
  return (
    <>
      {drawn.ok ? (
        <ReviewFigure
          title={title}
          spec={drawn.value}
          set={set}
          byHand={byHand}
          unit={words.readingUnit}
          result={cvNow === undefined ? words.noCv : words.cvOf(words.cv(shown(cvNow, 3, 3), units.unit))}
          onPick={onPick}
          onDrop={(name) => onPick(name, undefined)}
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
    </>
  );
}

function Remarks({ outcome }: { readonly outcome: ReturnType<typeof outcomeOf> }) {
  const styles = useStyles();
  if (!outcome.ok || outcome.remarks.length === 0) return null;
  return (
    <section aria-label={words.remarks}>
      <ul className={styles.remarks}>
        {[...new Set(outcome.remarks.map(inWords))].map((remark) => (
          <li key={remark}>
            <Text>{sentence(remark)}</Text>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Picks({ tried: { set, saved, byHand }, draft, onPick }: OfTried & { readonly draft: Draft }) {
  const shared = useSharedStyles();
  if (set.handles.length === 0) return null;
  return (
    <Step title={words.pickTitle}>
      <ReviewFields handles={set.handles} saved={saved} draft={draft} onPick={onPick} />
      {byHand.has("d0") && (
        <Text block className={shared.quiet}>
          {words.d0Both}
        </Text>
      )}
    </Step>
  );
}
