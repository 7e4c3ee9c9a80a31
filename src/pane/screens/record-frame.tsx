/**
 * The frame of all screens that work on the current test: heading, error message, and advice if there is no data sheet.
 */
import { Button, Spinner, Text } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { Notice } from "../ui/notice";
import { ScreenTitle } from "../ui/parts";
import { useStyles } from "../ui/styles";
import type { useTest } from "../live/use-test";

export interface RecordFrameProps {
  readonly words: {
    readonly heading: string;
    readonly purpose?: string;
    readonly again: string;
    readonly emptyTitle: string;
    readonly empty: string;
    readonly reading: string;
  };
  readonly followed: ReturnType<typeof useTest>;
  /** An error of the screen itself. */
  readonly failure?: string;
  /** The content of the screen, shown once there is a record. */
  readonly children: ReactNode;
}

export function RecordFrame({ words, followed, failure, children }: RecordFrameProps) {
  const styles = useStyles();
  const { tests, reading, error, again } = followed;
  return (
    <div className={styles.column}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      {words.purpose !== undefined && <Text block>{words.purpose}</Text>}
      {error !== undefined && (
        <>
          <Notice intent="error">{error}</Notice>
          <div>
            <Button onClick={() => void again()}>{words.again}</Button>
          </div>
        </>
      )}
      {failure !== undefined && <Notice intent="error">{failure}</Notice>}
      {reading ? (
        children
      ) : tests?.length === 0 ? (
        <Notice intent="info" title={words.emptyTitle}>
          {words.empty}
        </Notice>
      ) : (
        error === undefined && <Spinner label={words.reading} labelPosition="after" size="tiny" />
      )}
    </div>
  );
}
