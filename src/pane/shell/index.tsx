/** Starts the pane beside the workbook it finds, in the language that is asked for. */
import { OfficePort } from "../../workbook/office";
import { findPort } from "./find-port";
import { keptLanguage, languageFor, setLanguage } from "../text/language";

async function start(): Promise<void> {
  const office = typeof Office === "undefined" ? undefined : Office;
  // Office's language is known once Office is ready, which the search for a port waits for.
  const port = await findPort(window.parent, office, () => new OfficePort());
  const language = languageFor(
    keptLanguage(window.location.search),
    office?.context?.displayLanguage,
    navigator.language,
  );
  setLanguage(language);
  document.documentElement.lang = language;
  // Loaded only now, though part of this file: every screen binds its words as it loads.
  const { show } = await import(/* webpackMode: "eager" */ "./show");
  show(document.getElementById("pane")!, port, office);
}

void start();
