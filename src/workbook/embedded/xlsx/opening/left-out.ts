/** Contents of a file that the workbook can do without, left out if the engine fails on them. */
import { say, type Message } from "../../../../reduction/message";
import { all } from "../../../file/xml";
import { WorkbookError } from "../../../port";
import { Parts } from "../parts";

/** Contents that the engine or its reader may fail on, and that a workbook can do without. */
const DISPENSABLE: readonly {
  readonly called: Message;
  readonly elements: readonly string[];
  readonly parts?: RegExp;
}[] = [
  { called: say`conditional formats`, elements: ["conditionalFormatting", "extLst"] },
  { called: say`rules of entry`, elements: ["dataValidations"] },
  { called: say`pictures and charts`, elements: ["drawing"] },
  { called: say`tables`, elements: ["tableParts"], parts: /^xl\/(?:tables|pivotTables)\// },
  { called: say`links to other files`, elements: [], parts: /^xl\/externalLinks\// },
];

type Dispensable = (typeof DISPENSABLE)[number];

/** The parts without some kinds of contents on their sheets. */
function without(texts: readonly (readonly [string, string])[], kinds: readonly Dispensable[]): Parts {
  const isLeft = (path: string): boolean => !kinds.some((kind) => kind.parts?.test(path));
  const parts = new Parts(texts.filter(([path]) => isLeft(path)));
  const gone = new Set(kinds.flatMap(({ elements }) => elements));
  const sheets = parts.paths().filter((path) => kinds.length > 0 && /^xl\/worksheets\/[^/]+\.xml$/.test(path));
  for (const path of sheets)
    for (const child of [...parts.document(path).documentElement.children])
      if (gone.has(child.localName)) child.remove();
  if (kinds.some((kind) => kind.parts)) {
    const types = parts.document("[Content_Types].xml");
    for (const type of all(types, "Override"))
      if (!isLeft(type.getAttribute("PartName")?.slice(1) ?? "")) type.remove();
  }
  return parts;
}

/**
 * What `make` makes of the parts in steps: from all of them if possible, otherwise without the contents that the
 * engine fails on, one kind after the other and at last all kinds. Says what was left out.
 */
export function* withWhatGoes<T>(
  texts: readonly (readonly [string, string])[],
  make: (parts: Parts) => Generator<number, T>,
): Generator<number, { made: T; left: Message[] }> {
  const attempts = [[], ...DISPENSABLE.map((kind) => [kind]), DISPENSABLE];
  let failure: unknown;
  for (const kinds of attempts)
    try {
      return { made: yield* make(without(texts, kinds)), left: kinds.map(({ called }) => called) };
    } catch (error) {
      if (error instanceof WorkbookError) throw error;
      failure ??= error;
    }
  throw failure;
}
