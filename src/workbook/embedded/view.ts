/**
 * Shows the spreadsheet of the engine on the page.
 * Casts: the types of owl do not accept the engine's component and its props.
 */
import { Spreadsheet } from "@odoo/o-spreadsheet";
import { App, Component, xml } from "@odoo/owl";
import { cellAddress } from "../address";
import { asDecimal, askAboutEntries, namedEntries, type DoubtfulEntries } from "./entries";
import type { Model } from "./engine";
import { carryOut } from "./history";
import { decimalMarkOf } from "./locale";
import { showNotesWith } from "./notes";
import { tellRefusals } from "./protection";
import { plainRefusal } from "./rules";

/** The functions by which the sheet speaks to the user. */
export interface Voice {
  tell(sentence: string): void;
  /** Says why an entry was refused. The sentence goes with the next change, or when the user has moved on. */
  refuse(sentence: string): void;
  ask(question: string, yes: () => void, no?: () => void): void;
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

/** Asks what a comma means that was typed or pasted while the point is the decimal mark, or the reverse. */
function askAbout(model: Model, { entries, isMixed }: DoubtfulEntries, voice: Voice): void {
  const [first] = entries;
  if (!first) return;
  const mark = decimalMarkOf(model) === "," ? "point" : "comma";
  const decimals = entries.map(asDecimal);
  const left = `${namedEntries(entries)}: as ${entries.length === 1 ? "it was" : "they were"}.`;
  if (isMixed || decimals.includes(undefined)) {
    voice.refuse(`Not taken: ${namedEntries(entries)}. Write each number with one decimal mark, the same in all, or choose the mark at the top of the page; then try again.`); // prettier-ignore
    return;
  }
  const number = shownNumber(decimals[0]!, mark);
  const question =
    entries.length === 1
      ? `Is the ${mark} in “${first.typed}” a decimal mark, so that the cell ${cellAddress(first.row, first.col)} holds ${number}?`
      : `${entries.length} of the numbers have a ${mark}: ${namedEntries(entries)}. Is it the decimal mark in all of them, so that the first is ${number}?`;
  const take = (): void => {
    const commands = entries.map(({ sheetId, row, col }, i) => ({ type: "UPDATE_CELL", sheetId, row, col, content: decimals[i] })); // prettier-ignore
    const refused = carryOut(model, commands);
    if (refused.length > 0) voice.tell(`The numbers could not be written: ${refused.slice(0, 3).join("; ")}.`);
  };
  voice.ask(question, take, () => voice.refuse(`${left} Type numbers without separators for thousands.`));
}

/** A number with the decimal mark of the workbook. */
const shownNumber = (decimal: string, mark: "comma" | "point"): string =>
  mark === "comma" ? String(Number(decimal)) : String(Number(decimal)).replace(".", ",");

/** Makes the view in `target`; `templates` is the text of the engine's o_spreadsheet.xml. */
export function sheetView(target: HTMLElement, templates: string, voice: Voice): SheetView {
  tellRefusals((sentence) => voice.refuse(sentence));
  let shown: Model | undefined;
  askAboutEntries((found) => shown && askAbout(shown, found, voice));
  let app: { mount(target: HTMLElement): Promise<unknown>; destroy(): void } | undefined;
  return {
    async show(model) {
      shown = model;
      app?.destroy();
      target.replaceChildren();
      app = new App(Spreadsheet as never, {
        templates,
        props: {
          model,
          notifyUser: ({ text }: { text: string }) => voice.refuse(text),
          raiseError: (text: string, then?: () => void) => {
            voice.refuse(plainRefusal(model, text));
            then?.();
          },
          askConfirmation: (text: string, yes: () => void, no?: () => void) => voice.ask(text, yes, no),
        } as never,
      });
      await app.mount(target);
    },
  };
}
