/** The head of every screen: the name of the current test, and the pin that keeps it. */
import { makeStyles, Select, Text, ToggleButton, tokens, Tooltip } from "@fluentui/react-components";
import { Pin16Filled, Pin16Regular } from "@fluentui/react-icons";
import { useId } from "react";
import { useCurrentTest } from "../live/use-test";
import { useStyles as useSharedStyles } from "../ui/styles";
import { text } from "../text";

const words = text.test;

const useStyles = makeStyles({
  bar: { padding: "4px 12px", backgroundColor: tokens.colorNeutralBackground2 },
  row: { display: "flex", alignItems: "center", gap: "8px", minHeight: "28px", maxWidth: "720px" },
  label: { color: tokens.colorNeutralForeground2, flexShrink: 0 },
  name: { flexGrow: 1, minWidth: 0, overflowWrap: "anywhere" },
  chooser: { flexGrow: 1, minWidth: 0, "& select": { width: "100%", minWidth: 0 } },
  note: { color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
});

export function CurrentTestBar() {
  const styles = useStyles();
  const shared = useSharedStyles();
  const label = useId();
  const hint = useId();
  const { tests, sheet, isPinned, other, pin, choose } = useCurrentTest();
  const note = other && (isPinned ? words.pinned(other.sheet) : words.noTest(other.sheet));
  return (
    <div role="group" aria-label={words.group} className={styles.bar}>
      <div className={styles.row}>
        <Text size={200} id={label} className={styles.label}>
          {words.label}
        </Text>
        {tests && tests.length > 1 ? (
          <Select
            size="small"
            className={styles.chooser}
            aria-labelledby={label}
            value={sheet ?? ""}
            onChange={(_, { value }) => choose(value)}
          >
            {tests.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </Select>
        ) : (
          <Text weight="semibold" className={styles.name}>
            {sheet ?? (tests ? words.none : "…")}
          </Text>
        )}
        {sheet !== undefined && (
          <Tooltip content={words.pinHint} relationship="inaccessible">
            <ToggleButton
              size="small"
              aria-label={words.pinLong}
              aria-describedby={hint}
              checked={isPinned}
              icon={isPinned ? <Pin16Filled /> : <Pin16Regular />}
              onClick={() => pin(!isPinned)}
            >
              {words.pin}
            </ToggleButton>
          </Tooltip>
        )}
      </div>
      <span id={hint} className={shared.hidden}>
        {words.pinHint}
      </span>
      <div aria-live="polite">
        {sheet !== undefined && <span className={shared.hidden}>{words.now(sheet)}</span>}
        {note !== undefined && (
          <Text size={200} block className={styles.note}>
            {note}
          </Text>
        )}
      </div>
    </div>
  );
}
