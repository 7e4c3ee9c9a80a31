/** Changes of picks in the pane's words. */
import type { RecordedPick } from "../../../specification/pick-table";
import { text } from "../../text";
import { shown } from "../../text/digits";

const words = text.review;

/** The words of the picks and of their values, by what stands in the sheet: it may be anything. */
const PICKS: Readonly<Record<string, string>> = words.picks;
const VALUES: Readonly<Record<string, string>> = words.values;

const nameOfPick = (of: string | undefined): string => PICKS[of ?? ""] ?? of ?? "?";

/** A value of a pick; the words that stand in the sheet are said in the pane's language. */
const said = (value: number | string | undefined): string =>
  typeof value === "number" ? shown(value) : (VALUES[value ?? ""] ?? value ?? "–");

/** "d100: 812.3 → 809" */
export const changeText = ({ of, before, after }: Pick<RecordedPick, "of" | "before" | "after">): string =>
  words.change(nameOfPick(of), said(before), said(after));

/** Reason, initials and day of a saved change. */
export const detailsOf = ({ reason, by, when }: RecordedPick): string =>
  words.entry(reason ?? words.noReason, by ?? words.noInitials, when ?? "");
