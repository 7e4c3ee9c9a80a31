/** Shows the pane on its page, in the look of the host. */
import { useEffect, useState } from "react";
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet, wettingSeries } from "../../datasheet";
import type { WorkbookPort } from "../../workbook/port";
import { followLook, lookNow } from "./follow-look";
import { Pane } from "./pane";
import { uprightPort } from "../live/upright";
import { text } from "../text";

type Host = typeof Office | undefined;

const SHEETS = { blankSheet, demoSheet, wettingSeries };

function FollowingPane({ port, office }: { port: WorkbookPort; office: Host }) {
  const [look, setLook] = useState(() => lookNow(office, window));
  useEffect(() => followLook(office, window, setLook), [office]);
  // Sets the look of scroll bars and lists of choices, which the browser draws.
  useEffect(() => {
    document.documentElement.style.colorScheme = look === "dark" ? "dark" : "light";
  }, [look]);
  return <Pane port={port} sheets={SHEETS} look={look} />;
}

export function show(place: HTMLElement, port: WorkbookPort | undefined, office: Host): void {
  if (!port) {
    place.textContent = text.noHost;
    return;
  }
  document.body.style.margin = "0";
  const root = createRoot(place);
  root.render(<FollowingPane port={uprightPort(port)} office={office} />);
  // The page beside a pane that is reloaded would go on telling it of changes, and hold its memory.
  window.addEventListener("pagehide", ({ persisted }) => persisted || root.unmount());
}
