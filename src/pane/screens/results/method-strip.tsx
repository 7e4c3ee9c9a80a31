/** The stresses by every method, each with its mark on a common scale beside the range that the points allow. */
import { makeStyles } from "@fluentui/react-components";
import type { ReactNode } from "react";
import type { MethodName } from "../../../reduction/curve/method-words";
import { text } from "../../text";
import { useLineStyles } from "./line-styles";
import { MethodTrack } from "./method-track";
import { scaleOf } from "./track";

const useStyles = makeStyles({
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
  const list = useLineStyles();
  const scale = scaleOf([...rows.map(({ stress }) => stress), ...(range ?? [])]);
  return (
    <dl className={list.lines}>
      {rows.map(({ method, stress, shown }) => (
        <div key={method} className={list.line}>
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
