import { followLook, lookNow, type View } from "../../../src/pane/shell/follow-look";
import type { Look } from "../../../src/pane/shell/theme";

/** A window whose media queries and events the test controls. */
class FakeView {
  readonly matching = new Set<string>();
  readonly listeners = new Map<string, Set<() => void>>();
  matchMedia = (query: string) => {
    const matches = () => this.matching.has(query);
    return {
      get matches() {
        return matches();
      },
      addEventListener: (_: string, listener: () => void) => this.addEventListener(query, listener),
      removeEventListener: (_: string, listener: () => void) => this.removeEventListener(query, listener),
    };
  };
  addEventListener = (type: string, listener: () => void) => {
    this.listeners.set(type, (this.listeners.get(type) ?? new Set()).add(listener));
  };
  removeEventListener = (type: string, listener: () => void) => this.listeners.get(type)?.delete(listener);

  /** Changes a preference of the system. */
  prefer(query: string, matches: boolean): void {
    if (matches) this.matching.add(query);
    else this.matching.delete(query);
    this.fire(query);
  }
  fire(type: string): void {
    this.listeners.get(type)?.forEach((listener) => listener());
  }
  get left(): number {
    return [...this.listeners.values()].reduce((sum, { size }) => sum + size, 0);
  }
}

const FORCED = "(forced-colors: active)";
const DARK = "(prefers-color-scheme: dark)";

let view: FakeView;
let told: Look[];
const follow = (office?: unknown) =>
  followLook(office as typeof Office, view as unknown as View, (look) => told.push(look));

beforeEach(() => {
  view = new FakeView();
  told = [];
});

test("in a browser the look follows preference and forced colours while the pane is open, and no longer", () => {
  const stop = follow();
  view.prefer(DARK, true);
  view.prefer(FORCED, true);
  view.prefer(FORCED, false);
  view.prefer(DARK, false);
  expect(told).toEqual(["dark", "high-contrast", "dark", "light"]);
  stop();
  expect(view.left).toBe(0);
});

const excel = (background: string | undefined) => {
  const handlers = new Set<() => void>();
  return {
    handlers,
    EventType: { OfficeThemeChanged: "officeThemeChanged" },
    context: {
      host: "Excel",
      officeTheme: background === undefined ? undefined : { bodyBackgroundColor: background },
      document: {
        addHandlerAsync: (_: string, handler: () => void) => handlers.add(handler),
        removeHandlerAsync: (_: string, { handler }: { handler: () => void }) => handlers.delete(handler),
      },
    },
  };
};

test("in Excel its theme counts, and its event reports a change if Excel has one", () => {
  const office = excel("#ffffff");
  const stop = follow(office);
  office.context.officeTheme!.bodyBackgroundColor = "#262626";
  office.handlers.forEach((handler) => handler());
  expect(told).toEqual(["dark"]);
  stop();
  expect(office.handlers.size).toBe(0);
});

test("in Excel without the event the theme is read again when the pane comes to the front", () => {
  const office = excel("#262626") as any;
  office.context.document.addHandlerAsync = () => {
    throw new Error("The event is not supported.");
  };
  office.context.document.removeHandlerAsync = office.context.document.addHandlerAsync;
  const stop = follow(office);
  office.context.officeTheme.bodyBackgroundColor = "#ffffff";
  view.fire("focus");
  expect(told).toEqual(["light"]);
  expect(stop).not.toThrow();
});

test("if Excel does not give a theme the look is light, whatever the system prefers", () => {
  view.matching.add(DARK);
  expect(lookNow(excel(undefined) as never, view as unknown as View)).toBe("light");
  expect(lookNow(undefined, view as unknown as View)).toBe("dark");
});
