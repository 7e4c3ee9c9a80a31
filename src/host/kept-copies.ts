/**
 * Copies of workbooks with changes that are in no file, in the browser's own storage (IndexedDB) on this computer: one for each open page,
 * and those of pages that were closed, reloaded or ended without saving.
 */

/** What is known of a copy. */
export interface KeptCopy {
  /** The page that keeps it. */
  readonly id: string;
  /** The name of the file. */
  readonly name: string;
  /** When it was made, in ms since 1970. */
  readonly made: number;
}

/** The places of copies. A promise is rejected where the browser forbids the storage, or has no room. */
export interface KeptCopies {
  /** Puts the copy of a page in the place of its copy before. */
  put(copy: KeptCopy, bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  bytesOf(id: string): Promise<Uint8Array<ArrayBuffer> | undefined>;
  remove(id: string): Promise<void>;
  /** The copies of pages that are no longer open, the latest first. */
  left(): Promise<KeptCopy[]>;
}

const DATABASE = "clayledger";
const ABOUT = "about copies";
const BYTES = "bytes of copies";

/** The oldest copies beyond this number are forgotten: a copy of 40 data sheets has some megabytes. */
const MOST = 5;

const lockOf = (id: string): string => `clayledger copy ${id}`;

// The types do not tell that a page that is served without https from another machine has no locks: there the copy of an open page is offered to a second page as well.
const locks = (): LockManager | undefined => navigator.locks as LockManager | undefined;

/**
 * Takes the copy of a page for this page, until the function that it gives is called, or this page is closed. Gives undefined if another
 * page has the copy.
 */
export async function takeCopy(id: string): Promise<(() => void) | undefined> {
  const all = locks();
  if (!all) return () => undefined;
  return new Promise((resolve, reject) => {
    const hold = (lock: Lock | null): Promise<void> | undefined => {
      if (lock) return new Promise<void>((release) => resolve(release));
      resolve(undefined);
      return undefined;
    };
    all.request(lockOf(id), { ifAvailable: true }, hold).catch(reject);
  });
}

async function idsInUse(): Promise<Set<string | undefined>> {
  const { held = [] } = (await locks()?.query()) ?? {};
  return new Set(held.map(({ name }) => name));
}

/** The copies of pages that are no longer open, the latest first. */
const closed = (copies: readonly KeptCopy[], inUse: ReadonlySet<string | undefined>): KeptCopy[] =>
  copies.filter(({ id }) => !inUse.has(lockOf(id))).sort((a, b) => b.made - a.made);

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("IndexedDB"));
  });

const endOf = (work: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    work.oncomplete = () => resolve();
    work.onerror = work.onabort = () => reject(work.error ?? new Error("IndexedDB"));
  });

/** The copies in the storage of this browser. The storage is opened for each call, so that nothing stands in the way of its deletion. */
export function keptCopies(): KeptCopies {
  const within = async <T>(mode: IDBTransactionMode, work: (on: IDBTransaction) => Promise<T>): Promise<T> => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore(ABOUT, { keyPath: "id" });
      opening.result.createObjectStore(BYTES);
    };
    const database = await answerOf(opening);
    try {
      const transaction = database.transaction([ABOUT, BYTES], mode);
      const [answer] = await Promise.all([work(transaction), endOf(transaction)]);
      return answer;
    } finally {
      database.close();
    }
  };
  const removeIn = (on: IDBTransaction, id: string): void => {
    on.objectStore(ABOUT).delete(id);
    on.objectStore(BYTES).delete(id);
  };
  // The store holds what `put` gave it.
  const allIn = (on: IDBTransaction) => answerOf(on.objectStore(ABOUT).getAll() as IDBRequest<KeptCopy[]>);
  // As above.
  const bytesIn = (on: IDBTransaction, id: string) =>
    answerOf(on.objectStore(BYTES).get(id) as IDBRequest<Uint8Array<ArrayBuffer> | undefined>);
  return {
    put: async (copy, bytes) => {
      const inUse = await idsInUse();
      await within("readwrite", async (on) => {
        on.objectStore(ABOUT).put(copy);
        on.objectStore(BYTES).put(bytes, copy.id);
        const others = closed(await allIn(on), inUse).filter(({ id }) => id !== copy.id);
        for (const { id } of others.slice(MOST - 1)) removeIn(on, id);
      });
    },
    bytesOf: (id) => within("readonly", (on) => bytesIn(on, id)),
    remove: (id) => within("readwrite", async (on) => removeIn(on, id)),
    left: async () => {
      const inUse = await idsInUse();
      return closed(await within("readonly", allIn), inUse);
    },
  };
}
