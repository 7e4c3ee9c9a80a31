/** Asks for the file, or for pasted rows, with the readings. */
import { Button, Field, Text, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import { decode, type TextFile } from "../../../exchange/logger/decode";
import { FileButton } from "../../ui/file-button";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { sha256 } from "../../ui/sha256";
import { useStyles } from "../../ui/styles";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";

const words = text.readings;

export interface Source {
  readonly file: TextFile;
  /** The file name; "" for pasted rows. */
  readonly name: string;
  readonly sha256: string;
  /** The length of what the hash was calculated from. */
  readonly bytes: number;
}

async function read(bytes: Uint8Array<ArrayBuffer>, name: string): Promise<Source | string> {
  const decoded = decode(bytes);
  if (!decoded.ok) return words.refused[decoded.refused];
  const hash = globalThis.crypto?.subtle ? await sha256(bytes) : words.noHash;
  return { file: decoded.value, name, sha256: hash, bytes: bytes.length };
}

export function ReadingsSource({ onRead }: { onRead: (source: Source) => void }) {
  const styles = useStyles();
  const [pasted, setPasted] = useState("");
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<string>();

  const take = async (bytes: () => Promise<Uint8Array<ArrayBuffer>>, name: string): Promise<void> => {
    setBusy(true);
    setError(undefined);
    try {
      const source = await read(await bytes(), name);
      if (typeof source === "string") setError(source);
      else onRead(source);
    } catch (problem) {
      setError(sentenceOf(problem));
    } finally {
      setBusy(false);
    }
  };

  return (
    <Step title={words.fileHeading}>
      <div className={styles.column}>
        <FileButton
          label={words.open}
          accept=".csv,.txt,.dat,.tsv,.asc,.log,.prn,text/*"
          isBusy={busy}
          describedBy="open-hint"
          appearance="primary"
          onFile={(file) => void take(async () => new Uint8Array(await file.arrayBuffer()), file.name)}
        />
        <Text id="open-hint" size={200} className={styles.quiet}>
          {words.openHint}
        </Text>
        <Field label={words.paste}>
          <Textarea value={pasted} rows={5} onChange={(_, { value }) => setPasted(value)} spellCheck={false} />
        </Field>
        <div>
          <Button
            disabledFocusable={busy}
            onClick={() =>
              pasted.trim() === ""
                ? setError(words.nothingPasted)
                : void take(async () => new TextEncoder().encode(pasted), "")
            }
          >
            {words.usePasted}
          </Button>
        </div>
      </div>
      {busy && <Notice intent="info">{words.opening}</Notice>}
      {error !== undefined && <Notice intent="error">{error}</Notice>}
    </Step>
  );
}

/** Shows the opened file, and a button to choose another one. */
export function SourceSummary({ source, onOther }: { source: Source; onOther: () => void }) {
  const styles = useStyles();
  return (
    <Step title={words.fileHeading}>
      <div className={styles.row}>
        <Text weight="semibold" className={styles.breaks}>
          {source.name || words.pasted}
        </Text>
        <Button size="small" onClick={onOther}>
          {words.other}
        </Button>
      </div>
      <Text size={200} className={styles.quiet}>
        {words.lines(source.file.lines.length, source.file.encoding)}
        <br />
        {words.hash}: {source.sha256}
        <br />
        {words.hashHint}
      </Text>
      {source.file.encoding === "Windows-1252" && <Notice intent="warning">{words.notUnicode}</Notice>}
    </Step>
  );
}
