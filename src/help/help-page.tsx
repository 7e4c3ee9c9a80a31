/** The help page: every worksheet function with its arguments, examples, refusals, picture and sources. */
import { createContext, useContext, type ReactElement } from "react";
import { CATALOGUES } from "../pane/text";
import { fileIn, type Language } from "../pane/text/language";
import { translated } from "../pane/text/messages";
import type { Message } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { aloneIn, type Result } from "./evaluate";
import { exampleRows, type Cell } from "./example-sheet";
import type { FunctionHelp } from "./jsdoc";
import { Languages, Wide } from "./layout";
import { cellIn, errorIn, formulaIn } from "./notation";
import type { Picture } from "./pictures";
import { HELP_WORDS } from "./text";

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
  readonly language: Language;
  readonly version: string;
  readonly groups: readonly HelpGroup[];
  readonly pictures: ReadonlyMap<string, Picture>;
}

/** The anchor of a function on the page; functions.json uses the same. */
const anchorOf = (id: string): string => id.toLowerCase();

const MOST_ROWS = 12;

/** The language of the page. */
const Shown = createContext<Language>("en");
const useWords = () => HELP_WORDS[useContext(Shown)];

/** The answers of the functions, which are English in every language. */
const ANSWERS = "en";

const Cells = ({ rows }: { rows: readonly (readonly Cell[])[] }) => {
  const { notation, page } = useWords();
  return (
    <>
      <table lang={ANSWERS}>
        <tbody>
          {rows.slice(0, MOST_ROWS).map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column} className={typeof cell === "number" ? "number" : undefined}>
                  {cellIn(notation, cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > MOST_ROWS && <p>{page.moreRows(rows.length - MOST_ROWS)}</p>}
    </>
  );
};

/** The error that a cell shows, with its reason as the cell says it where the pane is in the language of the page. */
function Refusal({ code, reason }: { readonly code: string; readonly reason: Message }) {
  const { notation } = useWords();
  return (
    <p>
      <strong>{errorIn(notation, code)}</strong> {translated(reason, useContext(Shown))}
    </p>
  );
}

function Example({ formula: asEnglish, result }: Worked) {
  const { notation, page } = useWords();
  const formula = formulaIn(notation, asEnglish);
  const alone = "code" in result ? undefined : aloneIn(result.rows);
  return (
    <div className="example">
      <p>
        <code>{formula}</code>
      </p>
      {"code" in result ? (
        <Refusal {...result} />
      ) : alone !== undefined ? (
        <p style={{ whiteSpace: "pre-line" }} lang={ANSWERS}>
          {cellIn(notation, alone)}
        </p>
      ) : (
        <Wide label={page.given(formula)}>
          <Cells rows={result.rows} />
        </Wide>
      )}
    </div>
  );
}

const signatureOf = ({ id, parameters }: FunctionHelp, separator: string): string =>
  `=CLAY.${id}(${parameters.map(({ name, isOptional }) => (isOptional ? `[${name}]` : name)).join(`${separator} `)})`;

interface EntryProps {
  readonly entry: HelpEntry;
  readonly pictures: ReadonlyMap<string, Picture>;
  /** The function beside which a picture is shown. */
  readonly placeOf: (picture: string) => string;
}

function Pictures({ entry, pictures, placeOf }: EntryProps) {
  const { page } = useWords();
  return entry.pictures.map((name) => {
    const { notes, svg } = pictures.get(name)!;
    return placeOf(name) === entry.id ? (
      <figure key={name}>
        <div dangerouslySetInnerHTML={{ __html: svg }} />
        <figcaption className="quiet">{[`${page.picture(name)}.`, ...notes].join(" ")}</figcaption>
      </figure>
    ) : (
      <p key={name}>{page.drawnUnder(<a href={`#${anchorOf(placeOf(name))}`}>{placeOf(name)}</a>)}</p>
    );
  });
}

function Entry(props: EntryProps) {
  const { id, description, parameters, returns, worked, refused, sources } = props.entry;
  const { notation, page } = useWords();
  return (
    <section aria-labelledby={anchorOf(id)}>
      <h3 id={anchorOf(id)}>{id}</h3>
      <p>
        <code>{signatureOf(props.entry, notation.separator)}</code>
      </p>
      <p>{description}</p>
      {parameters.length > 0 && (
        <dl>
          {parameters.map(({ name, isOptional, isRange, text }) => (
            <div key={name}>
              <dt>
                <code>{name}</code>
                <span className="quiet">{`${isRange ? `, ${page.range}` : ""}${isOptional ? `, ${page.optional}` : ""}`}</span>
              </dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      )}
      <p>{page.gives(returns)}</p>
      {worked.length > 0 && <h4>{page.examples(worked.length)}</h4>}
      {worked.map((one) => (
        <Example key={one.formula} {...one} />
      ))}
      {refused.length > 0 && <h4>{page.refuses}</h4>}
      {refused.map((one) => (
        <Example key={one.formula} {...one} />
      ))}
      <Pictures {...props} />
      {sources.length > 0 && <h4>{page.source}</h4>}
      {sources.map((source) => (
        <p key={source}>{source}</p>
      ))}
    </section>
  );
}

const letterOf = (column: number): string => String.fromCharCode("A".charCodeAt(0) + column);

function ExampleSheet() {
  const { notation, page } = useWords();
  const all = exampleRows();
  return (
    <Wide label={page.sheet.heading}>
      <table className="sheet">
        <thead>
          <tr>
            {firstOf(all).map((heading, column) => (
              <th key={column} scope="col" data-letter={letterOf(column)}>
                {page.sheet.columns[String(heading)] ?? heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {all.slice(1).map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column} className={typeof cell === "number" ? "number" : undefined}>
                  {cell === null ? null : cellIn(notation, cell)}
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
  const { page } = useWords();
  return (
    <nav aria-label={page.functions}>
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
        <a href="#cautions">{page.cautions}</a>
      </p>
    </nav>
  );
}

/** What holds for every function, and what every function refuses. */
function Rules(): ReactElement {
  const { rules, errors } = useWords().page;
  return (
    <>
      <h2 id="rules">{rules.heading}</h2>
      <ul>
        {rules.list.map((rule, index) => (
          <li key={index}>{rule}</li>
        ))}
      </ul>
      <h3 id="errors">{errors.heading}</h3>
      <ul>
        {errors.list.map((error, index) => (
          <li key={index}>{error}</li>
        ))}
      </ul>
      <p>{errors.end}</p>
    </>
  );
}

export function HelpPage({ language, version, groups, pictures }: HelpContents): ReactElement {
  const { page } = HELP_WORDS[language];
  const { about } = CATALOGUES[language];
  const entries = groups.flatMap((group) => group.entries);
  const placeOf = (picture: string): string => entries.find((entry) => entry.pictures.includes(picture))!.id;
  return (
    <Shown.Provider value={language}>
      <header>
        <Languages page="help.html" shown={language} />
        <h1>{page.title}</h1>
        <p className="quiet">{page.version(version)}</p>
        <p>{page.firstMinutes(fileIn("first-minutes.html", language))}</p>
      </header>
      <main>
        <Contents groups={groups} />

        <Rules />

        <h2 id="example-sheet">{page.sheet.heading}</h2>
        <p>{page.sheet.about}</p>
        <ExampleSheet />

        {groups.map(({ title, entries: some }) => (
          <div key={title}>
            <h2 id={slug(title)}>{title}</h2>
            {some.map((entry) => (
              <Entry key={entry.id} entry={entry} pictures={pictures} placeOf={placeOf} />
            ))}
          </div>
        ))}

        <h2 id="cautions">{page.cautions}</h2>
        <ul>
          {about.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
        <p>{about.privacy}</p>
      </main>
    </Shown.Provider>
  );
}
