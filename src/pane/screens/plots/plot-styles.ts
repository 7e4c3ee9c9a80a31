/** The styles that the parts of the plots screen share. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { useStyles as useSharedStyles } from "../../ui/styles";

const useOwnStyles = makeStyles({
  switches: { display: "grid", gridTemplateColumns: "repeat(auto-fit, minmax(130px, 1fr))", marginLeft: "-8px" },
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

export const useStyles = () => ({ ...useSharedStyles(), ...useOwnStyles() });
