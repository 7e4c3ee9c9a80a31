/**
 * The workbook port over the open-source sheet of `npm start`.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { listed, say, verbatim, type Message, type Value } from "../../reduction/message";
import {
  WorkbookError,
  type Asked,
  type CellContent,
  type CellValue,
  type Change,
  type FoundSheet,
  type Inserted,
  type KindOfWork,
  type Looked,
  type NamedAddress,
  type NamedColumns,
  type Selection,
  type SheetName,
  type SheetPlan,
  type SheetValues,
  type Unsubscribe,
  type WorkbookPort,
  type WorkNote,
} from "../port";
import { quoted } from "../address";
import { evaluationOf, ONLY_COPIED } from "./evaluation/plugin";
import { asColumn, cellOfList, lengthOf } from "../lists";
import { firstOf } from "../../reduction/numeric/lists";
import { checkFill } from "../rules/fill";
import { inSlices, isStopped, partOf, pause, unwatched, type Course } from "../in-slices";
import { withReferences } from "../references";
import { refuseMoved, refuseOtherEnds, refuseReadElsewhere } from "../rules/moved";
import { checkWrite } from "../rules/write-check";
import { blockAddresses, joined, sideBySide } from "../picked";
import { changesOf } from "./changes";
import { chartCommands } from "./look/chart";
import { sheetCommands } from "./commands";
import { adoptCopies, ownNames, type SheetCopy } from "./copies";
import { type Command, type Dispatching, type Model } from "./engine";
import { bringUp } from "./into-sight";
import { localName } from "../rules/names";
import { checkNaming } from "../rules/naming";
import { checkPlan } from "../rules/plan-check";
import { freeSheetName, hiddenSheet, noSheet, withoutApostrophes } from "../rules/sheet-names";
import { calledIn, freeNames, renameIn, type LocalNames } from "./names";
import { formulaAt } from "./typing/locale";
import { TEXT_FORMAT, typed } from "./typing/text";
import { toEngineFormat } from "./look/formats";
import { carryOut, carryOutAny, refuseStepsWhile } from "./steps/history";
import { insertCommands, type Insertion } from "./insert";
import { carryOutInSlices, isBusy, isUnfinished, isWriting, stepEnd, type StepPlan } from "./steps/long-step";
import { mayWrite, protectionOf, setProtection } from "./protection";
import { nameCommand, namesOf, roomCommands, unboundFormulas } from "./upkeep";
import { timeStamp } from "../time-stamp";
import type { OpenWorkbook } from "./workbook";
import { opening } from "./xlsx/open";
import { addressOf, joinedZones, toBox, toZone, type Zone } from "./zones";

/** The share of the insertion of a file that is done when the file is read. */
const FILE_SHARE = 0.4;

/** The first refusals of the engine, in the engine's own words. */
const theRefused = (refused: readonly string[]): Value => listed(refused.slice(0, 3).map(verbatim), "; ");

/** Throws a sentence if commands were refused; in that case nothing was changed. */
function refuse(refused: readonly string[], failure: Message): void {
  if (refused.length > 0) throw new WorkbookError(say`${failure}, and nothing was changed: ${theRefused(refused)}.`);
}

export class EmbeddedPort implements WorkbookPort {
  readonly host = "embedded";
  readonly savesFiles = true;
  #model: Model;
  #localNames = new Map<string, LocalNames>();
  #lost = new Map<string, readonly string[]>();
  #calculation: OpenWorkbook["calculation"];
  readonly #listeners = new Set<(change: Change) => void>();
  readonly #selecting = new Set<() => void>();
  /** What the command being carried out has changed so far. */
  readonly #changed = new Set<Change>();
  #front: string | undefined;
  #workbooks = 0;
  /** The page outlives a pane that is reloaded: the notes on its work stand here. */
  readonly #notes = new Map<string, WorkNote>();
  /** The notes of the pane that is there now. */
  readonly #inHand = new Set<string>();

  constructor(workbook: OpenWorkbook) {
    this.#model = workbook.model;
    this.attach(workbook);
  }

