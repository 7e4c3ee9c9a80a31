/** The masses of the frame: which of them hang for this load and the next, and the stress that they give. */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useState } from "react";
import { readRegister, REGISTER_MARK, REGISTER_NAMES } from "../../../record/register";
import { REGISTER_UNIT } from "../../../record/register-cells";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { inSheetStress } from "../../../record/reduced/inputs";
import { changeOfMasses, hangingStress, nearestMasses, type Combination } from "../../../reduction/frame-masses";
import { verbatim, digits, say } from "../../../reduction/message";
import type { WorkbookPort } from "../../../workbook/port";
import { useDraft } from "../../live/use-test";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { readingText } from "../../text/number";
import { sentence, sentenceOf } from "../../text/sentence";
import { massesShown, massesTyped } from "./masses-typed";

const words = text.bench;

/** Masses are shown to the gram, without zeros at the end. */
const shown = (mass: number): string => readingText(Number(mass.toFixed(3)));

/** The masses of the registers of the workbook, in kg; read only when a person asks. */
async function registeredMasses(port: WorkbookPort): Promise<number[]> {
  const found = (await port.findSheets([REGISTER_MARK])).filter(({ has }) => has.includes(REGISTER_MARK));
  const looked = await port.lookAt(found.map(({ sheet }) => ({ sheet, values: [...REGISTER_NAMES, REGISTER_UNIT] })));
  return looked.flatMap(({ values }) =>
    (readRegister(values) ?? []).flatMap(({ kind, mass }) => (kind === "mass" && mass ? [mass / 1000] : [])),
  );
}

export interface FrameMassesProps {
  readonly port: WorkbookPort;
  /** The id of the current test, to which the typed masses belong. */
  readonly test: string;
  readonly record: TestRecord;
  /** The mass that this load and the next one need, kg. */
  readonly load: LoadRecord;
  readonly now: number;
  readonly next?: { readonly load: LoadRecord; readonly mass: number };
  readonly cap: number;
}

/** The masses that were typed as those of the frame, and how they are taken from the registers. */
function useMassesOfFrame(port: WorkbookPort, test: string) {
  const [typed, setTyped] = useDraft(test, "masses of the frame", "");
  const [told, setTold] = useState<string>();
  const fromRegister = async (): Promise<void> => {
    try {
      const masses = await registeredMasses(port);
      if (masses.length === 0) setTold(words.noMassesRegistered);
      else {
        setTyped(masses.map(shown).join(" "));
        setTold(words.massesRegistered(masses.length));
      }
    } catch (error) {
      setTold(sentenceOf(error));
    }
  };
  return { typed, setTyped, told, fromRegister, available: massesTyped(typed) };
}

interface MassesFieldProps {
  readonly label: string;
  readonly hint: string;
  readonly typed: string;
  readonly onType: (typed: string) => void;
}

/** A field for masses; it is marked where the text is none. */
function MassesField({ label, hint, typed, onType }: MassesFieldProps) {
  const isWrong = massesTyped(typed) === undefined;
  return (
    <Field
      label={label}
      hint={hint}
      validationState={isWrong ? "error" : "none"}
      validationMessage={isWrong ? words.notMasses : undefined}
    >
      <Input value={typed} onChange={(_, { value }) => onType(value)} />
    </Field>
  );
}

export function FrameMasses({ port, test, record, load, now, next, cap }: FrameMassesProps) {
  const { typed, setTyped, told, fromRegister, available } = useMassesOfFrame(port, test);
  const [hanging, setHanging] = useState("");
  const hangs = massesTyped(hanging);
  const stressOf = (sum: number): string => {
    const { diameter = 0, lever_ratio: lever } = record.numbers;
    const stress = hangingStress(sum, diameter, lever, cap);
    if (!stress.ok) return inWords(stress.reason);
    return inWords(
      say`${digits(inSheetStress(record, stress.value), 4)} ${verbatim(record.words.stress_unit ?? "kPa")}`,
    );
  };
  const made = (wanted: number): Combination | undefined => {
    const found = nearestMasses(wanted, available ?? []);
    return found.ok ? found.value : undefined;
  };
  const nearest = (number: number, { masses, sum }: Combination): string =>
    words.nearest(number, massesShown(masses, shown) || "0", shown(sum), stressOf(sum));
  const refusal = available?.length ? nearestMasses(now, available) : undefined;
  const [forNow, forNext] = available?.length ? [made(now), next && made(next.mass)] : [];
  const standing = hangs?.length ? hangs : forNow?.masses;
  const change = standing && forNext ? changeOfMasses(standing, forNext.masses) : undefined;
  return (
    <>
      <MassesField label={words.frameMasses} hint={words.frameMassesHint} typed={typed} onType={setTyped} />
      <div>
        <Button onClick={() => void fromRegister()}>{words.fromRegister}</Button>
      </div>
      {told !== undefined && (
        <Text block role="status">
          {told}
        </Text>
      )}
      {refusal && !refusal.ok && <Text block>{sentence(inWords(refusal.reason))}</Text>}
      {available && available.length > 0 && (
        <MassesField label={words.hanging} hint={words.hangingHint} typed={hanging} onType={setHanging} />
      )}
      {hangs && hangs.length > 0 && (
        <Text block>{words.hangingGives(massesShown(hangs, shown), stressOf(hangs.reduce((a, b) => a + b, 0)))}</Text>
      )}
      {forNow && <Text block>{nearest(load.number, forNow)}</Text>}
      {next && forNext && (
        <Text block weight="semibold">
          {nearest(next.load.number, forNext)}
        </Text>
      )}
      {change && change.on.length + change.off.length > 0 && (
        <Text block>{words.changeMasses(massesShown(change.on, shown), massesShown(change.off, shown))}</Text>
      )}
    </>
  );
}
