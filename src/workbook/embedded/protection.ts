/**
 * Protection without a password. The engine protects only whole sheets; here all cells of a sheet are protected except
 * its open ones. The protection follows the sheet through undo, moved rows and copies.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { say, verbatim, type Message } from "../../reduction/message";
import { cellAddress } from "../address";
import { CorePlugin, coreTypes, registries } from "@odoo/o-spreadsheet";
import { toZone, type Zone } from "./zones";
import type { Place } from "./evaluation/engine-parts";
import type { Box } from "../port";

const PROTECT = "CLAYLEDGER_PROTECT";

export interface Protection {
  readonly on: boolean;
  /** Cells that may be written while the sheet is protected. */
  readonly open: readonly Zone[];
}

/** The getters that the plugin adds to the getters of the engine. */
export interface ProtectionGetters {
  getProtection(sheetId: string): Protection;
}

interface Kept {
  readonly sheetId: string;
  readonly on: boolean;
  readonly open: readonly { readonly sheetId: string; readonly zone: Zone }[];
}

const NONE: Protection = { on: false, open: [] };

/** Commands that change the content of a cell. */
const WRITES = new Set(["UPDATE_CELL", "CLEAR_CELL", "CLEAR_CELLS", "DELETE_CONTENT"]);

let lifted = 0;
let onRefused: (sentence: Message, place?: Place) => void = () => undefined;

/** Runs changes that the add-in makes to cells that a person may not change. */
export function whileLifted<T>(work: () => T): T {
  lifted++;
  try {
    return work();
  } finally {
    lifted--;
  }
}

/** Whether such changes are being made. */
export const isLifted = (): boolean => lifted > 0;

/** Sets the function that tells a person why an entry was refused. */
export const tellRefusals = (tell: typeof onRefused): void => void (onRefused = tell);

/** Tells a person why something was refused; an entry with its cell, which may take another one. */
export const tellRefusal = (sentence: Message, place?: Place): void => onRefused(sentence, place);

const refusal = (cell: string): Message =>
  say`${verbatim(cell)} is protected, as results and labels are: fill in the framed cells. To change it, lift the protection in the pane: Data sheet, “Lift protection”.`;

const isIn = ({ left, right, top, bottom }: Zone, col: number, row: number): boolean =>
  col >= left && col <= right && row >= top && row <= bottom;

/** The address of the first cell of these zones that no open zone holds; undefined if every cell is open. Open zones may lie side by side. */
function firstClosed(zones: readonly Zone[], open: readonly Zone[]): string | undefined {
  for (const { left, right, top, bottom } of zones) {
    for (let row = top; row <= bottom; row++) {
      for (let col = left; col <= right;) {
        const holding = open.find((zone) => isIn(zone, col, row));
        if (!holding) return cellAddress(row, col);
        col = holding.right + 1;
      }
    }
  }
  return undefined;
}

class ProtectionPlugin extends CorePlugin {
  static override getters = ["getProtection"] as never;
  readonly kept: readonly Kept[] = [];

  getProtection(sheetId: string): Protection {
    const found = this.kept.find((one) => one.sheetId === sheetId);
    return found ? { on: found.on, open: found.open.map(({ zone }) => zone) } : NONE;
  }

  override allowDispatch(command: any): any {
    if (lifted > 0 || !WRITES.has(command.type)) return "Success";
    // A command that changes only the style has no content.
    if (command.type === "UPDATE_CELL" && command.content === undefined && command.formula === undefined)
      return "Success";
    const { on, open } = this.getProtection(command.sheetId);
    if (!on) return "Success";
    const zones: Zone[] = command.target ?? [
      { left: command.col, right: command.col, top: command.row, bottom: command.row },
    ];
    const closed = firstClosed(zones, open);
    if (closed === undefined) return "Success";
    onRefused(refusal(closed));
    // Not the engine's own reason for a locked sheet: it would say that the sheet is to be unlocked by its menu.
    return "CancelledForUnknownReason";
  }

  override adaptRanges({ applyChange }: any): void {
    const adapted = this.kept.map((one) => ({
      ...one,
      open: one.open.flatMap((range) => {
        const { changeType, range: moved } = applyChange(range);
        return changeType === "REMOVE" ? [] : changeType === "NONE" ? [range] : [moved];
      }),
    }));
    if (this.kept.length > 0) this.#keep(adapted);
  }

  override handle(command: any): void {
    if (command.type === PROTECT) this.#set(command.sheetId, command.protection);
    if (command.type === "DUPLICATE_SHEET") this.#set(command.sheetIdTo, this.getProtection(command.sheetId));
    if (command.type === "DELETE_SHEET") this.#keep(this.kept.filter(({ sheetId }) => sheetId !== command.sheetId));
  }

  override import(data: any): void {
    for (const { id, protection } of data.sheets) if (protection) this.#set(id, protection);
  }

  override export(data: any): void {
    for (const sheet of data.sheets) sheet.protection = this.getProtection(sheet.id);
  }

  #set(sheetId: string, { on, open }: Protection): void {
    const ranges = open.map((zone) => this.getters.getRangeFromZone(sheetId, zone));
    this.#keep([...this.kept.filter((one) => one.sheetId !== sheetId), { sheetId, on, open: ranges as never }]);
  }

  #keep(kept: readonly Kept[]): void {
    (this.history as any).update("kept", kept);
  }
}

coreTypes.add(PROTECT as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(PROTECT, (command) => [command]);
registries.corePluginRegistry.add("clayledger_protection", ProtectionPlugin as never);

/** The command that sets the protection of a sheet. */
export const setProtection = (sheetId: string, protection: Protection) => ({ type: PROTECT, sheetId, protection });

export const protectionOf = (model: { readonly getters: unknown }, sheetId: string): Protection =>
  (model.getters as ProtectionGetters).getProtection(sheetId);

/** Whether a cell may be written under this protection. */
export const mayWrite = ({ on, open }: Protection, col: number, row: number): boolean =>
  !on || open.some((zone) => isIn(zone, col, row));

export const openZones = (boxes: readonly Box[]): Zone[] => boxes.map(toZone);
