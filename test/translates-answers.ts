import { translateAnswers } from "../src/pane/live/sheet-language";
import { translateBy, type Translator } from "../src/record/told";

/** Gives the tests of a file, or of a `describe`, the translator of the pane. The one before comes back: files of a group share it. */
export function translatesAnswers(): void {
  let before: Translator | undefined;
  beforeAll(() => {
    before = translateBy(undefined);
    translateAnswers();
  });
  afterAll(() => void translateBy(before));
}
