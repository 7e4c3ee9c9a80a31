/** The stress of a load as the screens show it. */
import type { LoadRecord, TestRecord } from "../../record/record";
import { stressCalled } from "../../record/reduced/inputs";
import { inWords } from "../text/messages";

/** The stress of a load with its unit and the decimal mark of the pane's language, "12,5 kPa"; "" if it has no stress. */
export const stressInWords = (record: TestRecord, { stress }: Pick<LoadRecord, "stress">): string =>
  stress === undefined ? "" : inWords(stressCalled(record, stress));
