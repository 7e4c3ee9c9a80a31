/** The parts of a sheet as a list of links. */
import { Link, makeStyles, Text, tokens } from "@fluentui/react-components";
import { text } from "../../text";
import { itemOfCells, type PlaceOf } from "./places";
import type { PartOfSheet } from "./parts";

const words = text.next;

const useStyles = makeStyles({
  list: { margin: 0, padding: 0, listStyleType: "none" },
  part: {
    display: "flex",
    justifyContent: "space-between",
    alignItems: "center",
    gap: "12px",
    minHeight: "28px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  missing: { whiteSpace: "nowrap", fontVariantNumeric: "tabular-nums", color: tokens.colorNeutralForeground2 },
});

export interface PartsListProps {
  readonly parts: readonly PartOfSheet[];
  readonly placeOf: PlaceOf;
  readonly goTo: (address: string) => void;
}

export function PartsList({ parts, placeOf, goTo }: PartsListProps) {
  const styles = useStyles();
  return (
    <ul className={styles.list}>
      {parts.map(({ title, language, first, lacking }) => {
        const missing = lacking.map((one) => itemOfCells(one, placeOf).address).find((one) => one !== undefined);
        const address = missing ?? (first === undefined ? undefined : placeOf(first));
        return (
          <li key={title} className={styles.part}>
            {address === undefined ? (
              <Text lang={language}>{title}</Text>
            ) : (
              <Link
                as="button"
                aria-label={words.toPart(title, missing === undefined ? 0 : lacking.length)}
                onClick={() => goTo(address)}
              >
                <span lang={language}>{title}</span>
              </Link>
            )}
            {lacking.length > 0 && (
              <Text size={200} className={styles.missing}>
                {words.partMissing(lacking.length)}
              </Text>
            )}
          </li>
        );
      })}
    </ul>
  );
}
