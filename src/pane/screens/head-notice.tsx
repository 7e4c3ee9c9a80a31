/** Repeats on a screen what the head of the data sheet says of its inputs. */
import { makeStyles } from "@fluentui/react-components";
import { headOf, impossibleInputs } from "../../record/head-of-sheet";
import type { Reading } from "../live/workbook-store";
import { text } from "../text";
import { inWords } from "../text/messages";
import { Notice } from "../ui/notice";

const words = text.head;

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
});

export interface HeadNoticeProps {
  readonly reading: Reading;
  /** True to say also which inputs are missing; otherwise the notice is of inputs that cannot be. */
  readonly saysMissing?: boolean;
}

export function HeadNotice({ reading, saysMissing = false }: HeadNoticeProps) {
  const styles = useStyles();
  const said = saysMissing ? headOf(reading) : impossibleInputs(reading);
  if (said.length === 0) return null;
  const isImpossible = said.some(({ kind }) => kind === "impossible");
  const areEntries = said.some(({ kind }) => kind === "entry");
  const areJumps = said.every(({ kind }) => kind === "jump");
  const title = isImpossible ? words.impossible : areEntries ? words.entry : areJumps ? words.jump : words.missing;
  return (
    <Notice intent={isImpossible || areEntries || areJumps ? "warning" : "info"} title={title}>
      <ul className={styles.list}>
        {said
          .map(({ sentence }) => inWords(sentence))
          .map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
      </ul>
    </Notice>
  );
}
