/** Gives the screens the current test. All screens share one store; only the visible screen reads from it. */
import {
  createContext,
  useCallback,
  useContext,
  useEffect,
  useLayoutEffect,
  useMemo,
  useState,
  type ReactNode,
} from "react";
import { isUnknown } from "../../workbook/cell-error";
import type { WorkbookPort } from "../../workbook/port";
import type { CurrentTest } from "./current-test";
import { covers, type Want } from "./want";
import { WorkbookStore, type Reading, type Snapshot } from "./workbook-store";

interface Live {
  readonly store: WorkbookStore;
  /** What a person began to type, by the id of the test and the purpose. */
  readonly drafts: Map<string, unknown>;
}

const LiveContext = createContext<Live | undefined>(undefined);
const ShownContext = createContext(true);

function useLive(): Live {
  const live = useContext(LiveContext);
  if (!live) throw new Error("a screen stands outside FollowedWorkbook");
  return live;
}

/** Lets all its children follow one workbook. */
export function FollowedWorkbook({ port, children }: { readonly port: WorkbookPort; readonly children: ReactNode }) {
  const live = useMemo(() => ({ store: new WorkbookStore(port), drafts: new Map<string, unknown>() }), [port]);
  useEffect(() => {
    // Excel has no event for hidden columns and for names that a person defines. Therefore the pane reads them when
    // it gets the focus.
    const look = (): void => void live.store.again();
    window.addEventListener("focus", look);
    return () => window.removeEventListener("focus", look);
  }, [live]);
  return <LiveContext.Provider value={live}>{children}</LiveContext.Provider>;
}

/** Children that are not shown are not updated. */
export const Shown = ({ isShown, children }: { readonly isShown: boolean; readonly children: ReactNode }) => (
  <ShownContext.Provider value={isShown}>{children}</ShownContext.Provider>
);

export const useIsShown = (): boolean => useContext(ShownContext);

export interface FollowedTest {
  /** The names of the data sheets; undefined until the workbook has answered, empty if it has none. */
  readonly tests?: readonly string[];
  /** The contents of the current test; undefined until they were read. */
  readonly reading?: Reading;
  readonly error?: string;
}

/** Keeps the earlier reading of the same test until there is a reading with everything that the screen wants. */
function followedOf({ current, reading, error }: Snapshot, want: Want, before: FollowedTest): FollowedTest {
  const earlier = before.reading?.id === current.id ? before.reading : undefined;
  const next = reading && covers(reading.read, want) ? reading : earlier;
  return before.tests === current.tests && before.reading === next && before.error === error
    ? before
    : { tests: current.tests, reading: next, error };
}

/** The current test with what a screen wants of it. Pass the same `want` object in every call. */
export function useTest(want: Want): FollowedTest & { readonly again: () => Promise<void> } {
  const { store } = useLive();
  const isShown = useIsShown();
  const [followed, setFollowed] = useState<FollowedTest>(() => followedOf(store.snapshot(), want, {}));
  useLayoutEffect(() => {
    if (!isShown) return;
    const take = (): void => setFollowed((before) => followedOf(store.snapshot(), want, before));
    take();
    return store.follow(take, want);
  }, [store, isShown, want]);
  const again = useCallback(() => store.again(), [store]);
  return { ...followed, again };
}

/** A part of the snapshot, without a want of its own. Pass the same `of` in every call. */
function useOfSnapshot<T>(of: (snapshot: Snapshot) => T): T {
  const { store } = useLive();
  const [part, setPart] = useState(() => of(store.snapshot()));
  useLayoutEffect(() => {
    const take = (): void => setPart(() => of(store.snapshot()));
    take();
    return store.follow(take);
  }, [store, of]);
  return part;
}

export interface ChosenTest extends CurrentTest {
  readonly pin: (isPinned: boolean) => void;
  readonly choose: (sheet: string) => void;
}

const currentOf = ({ current }: Snapshot): CurrentTest => current;

/** The choice of the current test, for the head of the pane. */
export function useCurrentTest(): ChosenTest {
  const { store } = useLive();
  const current = useOfSnapshot(currentOf);
  const pin = useCallback((isPinned: boolean) => store.pin(isPinned), [store]);
  const choose = useCallback((sheet: string) => store.choose(sheet), [store]);
  return { ...current, pin, choose };
}

const isOnRequestIn = ({ reading }: Snapshot): boolean => reading?.isOnRequest ?? false;

/** True if the host calculates only when it is asked, as the last reading of the current test found. */
export const useIsOnRequest = (): boolean => useOfSnapshot(isOnRequestIn);

const isUnknownIn = ({ reading }: Snapshot): boolean =>
  Object.values(reading?.values ?? {}).some((rows) => rows.some((row) => row.some(isUnknown)));

/** Whether a named cell of the test has a formula with a function or a name that the host does not know. */
export const useIsUnknown = (): boolean => useOfSnapshot(isUnknownIn);

/** Stops reading from the workbook while the pane itself writes. */
export function useHold(isBusy: boolean): void {
  const { store } = useLive();
  useEffect(() => (isBusy ? store.hold() : undefined), [store, isBusy]);
}

/**
 * A state that belongs to a test and is kept while another test is current. The component that uses it needs the id of
 * the test as its key.
 */
export function useDraft<T>(test: string, what: string, start: T): [T, (next: T | ((before: T) => T)) => void] {
  const { drafts } = useLive();
  const key = `${test}\n${what}`;
  // Every use of this name has the same type, so the stored value has type T.
  const [value, setValue] = useState<T>(() => (drafts.has(key) ? (drafts.get(key) as T) : start));
  useEffect(() => void drafts.set(key, value), [drafts, key, value]);
  return [value, setValue];
}
