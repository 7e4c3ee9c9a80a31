/** Where the values of a register come from: a sheet of the workbook, or a file of the firm that is read by its names. */
import { asTyped } from "../../../reduction/message";
import { REGISTER_MARK, REGISTER_NAMES } from "../../../record/register";
import { REGISTER_STRESS_UNIT, REGISTER_UNIT } from "../../../record/register-cells";
import { SET_NAMES } from "../../../record/register-sets";
import type { NamedValues } from "../../../record/record";
import { namedCellsOf } from "../../../summary/file-cells";
import { WorkbookError } from "../../../workbook/port";
import { text } from "../../text";
import { sha256 } from "../../ui/sha256";

/** The names that a register is read by. */
export const READ_NAMES: readonly string[] = [...REGISTER_NAMES, REGISTER_UNIT, REGISTER_STRESS_UNIT, ...SET_NAMES];

export interface RegisterSource {
  /** The sheet, or the file with its sheet. */
  readonly called: string;
  readonly values: NamedValues;
  /** Of a file: the first digits of the SHA-256 of its bytes. */
  readonly hash?: string;
}

/** The digits of the SHA-256 that the data sheet keeps: two files that differ have the same with one chance in 10^14. */
const HASH_DIGITS = 12;

/** The properties of a file that are read. */
export type ChosenFile = Pick<File, "name" | "arrayBuffer">;

/** The register of a file; the first sheet that is one. The file is not inserted. */
export async function registerOfFile(file: ChosenFile): Promise<RegisterSource> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const found = namedCellsOf(bytes, READ_NAMES).find(({ values }) => REGISTER_MARK in values);
  if (!found) throw new WorkbookError(asTyped(text.register.noRegisterIn(file.name)));
  const hash = (await sha256(bytes)).slice(0, HASH_DIGITS);
  return { called: `${file.name}, ${found.sheet}`, values: found.values, hash };
}

const FROM_FILE = /^(.*), (\d{4}-\d\d-\d\d), SHA-256 ([0-9a-f]+)$/;

/** What the data sheet says of where its values come from. */
export const saidSource = ({ called, hash }: RegisterSource, day: string): string =>
  hash === undefined ? `${called}, ${day}` : `${called}, ${day}, SHA-256 ${hash}`;

/**
 * How a file stands to the one whose values the data sheet has: the same bytes, or changed since a day; undefined if the
 * sheet has no values of it.
 */
export function sinceTaken(
  { called, hash }: RegisterSource,
  said: string | undefined,
): { readonly isSame: boolean; readonly day: string } | undefined {
  const [, file, day = "", before] = FROM_FILE.exec(said ?? "") ?? [];
  return hash === undefined || file !== called ? undefined : { isSame: before === hash, day };
}
