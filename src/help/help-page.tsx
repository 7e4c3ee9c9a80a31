/** The help page: every worksheet function with its arguments, examples, refusals, picture and sources. */
import type { ReactElement } from "react";
import { about } from "../pane/text/en/about";
import { firstOf } from "../reduction/numeric/lists";
import { aloneIn, type Result } from "./evaluate";
import { exampleRows, type Cell } from "./example-sheet";
import type { FunctionHelp } from "./jsdoc";
import { Wide } from "./layout";
import type { Picture } from "./pictures";

export interface Worked {
  readonly formula: string;
  readonly result: Result;
}

export interface HelpEntry extends FunctionHelp {
  readonly worked: readonly Worked[];
  readonly refused: readonly Worked[];
}

export interface HelpGroup {
  readonly title: string;
  readonly entries: readonly HelpEntry[];
}

export interface HelpContents {
  readonly version: string;
  readonly groups: readonly HelpGroup[];
  readonly pictures: ReadonlyMap<string, Picture>;
}

/** The anchor of a function on the page; functions.json uses the same. */
const anchorOf = (id: string): string => id.toLowerCase();

const MOST_ROWS = 12;
const MOST_DIGITS = 6;

const shown = (cell: Cell): string => (typeof cell === "number" ? String(Number(cell.toPrecision(MOST_DIGITS))) : cell);

