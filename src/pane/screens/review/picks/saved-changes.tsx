/** The changes of a load or of the curve in the table of the sheet, and a button that undoes the last change. */
import { Button, makeStyles, Text, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { RecordedPick } from "../../../../record/picks";
import { Notice } from "../../../ui/notice";
import { Step } from "../../../ui/parts";
import { useStyles as useSharedStyles } from "../../../ui/styles";
import { cellsWithout, lastChange } from "./pick-changes";
import { changeText, detailsOf } from "./pick-words";
import type { ReviewSaveProps } from "./save-picks";
import { text } from "../../../text";

const words = text.review;

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  past: { color: tokens.colorNeutralForeground2, textDecorationLine: "line-through" },
});

type SavedChangesProps = Pick<
  ReviewSaveProps,
  "table" | "thing" | "standing" | "nameOf" | "sheet" | "busy" | "onWrite"
>;

export function SavedChanges({ table, thing, standing, ...rest }: SavedChangesProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const ofLoad = table.rows.filter((row) => row.load === thing);
  /** An "automatic" row never counts; it is superseded only if a later row of its pick follows. */
  const isPast = (row: RecordedPick): boolean =>
    !standing.has(row.row) && ofLoad.some((later) => later.row > row.row && later.of === row.of);
  return (
    <Step title={words.history}>
      {ofLoad.length === 0 ? (
        <Text block className={shared.quiet}>
          {words.noHistory}
        </Text>
      ) : (
        <ul className={styles.list}>
          {ofLoad.map((row) => (
            <li key={row.row}>
              <Text block className={isPast(row) ? styles.past : undefined}>
                {changeText(row)}
              </Text>
              <Text size={200} block className={shared.quiet}>
                {detailsOf(row)}
                {isPast(row) && ` (${words.superseded})`}
              </Text>
            </li>
          ))}
        </ul>
      )}
      <TakeBack rows={table.rows} {...rest} />
    </Step>
  );
}

interface TakeBackProps extends Pick<ReviewSaveProps, "nameOf" | "sheet" | "busy" | "onWrite"> {
  readonly rows: readonly RecordedPick[];
}

/** Undoes the last change of the table, of any load, after the person confirms. */
function TakeBack({ rows, nameOf, sheet, busy, onWrite }: TakeBackProps) {
  const shared = useSharedStyles();
  const [asking, setAsking] = useState(false);
  const latest = lastChange(rows);
  const [first, last] = [latest.at(0), latest.at(-1)];
  if (!first || !last) return null;
  if (!asking)
    return (
      <div>
        <Button disabledFocusable={busy} onClick={() => setAsking(true)}>
          {words.undo}
        </Button>
      </div>
    );
  const takeBack = (): void => {
    setAsking(false);
    onWrite(cellsWithout(first.row, last.row), words.undone(first.row, last.row, sheet), false);
  };
  return (
    <>
      <Notice intent="warning">
        {words.undoAsk(
          last.load === undefined ? words.unknownLoad : nameOf(last.load),
          latest.map(changeText).join("; "),
          detailsOf(last),
          first.row,
          last.row,
        )}
      </Notice>
      <div className={shared.row}>
        <Button appearance="primary" disabledFocusable={busy} onClick={takeBack}>
          {words.undoYes}
        </Button>
        <Button onClick={() => setAsking(false)}>{words.undoNo}</Button>
      </div>
    </>
  );
}
