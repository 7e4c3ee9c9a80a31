/**
 * Starts the pane with the port of the workbook it stands beside: in Excel the Office adapter, beside the embedded sheet
 * the port that the page around this frame holds out.
 */
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet } from "../datasheet";
import { OfficePort } from "../workbook/office";
import type { WorkbookPort } from "../workbook/port";
import { Pane } from "./pane";
import { text } from "./text";
import { lookOf } from "./theme";

/** What the page of the embedded sheet holds out to the pane in its frame. */
interface HostWindow extends Window {
  readonly clayledger?: { readonly port?: WorkbookPort };
}

async function findPort(): Promise<WorkbookPort | undefined> {
  const embedded = (window.parent as HostWindow).clayledger?.port;
  if (embedded) return embedded;
  if (typeof Office === "undefined") return undefined;
  const { host } = await Office.onReady();
  return host ? new OfficePort() : undefined;
}

async function start(): Promise<void> {
  const place = document.getElementById("pane")!;
  const port = await findPort();
  if (!port) {
    place.textContent = text.noHost;
    return;
  }
  const look = lookOf({
    background: port.host === "excel" ? Office.context.officeTheme?.bodyBackgroundColor : undefined,
    forcedColours: window.matchMedia("(forced-colors: active)").matches,
  });
  document.body.style.margin = "0";
  createRoot(place).render(<Pane port={port} sheets={{ blankSheet, demoSheet }} look={look} />);
}

void start();
