/** The parts of the data sheet in a language, as the layout places them. */
import { isSpill, isTable, type Column, type Field, type Part, type Spill, type Table } from "../field";
import type { CellValue } from "../../workbook/port";
import { wordIn } from "../list-words";
import { LOAD_PARTS, LOAD_WORKINGS } from "../load-table";
import { CAUTION, FORM, MISSING, REMARK_PARTS, REMARKS, RESULTS, TYPED_REMARKS, type Section } from "../main-page";
import { PICK_TABLE } from "../pick-table";
import type { SheetLanguage } from "./language";
import { choicesIn, formulaIn, labelIn, noteIn, titleIn, wordsOf, type SheetWords } from "./words";

const optionally = (words: SheetWords, formula: string | undefined): string | undefined =>
  formula === undefined ? undefined : formulaIn(words, formula);

/** The word of a list at the start, where it depends on the system: a unit. */
function unitAtStart({ language }: SheetWords, { choices, value }: Field): Pick<Field, "value"> {
  if (!choices || typeof value !== "object") return {};
  const own = (word: CellValue): CellValue => (typeof word === "string" ? wordIn(language, word) : word);
  return { value: { SI: own(value.SI), US: own(value.US) } };
}

const fieldIn = (words: SheetWords, field: Field): Field => ({
  ...field,
  label: labelIn(words, field.label),
  note: noteIn(words, field.note),
  ...choicesIn(words, field),
  ...unitAtStart(words, field),
  formula: optionally(words, field.formula),
});

const spillIn = (words: SheetWords, spill: Spill): Spill => ({
  ...spill,
  label: titleIn(words, spill.label),
  note: noteIn(words, spill.note) ?? "",
  formula: formulaIn(words, spill.formula),
});

function columnIn(words: SheetWords, column: Column): Column {
  const { label, heading, note, formula, start, startInput, byRow } = column;
  return {
    ...column,
    label: labelIn(words, label),
    heading: [titleIn(words, heading[0]), titleIn(words, heading[1])],
    note: noteIn(words, note),
    ...choicesIn(words, column),
    formula: optionally(words, formula),
    start: optionally(words, start),
    ...(startInput && {
      startInput: {
        ...startInput,
        label: labelIn(words, startInput.label),
        note: noteIn(words, startInput.note),
      },
    }),
    ...(byRow && {
      byRow: byRow.map((row) => ({
        ...row,
        formula: optionally(words, row.formula),
        value: typeof row.value === "string" ? (words.titles[row.value] ?? labelIn(words, row.value)) : row.value,
      })),
    }),
  };
}

const tableIn = (words: SheetWords, table: Table): Table => ({
  ...table,
  columns: table.columns.map((column) => columnIn(words, column)),
});

const partIn = (words: SheetWords, part: Part): Part =>
  isTable(part) ? tableIn(words, part) : isSpill(part) ? spillIn(words, part) : fieldIn(words, part);

const sectionIn = (words: SheetWords, section: Section): Section => ({
  ...section,
  title: titleIn(words, section.title),
  ...(section.beside !== undefined && { beside: titleIn(words, section.beside) }),
  panels: section.panels.map((parts) => parts.map((part) => partIn(words, part))),
});

/** Every part of the sheet but its readings. */
export interface PartsInLanguage {
  readonly form: readonly Section[];
  readonly results: readonly Section[];
  readonly missing: Field;
  readonly typedRemarks: readonly Field[];
  readonly remarks: readonly Field[];
  readonly remarkParts: readonly Field[];
  readonly caution: readonly string[];
  readonly loadParts: typeof LOAD_PARTS;
  readonly loadWorkings: typeof LOAD_WORKINGS;
  readonly pickTable: Table;
}

export function partsIn(language: SheetLanguage): PartsInLanguage {
  const words = wordsOf(language);
  return {
    form: FORM.map((section) => sectionIn(words, section)),
    results: RESULTS.map((section) => sectionIn(words, section)),
    missing: fieldIn(words, MISSING),
    typedRemarks: TYPED_REMARKS.map((field) => fieldIn(words, field)),
    remarks: REMARKS.map((field) => fieldIn(words, field)),
    remarkParts: REMARK_PARTS.map((field) => fieldIn(words, field)),
    caution: CAUTION.map((line) => titleIn(words, line)),
    loadParts: LOAD_PARTS.map(({ title, columns, note }) => ({
      title: titleIn(words, title),
      columns: columns.map((column) => columnIn(words, column)),
      ...(note !== undefined && { note: titleIn(words, note) }),
    })),
    loadWorkings: {
      title: titleIn(words, LOAD_WORKINGS.title),
      columns: LOAD_WORKINGS.columns.map((column) => columnIn(words, column)),
    },
    pickTable: tableIn(words, PICK_TABLE),
  };
}
