/** A reason that stands alone begins with a capital letter, unless it begins with a symbol of the trade. */
import { sentence } from "../../../src/pane/text/sentence";

test.each([
  ["mv over the increase shows #VALUE!", "mv over the increase shows #VALUE!"],
  ["e after the increase", "e after the increase"],
  ["d100 is blank", "d100 is blank"],
  ["cv is blank", "cv is blank"],
  ["every load", "Every load"],
  ["when it is", "When it is"],
  ["the test", "The test"],
  ["", ""],
])("%s", (reason, said) => expect(sentence(reason)).toBe(said));
