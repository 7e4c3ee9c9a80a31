/** Says that formulas of the test show #NAME?, so that nobody takes their results for values that were never entered. */
import { useIsUnknown } from "../live/use-test";
import { text } from "../text";
import { Notice } from "../ui/notice";

const words = text.unknown;

export const UnknownFormulas = () =>
  useIsUnknown() ? (
    <Notice intent="warning" title={words.title}>
      {words.what}
    </Notice>
  ) : null;
