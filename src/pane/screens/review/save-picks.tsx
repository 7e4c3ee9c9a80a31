/** What is changed and not saved, with the reason and the initials it needs; what is saved, and the way back. */
import { Button, Field, Input, makeStyles, Text, Textarea, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { RecordedPick } from "../../../specification/pick-table";
import type { NamedColumns } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { shown } from "../../text/digits";
import {
  cellsOfChanges,
  cellsWithout,
  dayNumber,
  freeRows,
  lastChange,
  looksLikeFormula,
  type Change,
  type PicksTable,
} from "./pick-changes";
import { text } from "../../text";

const words = text.review;

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  fields: { display: "grid", gridTemplateColumns: "minmax(0, 1fr)", gap: "8px" },
  initials: { maxWidth: "120px" },
  past: { color: tokens.colorNeutralForeground2, textDecorationLine: "line-through" },
});

/** Remembered until the pane is closed. */
let initialsOfSession = "";

const nameOfPick = (of: string | undefined): string => words.picks[of as keyof typeof words.picks] ?? of ?? "?";

/** A value of a pick; the words that stand in the sheet are said in the pane's language. */
const said = (value: number | string | undefined): string =>
  typeof value === "number" ? shown(value) : (words.values[value as keyof typeof words.values] ?? value ?? "–");

const changeText = ({ of, before, after }: Pick<RecordedPick, "of" | "before" | "after">): string =>
  words.change(nameOfPick(of), said(before), said(after));

const detailsOf = ({ reason, by, when }: RecordedPick): string =>
  words.entry(reason ?? words.noReason, by ?? words.noInitials, when ?? "");

/** What came of the last writing. */
export interface Telling {
  readonly intent: "success" | "warning" | "error";
  readonly sentence: string;
}

interface ReviewSaveProps {
  readonly table: PicksTable;
  readonly load: number;
  readonly changes: readonly Change[];
  /** Rows of the table that count for the load. */
  readonly standing: ReadonlySet<number>;
  /** A pick contradicts the readings. */
  readonly unusable: boolean;
  readonly nameOf: (load: number) => string;
  readonly sheet: string;
  readonly busy: boolean;
  readonly telling: Telling | undefined;
  readonly onDiscard: () => void;
  readonly onWrite: (cells: NamedColumns, done: string, saves: boolean) => void;
}

export function ReviewSave(props: ReviewSaveProps) {
  const { table, load, changes, standing, unusable, nameOf, sheet, busy, telling, onDiscard, onWrite } = props;
  const styles = useStyles();
  const shared = useSharedStyles();
  const [reason, setReason] = useState("");
  const [by, setBy] = useState(initialsOfSession);
  const [warning, setWarning] = useState<string>();
  const [asking, setAsking] = useState(false);

  const save = (): void => {
    const [why, who] = [reason.trim(), by.trim()];
    if (unusable) return setWarning(words.unusable);
    if (why === "" || who === "") return setWarning(words.needsReason);
    if (looksLikeFormula(why) || looksLikeFormula(who)) return setWarning(words.formula);
    if (freeRows(table) < changes.length) return setWarning(words.full(table.capacity));
    setWarning(undefined);
    initialsOfSession = who;
    const cells = cellsOfChanges(table, load, changes, { reason: why, by: who, when: dayNumber(new Date()) });
    onWrite(cells, words.savedTelling(changes.length, sheet), true);
    setReason("");
  };

  const latest = lastChange(table.rows);
  const [first, last] = [latest[0], latest[latest.length - 1]];
  const ofLoad = table.rows.filter((row) => row.load === load);
  const hasTable = table.missing.length === 0;

  return (
    <>
      <Step title={words.saveTitle}>
        {!hasTable && <Notice intent="info">{words.noTable(table.missing.join(", "))}</Notice>}
        {changes.length === 0 ? (
          <Text block className={shared.quiet}>
            {words.nothingChanged}
          </Text>
        ) : (
          <>
            <ul className={styles.list}>
              {changes.map((change) => (
                <li key={change.of}>
                  <Text>{changeText(change)}</Text>
                </li>
              ))}
            </ul>
            {hasTable && (
              <div className={styles.fields}>
                <Field label={words.reason} hint={words.reasonHint} required>
                  <Textarea value={reason} onChange={(_, { value }) => setReason(value)} />
                </Field>
                <Field label={words.initials} required className={styles.initials}>
                  <Input value={by} onChange={(_, { value }) => setBy(value)} />
                </Field>
              </div>
            )}
            <div className={shared.row}>
              {hasTable && (
                <Button appearance="primary" disabledFocusable={busy} onClick={save}>
                  {words.save(sheet)}
                </Button>
              )}
              <Button
                disabledFocusable={busy}
                onClick={() => {
                  setWarning(undefined);
                  onDiscard();
                }}
              >
                {words.discard}
              </Button>
            </div>
          </>
        )}
        {changes.length > 0 && warning !== undefined && <Notice intent="warning">{warning}</Notice>}
        {busy && <Text block>{words.saving}</Text>}
        {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
      </Step>

      {hasTable && (
        <Step title={words.history}>
          {ofLoad.length === 0 ? (
            <Text block className={shared.quiet}>
              {words.noHistory}
            </Text>
          ) : (
            <ul className={styles.list}>
              {ofLoad.map((row) => {
                // "automatic" stands for nothing more, but is not past.
                const past =
                  !standing.has(row.row) && ofLoad.some((later) => later.row > row.row && later.of === row.of);
                return (
                  <li key={row.row}>
                    <Text block className={past ? styles.past : undefined}>
                      {changeText(row)}
                    </Text>
                    <Text size={200} block className={shared.quiet}>
                      {detailsOf(row)}
                      {past && ` (${words.superseded})`}
                    </Text>
                  </li>
                );
              })}
            </ul>
          )}
          {last &&
            (asking ? (
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
                  <Button
                    appearance="primary"
                    disabledFocusable={busy}
                    onClick={() => {
                      setAsking(false);
                      onWrite(cellsWithout(first.row, last.row), words.undone(first.row, last.row, sheet), false);
                    }}
                  >
                    {words.undoYes}
                  </Button>
                  <Button onClick={() => setAsking(false)}>{words.undoNo}</Button>
                </div>
              </>
            ) : (
              <div>
                <Button disabledFocusable={busy} onClick={() => setAsking(true)}>
                  {words.undo}
                </Button>
              </div>
            ))}
        </Step>
      )}
    </>
  );
}
