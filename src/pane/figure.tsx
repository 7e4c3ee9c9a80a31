/** A PlotSpec drawn at the width that the pane has, with its notes below. */
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import type { PlotSpec } from "../plots/spec";
import { drawPlot } from "../plots/svg";

const NARROWEST = 260;
const WIDEST = 680;

const useStyles = makeStyles({
  figure: { margin: 0, display: "flex", flexDirection: "column", gap: "6px" },
  notes: { color: tokens.colorNeutralForeground2 },
});

/** The width of an element, followed; before it is known, 320 px. */
function useWidth(): [React.RefObject<HTMLDivElement>, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(320);
  useEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(() => element.clientWidth > 0 && setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, Math.min(WIDEST, Math.max(NARROWEST, width))];
}

export function Figure({ spec }: { spec: PlotSpec }) {
  const styles = useStyles();
  const [ref, width] = useWidth();
  useEffect(() => {
    ref.current?.replaceChildren(drawPlot(spec, { width }));
  }, [ref, spec, width]);
  return (
    <figure className={styles.figure} lang="en">
      <div ref={ref} />
      <figcaption>
        {spec.notes.map((note) => (
          <Text key={note} size={200} block className={styles.notes}>
            {note}
          </Text>
        ))}
      </figcaption>
    </figure>
  );
}
