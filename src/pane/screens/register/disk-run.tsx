/** Makes a deflection set from the loads of the current sheet, which hold a run on a metal disk. */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { inSheetStress } from "../../../record/reduced/inputs";
import { firstOf, lastOf } from "../../../reduction/numeric/lists";
import { convert } from "../../../reduction/units";
import { localDayNumber } from "../../../workbook/day-number";
import type { Looked } from "../../../workbook/port";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { readingText } from "../../text/number";
import { sentence } from "../../text/sentence";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { languageNamed } from "../../../specification/text/language";
import { setOfRun, type NewSet } from "./new-set";

const words = text.register.set;

const FIELDS = ["number", "frame", "disks", "paper", "by"] as const;
type Typed = Record<(typeof FIELDS)[number], string>;

export interface DiskRunProps {
  readonly reading: Reading;
  readonly register: Looked;
  readonly busy: boolean;
  readonly onWrite: (set: NewSet) => void;
}

export function DiskRun({ reading, register, busy, onWrite }: DiskRunProps) {
  const styles = useStyles();
  const { record } = reading;
  const language = languageNamed(record.sheetLanguage);
  const found = useMemo(() => setOfRun(record), [record]);
  const [typed, setTyped] = useState<Typed>({
    ...{ number: "", disks: "", paper: "" },
    frame: record.words.frame_number ?? "",
    by: record.words.tested_by ?? "",
  });
  if (!found.ok) return null;
  const rows = found.value;
  const shownStress = (kPa: number): string =>
    `${readingText(Number(inSheetStress(record, kPa).toPrecision(4)))} ${record.words.stress_unit ?? "kPa"}`;
  const length = record.words.length_unit ?? "mm";
  const most = Math.max(...rows.map(({ loading = 0 }) => loading));
  const deflection = `${readingText(Number(convert(most, "length", "mm", length).toPrecision(4)))} ${length}`;
  return (
    <Step title={words.heading}>
      <Text block>{words.purpose}</Text>
      <Text block>
        {words.found(rows.length, shownStress(firstOf(rows).stress), shownStress(lastOf(rows).stress), deflection)}
      </Text>
      {found.remarks.length > 0 && (
        <Text block>{found.remarks.map((remark) => sentence(inWords(remark))).join(". ")}</Text>
      )}
      {FIELDS.map((name) => (
        <Field key={name} label={words.fields[name]}>
          <Input
            className={styles.shrinks}
            value={typed[name]}
            onChange={(_, { value }) => setTyped((before) => ({ ...before, [name]: value }))}
          />
        </Field>
      ))}
      <div>
        <Button
          disabled={busy || typed.number.trim() === ""}
          onClick={() => onWrite({ ...typed, day: Math.floor(localDayNumber(new Date())), rows, language })}
        >
          {words.write(register.sheet)}
        </Button>
      </div>
    </Step>
  );
}
