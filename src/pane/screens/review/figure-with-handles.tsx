/**
 * A curve with handles. A handle is a pick of the construction; the person moves it with the pointer or with keys.
 */
import { inWords } from "../../text/messages";
import { makeStyles, mergeClasses, Text, tokens } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import type { Frame } from "../../../plots/lettering";
import type { PlotAxis, PlotSpec } from "../../../plots/spec";
import { drawPlot, frameOf } from "../../../plots/svg";
import { neighbours, nth } from "../../../reduction/numeric/lists";
import type { NumberPick } from "./picks/pick-changes";
import { onAxes, placeOf, shownOf, valueAt, valueByKey, type Handle, type HandleSet } from "./handles";
import { text } from "../../text";
import { PlotNotes } from "../../ui/figure";
import { useWidth } from "../../ui/use-width";

const words = text.review;

const NARROWEST = 240;
/**
 * The width and height of a handle, and the width of the strips above and beside the drawing for the handles; in
 * pixels.
 */
const GRIP = 28;

const useStyles = makeStyles({
  figure: { margin: 0, display: "flex", flexDirection: "column", gap: "6px" },
  // The handles of times are in strips above the drawing, the handles of levels in the strip on its right.
  board: { position: "relative", paddingRight: `${GRIP / 2}px` },
  // A line across the frame marks the value of the handle.
  handle: {
    position: "absolute",
    boxSizing: "border-box",
    width: `${GRIP}px`,
    height: `${GRIP}px`,
    display: "flex",
    alignItems: "center",
    justifyContent: "center",
    borderRadius: tokens.borderRadiusMedium,
    border: `1.5px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorBrandForeground1,
    fontSize: tokens.fontSizeBase100,
    fontWeight: tokens.fontWeightSemibold,
    lineHeight: 1,
    touchAction: "none",
    userSelect: "none",
    zIndex: 1,
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "1px", zIndex: 2 },
    "@media (forced-colors: active)": { border: "1.5px solid ButtonText" },
  },
  level: { cursor: "ns-resize" },
  time: { cursor: "ew-resize", fontSize: tokens.fontSizeBase300 },
  byHand: {
    backgroundColor: tokens.colorBrandBackground,
    color: tokens.colorNeutralForegroundOnBrand,
    ":hover": { backgroundColor: tokens.colorBrandBackgroundHover },
  },
  line: {
    position: "absolute",
    pointerEvents: "none",
    borderTop: `1px dotted ${tokens.colorBrandStroke1}`,
    borderLeft: `1px dotted ${tokens.colorBrandStroke1}`,
  },
});

/** Moves handles of one kind apart if they would overlap; their order stays. */
function apart(places: readonly number[]): number[] {
  const grips = places.map((place) => ({ place, moved: place }));
  const inOrder = [...grips].sort((a, b) => a.place - b.place);
  // A pair that moves apart may push against the next handle: as many rounds as there are handles.
  for (let round = 0; round < grips.length; round++)
    for (const [before, after] of neighbours(inOrder)) {
      const overlap = GRIP - (after.moved - before.moved);
      if (overlap <= 0) continue;
      before.moved -= overlap / 2;
      after.moved += overlap / 2;
    }
  return grips.map(({ moved }) => moved);
}

/** The sign on the handle of a time; the handle of a level shows its name. */
const GRIP_LETTERS: Partial<Record<NumberPick, string>> = {
  straight_from: "[",
  straight_to: "]",
  tail_from: "[",
  tail_to: "]",
  tangent_from: "(",
  tangent_to: ")",
  pair_at: "4:1",
  greatest_curvature: "κ",
  recompression_from: "(",
  recompression_to: ")",
  virgin_from: "[",
  virgin_to: "]",
  loop_from: "⟨",
  loop_to: "⟩",
  unloading_from: "{",
  unloading_to: "}",
};

/** The handles in the upper of the two strips; their picks help to place the picks of the lower strip. */
const UPPER: readonly NumberPick[] = [
  "pair_at",
  "tangent_from",
  "tangent_to",
  "loop_from",
  "loop_to",
  "unloading_from",
  "unloading_to",
];

/** The strips for the handles: levels beside the drawing, times and stresses in two strips above it. */
const STRIPS: readonly ((handle: Handle) => boolean)[] = [
  ({ kind }) => kind === "level",
  ({ kind, name }) => kind !== "level" && !UPPER.includes(name),
  ({ kind, name }) => kind !== "level" && UPPER.includes(name),
];

/** The places of the handles along their strips, in pixels. */
function placesOf(set: HandleSet, drawn: PlotSpec, frame: Frame): ReadonlyMap<NumberPick, number> {
  const places = new Map<NumberPick, number>();
  for (const strip of STRIPS) {
    const some = set.handles.filter(strip);
    const moved = apart(some.map((handle) => placeOf(handle, drawn, frame)));
    some.forEach(({ name }, index) => places.set(name, nth(moved, index)));
  }
  return places;
}

interface GripProps {
  readonly handle: Handle;
  readonly isByHand: boolean;
  /** The value with its unit and the result of the construction, as they are read aloud. */
  readonly valueText: string;
  /** Where the line of the value and the handle are drawn. */
  readonly lineAt: React.CSSProperties;
  readonly gripAt: React.CSSProperties;
  readonly onHold: () => void;
  readonly onDrag: (event: React.PointerEvent) => void;
  readonly onLetGo: () => void;
  readonly onKey: (event: React.KeyboardEvent) => void;
}

/** A handle in its strip, with the line of its value across the frame. */
function Grip({ handle, isByHand, valueText, lineAt, gripAt, onHold, onDrag, onLetGo, onKey }: GripProps) {
  const styles = useStyles();
  const isLevel = handle.kind === "level";
  return (
    <div>
      <div className={styles.line} style={lineAt} />
      <div
        role="slider"
        tabIndex={0}
        className={mergeClasses(styles.handle, isLevel ? styles.level : styles.time, isByHand && styles.byHand)}
        style={gripAt}
        aria-label={words.picks[handle.name]}
        aria-orientation={isLevel ? "vertical" : "horizontal"}
        aria-valuemin={handle.least}
        aria-valuemax={handle.most}
        aria-valuenow={handle.value}
        aria-valuetext={valueText}
        aria-describedby="review-keys"
        data-pick={handle.name}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture?.(event.pointerId);
          onHold();
        }}
        onPointerMove={onDrag}
        onPointerUp={onLetGo}
        onPointerCancel={onLetGo}
        onLostPointerCapture={onLetGo}
        onKeyDown={onKey}
      >
        {GRIP_LETTERS[handle.name] ?? handle.name}
      </div>
    </div>
  );
}

export interface ReviewFigureProps {
  readonly title: string;
  readonly spec: PlotSpec;
  readonly set: HandleSet;
  /** Picks that are not automatic, saved or not. */
  readonly byHand: ReadonlySet<NumberPick>;
  /** The unit of a handle's value. */
  readonly unitOf: (handle: Handle) => string;
  /** How the handles are moved, and what their signs mean. */
  readonly keys: string;
  /** The result of the construction, which is read aloud with the value of each handle. */
  readonly result: string;
  readonly onPick: (name: NumberPick, value: number) => void;
  /** Returns a pick to its value on the sheet. */
  readonly onDrop: (name: NumberPick) => void;
}

export function ReviewFigure({ title, spec, set, byHand, unitOf, keys, result, onPick, onDrop }: ReviewFigureProps) {
  const styles = useStyles();
  const [ref, width] = useWidth(NARROWEST);
  /** The axes at the start of a drag; they stay fixed during the drag. */
  const [held, setHeld] = useState<{ name: NumberPick; x: PlotAxis; y: PlotAxis }>();
  const drawn = useMemo(() => (held ? onAxes(spec, held.x, held.y) : spec), [spec, held]);
  const frame = useMemo(() => frameOf(drawn, { width }), [drawn, width]);
  useEffect(() => {
    ref.current?.replaceChildren(drawPlot(drawn, { width, inWords }));
  }, [ref, drawn, width]);

  const drag = (handle: Handle, event: React.PointerEvent): void => {
    const box = ref.current!.getBoundingClientRect();
    const place = handle.kind === "level" ? event.clientY - box.top : event.clientX - box.left;
    const value = valueAt(handle, set, drawn, frame, place);
    if (value !== handle.value) onPick(handle.name, value);
  };
  const key = (handle: Handle, event: React.KeyboardEvent): void => {
    if (event.key === "Escape") return onDrop(handle.name);
    const value = valueByKey(handle, set, drawn, event.key, event.shiftKey);
    if (value === undefined) return;
    event.preventDefault();
    if (value !== handle.value) onPick(handle.name, value);
  };

  const places = placesOf(set, drawn, frame);
  /** The height of the strips above the drawing. */
  const above = GRIP * (set.handles.some(({ name }) => UPPER.includes(name)) ? 2 : 1);
  const topOf = ({ name }: Handle): number => (UPPER.includes(name) ? 0 : above - GRIP);
  const lineAt = (handle: Handle): React.CSSProperties => {
    const exact = placeOf(handle, drawn, frame);
    if (handle.kind === "level")
      return { top: above + exact, left: frame.left, width: frame.right - frame.left, height: 0 };
    const top = topOf(handle) + GRIP;
    return { left: exact, top, height: above - top + frame.bottom, width: 0 };
  };
  const gripAt = (handle: Handle): React.CSSProperties => {
    const place = places.get(handle.name)! - GRIP / 2;
    return handle.kind === "level"
      ? { top: above + place, left: frame.right + 2 }
      : { left: place, top: topOf(handle) };
  };
  return (
    <figure className={styles.figure} aria-labelledby="review-figure">
      <Text weight="semibold" id="review-figure">
        {title}
      </Text>
      <div className={styles.board} style={{ paddingTop: above }}>
        <div ref={ref} />
        {set.handles.map((handle) => {
          const { name } = handle;
          const isByHand = byHand.has(name);
          return (
            <Grip
              key={name}
              handle={handle}
              isByHand={isByHand}
              valueText={`${words.valueText(shownOf(handle, isByHand), unitOf(handle), isByHand)}; ${result}`}
              lineAt={lineAt(handle)}
              gripAt={gripAt(handle)}
              onHold={() => setHeld({ name, x: spec.x, y: spec.y })}
              onDrag={(event) => held?.name === name && drag(handle, event)}
              onLetGo={() => setHeld(undefined)}
              onKey={(event) => key(handle, event)}
            />
          );
        })}
      </div>
      <figcaption>
        <div id="review-keys">
          <PlotNotes notes={[keys]} />
        </div>
        <PlotNotes notes={spec.notes} />
      </figcaption>
    </figure>
  );
}
