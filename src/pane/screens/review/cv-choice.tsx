/**
 * Lets the person choose which construction's cv counts for a load, or follow the choice for the whole test. It shows a
 * suggestion and its reasons.
 */
import { makeStyles, Radio, RadioGroup, Text } from "@fluentui/react-components";
import {
  AUTOMATIC,
  METHOD_PICK,
  TIME_METHODS,
  type TimeMethod,
} from "../../../reduction/increment/constructions/picks";
import type { Increment } from "../../../reduction/increment/reduce";
import { suggestMethod, type Suggestion } from "../../../reduction/increment/suggest";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { otherMethod } from "./increment";
import { shown } from "../../text/digits";
import type { Draft, PickOf, Saved } from "./picks/pick-changes";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.review;

const useStyles = makeStyles({
  group: { marginLeft: "-8px" },
  reasons: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
});

/**
 * If the two values of cv differ by less than this, the choice hardly matters: an error of 1 % of primary in a pick has
 * the same effect.
 */
const ALIKE = 0.05;
const FEW_READINGS = 3;

/** Writes shares in whole percent, or with one decimal if two different shares would look equal. */
function percents(...shares: readonly number[]): string[] {
  const whole = (share: number): number => Math.round(100 * share);
  const alike = new Set(shares.map(whole)).size < new Set(shares).size;
  return shares.map((share) => `${shown(alike ? Math.round(1000 * share) / 10 : whole(share))} %`);
}

/** The reasons for the suggested construction, in sentences. */
function reasonsOf(suggestion: Suggestion): string[] {
  const { method, why, otherRefusal, ratio, overFit, inInterval, remarks, straightReadings } = suggestion;
  const other = otherMethod(method);
  const reasons: string[] = [];
  if (why === "the only one") return [words.why.only, ...(otherRefusal ? [`${sentence(inWords(otherRefusal))}.`] : [])];
  if (why === "nearer to the fit" && overFit) {
    const shares = percents(overFit["log time"], overFit["root time"]);
    reasons.push(words.why.nearer(nth(shares, 0), nth(shares, 1)));
  }
  if (why === "fewer remarks" && remarks)
    reasons.push(words.why.fewer(remarks["log time"].length, remarks["root time"].length));
  if (why === "as many remarks") reasons.push(words.why.equal);
  if (inInterval && inInterval[method] && !inInterval[other]) reasons.push(words.outside(words.methods[other]));
  if (ratio !== undefined) {
    const more = ratio > 1 ? ratio - 1 : 1 / ratio - 1;
    const percent = firstOf(percents(more));
    reasons.push(
      more < ALIKE ? words.alike(percent) : words.apart(percent, words.methods[ratio > 1 ? "root time" : "log time"]),
    );
  }
  if (straightReadings !== undefined && straightReadings <= FEW_READINGS) reasons.push(words.few(straightReadings));
  return reasons;
}

interface ReviewMethodProps {
  readonly increment: Increment;
  readonly saved: Saved;
  readonly draft: Draft;
  readonly ofTest: TimeMethod;
  readonly cv: (method: TimeMethod) => number | undefined;
  readonly cvUnit: string;
  readonly onPick: (of: PickOf, value: string) => void;
}

export function ReviewMethod({ increment, saved, draft, ofTest, cv, cvUnit, onPick }: ReviewMethodProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const suggested = suggestMethod(increment);
  const chosen = draft[METHOD_PICK] ?? saved.method ?? AUTOMATIC;
  const cvText = (method: TimeMethod): string => {
    const value = cv(method);
    return value === undefined ? words.noCv : words.cv(shown(value, 3, 3), cvUnit);
  };
  return (
    <>
      <RadioGroup
        aria-label={words.method}
        className={styles.group}
        value={chosen}
        onChange={(_, { value }) => onPick(METHOD_PICK, value)}
      >
        <Radio value={AUTOMATIC} label={words.methodAutomatic(words.methods[ofTest])} />
        {TIME_METHODS.map((method) => (
          <Radio key={method} value={method} label={`${words.plots[method]}: ${cvText(method)}`} />
        ))}
      </RadioGroup>
      {suggested.ok ? (
        <div>
          <Text block weight="semibold">
            {words.suggested(words.methods[suggested.value.method])}
          </Text>
          <ul className={styles.reasons}>
            {reasonsOf(suggested.value).map((reason) => (
              <li key={reason}>
                <Text className={shared.quiet}>{reason}</Text>
              </li>
            ))}
          </ul>
        </div>
      ) : (
        <Text block className={shared.quiet}>
          {sentence(inWords(suggested.reason))}.
        </Text>
      )}
    </>
  );
}
