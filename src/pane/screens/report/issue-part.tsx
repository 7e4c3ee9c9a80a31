/** Locks a report as an issue, and compares the data sheet with an earlier issue. */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useState } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { FaultList, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { calledInIssue, comparedWith, saidOfChange, type Comparison, type IssueOf } from "./issues";

const words = text.report;

export interface IssuePartProps {
  readonly port: WorkbookPort;
  readonly sheet: string;
  readonly issues: readonly IssueOf[];
  readonly isBusy: boolean;
  /** Makes a report and locks it. */
  readonly onLock: (by: string) => void;
}

type Compared = ({ readonly issue: IssueOf } & Comparison) | { readonly issue: IssueOf; readonly failure: string };

export function IssuePart({ port, sheet, issues, isBusy, onLock }: IssuePartProps) {
  const styles = useStyles();
  const [by, setBy] = useState("");
  const [isAsked, setAsked] = useState(false);
  const [compared, setCompared] = useState<Compared>();
  const number = Math.max(0, ...issues.map((issue) => issue.number)) + 1;

  const lock = (): void => {
    const isMissing = by.trim() === "";
    setAsked(isMissing);
    if (!isMissing) onLock(by.trim());
  };
  const compare = async (issue: IssueOf): Promise<void> => {
    try {
      setCompared({ issue, ...(await comparedWith(port, sheet, issue)) });
    } catch (error) {
      setCompared({ issue, failure: sentenceOf(error) });
    }
  };

  return (
    <Step title={words.issues}>
      <Text block className={styles.quiet}>
        {words.issuesHint}
      </Text>
      <Field
        label={words.lockedBy}
        validationState={isAsked ? "error" : "none"}
        validationMessage={isAsked ? words.needsInitials : undefined}
      >
        <Input value={by} onChange={(_, { value }) => setBy(value)} />
      </Field>
      <div>
        <Button disabledFocusable={isBusy} onClick={lock}>
          {words.lock(number, sheet)}
        </Button>
      </div>
      {issues.length > 0 && (
        <ul className={styles.list}>
          {issues.map((issue) => (
            <li key={issue.report}>
              <Text block>{words.issue(issue.number, issue.report, issue.day, issue.by)}</Text>
              <Button onClick={() => void compare(issue)}>{words.compare(issue.number, issue.report)}</Button>
            </li>
          ))}
        </ul>
      )}
      {compared && <Told compared={compared} />}
    </Step>
  );
}

function Told({ compared }: { readonly compared: Compared }) {
  if ("failure" in compared) return <Notice intent="error">{compared.failure}</Notice>;
  const { issue, changes, lock, system } = compared;
  return (
    <>
      {lock === "changed" && <Notice intent="error">{words.tampered(issue.number, issue.report)}</Notice>}
      {lock === "unknown" && <Notice intent="info">{words.withoutHash(issue.number)}</Notice>}
      {changes.length === 0 ? (
        <Notice intent="success">{words.unchanged(issue.number)}</Notice>
      ) : (
        <Notice intent="warning">{words.changes(changes.length, issue.number)}</Notice>
      )}
      {changes.length > 0 && (
        <FaultList heading={words.changesList} level="h3">
          {changes.map((one) => {
            const { from, to } = saidOfChange(one, system);
            return <li key={`${one.name} ${one.row}`}>{words.change(calledInIssue(one), one.cell, from, to)}</li>;
          })}
        </FaultList>
      )}
    </>
  );
}
