/** The look that the parts of the plots screen share. */
import { makeStyles, tokens } from "@fluentui/react-components";

export const useStyles = makeStyles({
  column: { display: "flex", flexDirection: "column", gap: "12px" },
  quiet: { color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
  title: { margin: 0 },
  switches: { display: "grid", gridTemplateColumns: "repeat(auto-fit, minmax(130px, 1fr))", marginLeft: "-8px" },
  fields: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(132px, 1fr))",
    gap: "8px 12px",
    alignItems: "start",
    "& input, & select": { minWidth: 0, width: "100%" },
    "& > *": { minWidth: 0 },
  },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  files: {
    display: "flex",
    flexDirection: "column",
    gap: "8px",
    paddingTop: "12px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  narrow: { maxWidth: "260px", "& select": { minWidth: 0, width: "100%" } },
  source: { paddingBottom: "4px", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  steps: {
    display: "flex",
    flexWrap: "wrap",
    gap: "8px",
    alignItems: "end",
    "& > :first-child": { flex: "1 1 170px", minWidth: 0 },
    "& select": { minWidth: 0, width: "100%" },
  },
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "6px" },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    "& caption": { textAlign: "left", paddingBottom: "4px", fontWeight: tokens.fontWeightSemibold },
    "& th, & td": {
      padding: "3px 8px 3px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      textAlign: "left",
      verticalAlign: "top",
      fontWeight: tokens.fontWeightRegular,
      fontSize: tokens.fontSizeBase300,
    },
    "& thead th": { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
    "& tbody th": { whiteSpace: "nowrap" },
    "& .number": { textAlign: "right" },
  },
});