const Cells = ({ rows }: { rows: readonly (readonly Cell[])[] }) => (
  <>
    <table>
      <tbody>
        {rows.slice(0, MOST_ROWS).map((row, index) => (
          <tr key={index}>
            {row.map((cell, column) => (
              <td key={column} className={typeof cell === "number" ? "number" : undefined}>
                {shown(cell)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
    {rows.length > MOST_ROWS && <p>and {rows.length - MOST_ROWS} more rows</p>}
  </>
);

function Example({ formula, result }: Worked) {
  const alone = "code" in result ? undefined : aloneIn(result.rows);
  return (
    <div className="example">
      <p>
        <code>{formula}</code>
      </p>
      {"code" in result ? (
        <p>
          <strong>{result.code}</strong> {result.reason}
        </p>
      ) : alone !== undefined ? (
        <p style={{ whiteSpace: "pre-line" }}>{shown(alone)}</p>
      ) : (
        <Wide label={`What ${formula} gives`}>
          <Cells rows={result.rows} />
        </Wide>
      )}
    </div>
  );
}

const signatureOf = ({ id, parameters }: FunctionHelp): string =>
  `=CLAY.${id}(${parameters.map(({ name, isOptional }) => (isOptional ? `[${name}]` : name)).join(", ")})`;

interface EntryProps {
  readonly entry: HelpEntry;
  readonly pictures: ReadonlyMap<string, Picture>;
  /** The function beside which a picture is shown. */
  readonly placeOf: (picture: string) => string;
}

function Pictures({ entry, pictures, placeOf }: EntryProps) {
  return entry.pictures.map((name) => {
    const { title, notes, svg } = pictures.get(name)!;
    return placeOf(name) === entry.id ? (
      <figure key={name}>
        <div dangerouslySetInnerHTML={{ __html: svg }} />
        <figcaption className="quiet">{[`${title}.`, ...notes].join(" ")}</figcaption>
      </figure>
    ) : (
      <p key={name}>
        The construction is drawn under <a href={`#${anchorOf(placeOf(name))}`}>{placeOf(name)}</a>.
      </p>
    );
  });
}

function Entry(props: EntryProps) {
  const { id, description, parameters, returns, worked, refused, sources } = props.entry;
  return (
    <section aria-labelledby={anchorOf(id)}>
      <h3 id={anchorOf(id)}>{id}</h3>
      <p>
        <code>{signatureOf(props.entry)}</code>
      </p>
      <p>{description}</p>
      {parameters.length > 0 && (
        <dl>
          {parameters.map(({ name, isOptional, isRange, text }) => (
            <div key={name}>
              <dt>
                <code>{name}</code>
                <span className="quiet">{`${isRange ? ", a range" : ""}${isOptional ? ", may be left out" : ""}`}</span>
              </dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      )}
      <p>Gives: {returns}</p>
      {worked.length > 0 && <h4>{worked.length === 1 ? "Example" : "Examples"}</h4>}
      {worked.map((one) => (
        <Example key={one.formula} {...one} />
      ))}
      {refused.length > 0 && <h4>Refuses, for example</h4>}
      {refused.map((one) => (
        <Example key={one.formula} {...one} />
      ))}
      <Pictures {...props} />
      {sources.length > 0 && <h4>Source</h4>}
      {sources.map((source) => (
        <p key={source}>{source}</p>
      ))}
    </section>
  );
}

const letterOf = (column: number): string => String.fromCharCode("A".charCodeAt(0) + column);

function ExampleSheet() {
  const all = exampleRows();
  return (
    <Wide label="The example sheet">
      <table className="sheet">
        <thead>
          <tr>
            {firstOf(all).map((heading, column) => (
              <th key={column} scope="col" data-letter={letterOf(column)}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {all.slice(1).map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column} className={typeof cell === "number" ? "number" : undefined}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
}

const slug = (title: string): string => title.toLowerCase().replace(/[^a-z]+/g, "-");

/** The names of the functions by their groups, as links. */
function Contents({ groups }: Pick<HelpContents, "groups">): ReactElement {
  return (
    <nav aria-label="Functions">
      {groups.map(({ title, entries: some }) => (
        <div key={title}>
          <p>
            <a href={`#${slug(title)}`}>{title}</a>
          </p>
          <ul className="names">
            {some.map(({ id }) => (
              <li key={id}>
                <a href={`#${anchorOf(id)}`}>{id}</a>
              </li>
            ))}
          </ul>
        </div>
      ))}
      <p>
        <a href="#cautions">Cautions</a>
      </p>
    </nav>
  );
}

/** What holds for every function, and what every function refuses. */
function Rules(): ReactElement {
  return (
    <>
      <h2 id="rules">Rules for all functions</h2>
      <ul>
        <li>A series is a column or a row of cells. Two series pair by position and have the same length.</li>
        <li>
          Times are minutes. Water contents, strains and saturations are ratios: 0.352 for 35.2 %. Readings and heights
          share one length unit.
        </li>
        <li>
          A blank cell in a series is left out. Rows may stand in any order: they are sorted by time, equal times are
          averaged, and the remark says so.
        </li>
        <li>
          Where a function has items, <code>item</code> asks for one of them in one cell. Left out, the whole table
          spills: label, value, unit, and in the last row the remark.
        </li>
        <li>
          The remark is “ok”, or says what to look at. Warnings can be wrong both ways: “ok” is no proof of quality.
        </li>
      </ul>
      <h3 id="errors">What every function refuses</h3>
      <ul>
        <li>
          <strong>#VALUE!</strong>: an input that cannot be used, such as a text, a date, an error of another cell, a
          mass of zero, or two series of unequal length.
        </li>
        <li>
          <strong>#N/A</strong>: the input is fine, but the method does not apply to this curve.
        </li>
      </ul>
      <p>Both carry a message with the row and the remedy: point at the mark beside the cell to read it.</p>
    </>
  );
}

export function HelpPage({ version, groups, pictures }: HelpContents): ReactElement {
  const entries = groups.flatMap((group) => group.entries);
  const placeOf = (picture: string): string => entries.find((entry) => entry.pictures.includes(picture))!.id;
  return (
    <>
      <header>
        <h1>Clayledger: worksheet functions</h1>
        <p className="quiet">Version {version}</p>
        <p>
          <a href="first-minutes.html">The first ten minutes in Excel</a>: twelve steps that show whether everything
          works.
        </p>
      </header>
      <main>
        <Contents groups={groups} />

        <Rules />

        <h2 id="example-sheet">The example sheet</h2>
        <p>
          All examples on this page calculate from these cells, and the results were calculated by the functions
          themselves when this page was made. To try an example, copy the table, paste it into A1 of an empty sheet, and
          copy the formula. The test is invented. If your Excel separates arguments by semicolons, write semicolons.
        </p>
        <ExampleSheet />

        {groups.map(({ title, entries: some }) => (
          <div key={title}>
            <h2 id={slug(title)}>{title}</h2>
            {some.map((entry) => (
              <Entry key={entry.id} entry={entry} pictures={pictures} placeOf={placeOf} />
            ))}
          </div>
        ))}

        <h2 id="cautions">Cautions</h2>
        <ul>
          {about.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
        <p>{about.privacy}</p>
      </main>
    </>
  );
}
