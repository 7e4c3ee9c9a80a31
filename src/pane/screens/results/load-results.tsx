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

export function ResultsLoads({ loads, columns, goTo }: ResultsLoadsProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const hint = useId();
  const table = useRef<HTMLTableElement>(null);
  /** The cell of the table that the Tab key reaches. */
  const [at, setAt] = useState<readonly [row: number, column: number]>([0, 0]);

  const move = (event: KeyboardEvent): void => {
    const [row, column] = at;
    const last = columns.length - 1;
    const moves: Readonly<Record<string, readonly [row: number, column: number]>> = {
      ArrowUp: [row - 1, column],
      ArrowDown: [row + 1, column],
      ArrowLeft: [row, column - 1],
      ArrowRight: [row, column + 1],
      Home: [row, 0],
      End: [row, last],
    };
    const next = moves[event.key];
    if (!next) return;
    event.preventDefault();
    const to = [Math.min(Math.max(next[0], 0), loads.length - 1), Math.min(Math.max(next[1], 0), last)] as const;
    setAt(to);
    const cell = table.current?.tBodies[0]?.rows[to[0]]?.cells[to[1] + 1];
    (cell?.querySelector<HTMLElement>("button") ?? cell)?.focus();
  };

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
          onKeyDown={move}
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
                {columns.map((name, column) => {
                  const shown = load.cells[name];
                  const go = shown && goTo(shown);
                  const tabIndex = at[0] === row && at[1] === column ? 0 : -1;
                  const here = (): void => setAt([row, column]);
                  return go ? (
                    <td key={name} className="number">
                      <Link as="button" inline tabIndex={tabIndex} onFocus={here} onClick={go}>
                        {numberText(shown.value, shown.format)}
                      </Link>
                    </td>
                  ) : (
                    <td key={name} className="number" tabIndex={tabIndex} onFocus={here}>
                      {shown ? (
                        numberText(shown.value, shown.format)
                      ) : (
                        <span role="img" aria-label={words.none}>
                          –
                        </span>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Step>
  );
}
