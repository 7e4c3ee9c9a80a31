/** The current test for the screens: one store for all of them, read by the screen that is shown. */
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
import type { WorkbookPort } from "../../workbook/port";
import type { CurrentTest } from "./current-test";
import { covers, type Want } from "./want";
import { WorkbookStore, type Reading, type Snapshot } from "./workbook-store";

interface Live {
  readonly store: WorkbookStore;
  /** What a person began to type, by the id of a test and what it is for. */
  readonly drafts: Map<string, unknown>;
}

const LiveContext = createContext<Live | undefined>(undefined);
const ShownContext = createContext(true);

function useLive(): Live {
  const live = useContext(LiveContext);
  if (!live) throw new Error("a screen stands outside FollowedWorkbook");
  return live;
}

/** All that stands in it follows one workbook. */
export function FollowedWorkbook({ port, children }: { readonly port: WorkbookPort; readonly children: ReactNode }) {
  const live = useMemo(() => ({ store: new WorkbookStore(port), drafts: new Map<string, unknown>() }), [port]);
  useEffect(() => {
    // Hidden columns, and names that were given by hand, are no event of Excel: whoever comes to the pane finds them all the same.
    const look = (): void => void live.store.again();
    window.addEventListener("focus", look);
    return () => window.removeEventListener("focus", look);
  }, [live]);
  return <LiveContext.Provider value={live}>{children}</LiveContext.Provider>;
}

/** What stands in it is left as it is while it is not shown. */
export const Shown = ({ isShown, children }: { readonly isShown: boolean; readonly children: ReactNode }) => (
  <ShownContext.Provider value={isShown}>{children}</ShownContext.Provider>
);

export const useIsShown = (): boolean => useContext(ShownContext);

export interface FollowedTest {
  /** Names of the data sheets; undefined until the workbook has answered, empty where there is none. */
  readonly tests?: readonly string[];
  /** What the current test holds; undefined until it was read. */
  readonly reading?: Reading;
  readonly error?: string;
}

/** Until there is a reading with all that is wanted, the one before of the same test stands. */
function followedOf({ current, reading, error }: Snapshot, want: Want, before: FollowedTest): FollowedTest {
  const earlier = before.reading?.id === current.id ? before.reading : undefined;
  const next = reading && covers(reading.read, want) ? reading : earlier;
  return before.tests === current.tests && before.reading === next && before.error === error
    ? before
    : { tests: current.tests, reading: next, error };
}

/** The current test with what a screen wants of it: the same want at every call. */
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

export interface ChosenTest extends CurrentTest {
  readonly pin: (isPinned: boolean) => void;
  readonly choose: (sheet: string) => void;
}

/** Which test is current, for the head of the pane. */
export function useCurrentTest(): ChosenTest {
  const { store } = useLive();
  const [current, setCurrent] = useState<CurrentTest>(() => store.snapshot().current);
  useLayoutEffect(() => {
    const take = (): void => setCurrent(store.snapshot().current);
    take();
    return store.follow(take);
  }, [store]);
  const pin = useCallback((isPinned: boolean) => store.pin(isPinned), [store]);
  const choose = useCallback((sheet: string) => store.choose(sheet), [store]);
  return { ...current, pin, choose };
}

/** Leaves the workbook alone while the pane itself writes. */
export function useHold(isBusy: boolean): void {
  const { store } = useLive();
  useEffect(() => (isBusy ? store.hold() : undefined), [store, isBusy]);
}

/** A state that stays with its test while another test is current. Where it is used stands under a key of that test. */
export function useDraft<T>(test: string, what: string, start: T): [T, (next: T | ((before: T) => T)) => void] {
  const { drafts } = useLive();
  const key = `${test}\n${what}`;
  // Whoever asks for a draft of this name has put it there.
  const [value, setValue] = useState<T>(() => (drafts.has(key) ? (drafts.get(key) as T) : start));
  useEffect(() => void drafts.set(key, value), [drafts, key, value]);
  return [value, setValue];
}
