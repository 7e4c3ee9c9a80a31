/** Small parts that the review of a time curve and that of the compression curve share. */
import { makeStyles, Radio, RadioGroup, Text } from "@fluentui/react-components";
import type { Outcome } from "../../../reduction/outcome";
import { Notice } from "../../ui/notice";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.review;

const useStyles = makeStyles({
  remarks: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px" },
  switch: { marginLeft: "-8px", flexWrap: "wrap" },
});

interface SwitchProps<T extends string> {
  readonly label: string;
  readonly options: readonly T[];
  readonly names: Readonly<Record<T, string>>;
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

export function Switch<T extends string>({ label, options, names, value, onChoose }: SwitchProps<T>) {
  const styles = useStyles();
  return (
    <RadioGroup
      aria-label={label}
      layout="horizontal"
      className={styles.switch}
      value={value}
      onChange={(_, { value: chosen }) => {
        const option = options.find((one) => one === chosen);
        if (option !== undefined) onChoose(option);
      }}
    >
      {options.map((one) => (
        <Radio key={one} value={one} label={names[one]} />
      ))}
    </RadioGroup>
  );
}

/** Why there is no construction; nothing if there is one. */
export function Refusal({ outcome, isPicked }: { readonly outcome: Outcome<unknown>; readonly isPicked: boolean }) {
  if (outcome.ok) return null;
  return (
    <Notice
      intent={outcome.fault === "input" ? "error" : "warning"}
      title={outcome.fault === "input" && isPicked ? words.refusedPick : words.refusedTitle}
    >
      {sentence(inWords(outcome.reason))}
    </Notice>
  );
}

export function Remarks({ outcome }: { readonly outcome: Outcome<unknown> }) {
  const styles = useStyles();
  if (!outcome.ok || outcome.remarks.length === 0) return null;
  return (
    <section aria-label={words.remarks}>
      <ul className={styles.remarks}>
        {[...new Set(outcome.remarks.map(inWords))].map((remark) => (
          <li key={remark}>
            <Text>{sentence(remark)}</Text>
          </li>
        ))}
      </ul>
    </section>
  );
}
