/** The pane on its page. */
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet } from "../datasheet";
import type { WorkbookPort } from "../workbook/port";
import { Pane } from "./pane";
import { text } from "./text";
import { lookOf } from "./theme";

export function show(place: HTMLElement, port: WorkbookPort | undefined, office: typeof Office | undefined): void {
  if (!port) {
    place.textContent = text.noHost;
    return;
  }
  const look = lookOf({
    background: office?.context?.officeTheme?.bodyBackgroundColor,
    forcedColours: window.matchMedia("(forced-colors: active)").matches,
  });
  document.body.style.margin = "0";
  createRoot(place).render(<Pane port={port} sheets={{ blankSheet, demoSheet }} look={look} />);
}
