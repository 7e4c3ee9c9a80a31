/** Shows how each number is calculated, evaluated twice, and inserts the calculation book. */
import { Button, Text } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { bookSheet } from "../../../book/book-sheet";
import { calculationBook, type Entry } from "../../../book/calculation-book";
import type { evaluateAgain } from "../../../book/second-evaluation";
import { refuseNotYet } from "../../../workbook/rules/busy";
import { languageNamed } from "../../../specification/text/language";
import { newSheet } from "../../live/new-sheet";
import { inOneLanguage, labelOnSheet, languageOfLabels } from "../../live/sheet-language";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { numberText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { useStyles } from "./by-hand-styles";
import { isOf, loadsOf, ResultsOf, type ScreenProps, type Telling } from "./results-chosen";

const words = text.byHand;

export function Working({ port, reading: { sheet, names, values, record } }: ScreenProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const entries = useMemo(() => calculationBook(record, values), [record, values]);
  const [load, setLoad] = useState("");
  const [telling, setTelling] = useState<Telling>();
  const shown = entries.filter(isOf(load));
  const again = useSecondEvaluation();

  const insert = async (): Promise<void> => {
    try {
      refuseNotYet(values);
      const language = languageNamed(record.sheetLanguage);
      const plan = bookSheet(sheet, entries, names, language, inOneLanguage(language));
      setTelling(await newSheet(port, { ...plan, reads: { sheet, names } }, (book) => words.booked(sheet, book)));
    } catch (error) {
      setTelling({ intent: "error", sentence: sentenceOf(error) });
    }
  };

  return (
    <Step title={words.working}>
      <Text block>{words.workingPurpose}</Text>
      {entries.length === 0 ? (
        <Text block>{words.noWorking}</Text>
      ) : (
        <>
          <div className={shared.fields}>
            <ResultsOf load={load} loads={loadsOf(entries)} onChoose={setLoad} />
          </div>
          <dl className={shared.list}>
            {shown.map((entry) => (
              <WorkingLine
                key={`${entry.name} ${entry.load ?? ""}`}
                entry={entry}
                again={again && entry.worked && again(entry.worked)}
                className={styles.line}
              />
            ))}
          </dl>
          <div>
            <Button onClick={insert}>{words.book}</Button>
          </div>
        </>
      )}
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
    </Step>
  );
}

type SecondEvaluation = typeof evaluateAgain;

/** Loads the code of the second evaluation when this screen opens, because its parser is larger than the pane. */
function useSecondEvaluation(): SecondEvaluation | undefined {
  const [again, setAgain] = useState<SecondEvaluation>();
  useEffect(() => {
    let gone = false;
    import(/* webpackChunkName: "second-evaluation" */ "../../../book/second-evaluation").then(
      ({ evaluateAgain: loaded }) => gone || setAgain(() => loaded),
      // If the code cannot be loaded, the lines stay without a second evaluation.
      () => undefined,
    );
    return () => void (gone = true);
  }, []);
  return again;
}

interface WorkingLineProps {
  readonly entry: Entry;
  readonly again: ReturnType<SecondEvaluation> | undefined;
  readonly className: string;
}

function WorkingLine({ entry, again, className }: WorkingLineProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  return (
    <div className={className}>
      <dt lang={languageOfLabels()}>{labelOnSheet(entry.name)}</dt>
      <dd className={styles.book} style={{ margin: 0 }}>
        {inWords(entry.said)}
        {again && (
          <Text block size={200} className={again.agrees ? shared.quiet : styles.result}>
            {again.agrees ? words.twiceAgrees : words.twiceDiffers(numberText(again.value))}
          </Text>
        )}
      </dd>
    </div>
  );
}
