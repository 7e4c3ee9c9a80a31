/** Starts the pane beside the workbook it finds. */
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet } from "../datasheet";
import { OfficePort } from "../workbook/office";
import { findPort } from "./find-port";
import { Pane } from "./pane";
import { text } from "./text";
import { lookOf } from "./theme";

async function start(): Promise<void> {
  const place = document.getElementById("pane")!;
  const office = typeof Office === "undefined" ? undefined : Office;
  const port = await findPort(window.parent, office, () => new OfficePort());
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

void start();
