/** Starts the pane with the workbook that it finds, in the chosen language. */
import { OfficePort } from "../../workbook/office";
import { translateAnswers } from "../live/sheet-language";
import { findPort } from "./find-port";
import { keptLanguage, languageFor, setLanguage } from "../text/language";

async function start(): Promise<void> {
  // In Excel, the worksheet functions run in this page.
  translateAnswers();
  const office = typeof Office === "undefined" ? undefined : Office;
  // The language of Office is known once Office is ready; findPort waits for that.
  const port = await findPort(window.parent, office, () => new OfficePort());
  const language = languageFor(
    keptLanguage(window.location.search),
    office?.context?.displayLanguage,
    navigator.language,
  );
  setLanguage(language);
  document.documentElement.lang = language;
  // This import runs only now, although the module is in the same file, because every screen reads its words when it
  // is loaded.
  const { show } = await import(/* webpackMode: "eager" */ "./show");
  show(document.getElementById("pane")!, port, office);
}

void start();
