/** Draws a PlotSpec with the width of the pane, and its notes below. */
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import { useEffect } from "react";
import type { PlotSpec } from "../../plots/spec";
import { drawPlot } from "../../plots/svg";
import { inWords } from "../text/messages";
import { useWidth } from "./use-width";

const NARROWEST = 260;

const useStyles = makeStyles({
  figure: { margin: 0, display: "flex", flexDirection: "column", gap: "6px" },
  note: { color: tokens.colorNeutralForeground2 },
});

/** The notes below a plot. */
export function PlotNotes({ notes }: Pick<PlotSpec, "notes">) {
  const styles = useStyles();
  return notes.map((note) => (
    <Text key={note} size={200} block className={styles.note}>
      {note}
    </Text>
  ));
}

export function Figure({ spec }: { spec: PlotSpec }) {
  const styles = useStyles();
  const [ref, width] = useWidth(NARROWEST);
  useEffect(() => {
    ref.current?.replaceChildren(drawPlot(spec, { width, inWords }));
  }, [ref, spec, width]);
  return (
    <figure className={styles.figure}>
      <Text weight="semibold">{spec.title}</Text>
      <div ref={ref} />
      <figcaption>
        <PlotNotes notes={spec.notes} />
      </figcaption>
    </figure>
  );
}
