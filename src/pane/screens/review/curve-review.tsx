/**
 * The compression curve under review: its construction with handles, the other methods beside it, the picks as fields,
 * and the saved changes.
 */
import { Field, Select, Text } from "@fluentui/react-components";
import { PICKED_VALUES, type CurveValues } from "./picked-curve";
import type { Adopted } from "../../../record/adopted";
import type { TestRecord } from "../../../record/record";
import { reduced } from "../../../record/reduced-test";
import { OF_CURVE } from "../../../reduction/curve/picks";
import type { Spread } from "../../../reduction/curve/preconsolidation";
import { METHOD_NAMES, type MethodName } from "../../../reduction/curve/method-words";
import type { Outcome } from "../../../reduction/outcome";
import { rulesOf } from "../../../specification/versions";
import { Notice } from "../../ui/notice";
import { inFull, Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { MethodStrip } from "../results/method-strip";
import { ReviewFields } from "./picks/pick-fields";
import { ReviewFigure } from "./figure-with-handles";
import { InSight, type ValueInSight } from "./in-sight";
import { withPick, type Draft, type PickOf, type PicksTable } from "./picks/pick-changes";
import { Refusal, Remarks } from "./review-parts";
import { ReviewSave, type ReviewedThing } from "./picks/save-picks";
import { useCurve, type TriedCurve } from "./use-curve";
import { shown } from "../../text/digits";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.review;

export interface ReviewCurveProps extends ReviewedThing {
  readonly record: TestRecord;
  readonly table: PicksTable;
  readonly draft: Draft;
  readonly methodChosen: MethodName | undefined;
  readonly onMethod: (method: MethodName) => void;
}

/** The curve, or why the test has none. */
export function ReviewCurve(props: ReviewCurveProps) {
  const { curve } = reduced(props.record);
  if (!curve.ok) return <Notice intent="info">{sentence(inWords(curve.reason))}</Notice>;
  return <Curve {...props} test={curve.value} />;
}

function Curve({
  record,
  test,
  table,
  draft,
  methodChosen,
  onMethod,
  onDraft,
  ...rest
}: ReviewCurveProps & TriedCurve) {
  const tried = useCurve({ record, test, table, draft, methodChosen });
  const { saved, set } = tried;
  const unit = record.words.stress_unit ?? "kPa";
  const unitOf = (): string => unit;
  const pick = (of: PickOf, value: number | string | undefined): void => onDraft(withPick(draft, saved, of, value));
  return (
    <>
      <MethodChoice counted={tried.counted} drawn={tried.method} onChoose={onMethod} />
      <Drawing tried={tried} unit={unit} onPick={pick} />
      <Remarks outcome={tried.reading} />
      <Methods spread={tried.spread} counted={tried.counted} unit={unit} />
      {set.handles.length > 0 && (
        <Step title={words.pickTitle}>
          <ReviewFields handles={set.handles} saved={saved} draft={draft} unitOf={unitOf} onPick={pick} />
        </Step>
      )}
      <ReviewSave
        table={table}
        thing={OF_CURVE}
        changes={tried.changes}
        standing={saved.standing}
        unusable={tried.isUnusable}
        closed={rulesOf(record).curveIsPicked ? undefined : words.curve.olderSheet}
        onDiscard={() => onDraft({})}
        {...rest}
      />
      <AdoptedNote adopted={record.adopted} />
      <InSight
        label={words.curve.inSight}
        values={valuesInSight(tried.now, tried.before, unit, tried.inSituStress)}
        changes={tried.changes}
      />
    </>
  );
}

type Tried = ReturnType<typeof useCurve>;

interface MethodChoiceProps {
  readonly counted: MethodName;
  readonly drawn: MethodName;
  readonly onChoose: (method: MethodName) => void;
}

function MethodChoice({ counted, drawn, onChoose }: MethodChoiceProps) {
  const name = (method: MethodName): string =>
    method === counted ? words.curve.counts(text.plot.methods[method]) : text.plot.methods[method];
  return (
    <Field label={words.curve.method} hint={inFull(name(drawn))}>
      <Select
        value={drawn}
        onChange={(_, { value }) => {
          const chosen = METHOD_NAMES.find((method) => method === value);
          if (chosen !== undefined) onChoose(chosen);
        }}
      >
        {METHOD_NAMES.map((method) => (
          <option key={method} value={method}>
            {name(method)}
          </option>
        ))}
      </Select>
    </Field>
  );
}

interface DrawingProps {
  readonly tried: Tried;
  readonly unit: string;
  readonly onPick: (of: PickOf, value: number | string | undefined) => void;
}

/** The plot with its handles, or the reason why there is no construction. */
function Drawing({ tried, unit, onPick }: DrawingProps) {
  const { drawn, set, byHand, reading, method } = tried;
  const title = words.figureTitle(words.theCurve, text.plot.methods[method]);
  if (!drawn.ok) return <Notice intent="error">{sentence(inWords(drawn.reason))}</Notice>;
  return (
    <>
      <ReviewFigure
        title={title}
        spec={drawn.value}
        set={set}
        byHand={byHand}
        unitOf={() => unit}
        keys={set.handles.length > 0 ? words.curve.keys : words.curve.noPicks}
        result={reading.ok ? words.curve.reads(shown(reading.value.stress, 3, 3), unit) : words.curve.none}
        onPick={onPick}
        onDrop={(name) => onPick(name, undefined)}
      />
      <Refusal outcome={reading} isPicked={byHand.size > 0} />
    </>
  );
}

interface MethodsProps {
  readonly spread: Outcome<Spread>;
  readonly counted: MethodName;
  readonly unit: string;
}

/** Every method without picks, as the sheet lists them, beside the range that the points allow. */
function Methods({ spread, counted, unit }: MethodsProps) {
  const shared = useSharedStyles();
  if (!spread.ok) return <Text className={shared.quiet}>{sentence(inWords(spread.reason))}.</Text>;
  const { methods, low, high } = spread.value;
  const figure = (stress: number): string => shown(stress, 3, 3);
  return (
    <Step title={words.curve.everyMethod}>
      <MethodStrip
        rows={methods.map(({ method, result }) => ({
          method,
          stress: result.ok ? result.value.stress : undefined,
          shown: result.ok ? `${figure(result.value.stress)} ${unit}` : sentence(inWords(result.reason)),
        }))}
        range={[low, high]}
        chosen={counted}
      />
      <Text size={200} className={shared.quiet}>
        {words.curve.range(figure(low), figure(high), unit)}
      </Text>
    </Step>
  );
}

/** An adopted value counts on the sheet in the place of the value in sight. */
function AdoptedNote({ adopted = {} }: { readonly adopted: Adopted | undefined }) {
  const names = PICKED_VALUES.filter(({ adoptedAs }) => adopted[adoptedAs] !== undefined).map(({ letters }) => letters);
  return names.length === 0 ? null : <Notice intent="info">{words.curve.adopted(names.join(", "))}</Notice>;
}

function valuesInSight(
  now: CurveValues,
  before: CurveValues,
  unit: string,
  inSitu: number | undefined,
): readonly ValueInSight[] {
  const [stress, ...indices] = PICKED_VALUES.map(({ letters, unit: has, of }) => ({
    what: letters,
    unit: has ? unit : "",
    now: of(now),
    before: of(before),
    none: words.curve.none,
  }));
  const ratio = (value: number | undefined) =>
    value === undefined || inSitu === undefined ? undefined : value / inSitu;
  const ocr = stress && { ...stress, what: "OCR", unit: "", now: ratio(stress.now), before: ratio(stress.before) };
  return [stress, ocr, ...indices].filter((value) => value !== undefined);
}
