/** Picks by hand: what replaces an automatic choice of the constructions. Readings in the reading unit, times in minutes. */
import { badInput, given, type Outcome } from "../outcome";

export const PICK_NAMES = ["d0", "d100", "d90", "straight_from", "straight_to", "tail_from", "tail_to"] as const;
export type PickName = (typeof PICK_NAMES)[number];
export type Picks = Readonly<Partial<Record<PickName, number>>>;

/** The remark that names what was picked by hand, of the names that matter to a method; none if nothing was. */
export function pickRemarks(picks: Picks, names: readonly PickName[]): string[] {
  const used = names.filter((name) => picks[name] !== undefined);
  return used.length ? [`picked by hand: ${used.map((name) => `${name} = ${picks[name]}`).join(", ")}`] : [];
}

/** Refuses spans of time that run backwards. */
export function checkPicks(picks: Picks): Outcome<Picks> {
  for (const span of ["straight", "tail"] as const) {
    const from = picks[`${span}_from`];
    const to = picks[`${span}_to`];
    if ((from ?? 0) < 0 || (to ?? 0) < 0) return badInput(`the picked ${span} span has a negative time: give minutes`);
    if (from !== undefined && to !== undefined && from >= to)
      return badInput(`the picked ${span}_from (${from} min) must come before ${span}_to (${to} min)`);
  }
  return given(picks);
}
