/**
 * Shows cv before and after the change, and the change itself, at the foot of the pane while the person moves handles.
 */
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import { text } from "../../text";
import { shown } from "../../text/digits";
import { useStyles as useSharedStyles } from "../../ui/styles";
import type { Change } from "./pick-changes";
import { changeText } from "./pick-words";

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
  line: { display: "flex", flexWrap: "wrap", alignItems: "baseline", gap: "0 12px" },
});

export interface InSightProps {
  /** The name of the value, such as "cv, log time". */
  readonly what: string;
  readonly unit: string;
  /** The value with the unsaved picks; undefined if the construction gives none. */
  readonly now: number | undefined;
  /** The value with the saved picks. */
  readonly before: number | undefined;
  readonly changes: readonly Change[];
}

const said = (value: number | undefined, unit: string): string =>
  value === undefined ? words.noCv : words.cv(shown(value, 3, 3), unit);

export function InSight({ what, unit, now, before, changes }: InSightProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const share = now !== undefined && before ? now / before - 1 : undefined;
  return (
    <div role="group" aria-label={words.inSight} className={styles.foot}>
      <div className={styles.line}>
        <Text size={200}>{what}</Text>
        <Text weight="semibold" size={400}>
          {said(now, unit)}
        </Text>
        {changes.length > 0 && (
          <Text size={200}>{words.cvBefore(said(before, unit), share === undefined ? "" : signedPercent(share))}</Text>
        )}
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
