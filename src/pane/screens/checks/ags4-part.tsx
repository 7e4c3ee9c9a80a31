/**
 * Makes the AGS4 file of a data sheet. It asks for what the sheet does not contain, and says what the file cannot
 * contain.
 */
import { Button, Text } from "@fluentui/react-components";
import { useState } from "react";
import { toAgs4, type Ags4File, type Transmission } from "../../../exchange/ags4";
import { isSampleType } from "../../../exchange/ags4/dictionary";
import type { TestRecord } from "../../../record/record";
import type { Outcome } from "../../../reduction/outcome";
import { Notice } from "../../ui/notice";
import { download } from "../../ui/save-file";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { TextToCopy } from "../../ui/text-to-copy";
import { firstTransmission, TransmissionFields } from "./transmission-fields";

const words = text.checks.ags;

/** The file name, such as "BH-3 2.ags"; it contains only characters that every system allows. */
const nameOf = ({ words: w }: TestRecord): string => {
  const parts = [w.job_number, w.boring, w.sample, w.specimen].filter(Boolean).join(" ");
  return `${parts.replace(/[^A-Za-z0-9 ._-]+/g, "-").trim() || "consolidation"}.ags`;
};

export interface Ags4PartProps {
  readonly record: TestRecord;
  /** True if the host lets the pane save a file. */
  readonly saves: boolean;
}

export function Ags4Part({ record, saves }: Ags4PartProps) {
  const styles = useStyles();
  const onSheet = record.words.sample_type;
  const known = onSheet !== undefined && isSampleType(onSheet.toUpperCase());
  const [said, setSaid] = useState(() => firstTransmission(record.words.laboratory));
  const [made, setMade] = useState<{ readonly name: string; readonly file: Outcome<Ags4File> }>();
  const say = (part: Partial<Transmission>): void => {
    setSaid((before) => ({ ...before, ...part }));
    setMade(undefined);
  };

  const make = (): void => {
    const file = toAgs4(record, said);
    const name = nameOf(record);
    if (file.ok && saves) download(new Blob([file.value.text], { type: "text/plain;charset=us-ascii" }), name);
    setMade({ name, file });
  };

  return (
    <Step title={words.heading}>
      <Text className={styles.quiet}>{words.purpose}</Text>
      <TransmissionFields said={said} say={say} unchosen={known ? words.fromSheet(onSheet) : words.notChosen} />
      <div>
        <Button onClick={make}>{saves ? words.make : words.makeText}</Button>
      </div>
      {made && <Made {...made} saves={saves} />}
    </Step>
  );
}

function Made({ name, file, saves }: { name: string; file: Outcome<Ags4File>; saves: boolean }) {
  const styles = useStyles();
  if (!file.ok) return <Notice intent="error">{sentence(inWords(file.reason))}</Notice>;
  const { leftOut } = file.value;
  return (
    <>
      <Notice intent="info">{saves ? words.handedOver(name) : words.copyInto(name)}</Notice>
      <TextToCopy label={words.fileText} content={file.value.text} />
      {file.remarks.length > 0 && (
        <Text className={styles.breaks}>{`${words.respelt} ${file.remarks.map(inWords).join("; ")}`}</Text>
      )}
      <Text as="h3" weight="semibold" block className={styles.title}>
        {leftOut.length ? words.leftOut : words.nothingLeftOut}
      </Text>
      {leftOut.length > 0 && (
        <ul className={styles.faults} tabIndex={0} aria-label={words.leftOut} role="list">
          {leftOut.map(inWords).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
    </>
  );
}
