/** The styles that the parts of the by-hand screen share. */
import { makeStyles, tokens } from "@fluentui/react-components";

export const useStyles = makeStyles({
  pair: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) 104px",
    gap: "8px",
    alignItems: "start",
    "& > *": { minWidth: 0 },
    "& .fui-Input": { minWidth: 0, width: "100%" },
    "& input": { minWidth: 0, width: "100%" },
  },
  line: {
    padding: "6px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
    display: "flex",
    flexDirection: "column",
    gap: "2px",
  },
  book: { fontVariantNumeric: "tabular-nums" },
  /** A unit stays in one line beside its number. */
  unit: { whiteSpace: "nowrap" },
  result: { fontWeight: tokens.fontWeightSemibold },
});
