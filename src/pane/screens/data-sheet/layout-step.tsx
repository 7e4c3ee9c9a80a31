/**
 * For a firm's own layout: names the readings of several loads at once, writes missing formulas, and finds free cells
 * for other results.
 */
import { useState } from "react";
import { Button, Checkbox, Field, Input, Text } from "@fluentui/react-components";
import type { SeriesLie } from "../../../datasheet";
import { text } from "../../text";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.check;
const SERIES_LIE: readonly SeriesLie[] = ["columns", "rows"];

export interface LayoutStepProps {
  readonly isBusy: boolean;
  /** The number of formulas that can be written into blank cells. */
  readonly unwritten: number;
  readonly fromLoad: string;
  readonly isLoadWrong: boolean;
  readonly onFromLoad: (typed: string) => void;
  /** `isShared`: the first column or row has the times of all loads. */
  readonly onReadings: (lie: SeriesLie, isShared: boolean) => void;
  readonly onWrite: () => void;
  readonly onLayOut: () => void;
}

export function LayoutStep(props: LayoutStepProps) {
  const styles = useStyles();
  const { isBusy, unwritten, fromLoad, isLoadWrong, onFromLoad, onReadings, onWrite, onLayOut } = props;
  const [isShared, setShared] = useState(false);
  return (
    <>
      <Step title={words.readings}>
        <Text block id="columns-hint" className={styles.quiet}>
          {words.readingsHint}
        </Text>
        <Checkbox
          label={words.sharedTimes}
          checked={isShared}
          aria-describedby={isShared ? "shared-hint" : undefined}
          onChange={(_, { checked }) => setShared(checked === true)}
        />
        {isShared && (
          <Text block id="shared-hint" className={styles.quiet}>
            {words.sharedTimesHint}
          </Text>
        )}
        <div className={styles.row}>
          <Field
            label={words.fromLoad}
            validationState={isLoadWrong ? "error" : "none"}
            validationMessage={isLoadWrong ? words.fromLoadWrong : undefined}
          >
            <Input
              inputMode="numeric"
              value={fromLoad}
              input={{ size: 4 }}
              onChange={(_, { value }) => onFromLoad(value)}
            />
          </Field>
          {SERIES_LIE.map((lie) => (
            <Button
              key={lie}
              disabledFocusable={isBusy || isLoadWrong}
              aria-describedby="columns-hint"
              onClick={() => !isLoadWrong && onReadings(lie, isShared)}
            >
              {words.nameReadings[lie]}
            </Button>
          ))}
        </div>
      </Step>
      <Step title={words.layout}>
        <Text block id="layout-hint" className={styles.quiet}>
          {words.layoutHint}
        </Text>
        {unwritten > 0 && (
          <div>
            <Button disabledFocusable={isBusy} aria-describedby="layout-hint" onClick={onWrite}>
              {words.writeMissing(unwritten)}
            </Button>
          </div>
        )}
        <div>
          <Button disabledFocusable={isBusy} aria-describedby="workings-hint" onClick={onLayOut}>
            {words.workings}
          </Button>
        </div>
        <Text block id="workings-hint" className={styles.quiet}>
          {words.workingsHint}
        </Text>
      </Step>
    </>
  );
}
