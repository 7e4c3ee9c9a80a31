/**
 * Requirements of Excel on a workbook beyond its schemas. Limits are those of Microsoft, "Excel specifications and
 * limits", and of Validation and Name in the object model; where Excel repairs a file without documentation, the rule
 * says so.
 */
import {
  areaOf,
  attribute,
  children,
  elements,
  LAST_COLUMN,
  LAST_ROW,
  numberOf,
  overlapping,
  type Area,
  type Package,
} from "./package";
import { elementsOf, ofSheets, repeated, sheetsOf, textOf, type Rule, type Sheet } from "./package-rules";
import type { XmlElement } from "./xml";

const part = (file: Package, kind: string): string => file.targets(file.workbook, kind)[0] ?? "";
const cellsOf = ({ root }: Sheet): XmlElement[] => elements(root, "c");
const referenceOf = (cell: XmlElement): string => attribute(cell, "r") ?? "";
const first = (within: XmlElement, name: string): XmlElement | undefined => children(within, name)[0];

interface Covered {
  readonly area: Area;
  readonly said: string;
}

/** References separated by blanks, as areas; the faults list those that are not references. */
function areasOf(references: string, said: string): { areas: Covered[]; faults: string[] } {
  const areas: Covered[] = [];
  const faults: string[] = [];
  for (const reference of references.split(/\s+/).filter(Boolean)) {
    const area = areaOf(reference);
    if (area) areas.push({ area, said: said || reference });
    else faults.push(`${reference} is no reference`);
  }
  return { areas, faults };
}

const merges = ({ root }: Sheet): { areas: Covered[]; faults: string[] } =>
  areasOf(
    elements(root, "mergeCell")
      .map((one) => attribute(one, "ref") ?? "")
      .join(" "),
    "",
  );

const arrays = (sheet: Sheet): { cell: string; area: Area | undefined; ref: string; said: string }[] =>
  elements(sheet.root, "f")
    .filter((formula) => attribute(formula, "t") === "array")
    .map((formula) => {
      const ref = attribute(formula, "ref") ?? "";
      const cell = referenceOf(formula.parentElement!);
      return { cell, ref, area: areaOf(ref), said: `the array of ${cell} (${ref})` };
    });

const isArea = <T extends { readonly area: Area | undefined }>(one: T): one is T & { readonly area: Area } =>
  one.area !== undefined;

const within = (index: number, count: number): boolean => Number.isInteger(index) && index >= 0 && index < count;

/** Sheets that a formula or reference names before "!". A text may hold an apostrophe, and the name of a sheet a quote; #REF! names none. */
const sheetsNamedIn = (formula: string): string[] =>
  [...formula.matchAll(/"(?:""|[^"])*"|#REF!|'((?:[^']|'')+)'!|([\p{L}\p{N}_.]+)!/gu)].flatMap(
    ([, quoted, bare]) => quoted?.replaceAll("''", "'") ?? bare ?? [],
  );

const SHEET_NAME = /[[\]:*?/\\]|^'|'$/;
/** Names that look like a cell, in either reference style, are refused (ISO/IEC 29500-1, L.2.2.11.2: A1 to XFD1048576). */
const isLikeCell = (name: string): boolean =>
  areaOf(name.toUpperCase()) !== undefined || /^(?:[RC]|R\d*C\d*)$/i.test(name);
const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
const OWN_NAMES = /^_xlnm\.(Print_Area|Print_Titles|_FilterDatabase)$/;
const PLOTS = ["barChart", "lineChart", "scatterChart", "radarChart"];
/** The largest day number that Excel knows, 9999-12-31. */
const LAST_DAY = 2_958_465;
const ERRORS = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", "#GETTING_DATA"]);
const NO_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(E[+-]?\d+)?$/i;

const quotedList = (formula: string): string | undefined => /^"(.*)"$/s.exec(formula)?.[1];

/**
 * The length of a text that a cell shows: its own, or a shared string. An escape such as _x000D_ counts as one
 * character.
 */
const lengthOf = (text: string): number => text.replace(/_x[0-9A-F]{4}_/g, "?").length;

