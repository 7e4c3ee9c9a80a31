/** The workbook port over the open-source sheet of `npm start`. */
import { helpers } from "@odoo/o-spreadsheet";
import {
  WorkbookError,
  type CellValue,
  type NamedColumns,
  type Selection,
  type SheetPlan,
  type Unsubscribe,
  type WorkbookPort,
} from "../port";
import { checkFill } from "../fill";
import { sheetCommands } from "./commands";
import { ownNames, takeCopies } from "./copies";
import { runBatch, type Dispatching, type Model } from "./engine";
import { freeNames, freeSheetName, type LocalNames } from "./names";
import { typed } from "./text";
import type { OpenWorkbook } from "./workbook";

interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export class EmbeddedPort implements WorkbookPort {
  readonly host = "embedded";
  #model: Model;
  #localNames = new Map<string, LocalNames>();
  readonly #listeners = new Set<() => void>();

  constructor(workbook: OpenWorkbook) {
    this.#model = workbook.model;
    this.attach(workbook);
  }

  /** Turns to another workbook; listeners stay and hear of it. */
  attach({ model, localNames }: OpenWorkbook): void {
    this.#model.off("update", this);
    this.#model.selection.unobserve(this);
    this.#model = model;
    this.#localNames = new Map(localNames);
    model.on("update", this, () => {
      this.#adoptCopies();
      this.#tell();
    });
    model.selection.observe(this, { handleEvent: () => this.#tell() });
    this.#tell();
  }

  get workbook(): OpenWorkbook {
    return { model: this.#model, localNames: this.#localNames };
  }

  async sheetNames(): Promise<string[]> {
    return this.#sheets().map(({ name }) => name);
  }

  async insertSheet(given: SheetPlan): Promise<string> {
    // A plan made in the pane's frame is of another realm, which the engine refuses as "unsupported".
    const plan = structuredClone(given);
    const model = this.#model;
    const sheets = this.#sheets();
    const name = freeSheetName(
      helpers.sanitizeSheetName(plan.name),
      sheets.map((sheet) => sheet.name),
    );
    const sheetId = model.uuidGenerator.smallUuid();
    const names = freeNames(
      Object.keys(plan.names),
      model.getters.getNamedRanges().map((range) => range.name),
    );
    let refused: string[];
    try {
      const commands = sheetCommands(plan, sheetId, name, sheets.length, names);
      const activate = { type: "ACTIVATE_SHEET", sheetIdFrom: model.getters.getActiveSheetId(), sheetIdTo: sheetId };
      refused = runBatch(model, plan.behind ? commands : [...commands, activate]);
    } catch (error) {
      refused = [(error as Error).message];
    }
    if (refused.length > 0) {
      if (model.getters.tryGetSheet(sheetId)) this.#dispatch("REQUEST_UNDO");
      throw new WorkbookError(`The sheet "${name}" could not be made and nothing was changed: ${refused.join("; ")}.`);
    }
    this.#localNames.set(sheetId, names);
    return name;
  }

  async selection(): Promise<Selection> {
    const { getters } = this.#model;
    const sheetId = getters.getActiveSheetId();
    const zone = getters.getSelectedZone();
    return {
      sheet: getters.getSheetName(sheetId),
      address: addressOf(zone),
      values: this.#valuesOf(sheetId, zone),
    };
  }

  async values(sheet: string, address: string): Promise<Selection["values"]> {
    return this.#valuesOf(this.#sheetId(sheet), helpers.toZone(address));
  }

  async readNames(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> {
    const sheetId = this.#sheetId(sheet);
    const found: Record<string, Selection["values"]> = {};
    for (const name of names) {
      const zone = this.#zoneNamed(sheetId, name);
      if (zone) found[name] = this.#valuesOf(sheetId, zone);
    }
    return found;
  }

  async fillNames(sheet: string, given: NamedColumns, blank: readonly string[] = []): Promise<void> {
    const values = structuredClone(given);
    const sheetId = this.#sheetId(sheet);
    const { getters } = this.#model;
    const contents = (name: string): string[] | undefined => {
      const zone = this.#zoneNamed(sheetId, name);
      return (
        zone &&
        Array.from({ length: zone.bottom - zone.top + 1 }, (_, i) =>
          getters.getCellText({ sheetId, col: zone.left, row: zone.top + i }, { showFormula: true }),
        )
      );
    };
    checkFill(sheet, values, blank, contents);
    const commands = Object.entries(values).flatMap(([name, list]) => {
      const { left: col, top } = this.#zoneNamed(sheetId, name)!;
      return list.flatMap((value, i) =>
        value === null ? [] : [{ type: "UPDATE_CELL", sheetId, col, row: top + i, content: typed(value) }],
      );
    });
    // A cell that holds its value already is refused as one without changes.
    const refused = runBatch(this.#model, commands).filter((reason) => !reason.endsWith("(NoChanges)"));
    if (refused.length === 0) return;
    this.#dispatch("REQUEST_UNDO");
    throw new WorkbookError(
      `The sheet "${sheet}" could not be written and nothing was changed: ${refused.join("; ")}.`,
    );
  }

  async onChange(listener: () => void): Promise<Unsubscribe> {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  #adoptCopies(): void {
    for (const copy of takeCopies(this.#model)) {
      const names = this.#localNames.get(copy.from);
      if (!names) continue;
      const own = ownNames(this.#model, copy, names);
      this.#localNames.set(copy.to, own.names);
      runBatch(this.#model, own.commands);
    }
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }

  #dispatch(type: string, payload: object = {}) {
    return (this.#model as unknown as Dispatching).dispatch(type, payload);
  }

  #sheets() {
    const { getters } = this.#model;
    return getters.getSheetIds().map((id) => ({ id, name: getters.getSheetName(id) }));
  }

  #sheetId(name: string): string {
    const id = this.#model.getters.getSheetIdByName(name);
    if (id === undefined) throw new WorkbookError(`There is no sheet named "${name}" in this workbook.`);
    return id;
  }

  #zoneNamed(sheetId: string, name: string): Zone | undefined {
    const range = this.#model.getters.getNamedRange(this.#localNames.get(sheetId)?.get(name) ?? name)?.range;
    return range?.sheetId === sheetId ? range.zone : undefined;
  }

  #valuesOf(sheetId: string, zone: Zone): CellValue[][] {
    const { getters } = this.#model;
    const right = Math.min(zone.right, getters.getNumberCols(sheetId) - 1);
    const bottom = Math.min(zone.bottom, getters.getNumberRows(sheetId) - 1);
    const rows: CellValue[][] = [];
    for (let row = zone.top; row <= bottom; row++) {
      const cells: CellValue[] = [];
      for (let col = zone.left; col <= right; col++)
        cells.push((getters.getEvaluatedCell({ sheetId, col, row }).value as CellValue | null) ?? "");
      rows.push(cells);
    }
    return rows;
  }
}

const addressOf = ({ left, right, top, bottom }: Zone): string => {
  const from = helpers.toXC(left, top);
  return left === right && top === bottom ? from : `${from}:${helpers.toXC(right, bottom)}`;
};
