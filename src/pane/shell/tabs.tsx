/**
 * Tabs by the pattern of the ARIA practices: they are one stop of the Tab key, the arrow keys move between tabs, Home
 * and End move to the first and the last. They look like a ledger: each group of the work is a ruled line. The title is
 * on the spine, and opens the screen about the program.
 */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { KeyboardEvent, ReactNode } from "react";
import { useStyles as useSharedStyles } from "../ui/styles";

/** From this width on, the groups stand side by side in one line. */
const WIDE = "@media (min-width: 760px)";

const useStyles = makeStyles({
  list: { display: "flex", alignItems: "stretch", minHeight: "72px", [WIDE]: { minHeight: "36px" } },
  lines: { flexGrow: 1, minWidth: 0, display: "flex", flexDirection: "column", [WIDE]: { flexDirection: "row" } },
  line: {
    flexGrow: 1,
    display: "grid",
    gridAutoFlow: "column",
    gridAutoColumns: "minmax(max-content, 1fr)",
    "& + &": {
      borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
      [WIDE]: { borderTop: "none", borderLeft: `1px solid ${tokens.colorNeutralStroke2}` },
    },
    [WIDE]: { flexGrow: 0, gridAutoColumns: "auto" },
  },
  tab: {
    boxSizing: "border-box",
    minHeight: "23px",
    // The four German tabs of the first line fit into 320 px in DejaVu Sans too, which is wide.
    padding: "2px 2px 0 4px",
    border: "none",
    borderBottom: "2px solid transparent",
    background: "none",
    font: "inherit",
    fontSize: tokens.fontSizeBase200,
    lineHeight: "16px",
    textAlign: "start",
    whiteSpace: "nowrap",
    color: tokens.colorNeutralForeground2,
    cursor: "pointer",
    "@media (forced-colors: active)": { borderBottomColor: "Canvas" },
    ":hover": { color: tokens.colorNeutralForeground1, borderBottomColor: tokens.colorNeutralStroke1 },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-3px" },
  },
  selected: {
    color: tokens.colorNeutralForeground1,
    backgroundColor: tokens.colorBrandBackground2,
    fontWeight: tokens.fontWeightSemibold,
    borderBottomColor: tokens.colorCompoundBrandStroke,
    "@media (forced-colors: active)": { borderBottomColor: "Highlight" },
    ":hover": { borderBottomColor: tokens.colorCompoundBrandStroke },
  },
  // The spine is the last element for the keyboard, but the first on the page.
  spine: {
    order: -1,
    width: "26px",
    padding: 0,
    border: "none",
    borderRight: "3px solid transparent",
    backgroundColor: tokens.colorBrandBackground,
    color: tokens.colorNeutralForegroundOnBrand,
    font: "inherit",
    fontSize: tokens.fontSizeBase100,
    lineHeight: "23px",
    fontWeight: tokens.fontWeightSemibold,
    letterSpacing: "0.04em",
    cursor: "pointer",
    display: "flex",
    alignItems: "center",
    justifyContent: "center",
    [WIDE]: { width: "auto", padding: "0 12px", fontSize: tokens.fontSizeBase300 },
    "@media (forced-colors: active)": { borderRightColor: "Canvas" },
    ":hover": { backgroundColor: tokens.colorBrandBackgroundHover },
    ":focus-visible": { outline: `2px solid ${tokens.colorNeutralForegroundOnBrand}`, outlineOffset: "-4px" },
  },
  spineSelected: {
    backgroundColor: tokens.colorBrandBackgroundPressed,
    borderRightColor: tokens.colorBrandBackground2,
    "@media (forced-colors: active)": { borderRightColor: "Highlight" },
  },
  // The title reads from bottom to top, as on the spine of a book.
  title: {
    writingMode: "vertical-rl",
    transform: "rotate(180deg)",
    [WIDE]: { writingMode: "unset", transform: "none" },
  },
});

export interface TabsProps<T extends string> {
  readonly label: string;
  /** The tabs of each line. */
  readonly groups: readonly (readonly { readonly value: T; readonly text: string }[])[];
  /** The tab that the title on the spine opens. */
  readonly behindTitle: { readonly value: T; readonly text: string; readonly title: string };
  readonly selected: T;
  /** The id of the panel that the tabs show. */
  readonly panel: string;
  readonly onSelect: (value: T) => void;
}

export const tabId = (value: string): string => `tab-${value}`;

export function Tabs<T extends string>({ label, groups, behindTitle, selected, panel, onSelect }: TabsProps<T>) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const values = [...groups.flat(), behindTitle].map(({ value }) => value);
  const move = (event: KeyboardEvent): void => {
    const last = values.length - 1;
    const at = values.indexOf(selected);
    const to = { ArrowRight: at === last ? 0 : at + 1, ArrowLeft: at === 0 ? last : at - 1, Home: 0, End: last }[
      event.key
    ];
    const value = to === undefined ? undefined : values[to];
    if (value === undefined) return;
    event.preventDefault();
    onSelect(value);
    document.getElementById(tabId(value))?.focus();
  };
  const tab = (value: T, className: string, content: ReactNode) => (
    <button
      key={value}
      id={tabId(value)}
      type="button"
      role="tab"
      aria-selected={value === selected}
      aria-controls={panel}
      tabIndex={value === selected ? 0 : -1}
      className={className}
      onClick={() => onSelect(value)}
    >
      {content}
    </button>
  );
  return (
    <div role="tablist" aria-label={label} className={styles.list} onKeyDown={move}>
      <div className={styles.lines}>
        {groups.map((group) => (
          <div key={group[0]?.value} className={styles.line}>
            {group.map(({ value, text }) =>
              tab(value, mergeClasses(styles.tab, value === selected && styles.selected), text),
            )}
          </div>
        ))}
      </div>
      {tab(
        behindTitle.value,
        mergeClasses(styles.spine, behindTitle.value === selected && styles.spineSelected),
        <>
          <span className={styles.title}>{behindTitle.title}</span>
          <span className={shared.hidden}>{`: ${behindTitle.text}`}</span>
        </>,
      )}
    </div>
  );
}
