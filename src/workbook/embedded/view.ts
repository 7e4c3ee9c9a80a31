/**
 * Shows the spreadsheet of the engine on the page.
 * Casts: the types of owl do not accept the engine's component and its props.
 */
import { Spreadsheet } from "@odoo/o-spreadsheet";
import { App, Component, xml } from "@odoo/owl";
import { asTyped, listed, say, verbatim, type Message } from "../../reduction/message";
import { cellAddress } from "../address";
import { asDecimal, askAboutEntries, namedEntries, type DoubtfulEntries } from "./typing/entries";
import type { Model } from "./engine";
import { wordFor } from "./engine-words";
import type { Place } from "./evaluation/engine-parts";
import { carryOut } from "./steps/history";
import { decimalMarkOf, formulaAt } from "./typing/locale";
import "./look/drawn-again";
import "./look/less-motion";
import { showNotesWith } from "./notes";
import { tellRefusals } from "./protection";
import "./typing/first-key";
import "./typing/last-editor";
import "./typing/next-open";
import { plainRefusal } from "./typing/rules";

/** An entry that was refused. */
export interface RefusedEntry {
  /** Tells its cells from others: a later refusal of the same cells takes its place. */
  readonly cells: string;
  /** Whether the cells still hold what they held when it was refused. */
  isAsItWas(): boolean;
}

/** The functions by which the sheet speaks to the user. */
export interface Voice {
  tell(sentence: Message): void;
  /**
   * Says why something was refused. The sentence disappears with the next change, or when the user selects another cell; that of an
   * entry, when one of its cells is changed.
   */
  refuse(sentence: Message, entry?: RefusedEntry): void;
  ask(question: Message, yes: () => void, no?: () => void): void;
}

export interface SheetView {
  /** Shows another workbook in place of the present one. */
  show(model: Model): Promise<void>;
}

/** The box that shows the note of a cell on hover. */
class NoteBox extends Component {
  static override template = xml`<div class="clayledger-note" t-esc="props.text"/>`;
  static maxSize = { maxHeight: 300 };
}

showNotesWith(NoteBox);

/** The entry of these cells, as long as the workbook is shown. */
function refusedIn(model: Model, places: readonly Place[], isShown: () => boolean): RefusedEntry {
  const { getters } = model;
  const contentAt = (place: Place): string | undefined => {
    if (getters.tryGetSheet(place.sheetId) === undefined) return undefined;
    const cell = getters.getCell(place);
    return cell?.isFormula ? formulaAt(getters, place) : cell?.content;
  };
  const held = (): string => JSON.stringify(places.map((place) => contentAt(place) ?? null));
  const before = held();
  return {
    cells: JSON.stringify(places.map(({ sheetId, row, col }) => [sheetId, row, col])),
    isAsItWas: () => isShown() && held() === before,
  };
}

/** Asks what a comma means that was typed or pasted while the point is the decimal mark, or the reverse. */
function askAbout(model: Model, { entries, isMixed }: DoubtfulEntries, voice: Voice, refused: RefusedEntry): void {
  const [first] = entries;
  if (!first) return;
  const isComma = decimalMarkOf(model) !== ",";
  const mark = isComma ? say`comma` : say`point`;
  const decimals = entries.map(asDecimal);
  if (isMixed || decimals.includes(undefined)) {
    voice.refuse(say`Not taken: ${namedEntries(entries)}. Write each number with one decimal mark, the same in all, or choose the mark at the top of the page; then try again.`, refused); // prettier-ignore
    return;
  }
  const number = verbatim(shownNumber(decimals[0]!, isComma));
  const question =
    entries.length === 1
      ? say`Is the ${mark} in “${verbatim(first.typed)}” a decimal mark, so that the cell ${verbatim(cellAddress(first.row, first.col))} holds ${number}?`
      : say`${entries.length} of the numbers have a ${mark}: ${namedEntries(entries)}. Is it the decimal mark in all of them, so that the first is ${number}?`;
  const take = (): void => {
    const commands = entries.map(({ sheetId, row, col }, i) => ({ type: "UPDATE_CELL", sheetId, row, col, content: decimals[i] })); // prettier-ignore
    const refused = carryOut(model, commands);
    if (refused.length > 0)
      voice.tell(say`The numbers could not be written: ${listed(refused.slice(0, 3).map(verbatim), "; ")}.`);
  };
  voice.ask(question, take, () =>
    voice.refuse(
      entries.length === 1
        ? say`${namedEntries(entries)}: as it was. Type numbers without separators for thousands.`
        : say`${namedEntries(entries)}: as they were. Type numbers without separators for thousands.`,
    ),
  );
}

/** A number with the decimal mark of the workbook. */
const shownNumber = (decimal: string, isComma: boolean): string =>
  isComma ? String(Number(decimal)) : String(Number(decimal)).replace(".", ",");

/** Makes the view in `target`; `templates` is the text of the engine's o_spreadsheet.xml. */
export function sheetView(target: HTMLElement, templates: string, voice: Voice): SheetView {
  let shown: Model | undefined;
  const refused = (model: Model, places: readonly Place[]) => refusedIn(model, places, () => shown === model);
  tellRefusals((sentence, place) => voice.refuse(sentence, place && shown && refused(shown, [place])));
  askAboutEntries((found) => shown && askAbout(shown, found, voice, refused(shown, found.entries)));
  let app: { mount(target: HTMLElement): Promise<unknown>; destroy(): void } | undefined;
  return {
    async show(model) {
      shown = model;
      app?.destroy();
      target.replaceChildren();
      app = new App(Spreadsheet as never, {
        templates,
        translateFn: wordFor,
        props: {
          model,
          notifyUser: ({ text }: { text: string }) => voice.refuse(asTyped(text)),
          raiseError: (text: string, then?: () => void) => {
            const { sentence, place } = plainRefusal(model, text);
            voice.refuse(sentence, place && refused(model, [place]));
            then?.();
          },
          askConfirmation: (text: string, yes: () => void, no?: () => void) => voice.ask(asTyped(text), yes, no),
        } as never,
      });
      await app.mount(target);
    },
  };
}
