/** Inserts the sheet to print and fill in by hand, for the load on the specimen or for all loads. */
import { Button, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useState } from "react";
import { readingSheet } from "../../../datasheet/reading-sheet";
import type { WorkbookPort } from "../../../workbook/port";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.bench;
const PAPERS = ["A4", "Letter"] as const;

interface Told {
  readonly intent: "success" | "error" | "info";
  readonly sentence: string;
}

export interface PrintedReadingsProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
  /** The number of the load on the specimen. */
  readonly load: number;
}

export function PrintedReadings({ port, reading, load }: PrintedReadingsProps) {
  const styles = useStyles();
  const { record, values, sheet } = reading;
  const [paper, setPaper] = useState<(typeof PAPERS)[number]>(record.words.length_unit === "in" ? "Letter" : "A4");
  const [told, setTold] = useState<Told>();
  const [busy, setBusy] = useState(false);
  const insert = async (loads?: readonly number[]): Promise<void> => {
    const plan = readingSheet(record, values, { loads, paper, sheet });
    if (!plan) return setTold({ intent: "info", sentence: words.nothingToPrint });
    setBusy(true);
    try {
      setTold({ intent: "success", sentence: words.inserted(await port.insertSheet(plan)) });
    } catch (failure) {
      setTold({ intent: "error", sentence: sentenceOf(failure) });
    }
    setBusy(false);
  };
  return (
    <Step title={words.printed}>
      <Text>{words.printedHint}</Text>
      <Field label={words.paper}>
        <RadioGroup
          layout="horizontal"
          value={paper}
          onChange={(_, { value }) => setPaper(PAPERS.find((one) => one === value) ?? "A4")}
        >
          {PAPERS.map((one) => (
            <Radio key={one} value={one} label={one} />
          ))}
        </RadioGroup>
      </Field>
      <div className={styles.row}>
        <Button disabled={busy} onClick={() => void insert([load])}>
          {words.printLoad(load)}
        </Button>
        <Button disabled={busy} onClick={() => void insert()}>
          {words.printAll}
        </Button>
      </div>
      {told && <Notice intent={told.intent}>{told.sentence}</Notice>}
    </Step>
  );
}