  /** Changes to another workbook; the listeners stay, and are told of it. */
  attach({ model, localNames, lost, calculation }: OpenWorkbook): void {
    this.#model.off("command-dispatched", this);
    this.#model.off("update", this);
    this.#model.selection.unobserve(this);
    this.#model = model;
    this.#notes.clear();
    this.paneLeft();
    this.#localNames = new Map(localNames);
    this.#lost = new Map(lost);
    this.#calculation = calculation;
    refuseStepsWhile(model, () => this.sheetInHand());
    adoptCopies(model, (copy) => this.#namesForCopy(copy));
    model.on("command-dispatched", this, ({ type }) => changesOf(type).forEach((change) => this.#changed.add(change)));
    model.on("update", this, () => this.#tell());
    model.selection.observe(this, { handleEvent: () => this.#tellSelected() });
    this.#changed.add("values").add("sheets");
    this.#front = undefined;
    this.#workbooks++;
    this.#tell();
  }

  get workbook(): OpenWorkbook {
    return { model: this.#model, localNames: this.#localNames, lost: this.#lost, calculation: this.#calculation };
  }

  async sheetNames(): Promise<string[]> {
    return this.#sheets().map(({ name }) => name);
  }

  async activeSheet(): Promise<string> {
    const { getters } = this.#model;
    return getters.getSheetName(getters.getActiveSheetId());
  }

  async readSheets(names: readonly string[]): Promise<SheetValues[]> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const active = this.#model.getters.getActiveSheetId();
    return this.#sheets().map(({ id, name }) => ({
      sheet: name,
      isActive: id === active,
      values: this.#named(id, names, (zone) => this.#valuesOf(id, zone)),
    }));
  }

  async findSheets(names: readonly string[]): Promise<FoundSheet[]> {
    const active = this.#model.getters.getActiveSheetId();
    return this.#sheets().map(({ id, name }) => ({
      // Sheets of two workbooks may have the same id.
      id: `${this.#workbooks} ${id}`,
      sheet: name,
      isActive: id === active,
      has: names.filter((one) => this.#zoneNamed(id, one)),
    }));
  }

  async lookAt(asked: readonly Asked[]): Promise<Looked[]> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const looked = asked.map(async ({ sheet, values, contents = [], names, hidden }) => ({
      sheet: this.#model.getters.getSheetName(this.#sheetId(sheet)),
      values: await this.readNames(sheet, values),
      contents: await this.readContents(sheet, contents),
      ...(names && { names: await this.listNames(sheet) }),
      ...(hidden && { hidden: await this.hidden(sheet) }),
    }));
    return Promise.all(looked);
  }

  /** The engine counts from 1900; the days of a file that counts from 1904 are converted when it is opened. */
  countsFrom1904(): Promise<boolean> {
    return Promise.resolve(false);
  }

  /** The engine calculates every change at once. */
  calculate(): Promise<void> {
    return Promise.resolve();
  }

