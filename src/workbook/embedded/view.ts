/** Shows the spreadsheet of the engine on the page. */
import { Spreadsheet } from "@odoo/o-spreadsheet";
import { App, Component, xml } from "@odoo/owl";
import type { Model } from "./engine";
import { showNotesWith } from "./notes";
import { tellRefusals } from "./protection";

/** The functions by which the sheet speaks to the user. */
export interface Voice {
  tell(sentence: string): void;
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

/** Makes the view in `target`; `templates` is the text of the engine's o_spreadsheet.xml. */
export function sheetView(target: HTMLElement, templates: string, voice: Voice): SheetView {
  tellRefusals((sentence) => voice.tell(sentence));
  let app: { mount(target: HTMLElement): Promise<unknown>; destroy(): void } | undefined;
  return {
    async show(model) {
      app?.destroy();
      target.replaceChildren();
      app = new App(Spreadsheet as never, {
        templates,
        props: {
          model,
          notifyUser: ({ text }: { text: string }) => voice.tell(text),
          raiseError: (text: string, then?: () => void) => {
            voice.tell(text);
            then?.();
          },
          askConfirmation: (text: string, yes: () => void, no?: () => void) => voice.ask(text, yes, no),
        } as never,
      });
      await app.mount(target);
    },
  };
}
