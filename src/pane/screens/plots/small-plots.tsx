/** Shows small time curves of all loads side by side; each is a link to the plot of its load. */
import { firstOf } from "../../../reduction/numeric/lists";
import { type Message } from "../../../reduction/message";
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import { useEffect, useMemo, useRef } from "react";
import type { TestRecord } from "../../../record/record";
import type { PlotSpec } from "../../../plots/spec";
import { drawPlot } from "../../../plots/svg";
import { Notice } from "../../ui/notice";
import { stressInWords } from "../load-stress";
import { smallPlots, type SmallPlot } from "./sheet-drawing";
import { useStyles as useSharedStyles } from "./plot-styles";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { numberText } from "../../text/number";

const words = text.plot;

const WIDTH = 132;
const HEIGHT = 92;

const useStyles = makeStyles({
  grid: {
    display: "grid",
    gridTemplateColumns: `repeat(auto-fill, minmax(${WIDTH}px, 1fr))`,
    gap: "8px",
    margin: 0,
    padding: 0,
    listStyleType: "none",
  },
  one: {
    width: "100%",
    height: "100%",
    boxSizing: "border-box",
    padding: "6px",
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    textAlign: "left",
    font: "inherit",
    color: tokens.colorNeutralForeground1,
    backgroundColor: tokens.colorNeutralBackground1,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "1px" },
    "& svg": { display: "block", width: "100%", height: "auto" },
  },
  reason: { color: tokens.colorNeutralForeground2 },
});

function Drawing({ spec }: { spec: PlotSpec }) {
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    ref.current?.replaceChildren(drawPlot(spec, { width: WIDTH, height: HEIGHT, isBare: true }));
  }, [spec]);
  return <div ref={ref} aria-hidden="true" />;
}

/** The first clause of a reason. */
export function brief(reason: Message): string {
  return firstOf(inWords(reason.cause ?? reason).split(/[:;]\s/));
}

/** The reason why the load has no construction or no plot. */
const reasonOf = ({ drawn }: SmallPlot): Message | undefined => (drawn.ok ? drawn.value.refusal : drawn.reason);

export interface SmallPlotsProps {
  readonly record: TestRecord;
  readonly axis: "log" | "root";
  readonly onOpen: (load: number) => void;
}

export function SmallPlots({ record, axis, onOpen }: SmallPlotsProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const plots = useMemo(() => smallPlots(record, axis), [record, axis]);
  if (plots.length === 0)
    return (
      <Notice intent="info" title={words.noReadingsTitle}>
        {words.noReadings}
      </Notice>
    );
  const drawn = plots.find((plot) => plot.drawn.ok)?.drawn;
  return (
    <>
      <Text size={200} className={shared.quiet}>
        {words.small(drawn?.ok ? drawn.value.x.domain.map((end) => numberText(Number(end.toPrecision(3)))) : [], axis)}
      </Text>
      <ul className={styles.grid} aria-label={words.sheetPlots.all}>
        {plots.map((plot) => {
          const { load, isUnloading } = plot;
          const called = words.loadName(load.number, stressInWords(record, load));
          const reason = reasonOf(plot);
          return (
            <li key={load.number}>
              <button type="button" className={styles.one} onClick={() => onOpen(load.number)}>
                <Text size={200} weight="semibold">
                  {isUnloading ? words.unloadingLoad(called) : called}
                </Text>
                {plot.drawn.ok && <Drawing spec={plot.drawn.value} />}
                {reason !== undefined && (
                  <Text size={100} className={styles.reason} lang="en">
                    {sentence(brief(reason))}
                  </Text>
                )}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
