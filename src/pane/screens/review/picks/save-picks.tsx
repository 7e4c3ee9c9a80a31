/** The unsaved changes, with fields for the reason and the initials. */
import { Button, Field, Input, makeStyles, Text, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { PickedThing } from "../../../../reduction/increment/constructions/picks";
import type { NamedColumns } from "../../../../workbook/port";
import { Notice } from "../../../ui/notice";
import { Step } from "../../../ui/parts";
import { useStyles as useSharedStyles } from "../../../ui/styles";
import {
  cellsOfChanges,
  dayNumber,
  freeRows,
  looksLikeFormula,
  type Change,
  type Draft,
  type PicksTable,
} from "./pick-changes";
import { changeText } from "./pick-words";
import type { Telling } from "../review-state";
import { SavedChanges } from "./saved-changes";
import { text } from "../../../text";

const words = text.review;

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  fields: { display: "grid", gridTemplateColumns: "minmax(0, 1fr)", gap: "8px" },
  initials: { maxWidth: "120px" },
});

/** Remembered until the pane is closed. */
let initialsOfSession = "";

/** The reason and the initials that a person gives for a change. */
interface Signed {
  readonly reason: string;
  readonly by: string;
}

/** The reason why the changes cannot be saved; undefined if they can. */
function whyNotSaved(
  { reason, by }: Signed,
  { table, changes, unusable }: Pick<ReviewSaveProps, "table" | "changes" | "unusable">,
): string | undefined {
  if (unusable) return words.unusable;
  if (reason === "" || by === "") return words.needsReason;
  if (looksLikeFormula(reason) || looksLikeFormula(by)) return words.formula;
  if (freeRows(table) < changes.length) return words.full(table.capacity);
  return undefined;
}

/** What the screen gives to the review of a load and to that of the compression curve. */
export interface ReviewedThing {
  /** The name of what is reviewed, such as "Load 3, 100 kPa". */
  readonly nameOf: (thing: PickedThing) => string;
  readonly sheet: string;
  readonly busy: boolean;
  readonly telling: Telling | undefined;
  readonly onDraft: (draft: Draft) => void;
  /**
   * Writes cells of the table of picks, then shows the sentence `done`. `saves` is true if the cells contain the
   * unsaved changes.
   */
  readonly onWrite: (cells: NamedColumns, done: string, saves: boolean) => void;
}

export interface ReviewSaveProps extends Omit<ReviewedThing, "onDraft"> {
  readonly table: PicksTable;
  readonly thing: PickedThing;
  readonly changes: readonly Change[];
  /** The rows of the table that count for the load or the curve. */
  readonly standing: ReadonlySet<number>;
  /** True if a pick contradicts the readings. */
  readonly unusable: boolean;
  /** Why this sheet cannot keep picks; undefined if it can. */
  readonly closed?: string;
  readonly onDiscard: () => void;
}

export function ReviewSave(props: ReviewSaveProps) {
  const { table, thing, changes, closed, sheet, busy, telling, onDiscard, onWrite } = props;
  const shared = useSharedStyles();
  const [warning, setWarning] = useState<string>();
  const isWhole = table.missing.length === 0;
  const hasTable = isWhole && closed === undefined;

  const save = (signed: Signed): boolean => {
    const fault = whyNotSaved(signed, props);
    setWarning(fault);
    if (fault !== undefined) return false;
    const cells = cellsOfChanges(table, thing, changes, { ...signed, when: dayNumber(new Date()) });
    onWrite(cells, words.savedTelling(changes.length, sheet), true);
    return true;
  };
  return (
    <>
      <Step title={words.saveTitle}>
        {!hasTable && <Notice intent="info">{isWhole ? closed : words.noTable(table.missing.join(", "))}</Notice>}
        {changes.length === 0 && (
          <Text block className={shared.quiet}>
            {words.nothingChanged}
          </Text>
        )}
        <Changes
          {...{ changes, hasTable, sheet, busy }}
          onSave={save}
          onDiscard={() => {
            setWarning(undefined);
            onDiscard();
          }}
        />
        {changes.length > 0 && warning !== undefined && <Notice intent="warning">{warning}</Notice>}
        {busy && <Text block>{words.saving}</Text>}
        {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
      </Step>
      {hasTable && <SavedChanges {...props} />}
    </>
  );
}

interface ChangesProps {
  readonly changes: readonly Change[];
  readonly hasTable: boolean;
  readonly sheet: string;
  readonly busy: boolean;
  /** Returns true if the changes were saved. */
  readonly onSave: (signed: Signed) => boolean;
  readonly onDiscard: () => void;
}

/**
 * The changes, and the fields for reason and initials. A typed text stays in its field while there is nothing to save.
 */
function Changes({ changes, hasTable, sheet, busy, onSave, onDiscard }: ChangesProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const [reason, setReason] = useState("");
  const [by, setBy] = useState(initialsOfSession);
  const save = (): void => {
    const signed = { reason: reason.trim(), by: by.trim() };
    if (!onSave(signed)) return;
    initialsOfSession = signed.by;
    setReason("");
  };
  if (changes.length === 0) return null;
  return (
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
        <Button disabledFocusable={busy} onClick={onDiscard}>
          {words.discard}
        </Button>
      </div>
    </>
  );
}
