/** Goes to the previous or next load or to the compression curve, or to one of them chosen from the list. */
import { Button, makeStyles, Select } from "@fluentui/react-components";
import type { PickedThing } from "../../../reduction/increment/constructions/picks";
import { text } from "../../text";

const words = text.review;

const useStyles = makeStyles({
  stepper: {
    display: "grid",
    gridTemplateColumns: "auto minmax(0, 1fr) auto",
    gap: "8px",
    alignItems: "center",
    "& select": { minWidth: 0, width: "100%" },
    "& button": { minWidth: "32px" },
  },
});

export interface LoadStepperProps {
  /** The numbers of the loads in order, and the compression curve. */
  readonly things: readonly PickedThing[];
  readonly shown: PickedThing;
  /** The name in the list. */
  readonly nameOf: (thing: PickedThing) => string;
  readonly onGo: (thing: PickedThing) => void;
}

export function LoadStepper({ things, shown, nameOf, onGo }: LoadStepperProps) {
  const styles = useStyles();
  const index = things.indexOf(shown);
  const step = (label: string, sign: string, to: PickedThing | undefined) => (
    <Button aria-label={label} disabledFocusable={to === undefined} onClick={() => to !== undefined && onGo(to)}>
      {sign}
    </Button>
  );
  return (
    <div className={styles.stepper}>
      {step(words.previous, "‹", things[index - 1])}
      <Select
        size="small"
        aria-label={words.load}
        value={String(shown)}
        onChange={(_, { value }) => {
          const chosen = things.find((one) => String(one) === value);
          if (chosen !== undefined) onGo(chosen);
        }}
      >
        {things.map((one) => (
          <option key={one} value={String(one)}>
            {nameOf(one)}
          </option>
        ))}
      </Select>
      {step(words.next, "›", things[index + 1])}
    </div>
  );
}
