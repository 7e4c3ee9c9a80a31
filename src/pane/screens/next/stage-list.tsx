/** The stages of a test, drawn as the layers of a core: full if done, hatched if begun, blank if not begun. */
import { Button, Link, makeStyles, mergeClasses, Text, tokens } from "@fluentui/react-components";
import { useState, type ReactNode } from "react";
import { text } from "../../text";
import { sentence } from "../../text/sentence";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { firstCell, itemOf, lineOf, type Item, type PlaceOf } from "./places";
import type { Lack, Stage, StageName } from "./stages";

const words = text.next;

export type ScreenOfStage = keyof typeof words.screens;

/** The screen for the work on each stage; some stages are done on the sheet only. */
const SCREEN: Readonly<Partial<Record<StageName, ScreenOfStage>>> = {
  loaded: "readings",
  reduced: "results",
  reviewed: "review",
  checked: "checks",
  reported: "report",
};

/** The number of items of a stage that are shown at first. */
const SHOWN = 6;

const CLAY = tokens.colorBrandBackground;
const useStyles = makeStyles({
  core: { margin: 0, padding: 0, listStyleType: "none" },
  stage: { display: "grid", gridTemplateColumns: "18px minmax(0, 1fr)", columnGap: "12px" },
  layer: {
    borderLeft: `2px solid ${tokens.colorNeutralStroke1}`,
    borderRight: `2px solid ${tokens.colorNeutralStroke1}`,
    borderBottom: `2px solid ${tokens.colorNeutralStroke1}`,
  },
  first: { borderTop: `2px solid ${tokens.colorNeutralStroke1}` },
  done: {
    backgroundColor: CLAY,
    "@media (forced-colors: active)": { forcedColorAdjust: "none", backgroundColor: "CanvasText" },
  },
  begun: {
    backgroundImage: `repeating-linear-gradient(135deg, ${CLAY} 0 2px, transparent 2px 6px)`,
    "@media (forced-colors: active)": {
      forcedColorAdjust: "none",
      backgroundColor: "Canvas",
      backgroundImage: "repeating-linear-gradient(135deg, CanvasText 0 2px, transparent 2px 6px)",
    },
  },
  body: { padding: "6px 0 10px", display: "flex", flexDirection: "column", gap: "6px", minWidth: 0 },
  head: { display: "flex", justifyContent: "space-between", alignItems: "baseline", gap: "8px" },
  name: { margin: 0 },
  nameNext: { fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase400 },
  items: {
    margin: 0,
    padding: 0,
    listStyleType: "none",
    display: "flex",
    flexDirection: "column",
    gap: "2px",
    overflowWrap: "anywhere",
  },
  item: { display: "flex", justifyContent: "space-between", alignItems: "baseline", gap: "12px", minHeight: "24px" },
  address: { fontVariantNumeric: "tabular-nums", flexShrink: 0 },
});

export interface StageListProps {
  readonly stages: readonly Stage[];
  /** The stage that comes next. */
  readonly next: Stage | undefined;
  readonly placeOf: PlaceOf;
  readonly goTo: (address: string) => void;
  readonly onOpen: (screen: ScreenOfStage) => void;
}

export function StageList({ stages, next, ...rest }: StageListProps) {
  const styles = useStyles();
  return (
    <ol className={styles.core} aria-label={words.stagesLabel}>
      {stages.map((stage, index) => (
        <StageLayer key={stage.name} stage={stage} isFirst={index === 0} isNext={stage === next} {...rest} />
      ))}
    </ol>
  );
}

interface StageLayerProps extends Omit<StageListProps, "stages" | "next"> {
  readonly stage: Stage;
  readonly isFirst: boolean;
  readonly isNext: boolean;
}

function StageLayer({ stage, isFirst, isNext, placeOf, goTo, onOpen }: StageLayerProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { name, state, lacks, looks } = stage;
  const screen = SCREEN[name];
  const cell = firstCell(stage, placeOf);
  const toDo = lacks.filter(({ what }) => what !== "results follow").length;
  return (
    <li className={styles.stage} aria-current={isNext ? "step" : undefined}>
      <div
        className={mergeClasses(
          styles.layer,
          isFirst && styles.first,
          state === "done" && styles.done,
          state === "begun" && styles.begun,
        )}
      />
      <div className={styles.body}>
        <div className={styles.head}>
          <Text as="h2" weight="semibold" className={mergeClasses(styles.name, isNext && styles.nameNext)}>
            {words.stages[name]}
          </Text>
          <Text size={200} className={shared.quiet}>
            {state === "begun" ? toDo > 0 && words.open(toDo) : words.states[state]}
          </Text>
        </div>
        {state === "not begun" && (
          <Text size={200} className={shared.quiet}>
            {words.notBegun[name]}
          </Text>
        )}
        <Items {...{ lacks, placeOf, goTo }} isOpen={isNext} />
        {looks.length > 0 && isNext && (
          <>
            <Text size={200} className={shared.quiet}>
              {words.toLook}
            </Text>
            <Items {...{ placeOf, goTo }} lacks={looks} isOpen={isNext} />
          </>
        )}
        {isNext && (
          <div className={shared.row}>
            {screen && (
              <Button appearance="primary" onClick={() => onOpen(screen)}>
                {words.screens[screen]}
              </Button>
            )}
            {cell !== undefined && (
              <Button appearance={screen ? "secondary" : "primary"} onClick={() => goTo(cell)}>
                {words.goToCell(cell)}
              </Button>
            )}
          </div>
        )}
      </div>
    </li>
  );
}

interface ItemsProps extends Pick<StageListProps, "placeOf" | "goTo"> {
  readonly lacks: readonly Lack[];
  /**
   * True for the next stage: its items are shown at once. The items of another stage are shown when a person opens it.
   */
  readonly isOpen: boolean;
}

function Items({ lacks, placeOf, goTo, isOpen }: ItemsProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const [isWhole, setWhole] = useState(false);
  const items = lacks.flatMap((lack) => itemOf(lack, placeOf) ?? []);
  const lines = lacks.flatMap((lack) => lineOf(lack) ?? []);
  const shown = isWhole ? items : items.slice(0, isOpen ? SHOWN : 0);
  const left = items.length - shown.length;
  return (
    <>
      {shown.length > 0 && (
        <ul className={styles.items}>
          {shown.map((item) => (
            <li key={`${item.label} ${item.address}`} className={styles.item}>
              <ItemText item={item} goTo={goTo} />
            </li>
          ))}
        </ul>
      )}
      {left > 0 && (
        <div>
          <Link as="button" onClick={() => setWhole(true)}>
            {shown.length > 0 ? words.more(left) : words.showWhat(left)}
          </Link>
        </div>
      )}
      {lines.map((line) => (
        <Text key={line} size={200} className={shared.quiet}>
          {line}
        </Text>
      ))}
    </>
  );
}

function ItemText({
  item: { label, address },
  goTo,
}: {
  readonly item: Item;
  readonly goTo: (cell: string) => void;
}): ReactNode {
  const styles = useStyles();
  if (address === undefined) return <Text>{sentence(label)}</Text>;
  return (
    <>
      <Text>{sentence(label)}</Text>
      <Link
        as="button"
        className={styles.address}
        aria-label={words.toCell(label, address)}
        onClick={() => goTo(address)}
      >
        {address}
      </Link>
    </>
  );
}
