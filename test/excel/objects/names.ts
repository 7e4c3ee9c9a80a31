/** Names of the workbook and of a sheet. */
import { numberedAddress } from "../book/address";
import { same, sheetById, type NameOf, type Sheet } from "../book/book";
import { checkFree, checkName, formulaOf, refersTo, typeOf } from "../book/names";
import { invalidArgument, notFound, Refusal } from "../refusal";
import { Being, Collection, type Host } from "./being";
import { Range } from "./range";
import { Worksheet } from "./worksheet";

/** MS-OI29500, 2.1.568. */
const LONGEST_COMMENT = 255;

function checkComment(comment: string | null | undefined): void {
  if (typeof comment === "string" && comment.length > LONGEST_COMMENT)
    throw invalidArgument(`The comment of a name takes at most ${LONGEST_COMMENT} characters, not ${comment.length}.`);
}

/**
 * The names that Excel gives to the print area and the titles of a sheet. It lists them among the names of the sheet, in the language of the
 * user (office-js issue 3984, by design; the German words from memory).
 */
const OWN_NAMES = [
  { setting: "pageLayout.printArea", en: "Print_Area", de: "Druckbereich" },
  { setting: "pageLayout.titleRows", en: "Print_Titles", de: "Drucktitel" },
] as const;

const ownNameOf = (name: string): (typeof OWN_NAMES)[number] | undefined =>
  OWN_NAMES.find(({ en, de }) => [en, de].some((one) => one === name));

const ownNames = ({ book, locale }: Host, sheet: Sheet): NameOf[] =>
  OWN_NAMES.flatMap(({ setting, en, de }) => {
    const address = sheet.settings[setting];
    if (typeof address !== "string" || address === "") return [];
    const refers = refersTo(book, `=${address}`, sheet.id);
    return [{ name: locale.startsWith("de") ? de : en, refers, comment: "", visible: true }];
  });

export class NamedItemCollection extends Collection<NamedItem> {
  readonly className = "NamedItemCollection";
  constructor(
    host: Host,
    private readonly home: Sheet | undefined,
  ) {
    super(host);
  }
  private get held(): NameOf[] {
    return this.home ? this.home.names : this.host.book.names;
  }
  private get names(): NameOf[] {
    return this.home ? [...this.held, ...ownNames(this.host, this.home)] : this.held;
  }
  get items(): NamedItem[] {
    return this.names.map((name) => new NamedItem(this.host, this.home, name));
  }
  getItemOrNullObject(wanted: string): NamedItem | null {
    const found = this.names.find(({ name }) => same(name, wanted));
    return found ? new NamedItem(this.host, this.home, found) : null;
  }
  getItem(wanted: string): NamedItem {
    const found = this.getItemOrNullObject(wanted);
    if (!found) throw notFound(`the name "${wanted}"`);
    return found;
  }
  add(name: string, reference: Range | string, comment: string | null): NamedItem {
    checkName(name);
    checkFree(this.names, name);
    checkComment(comment);
    if (typeof reference === "string" && !reference.startsWith("="))
      throw invalidArgument("The formula of a name begins with =.");
    const refers =
      reference instanceof Range
        ? ({ kind: "cells", areas: [{ sheet: reference.sheet.id, box: reference.box }] } as const)
        : refersTo(this.host.book, reference, this.home?.id);
    const made: NameOf = { name, refers, comment: comment ?? "", visible: true };
    this.held.push(made);
    this.host.recalculate();
    return new NamedItem(this.host, this.home, made);
  }
}

export class NamedItem extends Being {
  readonly className = "NamedItem";
  constructor(
    host: Host,
    private readonly home: Sheet | undefined,
    private readonly named: NameOf,
  ) {
    super(host);
  }
  get id(): string {
    return this.named.name;
  }
  get name(): string {
    return this.named.name;
  }
  get type(): string | null {
    return this.host.switches.isInBackground ? null : this.kind;
  }
  private get kind(): string {
    return typeOf(this.host.book, this.named);
  }
  get scope(): string {
    return this.home ? "Worksheet" : "Workbook";
  }
  get visible(): boolean {
    return this.named.visible;
  }
  set visible(visible: boolean) {
    this.named.visible = visible;
  }
  get comment(): string {
    return this.named.comment;
  }
  set comment(comment: string) {
    checkComment(comment);
    this.named.comment = comment;
  }
  get formula(): string {
    return formulaOf(this.host.book, this.named);
  }
  set formula(formula: string) {
    if (!formula.startsWith("=")) throw invalidArgument("The formula of a name begins with =.");
    this.named.refers = refersTo(this.host.book, formula, this.home?.id);
    this.host.recalculate();
  }
  get value(): unknown {
    const { numberedColumns } = this.host.switches;
    if (this.kind === "Range" && numberedColumns)
      return formulaOf(this.host.book, this.named, (box) => numberedAddress(box, numberedColumns)).slice(1);
    if (this.kind === "Range") return formulaOf(this.host.book, this.named).slice(1).replaceAll("$", "");
    if (this.kind === "Error") return "#REF!";
    const text = this.formula.slice(1);
    return this.kind === "Double" || this.kind === "Integer" ? Number(text) : text.replace(/^"|"$/g, "");
  }
  get worksheetOrNullObject(): Worksheet | null {
    return this.home ? new Worksheet(this.host, this.home) : null;
  }
  get worksheet(): Worksheet {
    if (!this.home) throw notFound("the sheet of a name of the workbook");
    return new Worksheet(this.host, this.home);
  }
  getRange(): Range {
    // The names of formulas: xlwings-server issue 218.
    if (this.named.refers.kind === "formula")
      throw new Refusal("InvalidOperation", "This operation is not permitted for the current object.");
    const range = this.getRangeOrNullObject();
    if (!range) throw notFound(`cells of the name "${this.named.name}"`);
    return range;
  }
  getRangeOrNullObject(): Range | null {
    const { refers } = this.named;
    if (refers.kind !== "cells") return null;
    if (refers.areas.length > 1)
      throw invalidArgument(`The name "${this.named.name}" has several areas and is no single range.`);
    const sheet = sheetById(this.host.book, refers.areas[0].sheet);
    return sheet ? new Range(this.host, sheet, refers.areas[0].box) : null;
  }
  delete(): void {
    const names = this.home ? this.home.names : this.host.book.names;
    if (names.includes(this.named)) names.splice(names.indexOf(this.named), 1);
    else delete this.home!.settings[ownNameOf(this.named.name)!.setting];
    this.host.recalculate();
  }
}
