/**
 * Shows the schedule of a load: each time with its clock time, its reading, and whether it was read, is next or is
 * late.
 */
import { Link, mergeClasses } from "@fluentui/react-components";
import { readingText } from "../../text/number";
import { text } from "../../text";
import { useStyles } from "../../ui/styles";
import { momentText, timeText } from "./clock-words";
import type { Due } from "./schedule";

const words = text.bench;

export interface ScheduleTableProps {
  readonly due: readonly Due[];
  readonly now: number;
  /** Called if a person wants to enter a reading that was taken earlier into this row. */
  readonly onChoose: (row: number) => void;
}

export function ScheduleTable({ due, now, onChoose }: ScheduleTableProps) {
  const styles = useStyles();
  const isClocked = due.some(({ at }) => at !== undefined);
  return (
    <div className={styles.scroll} tabIndex={0} role="region" aria-label={words.scheduleTable}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{words.columns.time}</th>
            {isClocked && <th scope="col">{words.columns.at}</th>}
            <th scope="col">{words.columns.reading}</th>
            <th scope="col">{words.columns.state}</th>
          </tr>
        </thead>
        <tbody>
          {due.map(({ row, time, at, reading, state }) => (
            <tr key={row} className={mergeClasses((state === "next" || state === "late") && "chosen")}>
              <th scope="row">{timeText(time)}</th>
              {isClocked && <td>{at === undefined ? "" : momentText(at, now).replace(" ", "\n")}</td>}
              <td>
                {reading === undefined ? (
                  <Link as="button" inline aria-label={words.enterAt(timeText(time))} onClick={() => onChoose(row)}>
                    {words.enter}
                  </Link>
                ) : (
                  readingText(reading)
                )}
              </td>
              <td>{words.states[state]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
