/**
 * Offers the values of the register that the sheet does not have yet. Values for blank cells are selected; the person can
 * select the others.
 */
import { Button, Checkbox, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useState } from "react";
import type { Lookup, TakenCell } from "../../../record/register";
import { REGISTER_MODES } from "../../../specification/form/apparatus";
import { isoDay } from "../../../workbook/day-number";
import type { CellValue } from "../../../workbook/port";
import { text } from "../../text";
import { readingText } from "../../text/number";
import { choosing } from "../../ui/choosing";
import { useStyles } from "../../ui/styles";
import type { Mode } from "./cells-to-take";

const words = text.register;

/** Cells with a length in the unit of the sheet. */
const LENGTHS: readonly TakenCell[] = ["registered_diameter", "registered_height", "dial_factor"];

/**
 * A value of the register or of the sheet as a text, with its unit; days are written as dates, the deflection table as its rows.
 * A dial factor is the length of one unit of the dial.
 */
const shown = (cell: TakenCell, value: CellValue, lengthUnit: string): string => {
  if (typeof value !== "number") return String(value);
  if (cell === "apparatus_stress") return words.rows(value);
  if (cell.endsWith("_due")) return isoDay(value);
  const unit = LENGTHS.includes(cell) ? lengthUnit : cell === "registered_ring_mass" ? "g" : "";
  return `${readingText(value)} ${unit}`.trim();
};

export interface OfferedProps {
  readonly lines: readonly Lookup[];
  readonly busy: boolean;
  /** How the sheet has the values of the register; undefined if it has no cell for the choice. */
  readonly mode: Mode | undefined;
  /** The unit of lengths of the sheet. */
  readonly lengthUnit: string;
  /** True if the register is a file: its values come in as constants only. */
  readonly isFile: boolean;
  readonly onTake: (lines: readonly Lookup[], mode: Mode) => void;
}

export function Offered({ lines, busy, mode: held, lengthUnit, isFile, onTake }: OfferedProps) {
  const styles = useStyles();
  const [changed, setChanged] = useState<ReadonlyMap<TakenCell, boolean>>(new Map());
  const [wanted, setWanted] = useState<Mode>();
  const mode = isFile ? "frozen" : (wanted ?? held ?? "frozen");
  // Values that are the register's already are written again if they become formulas, or constants.
  const isOther = held !== undefined && mode !== held;
  const open = lines.filter(({ state }) => isOther || state !== "same");
  const isChosen = ({ cell, state }: Lookup): boolean => changed.get(cell) ?? state !== "differs";
  const chosen = open.filter(isChosen);
  return (
    <>
      {held !== undefined && !isFile && (
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
            words.line(words.cells[line.cell], shown(line.cell, line.registered, lengthUnit)) +
            (line.state === "differs" ? ` ${words.instead(shown(line.cell, line.held, lengthUnit))}` : "")
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
