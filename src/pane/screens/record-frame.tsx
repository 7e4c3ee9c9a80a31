/** What screens that work on a data sheet have in common: heading, failure, choice of the sheet, and what to do without one. */
import { Button, Spinner, Text } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { Notice } from "../ui/notice";
import { useStyles } from "../ui/styles";
import { SheetChooser } from "../ui/sheet-chooser";
import type { FollowedRecord } from "../live/use-record";

export interface RecordFrameProps {
  readonly words: {
    readonly heading: string;
    readonly purpose?: string;
    readonly again: string;
    readonly emptyTitle: string;
    readonly empty: string;
    readonly reading: string;
  };
  readonly followed: FollowedRecord;
  /** What did not succeed on the screen itself. */
  readonly failure?: string;
  /** The screen's own part, once there is a record. */
  readonly children: ReactNode;
}

export function RecordFrame({ words, followed, failure, children }: RecordFrameProps) {
  const styles = useStyles();
  const { sheets, sheet, record, error, choose, again } = followed;
  return (
    <div className={styles.column}>
      <Text as="h1" size={400} weight="semibold" block className={styles.title}>
        {words.heading}
      </Text>
      {words.purpose !== undefined && <Text block>{words.purpose}</Text>}
      {error !== undefined && (
        <>
          <Notice intent="error">{error}</Notice>
          <div>
            <Button onClick={again}>{words.again}</Button>
          </div>
        </>
      )}
      {failure !== undefined && <Notice intent="error">{failure}</Notice>}
      <SheetChooser sheets={sheets} chosen={sheet} onChoose={choose} />
      {record ? (
        children
      ) : sheets?.length === 0 ? (
        <Notice intent="info" title={words.emptyTitle}>
          {words.empty}
        </Notice>
      ) : (
        error === undefined && <Spinner label={words.reading} labelPosition="after" size="tiny" />
      )}
    </div>
  );
}
