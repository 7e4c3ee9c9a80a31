/**
 * The footer of each printed page in Excel's codes, in two lines: the file and the page number; below them the sheet, and the
 * versions with the time of printing. So a long name of a file or a sheet runs over nothing.
 */
import type { SheetPlan } from "../port";
import { ENGLISH_HOST_WORDS } from "../host-words";

export interface Footer {
  readonly left: string;
  readonly right: string;
}

export function footerOf({
  footer = "",
  hostWords = ENGLISH_HOST_WORDS,
}: Pick<SheetPlan, "footer" | "hostWords">): Footer {
  const made = footer && `${footer}  |  `;
  return { left: "&F\n&A", right: `${hostWords.page}\n${made}${hostWords.printed} &D &T` };
}

/** The footer in one text, as a file has it, in 8 points. */
export const footerText = (plan: Pick<SheetPlan, "footer" | "hostWords">): string => {
  const { left, right } = footerOf(plan);
  return `&L&8${left}&R&8${right}`;
};
