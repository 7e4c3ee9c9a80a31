/** The task pane: its screens behind tabs, in the look of the host. */
import { FluentProvider, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { WorkbookPort } from "../workbook/port";
import { AboutScreen } from "./about-screen";
import { CheckScreen } from "./check-screen";
import { PlotScreen } from "./plot-screen";
import { ReadingsScreen } from "./readings-screen";
import { SheetScreen, type Sheets } from "./sheet-screen";
import { tabId, Tabs } from "./tabs";
import { text } from "./text";
import { PLOT_INKS, THEMES, type Look } from "./theme";

const useStyles = makeStyles({
  pane: { minHeight: "100vh", boxSizing: "border-box", backgroundColor: tokens.colorNeutralBackground1 },
  tabs: {
    position: "sticky",
    top: 0,
    zIndex: 1,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  screen: { padding: "12px 12px 24px", maxWidth: "720px" },
});

export interface PaneProps {
  readonly port: WorkbookPort;
  readonly sheets: Sheets;
  readonly look: Look;
}

const SCREENS = ["sheet", "readings", "plot", "about"] as const;

type Screen = (typeof SCREENS)[number];

export function Pane({ port, sheets, look }: PaneProps) {
  const styles = useStyles();
  const [screen, setScreen] = useState<Screen>("sheet");
  // Readings that are being brought in stay as they are while another screen is looked at.
  const [begun, setBegun] = useState(false);
  const show = (next: Screen): void => {
    if (next === "readings") setBegun(true);
    setScreen(next);
  };
  return (
    <FluentProvider theme={THEMES[look]} className={styles.pane} style={PLOT_INKS[look] as React.CSSProperties}>
      <header className={styles.tabs}>
        <Tabs
          label={text.tabs.label}
          tabs={SCREENS.map((value) => ({ value, text: text.tabs[value] }))}
          selected={screen}
          panel="screen"
          onSelect={show}
        />
      </header>
      <main>
        <div id="screen" role="tabpanel" aria-labelledby={tabId(screen)} className={styles.screen}>
          {screen === "sheet" && (
            <>
              <SheetScreen port={port} sheets={sheets} />
              <CheckScreen port={port} />
            </>
          )}
          {begun && (
            <div hidden={screen !== "readings"}>
              <ReadingsScreen port={port} shown={screen === "readings"} />
            </div>
          )}
          {screen === "plot" && <PlotScreen port={port} />}
          {screen === "about" && <AboutScreen />}
        </div>
      </main>
    </FluentProvider>
  );
}
