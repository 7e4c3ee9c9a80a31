/**
 * Follows the look of the host while the pane is open.
 *
 * Office says its colours where it can (not in every version of Excel on the web). It documents an event of their change for
 * mail only, so that they are also read again when the pane comes back to the front. Where Office is the host but says
 * nothing the look is light, since the system's own preference need not be Excel's. In a plain browser the preference counts.
 */
import { lookOf, type Look } from "./theme";

/** What is asked of the page's window. */
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

/** Tells the look after each change until what it gives is called. */
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
      // Nor anything to take back.
    }
  };
}
