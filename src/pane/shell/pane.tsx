/** The task pane: its screens behind tabs, in the look of the host. */
import { FluentProvider, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useLayoutEffect, useRef, useState, type CSSProperties, type ComponentType } from "react";
import type { WorkbookPort } from "../../workbook/port";
import { AboutScreen } from "../screens/about/about-screen";
import { BenchScreen } from "../screens/bench/bench-screen";
import { ByHandScreen } from "../screens/by-hand/by-hand-screen";
import { ChecksScreen } from "../screens/checks/checks-screen";
import { NextScreen } from "../screens/next/next-screen";
import { PlotScreen } from "../screens/plots/plot-screen";
import { ReadingsScreen } from "../screens/readings/readings-screen";
import { RegisterPart } from "../screens/register/register-part";
import { ReportScreen } from "../screens/report/report-screen";
import { ResultsScreen } from "../screens/results/results-screen";
import { ReviewScreen } from "../screens/review/review-screen";
import { SummaryScreen } from "../screens/summary/summary-screen";
import { SheetCheckPart } from "../screens/data-sheet/sheet-check";
import { SheetScreen, type Sheets } from "../screens/data-sheet/insert-sheet";
import { tabId, Tabs } from "./tabs";
import { text } from "../text";
import { PLOT_INKS, THEMES, type Look } from "./theme";
import { FollowedWorkbook, Shown } from "../live/use-test";
import { CurrentTestBar } from "./current-test-bar";
import { keepFocus } from "./keep-focus";
import { DaysFrom1904 } from "./days-from-1904";
import { OnRequest } from "./on-request";
import { UnknownFormulas } from "./unknown-formulas";
import { UnfinishedWork } from "./unfinished-work";

const useStyles = makeStyles({
  pane: { minHeight: "100vh", boxSizing: "border-box", backgroundColor: tokens.colorNeutralBackground1 },
  tabs: {
    position: "sticky",
    top: 0,
    // Above the handles of the review, which scroll below it.
    zIndex: 3,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  screen: { padding: "12px 12px 24px", maxWidth: "720px" },
  parts: { display: "flex", flexDirection: "column", gap: "24px" },
});

export interface PaneProps {
  readonly port: WorkbookPort;
  readonly sheets: Sheets;
  readonly look: Look;
}

interface ScreenProps {
  readonly port: WorkbookPort;
  readonly sheets: Sheets;
  /** Shows another screen. */
  readonly onOpen: (screen: ScreenName) => void;
}

type ScreenName = Exclude<keyof typeof text.tabs, "label">;

interface Screen {
  readonly value: ScreenName;
  readonly Screen: ComponentType<ScreenProps>;
  /** True if the screen keeps unfinished work while another screen is shown. */
  readonly keeps?: boolean;
}

function DataSheetScreen({ port, sheets }: ScreenProps) {
  const styles = useStyles();
  return (
    <div className={styles.parts}>
      <SheetScreen port={port} sheets={sheets} />
      <SheetCheckPart port={port} />
      <RegisterPart port={port} />
    </div>
  );
}

/**
 * The screens in the order of the work. Each group is a line of tabs: screens to fill in, screens to look at, screens
 * to sign.
 */
const GROUPS: readonly (readonly Screen[])[] = [
  [
    { value: "next", Screen: NextScreen },
    { value: "sheet", Screen: DataSheetScreen },
    { value: "readings", Screen: ReadingsScreen, keeps: true },
    { value: "bench", Screen: BenchScreen, keeps: true },
  ],
  [
    { value: "plot", Screen: PlotScreen, keeps: true },
    { value: "review", Screen: ReviewScreen, keeps: true },
    { value: "results", Screen: ResultsScreen },
  ],
  [
    { value: "checks", Screen: ChecksScreen, keeps: true },
    { value: "byHand", Screen: ByHandScreen, keeps: true },
    { value: "report", Screen: ReportScreen, keeps: true },
    { value: "summary", Screen: SummaryScreen, keeps: true },
  ],
];

const ABOUT: Screen = { value: "about", Screen: () => <AboutScreen /> };

const SCREENS: readonly Screen[] = [...GROUPS.flat(), ABOUT];

/**
 * A screen that is created when it is first shown, and hidden afterwards. While it is hidden, it does not read the
 * workbook.
 */
function KeptScreen({ Screen, isShown, ...props }: ScreenProps & Pick<Screen, "Screen"> & { isShown: boolean }) {
  const [begun, setBegun] = useState(false);
  useEffect(() => {
    if (isShown) setBegun(true);
  }, [isShown]);
  return begun || isShown ? (
    <div hidden={!isShown}>
      <Shown isShown={isShown}>
        <Screen {...props} />
      </Shown>
    </div>
  ) : null;
}

export function Pane({ port, sheets, look }: PaneProps) {
  const styles = useStyles();
  const [shown, setShown] = useState<ScreenName>("next");
  // A screen begins at its top, wherever the one before it was scrolled to, and comes again where it was left.
  const left = useRef<Partial<Record<ScreenName, number>>>({});
  useLayoutEffect(() => {
    document.documentElement.scrollTop = left.current[shown] ?? 0;
  }, [shown]);
  const show = (screen: ScreenName): void => {
    left.current[shown] = document.documentElement.scrollTop;
    setShown(screen);
  };
  useEffect(() => keepFocus(document), []);
  const onOpen = (screen: ScreenName): void => {
    show(screen);
    document.getElementById(tabId(screen))?.focus();
  };
  const props: ScreenProps = { port, sheets, onOpen };
  // The colours are custom properties, which the types of React do not include.
  const inks = PLOT_INKS[look] as CSSProperties;
  return (
    <FluentProvider theme={THEMES[look]} className={styles.pane} style={inks}>
      <FollowedWorkbook port={port}>
        <header className={styles.tabs}>
          <Tabs
            label={text.tabs.label}
            groups={GROUPS.map((group) => group.map(({ value }) => ({ value, text: text.tabs[value] })))}
            behindTitle={{ value: ABOUT.value, text: text.tabs.about, title: text.title }}
            selected={shown}
            panel="screen"
            onSelect={show}
          />
          <CurrentTestBar />
        </header>
        <main>
          <OnRequest port={port} />
          <DaysFrom1904 port={port} />
          <UnknownFormulas />
          <UnfinishedWork port={port} />
          <div id="screen" role="tabpanel" aria-labelledby={tabId(shown)} className={styles.screen}>
            {SCREENS.map(({ value, Screen, keeps }) =>
              keeps ? (
                <KeptScreen key={value} {...props} Screen={Screen} isShown={value === shown} />
              ) : (
                value === shown && <Screen key={value} {...props} />
              ),
            )}
          </div>
        </main>
      </FollowedWorkbook>
    </FluentProvider>
  );
}
