/** The stresses by every method, each with its mark on a common scale beside the range that the points allow. */
import { makeStyles, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";
import type { MethodName } from "../../../reduction/curve/method-words";
import { text } from "../../text";
import { MethodTrack } from "./method-track";
import { scaleOf } from "./track";

const useStyles = makeStyles({
  lines: { margin: 0, display: "flex", flexDirection: "column" },
  line: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) auto",
    columnGap: "12px",
    alignItems: "baseline",
    padding: "4px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    "& dt": { minWidth: 0 },
    "& dd": { margin: 0, textAlign: "right", fontVariantNumeric: "tabular-nums" },
    "& dd.why": { gridColumn: "1 / -1", textAlign: "left", color: tokens.colorNeutralForeground2 },
  },
  /** The name of a method, and its mark on the common scale. */
  tracked: { display: "grid", gridTemplateColumns: "142px minmax(0, 1fr)", columnGap: "8px" },
});

export interface MethodRow {
  readonly method: MethodName;
  /** The stress, for the mark; undefined if the method does not apply. */
  readonly stress?: number;
  /** The stress in figures, or why there is none. */
  readonly shown: ReactNode;
}

export interface MethodStripProps {
  readonly rows: readonly MethodRow[];
  /** The range that the points allow. */
  readonly range: readonly [low: number, high: number] | undefined;
  /** The method whose stress the sheet reports. */
  readonly chosen: MethodName;
}

export function MethodStrip({ rows, range, chosen }: MethodStripProps) {
  const styles = useStyles();
  const scale = scaleOf([...rows.map(({ stress }) => stress), ...(range ?? [])]);
  return (
    <dl className={styles.lines}>
      {rows.map(({ method, stress, shown }) => (
        <div key={method} className={styles.line}>
          <dt className={styles.tracked}>
            {text.plot.methods[method]}
            {stress !== undefined && scale && (
              <MethodTrack scale={scale} stress={stress} range={range} isChosen={method === chosen} />
            )}
          </dt>
          <dd className={stress === undefined ? "why" : undefined}>{shown}</dd>
        </div>
      ))}
    </dl>
  );
}
