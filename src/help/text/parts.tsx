/** How a sentence of a help page shows what is typed, and what is read. */
import type { ReactElement } from "react";

export const code = (text: string): ReactElement => <code>{text}</code>;
export const bold = (text: string): ReactElement => <strong>{text}</strong>;
