/** Run by made-up-language.test.ts in a copy of the sources that has the made-up language "nl": prints the English that is left, by where it stands. */
import "./on-a-page";
import { setLanguage } from "../../../src/pane/text/language";

setLanguage("nl" as never);
void import("./places")
  .then(({ leftByPlace }) => leftByPlace())
  .then((left) => process.stdout.write(JSON.stringify(left)));
