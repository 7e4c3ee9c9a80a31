/** Every screen of the pane: by keyboard, in every look, in both languages, and without a data sheet. One page for all. */
import { withBrowser, type HostPage } from "../page";
import { byKeyboard } from "./screens-by-keyboard";
import { everyLook } from "./looks";
import { withoutSheet } from "./without-sheet";

withBrowser("a walk over every screen", (openPage) => {
  let page: HostPage;
  beforeAll(async () => {
    page = await openPage("", { locale: "en-GB" });
  });
  const host = (): HostPage => page;

  byKeyboard(host);
  everyLook(host);
  withoutSheet(host);
});