  async insertSheet(given: SheetPlan, _?: (sentence: Message) => void, course = unwatched()): Promise<string> {
    // The engine refuses an object from another frame as "unsupported": a plan made in the pane's frame is copied
    // first.
    const plan = structuredClone(given);
    checkPlan(plan);
    const model = this.#model;
    let [name, sheetId, names] = ["", "", new Map() as LocalNames];
    const checkRead = (): void => this.#checkRead(plan);
    const commands = function* (): Generator<number, StepPlan> {
      const { getters } = model;
      checkRead();
      const sheets = getters.getSheetIds().map((id) => getters.getSheetName(id));
      name = freeSheetName(withoutApostrophes(plan.name), sheets);
      sheetId = model.uuidGenerator.smallUuid();
      names = freeNames(
        Object.keys(plan.names),
        getters.getNamedRanges().map((range) => range.name),
      );
      yield 0;
      return {
        sheetIds: [sheetId],
        commands: [
          ...sheetCommands(plan, sheetId, name, sheets.length, names),
          ...chartCommands(plan.charts ?? [], sheetId, (sheet) => getters.getSheetIdByName(sheet)),
        ],
      };
    };
    const refused = await this.#inSlices(commands, course).catch((error: unknown) => {
      if (error instanceof WorkbookError || isStopped(error)) throw error;
      return [error instanceof Error ? error.message : String(error)];
    });
    if (refused.length > 0)
      throw new WorkbookError(
        say`The sheet "${verbatim(name)}" could not be made and nothing was changed: ${theRefused(refused)}.`,
      );
    this.#localNames.set(sheetId, names);
    if (!plan.behind) this.#activate(sheetId);
    return name;
  }

  #checkRead(plan: SheetPlan): void {
    const id = plan.reads && this.#model.getters.getSheetIdByName(plan.reads.sheet);
    refuseReadElsewhere(plan, id === undefined ? undefined : this.#namesOn(id));
  }

  async selection(): Promise<Selection> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const { getters } = this.#model;
    const sheetId = getters.getActiveSheetId();
    const picked = this.#cutToUsed(sheetId, getters.getSelectedZones());
    const zones = sideBySide(picked.map(toBox)).map(toZone);
    return {
      sheet: getters.getSheetName(sheetId),
      address: zones.map(addressOf).join(","),
      values: joined(zones.map((zone) => this.#valuesOf(sheetId, zone))),
    };
  }

  async values(sheet: string, address: string): Promise<Selection["values"]> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#sheetId(sheet);
    return joined(this.#zonesAt(sheetId, address).map((zone) => this.#valuesOf(sheetId, zone)));
  }

  /** Runs after the pane has shown a cell; the page puts the keyboard focus there. */
  onShown: () => void = () => undefined;

  async show(sheet: string, address: string): Promise<void> {
    const { getters, selection } = this.#model;
    const sheetId = this.#sheetId(sheet);
    const zone = firstOf(this.#zonesAt(sheetId, address));
    if (!getters.isSheetVisible(sheetId)) throw new WorkbookError(hiddenSheet(sheet));
    this.#activate(sheetId);
    const before = getters.getActiveMainViewport();
    selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
    bringUp(this.#model, zone, before);
    this.onShown();
  }

  async hidden(sheet: string): Promise<{ rows: number[]; cols: number[] }> {
    const { getters } = this.#model;
    const sheetId = this.#sheetId(sheet);
    const numbers = (count: number) => Array.from({ length: count }, (_, i) => i);
    return {
      rows: numbers(getters.getNumberRows(sheetId)).filter((row) => getters.isRowHidden(sheetId, row)),
      cols: numbers(getters.getNumberCols(sheetId)).filter((col) => getters.isColHidden(sheetId, col)),
    };
  }

  async readContents(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#sheetId(sheet);
    const { getters } = this.#model;
    const planNames = this.#planNames(sheetId);
    const contentOf = (position: { sheetId: string; col: number; row: number }): CellValue => {
      const cell = getters.getCell(position);
      if (!cell) return "";
      if (!cell.isFormula) return this.#valueAt(position);
      const formula = formulaAt(getters, position);
      return `=${renameIn(formula.slice(1), (name) => planNames.get(name.toLowerCase()) ?? name)}`;
    };
    return this.#named(sheetId, names, ({ left, right, top, bottom }) =>
      Array.from({ length: bottom - top + 1 }, (_, row) =>
        Array.from({ length: right - left + 1 }, (_, col) => contentOf({ sheetId, col: left + col, row: top + row })),
      ),
    );
  }

  async readNames(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> {
    while (isWriting(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#sheetId(sheet);
    return this.#named(sheetId, names, (zone) => this.#valuesOf(sheetId, zone));
  }

  #named(sheetId: string, names: readonly string[], read: (zone: Zone) => Selection["values"]) {
    const found: Record<string, Selection["values"]> = {};
    for (const name of names) {
      const zone = this.#zoneNamed(sheetId, name);
      if (zone) found[name] = read(zone);
    }
    return found;
  }

  async fillNames(
    sheet: string,
    given: NamedColumns,
    blank: readonly string[] = [],
    free: readonly string[] = [],
    held: NamedColumns = {},
  ): Promise<void> {
    const values = structuredClone(given);
    while (isBusy(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#openSheetId(sheet);
    const { getters } = this.#model;
    const contents = (name: string): string[] | undefined => {
      const zone = this.#zoneNamed(sheetId, name);
      return (
        zone &&
        Array.from({ length: lengthOf(toBox(zone)) }, (_, i) => {
          const cell = getters.getCell({ sheetId, ...cellOfList(toBox(zone), i) });
          // A text that begins like a formula has an apostrophe in front.
          return cell?.isFormula ? "=" : (cell?.content ?? "");
        })
      );
    };
    const shown = (name: string): CellValue[] => {
      const zone = this.#zoneNamed(sheetId, name);
      return zone ? asColumn(this.#valuesOf(sheetId, zone)).map(([value = ""]) => value) : [];
    };
    checkFill(sheet, values, { blank, free, held }, contents, shown);
    const protection = protectionOf(this.#model, sheetId);
    const lost: Zone[] = [];
    const commands = Object.entries(values).flatMap(([name, list]) => {
      const box = toBox(this.#zoneNamed(sheetId, name)!);
      // Programs that save a workbook leave out blank rows, and with the rows that their cells are inputs.
      const isInput = mayWrite(protection, box.col, box.row);
      const present = contents(name) ?? [];
      return list.flatMap((value, i) => {
        if (value === null) return [];
        const position = { sheetId, ...cellOfList(box, i) };
        if (!mayWrite(protection, position.col, position.row)) {
          if (!isInput || (present[i] ?? "") !== "")
            throw new WorkbookError(
              say`The sheet "${verbatim(sheet)}" could not be written: it is protected, and row ${i + 1} of "${verbatim(name)}" is none of its inputs. Nothing was written: lift the protection (Data sheet, Sheet check), and try again.`,
            );
          lost.push(toZone({ row: position.row, col: position.col, rows: 1, cols: 1 }));
        }
        return [{ type: "UPDATE_CELL", ...position, content: typed(value, getters.getCell(position)?.format) }];
      });
    });
    const opening =
      lost.length > 0
        ? [setProtection(sheetId, { ...protection, open: [...protection.open, ...joinedZones(lost)] })]
        : [];
    await this.#write([...opening, ...commands], sheet);
  }

  async writeCells(
    sheet: string,
    given: readonly CellContent[],
    replace = false,
    names?: readonly SheetName[],
  ): Promise<void> {
    // The list comes from the frame of the pane, whose Array is another class; the engine refuses it as "unsupported".
    const cells = [...given];
    while (isBusy(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#openSheetId(sheet);
    if (names) refuseMoved(sheet, [...names], this.#namesOn(sheetId));
    const { getters } = this.#model;
    const idOf = (other: string | undefined) => (other === undefined ? sheetId : getters.getSheetIdByName(other));
    const at = ({ row, col }: CellContent) => getters.getCell({ sheetId, row, col });
    const heldBy = (cell: CellContent): CellValue =>
      at(cell)?.isFormula
        ? formulaAt(getters, { sheetId, ...cell })
        : at(cell)
          ? getters.getCellText({ sheetId, row: cell.row, col: cell.col }, { showFormula: true })
          : "";
    checkWrite({
      sheet,
      cells,
      replace,
      standing: (cell) => ({
        content: heldBy(cell),
        shown: this.#valueAt({ sheetId, row: cell.row, col: cell.col }),
        isText: at(cell)?.format === TEXT_FORMAT,
      }),
      hasName: ({ name, sheet: other }) => {
        const id = idOf(other);
        return id !== undefined && this.#zoneNamed(id, name) !== undefined;
      },
    });
    const contentOf = (cell: CellContent): string =>
      "formula" in cell
        ? withReferences(cell.formula, ({ name, sheet: other }) => this.#called(idOf(other) ?? sheetId, name))
        : typed(cell.value, at(cell)?.format);
    const commands = cells.map((cell) => {
      const { row, col } = cell;
      const format = cell.format === undefined ? (at(cell)?.format ?? "") : toEngineFormat(cell.format);
      // The format is sent with the content; otherwise the engine would take the format of the cells that the
      // formula refers to.
      return { type: "UPDATE_CELL", sheetId, row, col, content: contentOf(cell), format };
    });
    const room = cells.length > 0 ? roomCommands(this.#model, sheetId, cells) : [];
    await this.#write([...room, ...commands], sheet);
  }

  async listNames(sheet: string): Promise<SheetName[]> {
    return this.#namesOn(this.#sheetId(sheet));
  }

  #namesOn(sheetId: string): SheetName[] {
    return namesOf(this.#model, sheetId, this.#localNames.get(sheetId), this.#lost.get(sheetId) ?? []);
  }

  async nameAll(sheet: string, names: readonly NamedAddress[], found?: readonly SheetName[]): Promise<void> {
    while (isBusy(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#openSheetId(sheet);
    if (found) refuseMoved(sheet, [...found], this.#namesOn(sheetId));
    const local = new Map(this.#localNames.get(sheetId));
    const taken = this.#model.getters.getNamedRanges().map((range) => range.name);
    const zones: Zone[] = [];
    const commands = [...names].map(({ name, address, ends, replace = false }): Command => {
      checkNaming(name, address);
      const [zone] = this.#zonesAt(sheetId, address);
      if (!zone) throw new WorkbookError(say`"${verbatim(address)}" is no address of cells.`);
      const { left, right, top, bottom } = zone;
      const [first, last] = [
        { row: top, col: left },
        { row: bottom, col: right },
      ];
      refuseOtherEnds(
        sheet,
        ends,
        [first, last].map((cell) => this.#valueAt({ sheetId, ...cell })),
      );
      const called = calledIn(local, name) ?? freeNames([name], taken).get(name) ?? name;
      zones.push(zone);
      taken.push(called);
      local.set(name, called);
      return nameCommand(this.#model, sheetId, name, called, zone, replace);
    });
    const corners = zones.map(({ bottom, right }) => ({ row: bottom, col: right }));
    const room = corners.length > 0 ? roomCommands(this.#model, sheetId, corners) : [];
    this.#carryOut([...room, ...commands], say`The cells could not be named`);
    this.#localNames.set(sheetId, local);
  }

  async reenterFormulas(sheet: string): Promise<{ found: number; left: number }> {
    while (isBusy(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#openSheetId(sheet);
    const unbound = unboundFormulas(this.#model, sheetId);
    // The engine refuses to type the content that a cell already holds: it is asked to calculate the formulas of the sheet again. Asked for
    // nothing more, it would calculate those of every sheet.
    const changed = unbound.filter(({ isChanged }) => isChanged).map(({ command }) => command);
    if (changed.length > 0) this.#carryOut(changed, say`The formulas could not be entered again`);
    const formulas = this.#model.getters.getCells(sheetId).filter(({ isFormula }) => isFormula);
    if (formulas.length > 0) this.#dispatch("EVALUATE_CELLS", { cellIds: formulas.map(({ id }) => id) });
    return { found: unbound.length, left: unboundFormulas(this.#model, sheetId).length };
  }

  async insertFile(file: Uint8Array, course = unwatched()): Promise<Inserted> {
    const model = this.#model;
    const { tell, signal } = partOf(course, 0, FILE_SHARE);
    const opened = await inSlices(opening(Uint8Array.from(file), undefined, ONLY_COPIED), tell, signal);
    // The last part of reading and the first of copying take a tenth of a second each with 40 data sheets.
    await pause();
    if (model !== this.#model)
      throw new WorkbookError(
        say`Another workbook was opened while the file was read. Nothing was inserted: insert the file again.`,
      );
    let inserted: Insertion | undefined;
    const commands = function* (): Generator<number, StepPlan> {
      inserted = yield* insertCommands(model, opened.workbook);
      return { commands: inserted.commands, sheetIds: inserted.sheets.map(({ sheetId }) => sheetId) };
    };
    const refused = await this.#inSlices(commands, partOf(course, FILE_SHARE, 1));
    refuse(refused, say`The sheets of the file could not be inserted`);
    const { sheets, remarks } = inserted!;
    for (const { sheetId, names, lost } of sheets) {
      this.#localNames.set(sheetId, names);
      this.#lost.set(sheetId, lost);
    }
    const copied = opened.workbook.model;
    const sheetIds = copied.getters.getSheetIds().map((id, at) => [id, sheets[at]?.sheetId ?? ""] as const);
    evaluationOf(model).takeForms(evaluationOf(copied), new Map(sheetIds));
    this.#activate(firstOf(sheets).sheetId);
    return { sheets: sheets.map(({ name }) => name), remarks: [...opened.remarks, ...remarks] };
  }

  /** Makes sheets in slices. Returns the refusals. */
  #inSlices(plan: () => Generator<number, StepPlan>, course: Course): Promise<string[]> {
    const model = this.#model;
    return carryOutInSlices(model, plan, () => model === this.#model, course);
  }

  async isProtected(sheet: string): Promise<boolean> {
    return protectionOf(this.#model, this.#sheetId(sheet)).on;
  }

  async protect(sheet: string, on: boolean): Promise<void> {
    while (isBusy(this.#model)) await stepEnd(this.#model);
    const sheetId = this.#openSheetId(sheet);
    const { open } = protectionOf(this.#model, sheetId);
    this.#carryOut([setProtection(sheetId, { on, open })], say`The protection could not be changed`);
  }

  /** Writes cells of a sheet by these commands: all of them, or none with a sentence. */
  async #write(commands: readonly Command[], sheet: string): Promise<void> {
    const model = this.#model;
    const refused = await carryOutAny(model, commands, () => model === this.#model);
    refuse(refused, say`The sheet "${verbatim(sheet)}" could not be written`);
  }

  /** Carries out all commands; if one is refused, carries out none and throws a sentence. */
  #carryOut(commands: readonly Command[], failure: Message): void {
    refuse(carryOut(this.#model, commands), failure);
  }

  async onChange(listener: (change: Change) => void): Promise<Unsubscribe> {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  async onSelect(listener: () => void): Promise<Unsubscribe> {
    this.#selecting.add(listener);
    return () => void this.#selecting.delete(listener);
  }

  async noteWork(kind: KindOfWork, sheet: string): Promise<string> {
    const id = this.#model.uuidGenerator.smallUuid();
    this.#notes.set(id, { id, kind, sheet, since: timeStamp(new Date()) });
    this.#inHand.add(id);
    return id;
  }

  async strikeWork(id: string): Promise<void> {
    this.#notes.delete(id);
    this.#inHand.delete(id);
  }

  /** The pane was closed, or is loaded again: nobody goes on with its work, and undo may take it back. */
  paneLeft(): void {
    this.#inHand.clear();
  }

  /** The sheet of the work that the pane has in hand. */
  sheetInHand(): string | undefined {
    const [id] = this.#inHand;
    return id === undefined ? undefined : this.#notes.get(id)?.sheet;
  }

  async unfinishedWork(): Promise<WorkNote[]> {
    return [...this.#notes.values()];
  }

  #namesForCopy(copy: SheetCopy): Command[] {
    const names = this.#localNames.get(copy.from);
    if (!names) return [];
    const own = ownNames(this.#model, copy, names);
    this.#localNames.set(copy.to, own.names);
    return own.commands;
  }

  #activate(sheetId: string): void {
    const sheetIdFrom = this.#model.getters.getActiveSheetId();
    if (sheetIdFrom !== sheetId) this.#dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo: sheetId });
  }

  #tell(): void {
    // Sheets that are made in slices are told of when they are whole.
    if (isBusy(this.#model)) return;
    const front = this.#model.getters.getActiveSheetId();
    const isOther = front !== this.#front;
    this.#front = front;
    if (isOther) this.#changed.add("front");
    const changes = [...this.#changed];
    this.#changed.clear();
    for (const change of changes) for (const listener of this.#listeners) listener(change);
    if (isOther) this.#tellSelected();
  }

  #tellSelected(): void {
    for (const listener of this.#selecting) listener();
  }

  #dispatch(type: string, payload: object) {
    return (this.#model as unknown as Dispatching).dispatch(type, payload);
  }

  #sheets() {
    const { getters } = this.#model;
    const ids = getters.getSheetIds().filter((id) => !isUnfinished(this.#model, id));
    return ids.map((id) => ({ id, name: getters.getSheetName(id) }));
  }

  /** The id of the sheet; refuses a sheet that a person has locked. */
  #openSheetId(name: string): string {
    const sheetId = this.#sheetId(name);
    if (this.#model.getters.isSheetLocked(sheetId))
      throw new WorkbookError(
        say`The sheet "${verbatim(name)}" is locked: unlock it (right click on its tab, Unlock the whole sheet), and try again. Nothing was changed.`,
      );
    return sheetId;
  }

  #sheetId(name: string): string {
    const id = this.#model.getters.getSheetIdByName(name);
    if (id === undefined) throw new WorkbookError(noSheet(name));
    return id;
  }

  /**
   * The names of the engine, and how a formula on this sheet refers to them: "ring", or "'Ring 2'!ring" for a name of
   * another sheet.
   */
  #planNames(sheetId: string): ReadonlyMap<string, string> {
    const { getters } = this.#model;
    const found = new Map<string, string>();
    for (const [owner, names] of this.#localNames) {
      if (owner !== sheetId && !getters.getSheetIds().includes(owner)) continue;
      const of = owner === sheetId ? "" : `${quoted(getters.getSheetName(owner))}!`;
      for (const [name, called] of names)
        if (of === "" || !found.has(called.toLowerCase())) found.set(called.toLowerCase(), `${of}${name}`);
    }
    return found;
  }

  /** The engine's name for a name of a sheet. */
  #called(sheetId: string, name: string): string {
    return calledIn(this.#localNames.get(sheetId), name) ?? localName(name);
  }

  #zoneNamed(sheetId: string, name: string): Zone | undefined {
    const range = this.#model.getters.getNamedRange(this.#called(sheetId, name))?.range;
    return range?.sheetId === sheetId ? range.zone : undefined;
  }

  /** The zones of an address, in order of their columns. */
  #zonesAt(sheetId: string, address: string): Zone[] {
    const { getters } = this.#model;
    const boxes = blockAddresses(address).map((part) => {
      const range = getters.getRangeFromSheetXC(sheetId, part);
      if (range.invalidXc || range.invalidSheetName)
        throw new WorkbookError(say`"${verbatim(part)}" is no address of cells.`);
      return toBox(range.zone);
    });
    return sideBySide(boxes).map(toZone);
  }

  #valuesOf(sheetId: string, zone: Zone): Selection["values"] {
    const getters = this.#model.getters as unknown as { getValuesIn(sheetId: string, zone: Zone): Selection["values"] };
    return getters.getValuesIn(sheetId, zone);
  }

  #valueAt(position: { sheetId: string; col: number; row: number }): CellValue {
    return (this.#model.getters.getEvaluatedCell(position).value as CellValue | null) ?? "";
  }

  /** Cuts whole columns and whole rows to the filled rows and columns of the zones. */
  #cutToUsed(sheetId: string, zones: readonly Zone[]): Zone[] {
    const { getters } = this.#model;
    const [lastRow, lastCol] = [getters.getNumberRows(sheetId) - 1, getters.getNumberCols(sheetId) - 1];
    const isWholeColumn = ({ top, bottom }: Zone): boolean => top === 0 && bottom === lastRow;
    const isWholeRow = ({ left, right }: Zone): boolean => left === 0 && right === lastCol;
    if (!zones.some((zone) => isWholeColumn(zone) || isWholeRow(zone))) return [...zones];
    const rows: number[] = [];
    const cols: number[] = [];
    for (const zone of zones)
      this.#valuesOf(sheetId, zone).forEach((cells, row) =>
        cells.forEach((value, col) => {
          if (value === "") return;
          rows.push(zone.top + row);
          cols.push(zone.left + col);
        }),
      );
    if (rows.length === 0) return [...zones];
    const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));
    const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b));
    return zones.map((zone) => ({
      ...zone,
      ...(isWholeColumn(zone) && { top: least(rows), bottom: most(rows) }),
      ...(isWholeRow(zone) && { left: least(cols), right: most(cols) }),
    }));
  }
}
