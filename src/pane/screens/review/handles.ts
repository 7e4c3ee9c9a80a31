/**
 * The handles of a curve: which picks of a construction can be moved, their position in a drawing, and the value after a
 * move by pointer or key. A level (d0, d100, d90) moves in equal steps; the end of a span of times, or of a line, moves
 * from reading to reading; the point of greatest curvature moves along the curve.
 */
import { along, toAxis } from "../../../plots/axes";
import type { PlotAxis, PlotSpec } from "../../../plots/spec";
import { firstOf, lastOf, nth } from "../../../reduction/numeric/lists";
import type { PickName, TimeMethod } from "../../../reduction/increment/constructions/picks";
import { shown, shownTo } from "../../text/digits";
import { decimalsOfLevels } from "../../../reduction/increment/level-decimals";
import type { Increment } from "../../../reduction/increment/reduce";
import { PICKS_OF, valueOf } from "./increment";
import type { NumberPick, NumberPicks } from "./picks/pick-changes";

export interface Handle {
  readonly name: NumberPick;
  readonly kind: "level" | "from" | "to" | "point";
  /** A reading, a time in minutes, or a stress. */
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** For an end: the times or stresses of the readings at which it may stand, increasing. */
  readonly stops: readonly number[];
  /** For a level: the decimals of the readings and one more, to which a value of the construction is shown. */
  readonly decimals?: number;
}

export interface HandleSet {
  readonly handles: readonly Handle[];
  /** The step of a level, in divisions. */
  readonly step: number;
}

/** The number of steps of a level, or of readings, for an arrow key with Shift. */
const LARGER = { level: 10, stop: 3, point: 10 } as const;
/** The factor by which an arrow key moves a point along a log axis. */
const POINT_STEP = 1.01;
/**
 * The approximate number of steps of a level over the whole movement: 0.25 % of the movement changes cv by 1 % at U =
 * 50 %.
 */
const STEPS = 400;

/** The largest of 1, 2 or 5 times a power of ten that is not greater than the value. */
function roundStep(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  return power * ([5, 2].find((digit) => digit * power <= value * (1 + 1e-9)) ?? 1);
}

/** Rounds a time or a stress to four digits, unless the rounded value would exclude the reading. */
function written(time: number, kind: "from" | "to"): number {
  const short = Number(time.toPrecision(4));
  const holds = kind === "from" ? short <= time : short >= time;
  return holds ? short : time;
}

const kindOf = (name: PickName): "level" | "from" | "to" =>
  name.endsWith("_from") || name === "pair_at" ? "from" : name.endsWith("_to") ? "to" : "level";

/** The handles of a construction; none if the readings cannot be used. A pick that is refused keeps its handle. */
export function handlesOf(increment: Increment, clean: Increment, picks: NumberPicks, method: TimeMethod): HandleSet {
  if (!clean.cleaned.ok || clean.cleaned.value.series.times.length < 2) return { handles: [], step: 1 };
  const { series, travel, zeroReading } = clean.jump?.clean ?? clean.cleaned.value;
  const { times, readings } = series;
  const step = roundStep((travel || 1) / STEPS);
  const first = zeroReading ?? firstOf(readings);
  const last = lastOf(readings);
  const middle = Math.floor(times.length / 2);
  /** The position of the handle for a pick that the construction does not give. */
  const offered: Record<PickName, number> = {
    d0: first,
    d100: last,
    d90: first + 0.9 * (last - first),
    straight_from: firstOf(times),
    straight_to: nth(times, middle),
    tail_from: nth(times, Math.max(0, times.length - 3)),
    tail_to: lastOf(times),
    pair_at: firstOf(times),
    tangent_from: nth(times, Math.floor(middle / 2)),
    tangent_to: nth(times, middle),
  };
  const margin = 0.5 * (travel || 1);
  return {
    step,
    handles: PICKS_OF[method].map((name): Handle => {
      const kind = kindOf(name);
      const value = picks[name] ?? valueOf(increment, name, method) ?? valueOf(clean, name, method) ?? offered[name];
      const [least, most] =
        kind === "level"
          ? [Math.min(first, last) - margin, Math.max(first, last) + margin]
          : [firstOf(times), lastOf(times)];
      return {
        name,
        kind,
        value,
        least: Math.min(least, value),
        most: Math.max(most, value),
        stops: kind === "level" ? [] : times,
        ...(kind === "level" && { decimals: decimalsOfLevels(clean.cleaned) }),
      };
    }),
  };
}

/** The value of a handle: one that a construction gave to the decimals of the readings, one that a person gave in full. */
export const shownOf = ({ value, decimals }: Handle, isByHand: boolean): string =>
  isByHand || decimals === undefined ? shown(value) : shownTo(value, decimals);

