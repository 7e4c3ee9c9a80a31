/** Small parts of the screens: a heading, a list of faults, a choice of words, a progress bar with a stop button. */
import { Button, Field, ProgressBar, Select, Text } from "@fluentui/react-components";
import { useId, type ReactNode } from "react";
import { choosing } from "./choosing";
import { useStyles } from "./styles";
import { text } from "../text";

const words = text.readings;

/** The heading of a screen. */
export function ScreenTitle({ children }: { children: string }) {
  const styles = useStyles();
  return (
    <Text as="h1" size={400} weight="semibold" block className={styles.title}>
      {children}
    </Text>
  );
}

/** One step of the screen under its heading. */
export function Step({ title, children }: { title: string; children: ReactNode }) {
  const styles = useStyles();
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.section}>
      <Text as="h2" id={id} size={300} weight="semibold" block className={styles.title}>
        {title}
      </Text>
      {children}
    </section>
  );
}

interface FaultListProps {
  readonly heading: string;
  readonly level: "h2" | "h3";
  readonly children: ReactNode;
}

/** Faults under their heading; a long list scrolls. */
export function FaultList({ heading, level, children }: FaultListProps) {
  const styles = useStyles();
  return (
    <section aria-label={heading}>
      <Text as={level} weight="semibold" block className={styles.title}>
        {heading}
      </Text>
      <ul className={styles.faults} tabIndex={0} role="list" aria-label={heading}>
        {children}
      </ul>
    </section>
  );
}

export interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly options: readonly (readonly [T, string])[];
  /** undefined: nothing is chosen yet, and the field asks for a choice. */
  readonly value: T | undefined;
  readonly onChoose: (value: T) => void;
  readonly hint?: string;
}

/** A list of more choices than this is one of the labels of cells; in a narrow pane, a label of more letters than this is cut off. */
const [MANY, LONG] = [12, 28];

/** What stands under a list of which the chosen text would be cut off in a narrow pane: the text. */
export const inFull = (chosen: string): string | undefined => (chosen.length > LONG ? chosen : undefined);

export function Choice<T extends string>({ label, options, value, onChoose, hint }: ChoiceProps<T>) {
  const styles = useStyles();
  const open = value === undefined;
  const chosen = options.find(([option]) => option === value)?.[1] ?? "";
  return (
    <Field
      label={label}
      hint={hint ?? (options.length > MANY ? inFull(chosen) : undefined)}
      validationState={open ? "warning" : "none"}
      validationMessage={open ? words.notSaid : undefined}
    >
      <Select
        className={styles.shrinks}
        value={value ?? ""}
        onChange={choosing<T | "">((chosen) => chosen !== "" && onChoose(chosen))}
      >
        {open && <option value="">{words.choose}</option>}
        {options.map(([option, name]) => (
          <option key={option} value={option}>
            {name}
          </option>
        ))}
      </Select>
    </Field>
  );
}

/** The options for a table of words. */
export const optionsOf = <T extends string>(table: Readonly<Record<T, string>>): (readonly [T, string])[] =>
  // Object.entries returns keys of type string; these are the keys of the table.
  Object.entries(table) as [T, string][];

export function Progress({ what, share, onStop }: { what: string; share: number; onStop?: () => void }) {
  const styles = useStyles();
  return (
    <div className={styles.column}>
      <Field label={what} validationState="none">
        <ProgressBar value={share} />
      </Field>
      {onStop && (
        <div>
          <Button onClick={onStop}>{words.stop}</Button>
        </div>
      )}
    </div>
  );
}
