/** Numbers with a power of ten, as the trade writes them. */
import { powerOfTen } from "../../reduction/power-of-ten";
import type { Language } from "./language";

const TIMES: Readonly<Record<Language, string>> = { en: "×", de: "·" };

/**
 * The digits of a number, with its power of ten as people write it; digits without a power stay as they are.
 * @example withPower("6.31e-9", "en") // "6.31×10⁻⁹"
 * @example withPower("6,31e-9", "de") // "6,31·10⁻⁹"
 */
export const withPower = (digits: string, language: Language): string =>
  digits.replace(/e([+-]?\d+)$/i, (_, power: string) => `${TIMES[language]}${powerOfTen(Number(power))}`);
