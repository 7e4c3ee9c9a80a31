/** The picks of a construction as fields: a number, and a button that returns to the automatic value. */
import { Button, makeStyles } from "@fluentui/react-components";
import { useState } from "react";
import { AUTOMATIC } from "../../../../reduction/increment/constructions/picks";
import { shownOf, type Handle } from "../handles";
import { NumberField } from "../../../ui/number-field";
import { isDoubtful, typedNonZero } from "../../../ui/typed-number";
import type { Draft, NumberPick, Saved } from "./pick-changes";
import { text } from "../../../text";

const words = text.review;

const useStyles = makeStyles({
  fields: { display: "grid", gridTemplateColumns: "repeat(auto-fit, minmax(132px, 1fr))", gap: "10px 12px" },
  one: { display: "flex", flexDirection: "column", gap: "4px", minWidth: 0, "& input": { minWidth: 0, width: "100%" } },
});

interface ReviewFieldsProps {
  readonly handles: readonly Handle[];
  readonly saved: Saved;
  readonly draft: Draft;
  /** The unit of a handle's value. */
  readonly unitOf: (handle: Handle) => string;
  readonly onPick: (name: NumberPick, value: number | typeof AUTOMATIC | undefined) => void;
}

export function ReviewFields({ handles, saved, draft, unitOf, onPick }: ReviewFieldsProps) {
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      {handles.map((handle) => (
        <PickField
          key={handle.name}
          handle={handle}
          unit={unitOf(handle)}
          state={
            draft[handle.name] !== undefined
              ? "changed"
              : saved.picks[handle.name] !== undefined
                ? "saved"
                : "automatic"
          }
          isAutomatic={(draft[handle.name] ?? saved.picks[handle.name] ?? AUTOMATIC) === AUTOMATIC}
          onPick={(value) => onPick(handle.name, value)}
        />
      ))}
    </div>
  );
}

interface PickFieldProps {
  readonly handle: Handle;
  readonly unit: string;
  readonly state: "automatic" | "saved" | "changed";
  readonly isAutomatic: boolean;
  readonly onPick: (value: number | typeof AUTOMATIC | undefined) => void;
}

function PickField({ handle, unit, state, isAutomatic, onPick }: PickFieldProps) {
  const { name } = handle;
  const styles = useStyles();
  /** The text being typed; undefined while the field shows the value that counts. */
  const [typed, setTyped] = useState<string>();
  const wrong = typed !== undefined && typed.trim() !== "" && typedNonZero(typed) === undefined;
  const pick = words.picks[name];
  return (
    <div className={styles.one}>
      <NumberField
        label={`${pick} (${unit})`}
        hint={words[state]}
        value={typed ?? shownOf(handle, !isAutomatic)}
        fault={wrong ? words.notNumber : undefined}
        onType={(next) => {
          setTyped(next);
          const number = typedNonZero(next);
          if (number !== undefined) onPick(number);
          else if (next.trim() === "") onPick(undefined);
        }}
        onBlur={() => typed !== undefined && !isDoubtful(typed) && setTyped(undefined)}
        onKeyDown={({ key }) => {
          if (key !== "Escape") return;
          setTyped(undefined);
          onPick(undefined);
        }}
      />
      {!isAutomatic && (
        <div>
          <Button size="small" aria-label={words.backToAutomaticOf(pick)} onClick={() => onPick(AUTOMATIC)}>
            {words.backToAutomatic}
          </Button>
        </div>
      )}
    </div>
  );
}
