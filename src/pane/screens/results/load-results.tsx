/**
 * Shows the loads in a table. The table is one stop of the Tab key; the arrow keys move between numbers, Enter selects
 * the cell of a number.
 */
import { Link, makeStyles, mergeClasses, Text } from "@fluentui/react-components";
import { useId, useRef, useState, type KeyboardEvent } from "react";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import type { LOAD_COLUMNS, LoadLine, Shown } from "./results";
import { text } from "../../text";
import { numberText } from "../../text/number";

const words = text.results;

const useStyles = makeStyles({
  numbers: {
    width: "100%",
    "& th.number, & td.number": { textAlign: "right" },
    "& thead .unit": { display: "block" },
    "& tbody th, & thead th:first-child": { position: "sticky", left: 0 },
  },
});

/** Returns a function that selects the cell of a number; undefined if the sheet does not have the cell. */
export type GoTo = (shown: Pick<Shown, "name" | "row" | "col">) => (() => void) | undefined;

export interface ResultsLoadsProps {
  readonly loads: readonly LoadLine[];
  readonly columns: typeof LOAD_COLUMNS;
  readonly goTo: GoTo;
}

/** The number of a row and of a column of numbers, from 0. */
type Place = readonly [row: number, column: number];

/** The place that the Tab key reaches; arrow keys, Home and End move it, and the focus with it. */
function useGrid(rows: number, columns: number) {
  const table = useRef<HTMLTableElement>(null);
  const [at, setAt] = useState<Place>([0, 0]);
  const onKeyDown = (event: KeyboardEvent): void => {
    const [row, column] = at;
    const moves: Readonly<Record<string, Place>> = {
      ArrowUp: [row - 1, column],
      ArrowDown: [row + 1, column],
      ArrowLeft: [row, column - 1],
      ArrowRight: [row, column + 1],
      Home: [row, 0],
      End: [row, columns - 1],
    };
    const next = moves[event.key];
    if (!next) return;
    event.preventDefault();
    const to = [Math.min(Math.max(next[0], 0), rows - 1), Math.min(Math.max(next[1], 0), columns - 1)] as const;
    setAt(to);
    const cell = table.current?.tBodies[0]?.rows[to[0]]?.cells[to[1] + 1];
    (cell?.querySelector<HTMLElement>("button") ?? cell)?.focus();
  };
  const cellAt = (row: number, column: number): Pick<CellProps, "tabIndex" | "onFocus"> => ({
    tabIndex: at[0] === row && at[1] === column ? 0 : -1,
    onFocus: () => setAt([row, column]),
  });
  return { table, onKeyDown, cellAt };
}

export function ResultsLoads({ loads, columns, goTo }: ResultsLoadsProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const hint = useId();
  const { table, onKeyDown, cellAt } = useGrid(loads.length, columns.length);
  const unitOf = (name: (typeof columns)[number]): string =>
    loads.map(({ cells }) => cells[name]?.unit).find((unit) => unit !== undefined) ?? "";

  return (
    <Step title={words.loadsHeading}>
      <Text size={200} id={hint} className={shared.quiet}>
        {words.loadsHint}
      </Text>
      <div className={shared.scroll}>
        <table
          ref={table}
          role="grid"
          aria-label={words.loadsHeading}
          aria-describedby={hint}
          className={mergeClasses(shared.table, styles.numbers)}
          onKeyDown={onKeyDown}
        >
          <thead>
            <tr>
              <th scope="col">{words.load}</th>
              {columns.map((name) => (
                <th key={name} scope="col" className="number">
                  {words.columns[name]}
                  <span className="unit">{unitOf(name)}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {loads.map((load, row) => (
              <tr key={load.number}>
                <th scope="row">{`${load.number}${load.isVirgin ? " *" : ""}`}</th>
                {columns.map((name, column) => (
                  <NumberCell key={name} shown={load.cells[name]} goTo={goTo} {...cellAt(row, column)} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Step>
  );
}

interface CellProps {
  readonly shown: Shown | undefined;
  readonly goTo: GoTo;
  readonly tabIndex: number;
  readonly onFocus: () => void;
}

/** A number; a link to its cell where the sheet has the cell. */
function NumberCell({ shown, goTo, tabIndex, onFocus }: CellProps) {
  const go = shown && goTo(shown);
  if (go)
    return (
      <td className="number">
        <Link as="button" inline tabIndex={tabIndex} onFocus={onFocus} onClick={go}>
          {numberText(shown.value, shown.format)}
        </Link>
      </td>
    );
  return (
    <td className="number" tabIndex={tabIndex} onFocus={onFocus}>
      {shown ? (
        numberText(shown.value, shown.format)
      ) : (
        <span role="img" aria-label={words.none}>
          –
        </span>
      )}
    </td>
  );
}
