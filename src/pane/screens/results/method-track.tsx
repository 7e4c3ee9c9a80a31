/** One method's reading as a mark on the scale that all methods share; the band is the range that the points allow. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { placeOn, type Scale } from "./track";

const useStyles = makeStyles({
  track: {
    position: "relative",
    alignSelf: "center",
    height: "14px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke1}`,
  },
  band: {
    position: "absolute",
    top: "2px",
    bottom: "0",
    backgroundColor: tokens.colorBrandBackground2Hover,
    "@media (forced-colors: active)": { borderLeft: "1px solid CanvasText", borderRight: "1px solid CanvasText" },
  },
  mark: {
    position: "absolute",
    top: 0,
    bottom: 0,
    width: "4px",
    marginLeft: "-2px",
    backgroundColor: tokens.colorNeutralForeground1,
    "@media (forced-colors: active)": { forcedColorAdjust: "none", backgroundColor: "CanvasText" },
  },
  chosen: {
    backgroundColor: tokens.colorBrandBackground,
    "@media (forced-colors: active)": { backgroundColor: "Highlight" },
  },
});

export interface MethodTrackProps {
  readonly scale: Scale;
  readonly stress: number;
  /** The range that the points allow. */
  readonly range: readonly [low: number, high: number] | undefined;
  /** The method whose stress the sheet reports. */
  readonly isChosen: boolean;
}

const percent = (share: number): string => `${(100 * share).toFixed(1)}%`;

/** Hidden from a screen reader: the stress and the range stand beside it in figures. */
export function MethodTrack({ scale, stress, range, isChosen }: MethodTrackProps) {
  const styles = useStyles();
  const [from, to] = range ? [placeOn(scale, range[0]), placeOn(scale, range[1])] : [0, 0];
  return (
    <div className={styles.track} aria-hidden="true">
      {range && <div className={styles.band} style={{ left: percent(from), width: percent(to - from) }} />}
      <div
        className={mergeClasses(styles.mark, isChosen && styles.chosen)}
        style={{ left: percent(placeOn(scale, stress)) }}
      />
    </div>
  );
}
