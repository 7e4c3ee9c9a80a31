/** Shows the next work on the current test, and the parts of its sheet with what is missing in each. */
import { Button, makeStyles, Text, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { runChecks } from "../../../checks";
import { CONTENT_NAMES, integrity } from "../../../checks/integrity";
import { headOf } from "../../../record/head-of-sheet";
import { isOpen } from "../../../checks/answers";
import type { WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import type { Want } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { besideOf, BESIDE } from "../checks/workbook-answers";
import { RecordFrame } from "../record-frame";
import { REPORTS, reportsOf } from "../report/make-report";
import { useChangedIssue } from "../report/readings-changed";
import { PartsList } from "./parts-list";
import { partsOf } from "./parts";
import { placesOf } from "./places";
import { StageList, type ScreenOfStage } from "./stage-list";
import { nextOf, stagesOf, type ChangedSince, type Stage } from "./stages";

const words = text.next;

/** The formulas, answers, limits and reports of the test, besides its record. */
const NEXT: Want = { contents: CONTENT_NAMES, beside: [...BESIDE, REPORTS] };

const useStyles = makeStyles({
  done: { color: tokens.colorNeutralForeground2 },
});

function stagesOfReading(reading: Reading, changedSince: ChangedSince | undefined): Stage[] {
  const { sheet, record, beside } = reading;
  const { limits, answers, others } = besideOf(sheet, beside);
  const open = runChecks(record, limits.thresholds, others).filter((one) => isOpen(answers, sheet, one));
  const findings = integrity(reading);
  return stagesOf({ record, head: headOf(reading), open, reports: reportsOf(sheet, beside), findings, changedSince });
}

export interface NextScreenProps {
  readonly port: WorkbookPort;
  /** Shows another screen of the pane. */
  readonly onOpen: (screen: ScreenOfStage | "sheet") => void;
}

export function NextScreen({ port, onOpen }: NextScreenProps) {
  const followed = useTest(NEXT);
  const { reading, tests } = followed;
  const [failure, setFailure] = useState<string>();
  const goTo = (address: string): void => {
    setFailure(undefined);
    if (reading) port.show(reading.sheet, address).catch((reason: unknown) => setFailure(sentenceOf(reason)));
  };
  return (
    <>
      <RecordFrame words={words} followed={followed} failure={failure}>
        {reading && <Next reading={reading} goTo={goTo} onOpen={onOpen} />}
      </RecordFrame>
      {!reading && tests?.length === 0 && (
        <Button appearance="primary" style={{ marginTop: "12px" }} onClick={() => onOpen("sheet")}>
          {words.openSheet}
        </Button>
      )}
    </>
  );
}

interface NextProps extends Pick<NextScreenProps, "onOpen"> {
  readonly reading: Reading;
  readonly goTo: (address: string) => void;
}

function Next({ reading, goTo, onOpen }: NextProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { record, names, values } = reading;
  const changed = useChangedIssue(reading);
  const stages = useMemo(() => stagesOfReading(reading, changed), [reading, changed]);
  const placeOf = useMemo(() => placesOf(names, values), [names, values]);
  const { parts, count } = useMemo(() => partsOf(record, names), [record, names]);
  const next = nextOf(stages);
  return (
    <>
      {!next && <Text className={styles.done}>{words.allDone}</Text>}
      <StageList {...{ stages, next, placeOf, goTo }} onOpen={onOpen} />
      <Step title={words.partsHeading}>
        {count && <Text className={shared.quiet}>{words.partsCount(count.missing, count.asked)}</Text>}
        <PartsList {...{ parts, placeOf, goTo }} />
      </Step>
    </>
  );
}
