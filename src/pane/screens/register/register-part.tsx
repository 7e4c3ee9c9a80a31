/** Inserts a blank register of equipment, and copies its values for the current test to the data sheet. */
import { Button, Checkbox, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { registerSheet } from "../../../datasheet/register-sheet";
import {
  lookupsOf,
  readRegister,
  REGISTER_MARK,
  REGISTER_NAMES,
  REGISTER_UNIT,
  type Lookup,
  type TakenCell,
} from "../../../record/register";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import type { CellValue, Looked, WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import type { Want } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { readingText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.register;

const REGISTER: Want = { beside: [{ mark: REGISTER_MARK, names: [...REGISTER_NAMES, REGISTER_UNIT] }] };

interface Told {
  readonly intent: "success" | "error";
  readonly sentence: string;
}

const registersIn = ({ beside }: Reading): readonly Looked[] =>
  beside.filter(({ values }) => values[REGISTER_MARK] !== undefined);

/** A value of the register or of the sheet as a text; days are written as dates. */
const shown = (cell: TakenCell, value: CellValue): string =>
  typeof value !== "number" ? String(value) : cell.endsWith("_due") ? isoDay(value) : readingText(value);

interface OfferedProps {
  readonly lines: readonly Lookup[];
  readonly busy: boolean;
  readonly onTake: (lines: readonly Lookup[]) => void;
}

/**
 * Offers the values that the sheet does not have yet. Values for blank cells are selected; the person can select the
 * others.
 */
function Offered({ lines, busy, onTake }: OfferedProps) {
  const styles = useStyles();
  const [changed, setChanged] = useState<ReadonlyMap<TakenCell, boolean>>(new Map());
  const open = lines.filter(({ state }) => state !== "same");
  const isChosen = ({ cell, state }: Lookup): boolean => changed.get(cell) ?? state === "blank";
  const chosen = open.filter(isChosen);
  return (
    <>
      {open.length < lines.length && <Text block>{words.same(lines.length - open.length)}</Text>}
      {open.map((line) => (
        <Checkbox
          key={line.cell}
          checked={isChosen(line)}
          label={
            words.line(words.cells[line.cell], shown(line.cell, line.registered)) +
            (line.state === "differs" ? ` ${words.instead(shown(line.cell, line.held))}` : "")
          }
          onChange={(_, { checked }) => setChanged((before) => new Map(before).set(line.cell, checked === true))}
        />
      ))}
      {open.length > 0 && (
        <div>
          <Button disabled={busy || chosen.length === 0} onClick={() => onTake(chosen)}>
            {words.take}
          </Button>
        </div>
      )}
      <Text block size={200} className={styles.quiet}>
        {words.measured}
      </Text>
    </>
  );
}

/** The values of the register for one test, and the equipment of the test that the register does not contain. */
function TestInRegister(props: Omit<OfferedProps, "lines"> & { readonly reading: Reading; readonly register: Looked }) {
  const { reading, register, busy, onTake } = props;
  const items = useMemo(() => readRegister(register.values), [register]);
  const lookups = useMemo(
    () => items && lookupsOf(reading.record, reading.values, items),
    [items, reading.record, reading.values],
  );
  if (!lookups) return <Notice intent="warning">{words.noUnit(register.sheet)}</Notice>;
  const { lines, unknown, repeated } = lookups;
  return (
    <>
      {lines.length + unknown.length === 0 && <Text block>{words.nothing}</Text>}
      {unknown.map(({ kind, number }) => (
        <Notice key={kind} intent="warning">
          {words.unknown(words.kinds[kind], number)}
        </Notice>
      ))}
      {repeated.map(({ kind, number }) => (
        <Text key={kind} block>
          {words.repeated(words.kinds[kind], number)}
        </Text>
      ))}
      {lines.length > 0 && <Offered lines={lines} busy={busy} onTake={onTake} />}
    </>
  );
}

export function RegisterPart({ port }: { readonly port: WorkbookPort }) {
  const { reading, again } = useTest(REGISTER);
  const [told, setTold] = useState<Told>();
  const [busy, setBusy] = useState(false);
  const registers = reading ? registersIn(reading) : [];
  const register = registers[0];

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
  const insert = async (): Promise<string> => {
    const system = reading?.record.words.length_unit === "in" ? "US" : "SI";
    return words.inserted(await port.insertSheet(registerSheet(system)));
  };
  const take = async (sheet: string, from: string, lines: readonly Lookup[]): Promise<string> => {
    const day = isoDay(localDayNumber(new Date()));
    await port.fillNames(sheet, {
      ...Object.fromEntries(lines.map(({ cell, registered }) => [cell, [registered]])),
      ...(reading?.record.missing.includes("register_source") ? {} : { register_source: [words.takenFrom(from, day)] }),
    });
    return words.taken(sheet, lines.length);
  };

  return (
    <Step title={words.heading}>
      <Text>{words.purpose}</Text>
      {told && <Notice intent={told.intent}>{told.sentence}</Notice>}
      {registers.length > 1 && register && <Text block>{words.several(register.sheet)}</Text>}
      {reading && register ? (
        <TestInRegister
          key={reading.id}
          reading={reading}
          register={register}
          busy={busy}
          onTake={(lines) => void run(() => take(reading.sheet, register.sheet, lines))}
        />
      ) : (
        <>
          <Text block>{words.none}</Text>
          <div>
            <Button disabled={busy} onClick={() => void run(insert)}>
              {words.insert}
            </Button>
          </div>
        </>
      )}
    </Step>
  );
}
