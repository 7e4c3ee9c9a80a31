/** Changes of picks in the language of the pane. */
import type { RecordedPick } from "../../../../record/picks";
import { text } from "../../../text";
import { shown } from "../../../text/digits";

const words = text.review;

/** The words for picks and their values, by the text on the sheet, which may be any text. */
const PICKS: Readonly<Record<string, string>> = words.picks;
const VALUES: Readonly<Record<string, string>> = words.values;

const nameOfPick = (of: string | undefined): string => PICKS[of ?? ""] ?? of ?? "?";

/** A value of a pick; texts of the sheet are translated into the language of the pane. */
const said = (value: number | string | undefined): string =>
  typeof value === "number" ? shown(value) : (VALUES[value ?? ""] ?? value ?? "–");

/** A change as a text, such as "d100: 812.3 → 809". */
export const changeText = ({ of, before, after }: Pick<RecordedPick, "of" | "before" | "after">): string =>
  words.change(nameOfPick(of), said(before), said(after));

/** The reason, initials and day of a saved change. */
export const detailsOf = ({ reason, by, when }: RecordedPick): string =>
  words.entry(reason ?? words.noReason, by ?? words.noInitials, when ?? "");
