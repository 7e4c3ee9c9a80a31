/**
 * Inserts a blank register of equipment, copies its values, or those of a firm's file, for the current test to the data
 * sheet, and adds a deflection set from a run on a disk.
 */
import { Button, Text } from "@fluentui/react-components";
import { useId, useMemo, useState } from "react";
import { cellBeside } from "../../../record/places";
import {
  lookupsOf,
  NUMBER_CELLS,
  readRegister,
  REGISTER_MARK,
  type Equipment,
  type Lookup,
} from "../../../record/register";
import { readSets } from "../../../record/register-sets";
import type { Looked, WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import type { Want } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { FileButton } from "../../ui/file-button";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { modeOf, type Mode } from "./cells-to-take";
import { DiskRun } from "./disk-run";
import { Offered } from "./offered";
import { insertRegister, takeLines, writeSet } from "./register-work";
import { READ_NAMES, registerOfFile, sinceTaken, type RegisterSource } from "./source";

const words = text.register;

const REGISTER: Want = { beside: [{ mark: REGISTER_MARK, names: READ_NAMES, places: true }] };

interface Told {
  readonly intent: "success" | "error";
  readonly sentence: string;
}

const registersIn = ({ beside }: Reading): readonly Looked[] =>
  beside.filter(({ values }) => values[REGISTER_MARK] !== undefined);

/** What a file says of the values that the sheet took from it before. */
function SinceTaken({ source, said }: { readonly source: RegisterSource; readonly said: string | undefined }) {
  const since = sinceTaken(source, said);
  if (!since) return null;
  return since.isSame ? (
    <Text block>{words.fileSame(source.called, since.day)}</Text>
  ) : (
    <Notice intent="warning">{words.fileChanged(source.called, since.day)}</Notice>
  );
}

interface TestInRegisterProps {
  readonly reading: Reading;
  readonly source: RegisterSource;
  readonly busy: boolean;
  readonly onTake: (lines: readonly Lookup[], mode: Mode) => void;
}

/** The values of the register for one test, and the equipment of the test that the register does not contain. */
function TestInRegister({ reading, source, busy, onTake }: TestInRegisterProps) {
  const { values: registered } = source;
  const items = useMemo(() => readRegister(registered), [registered]);
  const lookups = useMemo(
    () => items && lookupsOf(reading.record, reading.values, items, readSets(registered)),
    [items, registered, reading.record, reading.values],
  );
  if (!lookups) return <Notice intent="warning">{words.noUnit(source.called)}</Notice>;
  const { lines, unknown, repeated, withoutTable } = lookups;
  const cellOf = (kind: Equipment) => cellBeside(reading.names, NUMBER_CELLS[kind]);
  return (
    <>
      <SinceTaken source={source} said={reading.record.registerSource} />
      {lines.length + unknown.length === 0 && <Text block>{words.nothing}</Text>}
      {unknown.map(({ kind, number }) => (
        <Notice key={kind} intent="warning">
          {words.unknown(words.kinds[kind], number, cellOf(kind))}
        </Notice>
      ))}
      {repeated.map(({ kind, number }) => (
        <Text key={kind} block>
          {words.repeated(words.kinds[kind], number)}
        </Text>
      ))}
      {withoutTable !== undefined && <Notice intent="warning">{words.withoutTable(withoutTable)}</Notice>}
      {lines.length > 0 && (
        <Offered
          lines={lines}
          busy={busy}
          mode={modeOf(reading)}
          lengthUnit={reading.record.words.length_unit ?? ""}
          isFile={source.hash !== undefined}
          onTake={onTake}
        />
      )}
    </>
  );
}

/** Reads the register only once a person asks for it: until then, a change of the workbook costs nothing here. */
export function RegisterPart({ port }: { readonly port: WorkbookPort }) {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <OpenRegister port={port} />;
  return (
    <Step title={words.heading}>
      <Text>{words.purpose}</Text>
      <div>
        <Button onClick={() => setOpen(true)}>{words.open}</Button>
      </div>
    </Step>
  );
}

interface FileChoiceProps {
  readonly busy: boolean;
  /** The register of the workbook, which is used again in place of a file; undefined if no file is in use. */
  readonly own: string | undefined;
  readonly onFile: (file: File) => void;
  readonly onOwn: () => void;
}

/** Chooses a file of the firm in place of the register of the workbook. */
function FileChoice({ busy, own, onFile, onOwn }: FileChoiceProps) {
  const hint = useId();
  return (
    <>
      <Text block id={hint}>
        {words.fileHint}
      </Text>
      <FileButton label={words.file} accept=".xlsx" isBusy={busy} describedBy={hint} onFile={onFile} />
      {own !== undefined && (
        <div>
          <Button disabled={busy} onClick={onOwn}>
            {words.ownAgain(own)}
          </Button>
        </div>
      )}
    </>
  );
}

function OpenRegister({ port }: { readonly port: WorkbookPort }) {
  const { reading, again } = useTest(REGISTER);
  const [told, setTold] = useState<Told>();
  const [busy, setBusy] = useState(false);
  const [file, setFile] = useState<RegisterSource>();
  const registers = reading ? registersIn(reading) : [];
  const register = registers[0];
  const source = file ?? (register && { called: register.sheet, values: register.values });

  const run = async (work: () => Promise<string>): Promise<void> => {
    setBusy(true);
    try {
      setTold({ intent: "success", sentence: await work() });
      await again();
    } catch (failure) {
      setTold({ intent: "error", sentence: sentenceOf(failure) });
    }
    setBusy(false);
  };
  const readFile = async (chosen: File): Promise<string> => {
    const found = await registerOfFile(chosen);
    setFile(found);
    return words.fileRead(found.called);
  };

  return (
    <>
      <Step title={words.heading}>
        <Text>{words.purpose}</Text>
        {told && <Notice intent={told.intent}>{told.sentence}</Notice>}
        {!file && registers.length > 1 && register && <Text block>{words.several(register.sheet)}</Text>}
        {reading && source ? (
          <TestInRegister
            key={`${reading.id} ${source.hash ?? ""}`}
            reading={reading}
            source={source}
            busy={busy}
            onTake={(lines, mode) => void run(() => takeLines(port, reading, { source, lines, mode }))}
          />
        ) : (
          <Text block>{words.none}</Text>
        )}
        {!register && (
          <div>
            <Button disabled={busy} onClick={() => void run(() => insertRegister(port, reading))}>
              {words.insert}
            </Button>
          </div>
        )}
        {reading && (
          <FileChoice
            busy={busy}
            own={file && register?.sheet}
            onFile={(chosen) => void run(() => readFile(chosen))}
            onOwn={() => setFile(undefined)}
          />
        )}
      </Step>
      {reading && register && (
        <DiskRun
          key={`set ${reading.id}`}
          reading={reading}
          register={register}
          busy={busy}
          onWrite={(set) => void run(() => writeSet(port, register, set))}
        />
      )}
    </>
  );
}
