/** Looks whether the sheet in front is a whole data sheet, and helps to mend one: names, formulas, protection, a firm's own file. */
import { Button, Field, Select, Text } from "@fluentui/react-components";
import { useCallback, useState } from "react";
import {
  boxAddress,
  boxOf,
  cellsToName,
  checkSheet,
  CHECKED_NAMES,
  FIELDS,
  type Finding,
  type SheetCheck,
} from "../../../datasheet";
import { WorkbookError, type WorkbookPort } from "../../../workbook/port";
import { FileButton } from "../../ui/file-button";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";

const words = text.check;

interface Looked {
  readonly sheet: string;
  readonly check: SheetCheck;
  readonly isProtected: boolean;
}

async function look(port: WorkbookPort, sheet: string): Promise<Looked> {
  const names = await port.listNames(sheet);
  const values = await port.readNames(sheet, CHECKED_NAMES);
  return { sheet, check: checkSheet(names, values), isProtected: await port.isProtected(sheet) };
}

type Telling = { readonly intent: "success" | "warning" | "error" | "info"; readonly sentence: string };

export function SheetCheckPart({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const [looked, setLooked] = useState<Looked>();
  const [busy, setBusy] = useState(false);
  const [telling, setTelling] = useState<Telling>();
  const [name, setName] = useState(FIELDS[0].name);
  /** The name that stands somewhere already, and may be moved on a second word. */
  const [taken, setTaken] = useState<string>();

  /** Does one thing at a time, tells what came of it, and looks at the sheet again. */
  const carryOut = useCallback(
    async (work: () => Promise<{ sheet?: string; telling?: Telling }>, doing: string): Promise<void> => {
      if (busy) return;
      setBusy(true);
      setTelling({ intent: "info", sentence: doing });
      setTaken(undefined);
      try {
        const done = await work();
        const sheet = done.sheet ?? (await port.activeSheet());
        setLooked(await look(port, sheet));
        setTelling(done.telling);
      } catch (error) {
        setTelling({ intent: "error", sentence: sentenceOf(error) });
      }
      setBusy(false);
    },
    [port, busy],
  );

  const reenter = () =>
    carryOut(async () => {
      const sheet = await port.activeSheet();
      const { found, left } = await port.reenterFormulas(sheet);
      return {
        sheet,
        telling: {
          intent: left > 0 ? "warning" : "success",
          sentence: `${words.of(sheet)}: ${words.reentered(found, left)}`,
        },
      };
    }, words.looking);

  const protect = (on: boolean) =>
    carryOut(async () => {
      const sheet = await port.activeSheet();
      await port.protect(sheet, on);
      return { sheet, telling: { intent: "success", sentence: on ? words.protected(sheet) : words.lifted(sheet) } };
    }, words.looking);

  const insert = (file: File) =>
    carryOut(async () => {
      const { sheets, remarks } = await port.insertFile(new Uint8Array(await file.arrayBuffer()));
      let sheet = sheets[0];
      for (const one of sheets) if ((await look(port, one)).check.isDataSheet) sheet = one;
      const sentence = [words.inserted(sheets), ...remarks].join(" ");
      return { sheet, telling: { intent: remarks.length > 0 ? "warning" : "success", sentence } };
    }, words.inserting);

  const attach = (replace: boolean) =>
    carryOut(async () => {
      const { sheet, address, values } = await port.selection();
      const box = boxOf(address);
      if (!box) throw new WorkbookError(words.oneBlock);
      const cells = cellsToName(name, box, values.flat().filter((value) => value !== "").length);
      if ("sentence" in cells) throw new WorkbookError(cells.sentence);
      const place = boxAddress(cells.box).replaceAll("$", "");
      const present = (await port.listNames(sheet)).some(
        (one) => one.name.toLowerCase() === name.toLowerCase() && one.place !== "lost" && one.scope === "sheet",
      );
      try {
        await port.nameCells(sheet, name, place, replace);
      } catch (error) {
        if (present && !replace) setTaken(name);
        throw error;
      }
      return { sheet, telling: { intent: "success", sentence: words.attached(name, place, sheet) } };
    }, words.looking);

  const missing = new Set(looked?.check.findings.flatMap(({ attach: names }) => names ?? []));
  return (
    <section aria-labelledby="sheet-check" className={styles.column}>
      <Text as="h2" id="sheet-check" size={400} weight="semibold" block className={styles.title}>
        {words.heading}
      </Text>
      <Text block>{words.purpose}</Text>
      <div>
        <Button disabledFocusable={busy} onClick={() => carryOut(async () => ({}), words.looking)}>
          {words.look}
        </Button>
      </div>
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
      {looked && <Findings looked={looked} />}

      <Step title={words.own}>
        <Text block id="own-hint" className={styles.quiet}>
          {words.ownHint}
        </Text>
        <FileButton
          label={words.insert}
          accept=".xlsx,.xltx"
          isBusy={busy}
          describedBy="own-hint"
          onFile={(file) => void insert(file)}
        />
      </Step>

      <Step title={words.attach}>
        <Text block className={styles.quiet}>
          {words.attachHint}
        </Text>
        <div className={styles.wide}>
          <Field label={words.name}>
            <Select value={name} onChange={(_, { value }) => (setName(value), setTaken(undefined))}>
              <Options label={words.missingGroup} of={({ name: one }) => missing.has(one)} />
              <Options label={words.presentGroup} of={({ name: one }) => !missing.has(one)} />
            </Select>
          </Field>
        </div>
        <div className={styles.row}>
          <Button disabledFocusable={busy} onClick={() => attach(false)}>
            {words.give}
          </Button>
          {taken && (
            <Button disabledFocusable={busy} onClick={() => attach(true)}>
              {words.move(taken)}
            </Button>
          )}
        </div>
      </Step>

      <Step title={words.formulas}>
        <div>
          <Button disabledFocusable={busy} aria-describedby="reenter-hint" onClick={reenter}>
            {words.reenter}
          </Button>
        </div>
        <Text block id="reenter-hint" className={styles.quiet}>
          {words.reenterHint}
        </Text>
        {looked && (
          <div>
            <Button
              disabledFocusable={busy}
              aria-describedby="protect-hint"
              onClick={() => protect(!looked.isProtected)}
            >
              {looked.isProtected ? words.lift : words.protect}
            </Button>
          </div>
        )}
        <Text block id="protect-hint" className={styles.quiet}>
          {words.protectHint}
        </Text>
      </Step>
    </section>
  );
}

/** Names of the data sheet under a heading of their own, none where there is none. */
function Options({ label, of }: { label: string; of: (field: (typeof FIELDS)[number]) => boolean }) {
  const fields = FIELDS.filter(of);
  if (fields.length === 0) return null;
  return (
    <optgroup label={label}>
      {fields.map((field) => (
        <option key={field.name} value={field.name}>
          {`${field.label.trim()} (${field.name})`}
        </option>
      ))}
    </optgroup>
  );
}

function Findings({ looked: { sheet, check } }: { looked: Looked }) {
  const styles = useStyles();
  const of = (weight: Finding["weight"]) => check.findings.filter((finding) => finding.weight === weight);
  const [stop, consider, news] = [of("stop"), of("look"), of("news")];
  const list = (heading: string, findings: readonly Finding[]) =>
    findings.length > 0 && (
      <section aria-label={heading}>
        <Text as="h3" weight="semibold" block className={styles.title}>
          {heading}
        </Text>
        <ul className={styles.faults} tabIndex={0} role="list" aria-label={heading}>
          {findings.map(({ sentence }) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
    );
  return (
    <Step title={words.of(sheet)}>
      {check.isDataSheet && (
        <Text block className={styles.quiet}>
          {words.version(check.version)}
        </Text>
      )}
      {stop.length + consider.length === 0 && <Notice intent="success">{words.whole}</Notice>}
      {list(words.stop(stop.length), stop)}
      {list(words.consider(consider.length), consider)}
      {list(words.news, news)}
      {news.length > 0 && (
        <Text block className={styles.quiet}>
          {words.newsHint}
        </Text>
      )}
    </Step>
  );
}
