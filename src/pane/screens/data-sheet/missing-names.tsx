/**
 * Lists the names that the sheet has no cells for: the ones needed first, then all of them in groups, with a search
 * field.
 */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useState } from "react";
import { calledAll, type MissingName } from "../../../datasheet";
import { titleIn, wordsOf } from "../../../specification/text/words";
import { text } from "../../text";
import { language } from "../../text/language";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import type { ShownGroup } from "./sheet-check-state";

const words = text.check;

interface NamesProps {
  readonly names: readonly MissingName[];
  /** The name that the person chose. */
  readonly chosen: string;
  readonly onChoose: (name: string) => void;
}

function Names({ names, chosen, onChoose }: NamesProps) {
  const styles = useStyles();
  return (
    <ul className={styles.list}>
      {names.map(({ name, needs }) => (
        <li key={name}>
          <Button size="small" aria-pressed={name === chosen} onClick={() => onChoose(name)}>
            {calledAll([name], language())}
          </Button>
          {needs.length > 0 && (
            <Text block size={200} className={styles.quiet}>
              {words.after(calledAll(needs.slice(0, 4), language()) + (needs.length > 4 ? " …" : ""))}
            </Text>
          )}
        </li>
      ))}
    </ul>
  );
}

interface NameGroupProps extends Omit<NamesProps, "names"> {
  readonly group: ShownGroup;
  readonly isOpenAtFirst: boolean;
}

/** A group that opens. Its names, up to a hundred buttons, are in the page only while it is open. */
function NameGroup({ group: { title, names, all }, isOpenAtFirst, chosen, onChoose }: NameGroupProps) {
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  return (
    <details open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{words.missingOf(titleIn(wordsOf(language()), title), names.length, all)}</summary>
      {isOpen && <Names names={names} chosen={chosen} onChoose={onChoose} />}
    </details>
  );
}

export interface MissingNamesProps extends Omit<NamesProps, "names"> {
  readonly find: string;
  readonly first: readonly MissingName[];
  readonly groups: readonly ShownGroup[];
  readonly onFind: (find: string) => void;
}

export function MissingNames({ find, first, groups, chosen, onFind, onChoose }: MissingNamesProps) {
  const styles = useStyles();
  const isSearching = find.trim() !== "";
  if (groups.length === 0 && !isSearching) return null;
  return (
    <Step title={words.missing}>
      <Text block className={styles.quiet}>
        {words.missingHint}
      </Text>
      <Field label={words.find}>
        <Input type="search" value={find} onChange={(_, { value }) => onFind(value)} />
      </Field>
      {first.length > 0 && !isSearching && (
        <section aria-label={words.first} className={styles.column}>
          <Text as="h3" weight="semibold" block className={styles.title}>
            {words.first}
          </Text>
          <Names names={first} chosen={chosen} onChoose={onChoose} />
        </section>
      )}
      {groups.length === 0 && <Text block>{words.nothingFound}</Text>}
      {groups.map((group) => (
        <NameGroup
          key={`${group.title} ${isSearching}`}
          group={group}
          isOpenAtFirst={isSearching}
          chosen={chosen}
          onChoose={onChoose}
        />
      ))}
    </Step>
  );
}
