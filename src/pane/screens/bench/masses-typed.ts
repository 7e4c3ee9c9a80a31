/** Masses as a person types them: "10 5 2x2 0.5", with spaces or semicolons between them. */
import { typedNumber } from "../../ui/typed-number";

/** The masses in kg; undefined if a part of the text is no mass. */
export function massesTyped(text: string): readonly number[] | undefined {
  const masses: number[] = [];
  for (const part of text.split(/[;\s]+/).filter((one) => one !== "")) {
    const [, times, size = part] = /^(\d+)[x*×](.+)$/i.exec(part) ?? [];
    const mass = typedNumber(size);
    const count = times === undefined ? 1 : Number(times);
    if (mass === undefined || !(mass > 0) || count > 100) return undefined;
    for (let i = 0; i < count; i++) masses.push(mass);
  }
  return masses;
}

/** Masses as a text of the same form, equal ones together: "5 2x2 0.5". */
export function massesShown(masses: readonly number[], shown: (mass: number) => string): string {
  const counts = new Map<string, number>();
  for (const mass of masses) counts.set(shown(mass), (counts.get(shown(mass)) ?? 0) + 1);
  return [...counts].map(([mass, count]) => (count > 1 ? `${count}x${mass}` : mass)).join(" + ");
}