export const EXCEL_RULES: Readonly<Record<string, Rule>> = {
  "names of sheets have up to 31 characters, none of []:*?/\\, and differ": (file) => {
    const names = file.sheets.map(({ name }) => name);
    return [
      ...names
        .filter((name) => name.length < 1 || name.length > 31 || SHEET_NAME.test(name) || /^history$/i.test(name))
        .map((name) => `"${name}" is no name of a sheet`),
      ...repeated(names.map((name) => name.toLowerCase())).map((name) => `two sheets are called "${name}"`),
      ...repeated(file.sheets.map(({ element }) => attribute(element, "sheetId") ?? "")).map(
        (id) => `two sheets have the id ${id}`,
      ),
      ...(file.sheets.some(({ element }) => (attribute(element, "state") ?? "visible") === "visible")
        ? []
        : ["no sheet is visible"]),
    ];
  },
  "the view of each sheet is one of the workbook's, and the sheet in front is there": (file) => {
    const views = elementsOf(file, file.workbook, "workbookView");
    return [
      ...sheetsOf(file).flatMap(({ name, root }) =>
        elements(root, "sheetView")
          .filter((view) => !within(numberOf(view, "workbookViewId"), views.length))
          .map(() => `"${name}" is shown in a view that the workbook has not`),
      ),
      ...views
        .filter((view) => {
          const shown = file.sheets[numberOf(view, "activeTab", 0)];
          return !shown || (attribute(shown.element, "state") ?? "visible") !== "visible";
        })
        .map(() => "the sheet in front is none that can be seen"),
    ];
  },
  "defined names are of the right form, once in each scope, of sheets that are there": (file) => {
    const names = elementsOf(file, file.workbook, "definedName");
    const called = (one: XmlElement): string => attribute(one, "name") ?? "";
    const sheets = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
    return [
      ...names
        .map(called)
        .filter((name) => !OWN_NAMES.test(name) && (!NAME.test(name) || isLikeCell(name) || name.length > 255))
        .map((name) => `"${name}" is no name`),
      ...names
        .filter((one) => !within(numberOf(one, "localSheetId", 0), file.sheets.length))
        .map((one) => `${called(one)} belongs to sheet ${attribute(one, "localSheetId")}, which is not there`),
      ...repeated(
        names.map((one) => `${called(one).toLowerCase()} of ${attribute(one, "localSheetId") ?? "the workbook"}`),
      ).map((name) => `${name} is there twice`),
      ...names.flatMap((one) =>
        sheetsNamedIn(textOf(one))
          .filter((sheet) => !sheets.has(sheet.toLowerCase()))
          .map((sheet) => `${called(one)} is of the sheet "${sheet}", which is not there`),
      ),
      ...names
        .filter((one) => textOf(one).trim() === "" || textOf(one).startsWith("=") || textOf(one).length > 8192)
        .map((one) => `${called(one)} stands for nothing that Excel can read`),
    ];
  },
  "the workbook says that its values are worked out, or asks for the calculation": (file) => {
    const [element] = elementsOf(file, file.workbook, "calcPr");
    const id = element ? numberOf(element, "calcId", 0) : 0;
    const hasFeatures = elementsOf(file, file.workbook, "calcFeatures").length > 0;
    if (element && attribute(element, "fullCalcOnLoad") === "1") return [];
    return [
      // Excel 2019 and later write 191029, and calculate a file with a lower number again when they open it.
      ...(id < 191_029 ? [`calcId is ${id}: Excel calculates every formula again`] : []),
      // [MS-XLSX] 2.4.82.
      ...(hasFeatures ? [] : ["no features of the calculation are listed: Excel calculates every formula again"]),
    ];
  },
  "print areas and titles have up to 255 characters, as the object model takes them": (file) =>
    elementsOf(file, file.workbook, "definedName")
      .filter((one) => OWN_NAMES.test(attribute(one, "name") ?? ""))
      .flatMap((one) => {
        const name = attribute(one, "name")!;
        const text = textOf(one);
        const rows = /^(?:'(?:[^']|'')+'|[^'!]+)!(\$\d+:\$\d+|\$[A-Z]+:\$[A-Z]+)$/;
        const pieces = text.split(/,(?=(?:'(?:[^']|'')+'|[^',!]+)!)/);
        // PageSetup.PrintArea of the object model has the addresses alone, without the names of the sheet.
        const addresses = pieces.map((piece) => piece.slice(piece.lastIndexOf("!") + 1)).join(",");
        const isSound = pieces.every((piece) => {
          const area = piece.slice(piece.lastIndexOf("!") + 1);
          return name.endsWith("Titles") ? rows.test(piece) : areaOf(area) !== undefined && area.includes("$");
        });
        return [
          ...(addresses.length > 255 ? [`${name} has ${addresses.length} characters`] : []),
          ...(isSound ? [] : [`${name} is no list of areas: ${text}`]),
          ...(attribute(one, "localSheetId") === undefined ? [`${name} belongs to no sheet`] : []),
        ];
      }),
  "rows and cells stand in order, each cell in its row": ofSheets(({ root }) => {
    const faults: string[] = [];
    let last = 0;
    for (const row of elements(root, "row")) {
      const number = numberOf(row, "r");
      if (!(number > last && number <= LAST_ROW)) faults.push(`row ${number} stands behind row ${last}`);
      last = number;
      let column = 0;
      for (const cell of children(row, "c")) {
        const area = areaOf(referenceOf(cell));
        if (!area || area.top !== number || area.left <= column) faults.push(`${referenceOf(cell)} is out of order`);
        column = area?.left ?? column;
      }
    }
    return faults;
  }),
  "columns are described once, and no width or height is over Excel's": ofSheets(({ root }) => {
    let last = 0;
    const faults: string[] = [];
    for (const one of elements(root, "col")) {
      const [from, to] = [numberOf(one, "min"), numberOf(one, "max")];
      if (!(from > last && to >= from && to <= LAST_COLUMN))
        faults.push(`columns ${from} to ${to} are described twice`);
      if (numberOf(one, "width", 0) > 255) faults.push(`column ${from} is wider than 255 characters`);
      last = to;
    }
    for (const row of elements(root, "row"))
      if (numberOf(row, "ht", 0) > 409.5) faults.push(`row ${attribute(row, "r")} is higher than 409.5 points`);
    return faults;
  }),
  "styles are there": (file) => {
    const styles = part(file, "styles");
    const list = (name: string): XmlElement[] => elementsOf(file, styles, name).flatMap((one) => children(one));
    const [fonts, fills, borders, xfs, base, dxfs] = [
      "fonts",
      "fills",
      "borders",
      "cellXfs",
      "cellStyleXfs",
      "dxfs",
    ].map((name) => list(name).length);
    const formats = list("numFmts").map((one) => numberOf(one, "numFmtId"));
    const indices: [string, number][] = [
      ["fontId", fonts],
      ["fillId", fills],
      ["borderId", borders],
      ["xfId", base],
    ];
    const wrong = (one: XmlElement): string[] => [
      ...indices.flatMap(([name, count]) =>
        !one.hasAttribute(name) || within(numberOf(one, name), count) ? [] : [`${name} ${attribute(one, name)}`],
      ),
      ...(numberOf(one, "numFmtId", 0) < 164 || formats.includes(numberOf(one, "numFmtId"))
        ? []
        : [`numFmtId ${attribute(one, "numFmtId")}`]),
    ];
    const patterns = list("fills").map((fill) => attribute(fill.firstElementChild!, "patternType"));
    return [
      ...[...list("cellXfs"), ...list("cellStyleXfs")]
        .flatMap(wrong)
        .map((said) => `a style speaks of ${said}, which is not there`),
      ...(patterns[0] === "none" && patterns[1] === "gray125" ? [] : ["the first two fills are not none and gray125"]),
      ...repeated(formats.map(String)).map((id) => `two number formats have the id ${id}`),
      ...list("numFmts")
        .filter(
          (one) =>
            numberOf(one, "numFmtId") < 164 ||
            (attribute(one, "formatCode") ?? "").length > 255 ||
            attribute(one, "formatCode") === "",
        )
        .map((one) => `number format ${attribute(one, "numFmtId")} is none: ${attribute(one, "formatCode")}`),
      ...sheetsOf(file).flatMap(({ name, root }) => [
        ...["c", "row", "col"]
          .flatMap((kind) => elements(root, kind))
          .filter((one) => one.hasAttribute(one.localName === "col" ? "style" : "s"))
          .filter((one) => !within(numberOf(one, one.localName === "col" ? "style" : "s"), xfs))
          .map((one) => `"${name}": ${one.localName} ${attribute(one, "r") ?? ""} has a style that is not there`),
        ...elements(root, "cfRule")
          .filter((one) => one.hasAttribute("dxfId") && !within(numberOf(one, "dxfId"), dxfs))
          .map(() => `"${name}": a conditional format has a look that is not there`),
      ]),
    ];
  },
  "a cell holds what its type says": (file) => {
    const strings = elementsOf(file, part(file, "sharedStrings"), "si").length;
    const wrong = (cell: XmlElement): boolean => {
      const value = first(cell, "v");
      const text = textOf(value);
      const type = attribute(cell, "t") ?? "n";
      if (type === "s") return !first(cell, "f") && !(value && /^\d+$/.test(text) && within(Number(text), strings));
      if (type === "b") return !/^[01]$/.test(text);
      if (type === "e") return !ERRORS.has(text);
      if (type === "n") return value !== undefined && !(NO_NUMBER.test(text) && Number.isFinite(Number(text)));
      return false;
    };
    return sheetsOf(file).flatMap((sheet) =>
      cellsOf(sheet)
        .filter(wrong)
        .map(
          (cell) =>
            `"${sheet.name}": ${referenceOf(cell)} holds "${textOf(first(cell, "v"))}" as ${attribute(cell, "t") ?? "n"}`,
        ),
    );
  },
  "a cell's metadata are there, and only arrays have them": (file) => {
    const metadata = part(file, "sheetMetadata");
    const count = elementsOf(file, metadata, "cellMetadata").flatMap((one) => children(one)).length;
    const types = elementsOf(file, metadata, "metadataType").length;
    const futures = elementsOf(file, metadata, "futureMetadata").flatMap((one) => children(one, "bk")).length;
    const records = elementsOf(file, metadata, "rc");
    return [
      ...records
        .filter((one) => numberOf(one, "t") < 1 || numberOf(one, "t") > types || !within(numberOf(one, "v"), futures))
        .map(() => `${metadata}: a record leads to no type or value`),
      ...sheetsOf(file).flatMap((sheet) =>
        cellsOf(sheet)
          .filter((cell) => cell.hasAttribute("cm"))
          .filter((cell) => {
            const number = numberOf(cell, "cm");
            const formula = first(cell, "f");
            return number < 1 || number > count || !formula || attribute(formula, "t") !== "array";
          })
          .map((cell) => `"${sheet.name}": ${referenceOf(cell)} has metadata that are not there, or is no array`),
      ),
    ];
  },
  "merged cells are of more than one cell and do not overlap": ofSheets((sheet) => {
    const { areas, faults } = merges(sheet);
    return [
      ...faults,
      ...areas
        .filter(({ area }) => area.left === area.right && area.top === area.bottom)
        .map(({ said }) => `${said} is merged with nothing`),
      ...overlapping(areas).map(([a, b]) => `${a.said} and ${b.said} overlap`),
    ];
  }),
  "an array begins at its own cell, and stands in no merged cell and in no other array": ofSheets((sheet) => {
    const all = arrays(sheet);
    const areas = all.filter(isArea);
    const merged = merges(sheet).areas;
    const formulas = new Map(
      elements(sheet.root, "f").map((formula) => [referenceOf(formula.parentElement!), attribute(formula, "t")]),
    );
    const formulaAreas = [...formulas.keys()].flatMap((cell) => {
      const area = areaOf(cell);
      return area ? [{ area, said: cell, cell, isFormula: true }] : [];
    });
    return [
      ...all
        .filter(({ cell, ref, area }) => !area || ref.split(":")[0] !== cell)
        .map(({ cell, ref }) => `the array of ${cell} covers ${ref}`),
      ...overlapping<Covered & { isArray?: true }>([
        ...areas.map((one) => ({ ...one, isArray: true as const })),
        ...merged,
      ])
        .filter(([a, b]) => a.isArray || b.isArray)
        .map(([a, b]) => `${a.said} and ${b.said} overlap`),
      ...overlapping<Covered & { cell?: string; isFormula?: boolean }>([
        ...areas.filter(({ area }) => area.left !== area.right || area.top !== area.bottom),
        ...formulaAreas,
      ])
        .filter(([a, b]) => a.isFormula !== b.isFormula && a.cell !== b.cell)
        .map(([a, b]) => `${a.said} and the formula of ${b.said} meet`),
    ];
  }),
  "no cell has two rules of entry": ofSheets(({ root }) => {
    const found = elements(root, "dataValidation").map((rule) => {
      const sqref = attribute(rule, "sqref") ?? "";
      return areasOf(sqref, `the rule (${attribute(rule, "type")}) of ${sqref}`);
    });
    return [
      ...found.flatMap(({ faults }) => faults),
      ...overlapping(found.flatMap(({ areas }) => areas)).map(([a, b]) => `${a.said} and ${b.said} share a cell`),
    ];
  }),
  "a rule of entry is within Excel's limits, and the bounds of dates are day numbers": ofSheets(({ root }) =>
    elements(root, "dataValidation").flatMap((rule) => {
      const at = attribute(rule, "sqref");
      const [one, two] = ["formula1", "formula2"].map((name) => first(rule, name)?.textContent);
      const bounds = [one, two].filter((bound): bound is string => bound != null);
      const type = attribute(rule, "type");
      const operator = attribute(rule, "operator") ?? "between";
      const limits: [string, number][] = [
        ["errorTitle", 32],
        ["promptTitle", 32],
        ["error", 225],
        ["prompt", 255],
      ];
      const list = type === "list" ? quotedList(one ?? "") : undefined;
      const isDay = (bound: string): boolean => /^\d+$/.test(bound) && Number(bound) >= 1 && Number(bound) <= LAST_DAY;
      return [
        ...limits.flatMap(([name, most]) =>
          (attribute(rule, name) ?? "").length > most ? [`${name} of ${at} has more than ${most} characters`] : [],
        ),
        ...(list !== undefined && (list.length > 255 || list.replaceAll('""', "").includes('"'))
          ? [`the list of ${at} has more than 255 characters or a quote`]
          : []),
        ...(type !== undefined && type !== "none" && one == null ? [`the rule of ${at} has no bound`] : []),
        ...(type !== "list" && type !== "custom" && /between/i.test(operator) && one != null && two == null
          ? [`the rule of ${at} has one bound of two`]
          : []),
        ...(type === "date"
          ? bounds
              .filter((bound) => /^[-+\d.]/.test(bound) && !isDay(bound))
              .map((bound) => `${bound}, a bound of ${at}, is no day`)
          : []),
        ...bounds
          .filter((bound) => bound.startsWith("=") || bound.length > 8192)
          .map((bound) => `${bound} is no bound of ${at}`),
      ];
    }),
  ),
  "formulas have up to 8192 characters, are written without =, and are of sheets that are there": (file) => {
    const names = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
    return sheetsOf(file).flatMap(({ name, root }) =>
      elements(root, "f")
        .filter((formula) => {
          const text = textOf(formula);
          return (
            text.length > 8192 ||
            text.startsWith("=") ||
            (text === "" && attribute(formula, "t") !== "shared") ||
            /\bCLAY\./i.test(text.replace(/"(?:""|[^"])*"/g, "")) ||
            sheetsNamedIn(text).some((sheet) => !names.has(sheet.toLowerCase()))
          );
        })
        .map(
          (formula) =>
            `"${name}": the formula of ${referenceOf(formula.parentElement!)} is none: ${textOf(formula).slice(0, 80)}`,
        ),
    );
  },
  "texts have up to 32767 characters": (file) => [
    ...elementsOf(file, part(file, "sharedStrings"), "si")
      .filter((one) => lengthOf(textOf(one)) > 32_767)
      .map((one) => `a text of ${textOf(one).length} characters: ${textOf(one).slice(0, 40)}`),
    ...sheetsOf(file).flatMap((sheet) =>
      [...elements(sheet.root, "v"), ...elements(sheet.root, "is")]
        .filter((one) => lengthOf(textOf(one)) > 32_767)
        .map((one) => `"${sheet.name}": ${referenceOf(one.parentElement!)} shows ${textOf(one).length} characters`),
    ),
  ],
  "headers and footers have up to 255 characters, and breaks of pages are counted": ofSheets(({ root }) => [
    ...elements(root, "headerFooter")
      .flatMap((one) => children(one))
      .filter((one) => textOf(one).length > 255)
      .map((one) => `${one.localName} has ${textOf(one).length} characters`),
    ...[...elements(root, "rowBreaks"), ...elements(root, "colBreaks")].flatMap((list) => {
      const breaks = children(list, "brk").map((one) => numberOf(one, "id"));
      const isCounted = ["count", "manualBreakCount"].every((name) => numberOf(list, name) === breaks.length);
      return [
        ...(isCounted && breaks.length <= 1026 ? [] : [`${list.localName} counts ${attribute(list, "count")}`]),
        ...(breaks.some((at, index) => !(at > (breaks[index - 1] ?? 0))) ? [`${list.localName} is out of order`] : []),
      ];
    }),
  ]),
  "notes have an author, a cell of their own and a box": ofSheets(({ path }, file) =>
    file.targets(path, "comments").flatMap((comments) => {
      const notes = elementsOf(file, comments, "comment");
      const authors = elementsOf(file, comments, "author").length;
      const boxes = file
        .targets(path, "vmlDrawing")
        .flatMap((drawing) => elementsOf(file, drawing, "ClientData"))
        .map((box) => `${textOf(elements(box, "Row")[0])},${textOf(elements(box, "Column")[0])}`);
      const shapes = file.targets(path, "vmlDrawing").flatMap((drawing) => elementsOf(file, drawing, "shape"));
      const at = (note: XmlElement): string => {
        const area = areaOf(attribute(note, "ref") ?? "");
        return area ? `${area.top - 1},${area.left - 1}` : "nowhere";
      };
      return [
        ...notes
          .filter((one) => !within(numberOf(one, "authorId"), authors))
          .map((one) => `the note of ${attribute(one, "ref")} has no author`),
        ...repeated(notes.map((one) => attribute(one, "ref") ?? "")).map((ref) => `${ref} has two notes`),
        ...notes
          .filter((one) => !boxes.includes(at(one)))
          .map((one) => `the note of ${attribute(one, "ref")} has no box`),
        ...repeated(shapes.map((one) => attribute(one, "id") ?? "")).map((id) => `two boxes have the id ${id}`),
        ...notes
          .filter((one) => textOf(one).length > 32_767)
          .map((one) => `the note of ${attribute(one, "ref")} is too long`),
      ];
    }),
  ),
  "figures have ids of their own, and end behind where they begin": ofSheets(({ path }, file) =>
    file.targets(path, "drawing").flatMap((drawing) => {
      const figures = elementsOf(file, drawing, "cNvPr");
      const anchors = elementsOf(file, drawing, "twoCellAnchor");
      const corner = (anchor: XmlElement, name: string, of: string): number =>
        Number(textOf(elements(first(anchor, name)!, of)[0]));
      return [
        ...repeated(figures.map((one) => attribute(one, "id") ?? "")).map((id) => `two figures have the id ${id}`),
        ...anchors
          .filter((anchor) =>
            (["row", "col"] as const).some((of) => {
              const [from, to] = [corner(anchor, "from", of), corner(anchor, "to", of)];
              const [into, out] = [corner(anchor, "from", `${of}Off`), corner(anchor, "to", `${of}Off`)];
              return !(to > from || (to === from && out >= into)) || from < 0;
            }),
          )
          .map(() => "a figure ends before it begins"),
      ];
    }),
  ),
  "charts have axes that cross, series of their own, and cells of sheets that are there": (file) => {
    const names = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
    return file.paths
      .filter((path) => file.typeOf(path)?.endsWith("drawingml.chart+xml"))
      .flatMap((path) => {
        const root = file.xml(path).documentElement;
        const value = (within_: XmlElement, name: string): string =>
          attribute(elements(within_, name)[0] ?? root, "val") ?? "";
        const axes = ["catAx", "valAx"].flatMap((name) => elements(root, name));
        const own = axes.map((axis) => value(axis, "axId"));
        const crossing = axes.map((axis) => value(axis, "crossAx"));
        // Two plots may share their axes.
        const used = [
          ...new Set(
            PLOTS.flatMap((name) => elements(root, name)).flatMap((chart) =>
              children(chart, "axId").map((one) => attribute(one, "val") ?? ""),
            ),
          ),
        ];
        const series = elements(root, "ser");
        return [
          ...([own, crossing, used].some((ids) => [...ids].sort().join() !== [...own].sort().join()) ||
          repeated(own).length
            ? [`${path}: axes ${own.join()} are crossed by ${crossing.join()} and used as ${used.join()}`]
            : []),
          ...["idx", "order"].flatMap((name) =>
            repeated(series.map((one) => attribute(first(one, name)!, "val") ?? "")).map(
              (id) => `${path}: two series have ${name} ${id}`,
            ),
          ),
          ...axes
            .filter((axis) => {
              // An axis without a given end has the one that Excel finds.
              const [low, high] = [value(axis, "min"), value(axis, "max")].map((end, i) =>
                end === "" ? [1e-9, Infinity][i] : Number(end),
              );
              return !(high > low) || (elements(axis, "logBase").length > 0 && !(low > 0));
            })
            .map(() => `${path}: an axis has no length, or a log axis begins at 0`),
          ...elements(root, "f")
            .map(textOf)
            .filter((formula) => {
              const [sheet, ...more] = sheetsNamedIn(formula);
              return (
                !sheet ||
                more.length > 0 ||
                !names.has(sheet.toLowerCase()) ||
                !areaOf(formula.slice(formula.lastIndexOf("!") + 1))
              );
            })
            .map((formula) => `${path}: ${formula} is no cells of a sheet`),
          ...elements(root, "numCache")
            .filter((cache) => {
              const count = Number(value(cache, "ptCount"));
              const points = elements(cache, "pt");
              return points.some(
                (point) => !within(numberOf(point, "idx"), count) || !Number.isFinite(Number(textOf(point))),
              );
            })
            .map(() => `${path}: a point is no number, or past the last one`),
        ];
      });
  },
  "tables have names of their own, and the names of their columns stand in their cells": (file) => {
    const strings = elementsOf(file, part(file, "sharedStrings"), "si").map(textOf);
    const taken = elementsOf(file, file.workbook, "definedName").map((one) =>
      (attribute(one, "name") ?? "").toLowerCase(),
    );
    const tables = sheetsOf(file).flatMap((sheet) =>
      file.targets(sheet.path, "table").map((path) => ({ sheet, path })),
    );
    const called = tables.map(({ path }) =>
      (attribute(file.xml(path).documentElement, "displayName") ?? "").toLowerCase(),
    );
    return [
      ...repeated(called).map((name) => `two tables are called ${name}`),
      ...called
        .filter((name) => taken.includes(name) || !NAME.test(name))
        .map((name) => `${name} is no name for a table`),
      ...tables.flatMap(({ sheet, path }) => {
        const area = areaOf(attribute(file.xml(path).documentElement, "ref") ?? "");
        const columns = elementsOf(file, path, "tableColumn").map((one) => attribute(one, "name"));
        if (!area || columns.length !== area.right - area.left + 1) return [`${path} has columns for other cells`];
        const [headRows, totals] = (
          [
            ["headerRowCount", 1],
            ["totalsRowCount", 0],
          ] as const
        ).map(([name, otherwise]) => numberOf(file.xml(path).documentElement, name, otherwise));
        // From memory: a table has a row of data.
        if (area.bottom - area.top + 1 <= headRows + totals) return [`${path} has no row of data`];
        if (headRows === 0) return [];
        const row = elements(sheet.root, "row").find((one) => numberOf(one, "r") === area.top);
        const heads = new Map(
          (row ? children(row, "c") : []).map((cell) => [
            areaOf(referenceOf(cell))?.left,
            attribute(cell, "t") === "s" ? strings[Number(textOf(first(cell, "v")))] : undefined,
          ]),
        );
        return columns
          .filter((name, index) => heads.get(area.left + index) !== name?.replace(/_x000a_/gi, "\n"))
          .map((name) => `${path}: the cell of column "${name}" holds something else`);
      }),
    ];
  },
};