const tidy = (value: number, step: number): number => {
  const rounded = Number((Math.round(value / step) * step).toPrecision(10));
  // The table of picks treats 0 as blank.
  return rounded === 0 ? Number((step / 10).toPrecision(10)) : rounded;
};

const threeDigits = (value: number): number => Number(value.toPrecision(3));

const within = (value: number, { least, most }: Handle): number => Math.min(most, Math.max(least, value));

/** The stop that is nearest on the drawing, rounded. */
function nearestStop(stops: readonly number[], value: number, kind: "from" | "to", x: PlotAxis): number {
  const at = (t: number) => along(x, coordinate(x, t), 1);
  const best = stops.reduce((near, t) => (Math.abs(at(t) - at(value)) < Math.abs(at(near) - at(value)) ? t : near));
  return written(best, kind);
}

const coordinate = (x: PlotAxis, time: number): number => (x.scale === "root" ? Math.sqrt(time) : time);

/** The rectangle inside the axes of a drawing, in pixels of the drawing. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The position of a handle, kept inside the frame: y for a level, x for the end of a span. */
export function placeOf({ kind, value }: Handle, { x, y }: PlotSpec, frame: Frame): number {
  if (kind === "level") {
    const place = frame.bottom - along(y, value, frame.bottom - frame.top);
    return Math.min(frame.bottom, Math.max(frame.top, place));
  }
  const at = coordinate(x, value);
  const place = frame.left + along(x, x.scale === "log" ? Math.max(at, x.domain[0]) : at, frame.right - frame.left);
  return Math.min(frame.right, Math.max(frame.left, place));
}

/** The value of a handle for a position of the pointer on the drawing. */
export function valueAt(handle: Handle, { step }: HandleSet, spec: PlotSpec, frame: Frame, place: number) {
  const { kind, stops } = handle;
  if (kind === "level") {
    const share = (frame.bottom - place) / (frame.bottom - frame.top);
    const [low, high] = spec.y.domain;
    return within(tidy(low + (spec.y.reversed ? 1 - share : share) * (high - low), step), handle);
  }
  // The pair of the fitted parabola is not at a reading; a handle that has not moved keeps its value.
  if (Math.abs(place - placeOf(handle, spec, frame)) < 0.5) return handle.value;
  const share = Math.min(1, Math.max(0, (place - frame.left) / (frame.right - frame.left)));
  const [low, high] = spec.x.domain;
  const at = spec.x.scale === "log" ? low * (high / low) ** share : low + share * (high - low);
  if (kind === "point") return within(threeDigits(at), handle);
  return nearestStop(stops, spec.x.scale === "root" ? at * at : at, kind, spec.x);
}

/**
 * The value of a handle after a key; undefined for any other key. The up and down keys follow the drawing; left, right,
 * Home and End follow the values; `larger` makes the steps larger.
 */
export function valueByKey(
  handle: Handle,
  { step }: HandleSet,
  { y }: PlotSpec,
  key: string,
  larger: boolean,
): number | undefined {
  const { kind, value, stops } = handle;
  const up = kind === "level" && y.reversed ? -1 : 1;
  const directions: Readonly<Record<string, number>> = { ArrowUp: up, ArrowDown: -up, ArrowRight: 1, ArrowLeft: -1 };
  const direction = directions[key];
  if (kind === "level") {
    if (key === "Home" || key === "End") return tidy(key === "Home" ? handle.least : handle.most, step);
    return direction && within(tidy(value + direction * step * (larger ? LARGER.level : 1), step), handle);
  }
  if (kind === "point") {
    if (key === "Home" || key === "End") return key === "Home" ? handle.least : handle.most;
    return direction && within(threeDigits(value * POINT_STEP ** (direction * (larger ? LARGER.point : 1))), handle);
  }
  if (key === "Home" || key === "End") return written(key === "Home" ? firstOf(stops) : lastOf(stops), kind);
  if (!direction) return undefined;
  // The move goes to the next reading in this direction; a typed time may lie between two readings.
  const beyond = stops.filter((t) => (direction > 0 ? t > value * (1 + 1e-3) : t < value * (1 - 1e-3)));
  if (beyond.length === 0) return value;
  const steps = Math.min(beyond.length, larger ? LARGER.stop : 1);
  return written(nth(beyond, direction > 0 ? steps - 1 : beyond.length - steps), kind);
}

/** The same plot on other axes, which stay fixed while a handle is dragged. */
export const onAxes = (spec: PlotSpec, x: PlotAxis, y: PlotAxis): PlotSpec => ({
  ...spec,
  x,
  y,
  series: spec.series.map((series) => ({
    ...series,
    ...toAxis({ ...series, style: lineStyle(series.style) }, x, y),
    style: series.style,
  })),
});

const lineStyle = (style: PlotSpec["series"][number]["style"]) => (style === "joined" ? "curve" : style);
