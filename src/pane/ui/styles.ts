/** The styles that the screens share. */
import { makeStyles, tokens } from "@fluentui/react-components";

export const useStyles = makeStyles({
  column: { display: "flex", flexDirection: "column", gap: "12px" },
  /** Comes into sight below the head of the pane, px high. */
  underHeader: { scrollMarginTop: "120px" },
  section: {
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    paddingTop: "12px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  title: { margin: 0 },
  quiet: { color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
  breaks: { overflowWrap: "anywhere" },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  fields: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(132px, 1fr))",
    gap: "8px 12px",
    alignItems: "start",
    "& input, & select": { minWidth: 0, width: "100%" },
    "& > *": { minWidth: 0 },
    // A list of choices takes two places, and in a narrow pane the whole width, so that its words stand whole.
    "& > :has(select)": { gridColumn: "span 2" },
    "@media (max-width: 400px)": { "& > :has(select)": { gridColumn: "1 / -1" } },
    // A date field takes the whole width, because it is wider than other fields in some system fonts.
    "& > :has(input[type=date])": { gridColumn: "1 / -1" },
  },
  wide: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(240px, 1fr))",
    gap: "8px 12px",
    "& select": { minWidth: 0, width: "100%" },
  },
  // A list of long words is as narrow as its place, too.
  shrinks: { minWidth: 0, "& select": { minWidth: 0, width: "100%" } },
  hidden: { position: "absolute", width: "1px", height: "1px", overflow: "hidden", clipPath: "inset(50%)" },
  scroll: {
    overflowX: "auto",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: {
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    fontSize: tokens.fontSizeBase200,
    whiteSpace: "pre",
    "& th, & td": {
      padding: "2px 8px",
      textAlign: "left",
      fontWeight: tokens.fontWeightRegular,
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
    "& thead th": { color: tokens.colorNeutralForeground2, verticalAlign: "bottom" },
    "& .chosen": { fontWeight: tokens.fontWeightSemibold, color: tokens.colorNeutralForeground1 },
    "& .above td": { color: tokens.colorNeutralForeground2 },
  },
  list: { margin: 0, padding: 0, listStyleType: "none", display: "flex", flexDirection: "column", gap: "8px" },
  card: {
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    padding: "8px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  select: { minWidth: "150px", flexGrow: 1 },
  faults: { margin: "6px 0 0", paddingLeft: "18px", maxHeight: "240px", overflowY: "auto", overflowWrap: "anywhere" },
});
