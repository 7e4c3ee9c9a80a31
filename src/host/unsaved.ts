/** Work that is in no file: the page keeps a copy of it, and offers the copies of pages that were closed before. */
import { lastStep, saveUnlessChanged, type Opened } from "../workbook/embedded";
import { hostWords } from "../pane/text/host";
import { timeStamp } from "../workbook/time-stamp";
import { element, type Desk } from "./desk";
import { copyKeeper } from "./keep-copy";
import { holdCopy, keptCopies, type KeptCopy } from "./kept-copies";
import { offerCopies } from "./offer-copy";

/** Reads a file, with progress and a stop. */
type Read = (bytes: Uint8Array, name: string) => Promise<Opened>;

/** Words the offer of a kept copy again. */
let showOffer = (): void => undefined;
export const wordOfferAgain = (): void => showOffer();

/** Keeps a copy of what is in no file, and offers the copies of pages that were closed before. */
export async function keepUnsaved(desk: Desk, read: Read): Promise<void> {
  const { port, voice } = desk;
  const store = keptCopies();
  // Not randomUUID, which a page without https does not have.
  let own = `${Date.now()}-${Math.random().toString(36).slice(2)}`;
  holdCopy(own);
  const keepNow = copyKeeper({
    step: () => lastStep(port.workbook.model) ?? port.workbook.model,
    isSaved: () => desk.isSaved,
    keep: async () => {
      // A copy from the middle of the pane's work would have a part of it, without the note that says so.
      if (port.sheetInHand() !== undefined) return false;
      const { model } = port.workbook;
      const bytes = await saveUnlessChanged(port.workbook);
      if (!bytes || port.workbook.model !== model || desk.isSaved) return false;
      await store.put({ id: own, name: desk.fileName, made: Date.now() }, bytes);
      return true;
    },
    forget: () => store.remove(own),
    failed: (error) => voice.tell(hostWords().noCopy(String(error))),
    now: () => performance.now(),
  });
  setInterval(() => void keepNow(), 1000);
  document.addEventListener("visibilitychange", () => void (document.hidden && keepNow(true)));

  const open = async (copy: KeptCopy): Promise<boolean> => {
    const isLeft = (await store.left()).some(({ id }) => id === copy.id);
    const bytes = isLeft ? await store.bytesOf(copy.id) : undefined;
    if (!bytes) {
      voice.tell(hostWords().copyGone(copy.name));
      return true;
    }
    await desk.show(await read(bytes, copy.name), copy.name);
    desk.markUnsaved();
    // The copy is now that of this page.
    await store.remove(own);
    own = copy.id;
    holdCopy(own);
    voice.tell(hostWords().copyOpen(copy.name));
    return true;
  };
  // Where the browser forbids the storage nothing was kept; the keeper says so once there is something to keep.
  const copies = await store.left().catch(() => []);
  const shown = (made: number): string => timeStamp(new Date(made));
  showOffer = offerCopies(
    copies,
    store,
    {
      box: element("kept"),
      words: element("kept-words"),
      open: element<HTMLButtonElement>("kept-open"),
      forget: element<HTMLButtonElement>("kept-forget"),
    },
    {
      sentence: ({ name, made }) => hostWords().copyKept(name, shown(made)),
      open: (copy) =>
        new Promise((resolve) => {
          const go = desk.attempt(async () => resolve(await open(copy)));
          if (desk.isSaved) go();
          else voice.ask(hostWords().unsaved(desk.fileName, copy.name), go, () => resolve(false));
        }),
      forgotten: ({ name }) => voice.tell(hostWords().copyForgotten(name)),
    },
  );
}
