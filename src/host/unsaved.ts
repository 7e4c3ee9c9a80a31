/** Work that is in no file: the page keeps a copy of it, and offers the copies of pages that were closed before. */
import { saveUnlessChanged, workOf, type Opened } from "../workbook/embedded";
import { hostWords } from "../pane/text/host";
import { timeStamp } from "../workbook/time-stamp";
import { element, type Desk } from "./desk";
import { copyKeeper } from "./keep-copy";
import { keptCopies, takeCopy, type KeptCopies, type KeptCopy } from "./kept-copies";
import { makeOffer } from "./offer-copy";

/** Reads a file, with progress and a stop. */
type Read = (bytes: Uint8Array, name: string) => Promise<Opened>;

/** Keeps a copy of the workbook of this page while it is in no file. Gives the function that makes an opened copy that of this page. */
function keepOwn(desk: Desk, store: KeptCopies): (id: string) => Promise<void> {
  const { port, voice } = desk;
  // Not randomUUID, which a page without https does not have.
  let own = `${Date.now()}-${Math.random().toString(36).slice(2)}`;
  // Where the browser forbids this, the keeper says so.
  void takeCopy(own).catch(() => undefined);
  const keepNow = copyKeeper({
    step: () => workOf(port.workbook.model) ?? port.workbook.model,
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
  return async (id) => {
    const before = own;
    own = id;
    await store.remove(before);
  };
}

/** Carries out `work` with a copy that no other window has; says so if another window has opened it, or let it be forgotten. */
async function withCopy(
  { voice }: Desk,
  store: KeptCopies,
  { id, name }: KeptCopy,
  work: (bytes: Uint8Array) => Promise<void>,
): Promise<void> {
  const release = await takeCopy(id);
  try {
    const bytes = release && (await store.bytesOf(id));
    if (bytes) await work(bytes);
    else {
      release?.();
      voice.tell(hostWords().copyGone(name));
    }
  } catch (error) {
    release?.();
    throw error;
  }
}

/** Asks whether the changes of the present workbook may be lost, if there are any. */
const mayLeave = (desk: Desk, next: string): Promise<boolean> =>
  new Promise((resolve) => {
    if (desk.isSaved) resolve(true);
    else desk.voice.ask(hostWords().unsaved(desk.fileName, next), () => resolve(true), () => resolve(false)); // prettier-ignore
  });

/** Begins to keep copies, and offers those that are left. Gives a function that words the offer again. */
export function keepUnsaved(desk: Desk, read: Read): () => void {
  const store = keptCopies();
  const makeOwn = keepOwn(desk, store);
  const open = (copy: KeptCopy): Promise<void> =>
    withCopy(desk, store, copy, async (bytes) => {
      await desk.show(await read(bytes, copy.name), copy.name);
      desk.markUnsaved();
      await makeOwn(copy.id);
      desk.voice.tell(hostWords().copyOpen(copy.name));
    });
  const forget = (copy: KeptCopy): Promise<void> =>
    withCopy(desk, store, copy, async () => {
      await store.remove(copy.id);
      desk.voice.tell(hostWords().copyForgotten(copy.name));
    });
  const { offer, wordAgain } = makeOffer(
    {
      box: element("kept"),
      words: element("kept-words"),
      open: element<HTMLButtonElement>("kept-open"),
      forget: element<HTMLButtonElement>("kept-forget"),
    },
    {
      sentence: ({ name, made }) => hostWords().copyKept(name, timeStamp(new Date(made))),
      open: async (copy) => (await mayLeave(desk, copy.name)) && desk.tried(() => open(copy)),
      forget: (copy) => desk.tried(() => forget(copy)),
    },
  );
  // Where the browser forbids the storage nothing was kept; the keeper says so once there is something to keep.
  void store.left().then(offer, () => undefined);
  return wordAgain;
}
