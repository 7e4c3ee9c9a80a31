/** The footer of each printed page in Excel's codes: file and sheet, page number, versions and the time of printing. */
import type { SheetPlan } from "../port";
import { ENGLISH_HOST_WORDS } from "../host-words";

export interface Footer {
  readonly left: string;
  readonly center: string;
  readonly right: string;
}

export function footerOf({
  footer = "",
  hostWords = ENGLISH_HOST_WORDS,
}: Pick<SheetPlan, "footer" | "hostWords">): Footer {
  const made = footer && `${footer}  |  `;
  return { left: "&F  |  &A", center: hostWords.page, right: `${made}${hostWords.printed} &D &T` };
}

/** The footer in one text, as a file has it, in 8 points. */
export const footerText = (plan: Pick<SheetPlan, "footer" | "hostWords">): string => {
  const { left, center, right } = footerOf(plan);
  return `&L&8${left}&C&8${center}&R&8${right}`;
};
