/** The lines of the file that were left out or changed, each with its fault. */
import { Text } from "@fluentui/react-components";
import { KEPT_KINDS, type Fault } from "../../../exchange/logger/rows";
import { text } from "../../text";
import { useStyles } from "../../ui/styles";

const words = text.readings;

const MOST_SHOWN = 200;

/** The fault of a line, in the language of the pane or of the cells. */
export const faultWords = ({ kind, cell }: Fault, { faults } = words): string =>
  cell ? `“${cell}”: ${faults[kind]}` : faults[kind];

export function Faults({ faults }: { faults: readonly Fault[] }) {
  const styles = useStyles();
  if (faults.length === 0) return <Text className={styles.quiet}>{words.noFaults}</Text>;
  const used = faults.filter(({ kind }) => KEPT_KINDS.includes(kind)).length;
  return (
    <details>
      <summary>
        <Text>{words.faultsTitle(faults.length - used, used)}</Text>
      </summary>
      <ul className={styles.faults} tabIndex={0} aria-label={words.faultsTitle(faults.length - used, used)}>
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.line} ${fault.kind}`}>
            <Text size={200}>{words.fault(fault.line, faultWords(fault))}</Text>
          </li>
        ))}
        {faults.length > MOST_SHOWN && (
          <li>
            <Text size={200}>{words.moreFaults(faults.length - MOST_SHOWN)}</Text>
          </li>
        )}
      </ul>
    </details>
  );
}
