/** Lists what a person should look at before the next load is put on. */
import { Text } from "@fluentui/react-components";
import { useMemo } from "react";
import { adviceOn } from "../../../checks/advice";
import type { TestRecord } from "../../../record/record";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.bench;

export function AdviceList({ record }: { readonly record: TestRecord }) {
  const styles = useStyles();
  const advice = useMemo(() => adviceOn(record), [record]);
  return (
    <Step title={words.advice}>
      {advice.length === 0 ? (
        <Text className={styles.quiet}>{words.noAdvice}</Text>
      ) : (
        <ul className={styles.list}>
          {advice.map(({ check, answer }) => (
            <li key={check.id}>
              <Text block weight="semibold">
                {inWords(check.question)}
              </Text>
              <Text block className={styles.breaks}>
                {sentence(inWords(answer.sentence))}
              </Text>
            </li>
          ))}
        </ul>
      )}
    </Step>
  );
}
