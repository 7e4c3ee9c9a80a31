/** The look of a list of results: a label, its number at the right, and below them why there is none. */
import { makeStyles, tokens } from "@fluentui/react-components";

export const useLineStyles = makeStyles({
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
});
