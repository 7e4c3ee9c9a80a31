/** Inserts a blank register of equipment, and copies its values for the current test to the data sheet. */
import { Button, Checkbox, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { registerSheet } from "../../../datasheet/register-sheet";
import { boxesByName } from "../../../record/places";
import {
  liveFormula,
  liveState,
  lookupsOf,
  readRegister,
  REGISTER_MARK,
  REGISTER_NAMES,
  REGISTER_UNIT,
  type Lookup,
  type TakenCell,
} from "../../../record/register";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import { FROZEN_STATE, REGISTER_MODES } from "../../../specification/apparatus";
import type { CellContent, CellValue, Looked, WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import type { Want } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { readingText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { choosing } from "../../ui/choosing";
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

type Mode = (typeof REGISTER_MODES)[number];

interface OfferedProps {
  readonly lines: readonly Lookup[];
  readonly busy: boolean;
  /** How the sheet has the values of the register; undefined if it has no cell for the choice. */
  readonly mode: Mode | undefined;
  readonly onTake: (lines: readonly Lookup[], mode: Mode) => void;
}

/**
 * Offers the values that the sheet does not have yet. Values for blank cells are selected; the person can select the
 * others.
 */
function Offered({ lines, busy, mode: held, onTake }: OfferedProps) {
  const styles = useStyles();
  const [changed, setChanged] = useState<ReadonlyMap<TakenCell, boolean>>(new Map());
  const [wanted, setWanted] = useState<Mode>();
  const mode = wanted ?? held ?? "frozen";
  // Values that are the register's already are written again if they become formulas, or constants.
  const isOther = held !== undefined && mode !== held;
  const open = lines.filter(({ state }) => isOther || state !== "same");
  const isChosen = ({ cell, state }: Lookup): boolean => changed.get(cell) ?? state !== "differs";
  const chosen = open.filter(isChosen);
  return (
    <>
      {held !== undefined && (
        <Field label={words.mode} hint={words.modeHints[mode]}>
          <RadioGroup value={mode} onChange={choosing<Mode>(setWanted)}>
            {REGISTER_MODES.map((one) => (
              <Radio key={one} value={one} label={words.modes[one]} />
            ))}
          </RadioGroup>
        </Field>
      )}
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
          <Button disabled={busy || chosen.length === 0} onClick={() => onTake(chosen, mode)}>
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

/** How a sheet has the values of the register; undefined if it has no cell for the choice. */
const modeOf = ({ record }: Reading): Mode | undefined =>
  record.missing.includes("register_mode") ? undefined : record.words.register_mode === "live" ? "live" : "frozen";

/** The cells to write: constants or formulas, the choice, and where the values come from. */
function cellsToTake(reading: Reading, register: string, lines: readonly Lookup[], mode: Mode): CellContent[] {
  const boxes = boxesByName(reading.names);
  const day = isoDay(localDayNumber(new Date()));
  const kinds = [...new Set(lines.map(({ kind }) => kind))];
  const at = (name: string, content: { formula: string } | { value: CellValue }): CellContent[] => {
    const box = boxes.get(name);
    return box && !reading.record.missing.includes(name) ? [{ row: box.row, col: box.col, ...content }] : [];
  };
  return [
    ...lines.flatMap((line) =>
      at(
        line.cell,
        mode === "live" ? { formula: liveFormula(register, line, line.registered) } : { value: line.registered },
      ),
    ),
    ...at("register_mode", { value: mode }),
    ...at("register_source", { value: words.takenFrom(register, day) }),
    ...at("register_state", { formula: mode === "live" ? liveState(register, kinds) : FROZEN_STATE }),
  ];
}

/** The values of the register for one test, and the equipment of the test that the register does not contain. */
function TestInRegister(
  props: Omit<OfferedProps, "lines" | "mode"> & { readonly reading: Reading; readonly register: Looked },
) {
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
      {lines.length > 0 && <Offered lines={lines} busy={busy} mode={modeOf(reading)} onTake={onTake} />}
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

function OpenRegister({ port }: { readonly port: WorkbookPort }) {
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
  const take = async (from: string, lines: readonly Lookup[], mode: Mode): Promise<string> => {
    if (!reading) return "";
    await port.writeCells(reading.sheet, cellsToTake(reading, from, lines, mode), true);
    return mode === "live" ? words.takenLive(reading.sheet, lines.length) : words.taken(reading.sheet, lines.length);
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
          onTake={(lines, mode) => void run(() => take(register.sheet, lines, mode))}
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
