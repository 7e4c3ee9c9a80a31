/** Goes to the previous or next load, or to a load chosen from the list. */
import { Button, makeStyles, Select } from "@fluentui/react-components";
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
  /** The numbers of the loads, in order. */
  readonly loads: readonly number[];
  readonly shown: number;
  /** The name of a load in the list. */
  readonly nameOf: (load: number) => string;
  readonly onGo: (load: number) => void;
}

export function LoadStepper({ loads, shown, nameOf, onGo }: LoadStepperProps) {
  const styles = useStyles();
  const index = loads.indexOf(shown);
  const step = (label: string, sign: string, to: number | undefined) => (
    <Button aria-label={label} disabledFocusable={to === undefined} onClick={() => to !== undefined && onGo(to)}>
      {sign}
    </Button>
  );
  return (
    <div className={styles.stepper}>
      {step(words.previous, "‹", loads[index - 1])}
      <Select
        size="small"
        aria-label={words.load}
        value={String(shown)}
        onChange={(_, { value }) => onGo(Number(value))}
      >
        {loads.map((one) => (
          <option key={one} value={String(one)}>
            {nameOf(one)}
          </option>
        ))}
      </Select>
      {step(words.next, "›", loads[index + 1])}
    </div>
  );
}
