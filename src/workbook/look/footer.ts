/** The footer of each printed page in Excel's codes: file and sheet, page number, versions and the time of printing. */
import type { SheetPlan } from "../port";

export interface Footer {
  readonly left: string;
  readonly center: string;
  readonly right: string;
}

const ENGLISH = { page: "Page &P of &N", printed: "Printed" } as const;

export function footerOf({ footer = "", footerWords = ENGLISH }: Pick<SheetPlan, "footer" | "footerWords">): Footer {
  const made = footer && `${footer}  |  `;
  return { left: "&F  |  &A", center: footerWords.page, right: `${made}${footerWords.printed} &D &T` };
}

/** The footer in one text, as a file has it, in 8 points. */
export const footerText = (plan: Pick<SheetPlan, "footer" | "footerWords">): string => {
  const { left, center, right } = footerOf(plan);
  return `&L&8${left}&C&8${center}&R&8${right}`;
};
