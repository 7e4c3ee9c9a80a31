/** Tabs by the pattern of the ARIA practices: one stop of the Tab key, arrows move along, Home and End to the ends. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useRef, type KeyboardEvent } from "react";

const useStyles = makeStyles({
  // Nine names stand in two rows of a pane of 320 px, in one where it is wide.
  list: { display: "flex", flexWrap: "wrap", padding: "0 2px" },
  tab: {
    minHeight: "32px",
    padding: "0 6px",
    "@media (min-width: 640px)": { minHeight: "40px", padding: "0 10px" },
    border: "none",
    borderBottom: "3px solid transparent",
    background: "none",
    font: "inherit",
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground2,
    cursor: "pointer",
    "@media (forced-colors: active)": { borderBottomColor: "Canvas" },
    ":hover": { color: tokens.colorNeutralForeground1, borderBottomColor: tokens.colorNeutralStroke1 },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-3px" },
  },
  selected: {
    color: tokens.colorNeutralForeground1,
    fontWeight: tokens.fontWeightSemibold,
    borderBottomColor: tokens.colorCompoundBrandStroke,
    "@media (forced-colors: active)": { borderBottomColor: "Highlight" },
    ":hover": { borderBottomColor: tokens.colorCompoundBrandStroke },
  },
});

export interface TabsProps<T extends string> {
  readonly label: string;
  readonly tabs: readonly { readonly value: T; readonly text: string }[];
  readonly selected: T;
  /** The id of the panel that the tabs show. */
  readonly panel: string;
  readonly onSelect: (value: T) => void;
}

export const tabId = (value: string): string => `tab-${value}`;

export function Tabs<T extends string>({ label, tabs, selected, panel, onSelect }: TabsProps<T>) {
  const styles = useStyles();
  const list = useRef<HTMLDivElement>(null);
  const move = (event: KeyboardEvent): void => {
    const at = tabs.findIndex(({ value }) => value === selected);
    const last = tabs.length - 1;
    const to = { ArrowRight: at === last ? 0 : at + 1, ArrowLeft: at === 0 ? last : at - 1, Home: 0, End: last }[
      event.key
    ];
    if (to === undefined) return;
    event.preventDefault();
    onSelect(tabs[to].value);
    (list.current?.children[to] as HTMLElement).focus();
  };
  return (
    <div ref={list} role="tablist" aria-label={label} className={styles.list} onKeyDown={move}>
      {tabs.map(({ value, text }) => (
        <button
          key={value}
          id={tabId(value)}
          type="button"
          role="tab"
          aria-selected={value === selected}
          aria-controls={panel}
          tabIndex={value === selected ? 0 : -1}
          className={mergeClasses(styles.tab, value === selected && styles.selected)}
          onClick={() => onSelect(value)}
        >
          {text}
        </button>
      ))}
    </div>
  );
}
