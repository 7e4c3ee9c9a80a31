/**
 * Follows the look of the host while the pane is open.
 *
 * Office reports its colours in most hosts, but not in every version of Excel on the web. It documents an event for a
 * change of the colours for mail only; therefore they are also read again when the pane gets the focus. If Office is
 * the host but reports no colours, the look is light, because the preference of the system may differ from the look of
 * Excel. In a plain browser, the preference of the system counts.
 */
import { lookOf, type Look } from "./theme";

/** The methods of `window` that this module uses. */
export type View = Pick<Window, "matchMedia" | "addEventListener" | "removeEventListener">;

const FORCED = "(forced-colors: active)";
const DARK = "(prefers-color-scheme: dark)";

export function lookNow(office: typeof Office | undefined, view: View): Look {
  return lookOf({
    background: office?.context?.officeTheme?.bodyBackgroundColor,
    forcedColours: view.matchMedia(FORCED).matches,
    prefersDark: !office?.context?.host && view.matchMedia(DARK).matches,
  });
}

/** Calls `tell` with the look after each change. Returns the function that ends this. */
export function followLook(office: typeof Office | undefined, view: View, tell: (look: Look) => void): () => void {
  const again = (): void => tell(lookNow(office, view));
  const queries = [FORCED, DARK].map((query) => view.matchMedia(query));
  for (const query of queries) query.addEventListener("change", again);
  view.addEventListener("focus", again);
  const document = office?.context?.document;
  const type = office?.EventType?.OfficeThemeChanged;
  try {
    if (type) document?.addHandlerAsync?.(type, again);
  } catch {
    // This version has no such event for workbooks.
  }
  return () => {
    for (const query of queries) query.removeEventListener("change", again);
    view.removeEventListener("focus", again);
    try {
      if (type) document?.removeHandlerAsync?.(type, { handler: again });
    } catch {
      // There is no handler to remove.
    }
  };
}
