/**
 * Shows the results before and after the change, and the change itself, at the foot of the pane while the person moves
 * handles.
 */
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import { text } from "../../text";
import { shown } from "../../text/digits";
import { useStyles as useSharedStyles } from "../../ui/styles";
import type { Change } from "./picks/pick-changes";
import { changeText } from "./picks/pick-words";

const words = text.review;

const useStyles = makeStyles({
  foot: {
    position: "sticky",
    bottom: 0,
    zIndex: 1,
    margin: "0 -12px",
    padding: "6px 12px",
    backgroundColor: tokens.colorNeutralBackground2,
    borderTop: `2px solid ${tokens.colorCompoundBrandStroke}`,
    fontVariantNumeric: "tabular-nums",
  },
  values: { display: "flex", flexWrap: "wrap", gap: "0 16px" },
  line: { display: "flex", flexWrap: "wrap", alignItems: "baseline", gap: "0 8px" },
});

export interface ValueInSight {
  /** The name of the value, such as "cv, log time". */
  readonly what: string;
  readonly unit: string;
  /** The value with the unsaved picks; undefined if the construction gives none. */
  readonly now: number | undefined;
  /** The value with the saved picks. */
  readonly before: number | undefined;
  /** What stands there if there is no value, such as "no cv". */
  readonly none: string;
}

export interface InSightProps {
  readonly label: string;
  readonly values: readonly ValueInSight[];
  readonly changes: readonly Change[];
}

const said = (value: number | undefined, { unit, none }: ValueInSight): string =>
  value === undefined ? none : words.cv(shown(value, 3, 3), unit).trim();

/** A value; one that the change leaves as it is shows no value before. */
function Value({ value, isAlone, isChanged }: { value: ValueInSight; isAlone: boolean; isChanged: boolean }) {
  const styles = useStyles();
  const { what, now, before } = value;
  const share = now !== undefined && before ? now / before - 1 : undefined;
  /** A change that rounds to 0 % is none. */
  const isSeen = share === undefined ? now !== before : Math.abs(share) >= 0.0005;
  return (
    <div className={styles.line}>
      <Text size={200}>{what}</Text>
      <Text weight="semibold" size={isAlone ? 400 : 300}>
        {said(now, value)}
      </Text>
      {isChanged && (isAlone || isSeen) && (
        <Text size={200}>{words.cvBefore(said(before, value), share === undefined ? "" : signedPercent(share))}</Text>
      )}
    </div>
  );
}

export function InSight({ label, values, changes }: InSightProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  return (
    <div role="group" aria-label={label} className={styles.foot}>
      <div className={styles.values}>
        {values.map((value) => (
          <Value key={value.what} value={value} isAlone={values.length === 1} isChanged={changes.length > 0} />
        ))}
      </div>
      {changes.length > 0 && (
        <Text size={200} block className={shared.quiet}>
          {changes.map(changeText).join("; ")}
        </Text>
      )}
    </div>
  );
}

/** A signed percentage, such as "+2.1 %" or "−0.4 %". */
function signedPercent(share: number): string {
  const percent = shown(Math.round(1000 * Math.abs(share)) / 10);
  return `${share < 0 ? "−" : "+"}${percent} %`;
}
