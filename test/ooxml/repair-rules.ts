/**
 * What Excel repairs or refuses in a workbook that fits its schemas. Each rule names its source: MS-OI29500 is
 * Microsoft's "Office Implementation Information for ISO/IEC 29500", with the number of its section; limits are those of
 * Microsoft, "Excel specifications and limits"; a rule without a source says "from memory".
 */
import { checkedFormat, syntaxFault } from "../excel/book/entry";
import { faultOfFormula, faultOfSheets } from "../excel/formulas";
import { chartsOf } from "./chart-rules";
import { FUTURE_FUNCTIONS } from "./future-functions";
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
import { elementsOf, ofSheets, repeated, textOf, type Rule } from "./package-rules";
import type { XmlElement } from "./xml";

const stylesOf = (file: Package): string => file.targets(file.workbook, "styles")[0] ?? "";
const isBetween = (value: number, least: number, most: number): boolean => value >= least && value <= most;
/** The length of a text before it is escaped for XML. */
const lengthOf = (text: string): number => text.replace(/_x[0-9A-F]{4}_/gi, "?").length;
const longer = (one: XmlElement, names: readonly string[], most: number): string[] =>
  names
    .filter((name) => lengthOf(attribute(one, name) ?? "") > most)
    .map((name) => `${name} of ${one.localName} has more than ${most} characters`);

const areasIn = (elements_: readonly XmlElement[], name: string): { area: Area; said: string }[] =>
  elements_.flatMap((one) =>
    (attribute(one, name) ?? "").split(/\s+/).flatMap((reference) => {
      const area = areaOf(reference);
      return area ? [{ area, said: `${one.localName} ${reference}` }] : [];
    }),
  );

/** Names of functions in a formula, in capital letters, without texts and names of sheets. */
const functionsIn = (formula: string): string[] =>
  [
    ...formula
      .replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'(?=!)/g, "x")
      .matchAll(/(?<![\p{L}\p{N}_.])([\p{L}_][\p{L}\p{N}_.]*)\(/gu),
  ].map(([, name]) => name.toUpperCase());

/** Why Excel cannot read the formula of a rule of entry or of a conditional format. */
function faultOfCondition(formula: string, names: ReadonlySet<string>): string | undefined {
  const fault = syntaxFault(formula) ?? faultOfFormula(formula);
  if (fault) return fault;
  // XlsxWriter issue 547: a word without quotes is a name, and the format covers no cell.
  const code = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'!/g, " ");
  if (/\bCLAY\./i.test(code)) return "a function of the add-in has not the name that files have";
  const [newer] = functionsIn(formula).filter((name) => FUTURE_FUNCTIONS.has(name));
  if (newer) return `${newer} has no prefix`;
  const word = [...code.matchAll(/(?<![\p{L}\p{N}_.$])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.(!])/gu)]
    .map(([one]) => one)
    .find((one) => !areaOf(one.toUpperCase()) && !/^(true|false)$/i.test(one) && !names.has(one.toLowerCase()));
  if (word) return `${word} is no name of the workbook`;
  // Microsoft, of data validation and conditional formats: no unions, intersections or array constants (from memory).
  if (/\{/.test(code)) return "it has constants in braces";
  const outside = code
    .replace(/\([^()]*\)/g, "0")
    .replace(/\([^()]*\)/g, "0")
    .replace(/\([^()]*\)/g, "0");
  return /^[^(]*,/.test(outside) ? "it has a comma outside of a function" : undefined;
}

export const REPAIR_RULES: Readonly<Record<string, Rule>> = {
  // Limits of Excel, and the class Functions of the Office.js typings. Seen in Excel as "Removed Records: Formula".
  "formulas have texts, arguments and depths that Excel takes": ofSheets(({ root }) =>
    elements(root, "f").flatMap((one) => {
      const fault = faultOfFormula(textOf(one));
      return fault ? [`the formula of ${attribute(one.parentElement!, "r")}: ${fault}`] : [];
    }),
  ),
  // Apache POI pull request 545, EPPlus issue 214: without apostrophes Excel takes them out of the file.
  "names of sheets that look like cells or numbers stand in apostrophes, outside cells too": (file) =>
    file.paths
      .filter((path) => /(sheet\.main|worksheet|drawingml\.chart)\+xml$/.test(file.typeOf(path) ?? ""))
      .flatMap((path) =>
        ["definedName", "formula", "formula1", "formula2", ...(path.includes("chart") ? ["f"] : [])]
          .flatMap((name) => elementsOf(file, path, name))
          .flatMap((one) => {
            const fault = faultOfSheets(textOf(one));
            return fault ? [`${path}: ${one.localName}: ${fault}`] : [];
          }),
      ),
  // XlsxWriter issues 182 and 547: Excel takes the formats of the whole sheet out of a file with a formula that it cannot read.
  "formulas of conditional formats and of rules of entry are read by Excel": (file) => {
    const names = new Set(
      elementsOf(file, file.workbook, "definedName").map((one) => (attribute(one, "name") ?? "").toLowerCase()),
    );
    return file.sheets.flatMap(({ path, name }) =>
      [
        ...elementsOf(file, path, "cfRule").flatMap((one) => children(one, "formula")),
        ...elementsOf(file, path, "dataValidation")
          .filter((one) => attribute(one, "type") !== "list" || textOf(one).trim()[0] !== '"')
          .flatMap((one) => [...children(one, "formula1"), ...children(one, "formula2")]),
      ].flatMap((one) => {
        const fault = faultOfCondition(textOf(one), names);
        return fault ? [`"${name}": ${textOf(one).slice(0, 60)}: ${fault}`] : [];
      }),
    );
  },
  // MS-XLSX, 2.2.2 (future functions), as XlsxWriter's page "Working with formulas" lists them: without the prefix
  // Excel shows #NAME?.
  "functions newer than the format have their prefix": ofSheets(({ root }) =>
    elements(root, "f").flatMap((one) =>
      functionsIn(textOf(one))
        .filter((name) => FUTURE_FUNCTIONS.has(name) || /^_XLFN\.(SORT|FILTER)$/.test(name))
        .map((name) => `${name} of ${attribute(one.parentElement!, "r")} has no prefix, or not the whole of it`),
    ),
  ),
  // JanMarvin/openxlsx2 issue 1217: Excel takes the formula from cells whose first cell has lost it.
  "a shared formula has the cell that holds it": ofSheets(({ root }) => {
    const shared = elements(root, "f").filter((one) => attribute(one, "t") === "shared");
    const held = new Map(
      shared
        .filter((one) => one.hasAttribute("ref"))
        .map((one) => [attribute(one, "si"), areasIn([one], "ref")[0]?.area] as const),
    );
    return shared
      .filter((one) => {
        const area = held.get(attribute(one, "si"));
        const cell = areaOf(attribute(one.parentElement!, "r") ?? "");
        return !area || !cell || overlapping([{ area }, { area: cell }]).length === 0;
      })
      .map((one) => `${attribute(one.parentElement!, "r")} shares a formula that no cell holds for it`);
  }),
  // MS-OI29500, 2.1.755: the eight error values that Office implements.
  "an error is one that Office reads": ofSheets(({ root }) =>
    elements(root, "c")
      .filter((cell) => attribute(cell, "t") === "e")
      .filter(
        (cell) => !/^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|GETTING_DATA)$/.test(textOf(children(cell, "v")[0])),
      )
      .map((cell) => `${attribute(cell, "r")} holds ${textOf(children(cell, "v")[0])}`),
  ),
  // MS-OI29500, 2.1.568: names that begin with "_xl" are restricted, comments have up to 255 characters, and names 1 to
  // 255. TRUE and FALSE: from memory.
  "no defined name is one that Excel keeps for itself": (file) =>
    elementsOf(file, file.workbook, "definedName").flatMap((one) => {
      const name = attribute(one, "name") ?? "";
      const isOwn = /^_xlnm\.(Print_Area|Print_Titles|_FilterDatabase|Criteria|Extract|Database|Sheet_Title)$/.test(
        name,
      );
      return [
        ...((/^_xl/i.test(name) && !isOwn) || /^(true|false)$/i.test(name) ? [`${name} is a name of Excel's own`] : []),
        ...longer(one, ["comment"], 255),
      ];
    }),
  // EPPlus issue 869: Excel does not open a workbook in which a sheet has both.
  "no name is that of the print area, or of the titles, beside Excel's own": (file) => {
    const inScope = (one: XmlElement): string =>
      `${(attribute(one, "name") ?? "").toLowerCase()} of sheet ${attribute(one, "localSheetId") ?? "none"}`;
    const names = elementsOf(file, file.workbook, "definedName").map(inScope);
    return names.filter((name) => names.includes(`_xlnm.${name}`)).map((name) => `${name} is there as Excel's own too`);
  },
  // From memory: Excel drops blanks at the ends of a text without xml:space (XML 1.0, 2.10, leaves it to the reader).
  "blanks at the ends of texts are kept": (file) =>
    file.paths
      .filter((path) => /spreadsheetml\.(worksheet|sharedStrings|comments)\+xml$/.test(file.typeOf(path) ?? ""))
      .flatMap((path) =>
        elementsOf(file, path, "t")
          .filter((one) => textOf(one).trim() !== textOf(one) && attribute(one, "xml:space") !== "preserve")
          .map((one) => `${path}: blanks of "${textOf(one).slice(0, 40)}" may be lost`),
      ),
  // Limits of Excel.
  "a text has at most 253 line feeds": (file) =>
    elementsOf(file, file.targets(file.workbook, "sharedStrings")[0] ?? "", "si")
      .filter((one) => textOf(one).split("\n").length > 254)
      .map((one) => `a text has too many line feeds: ${textOf(one).slice(0, 40)}`),
  "shared strings are counted": (file) => {
    const path = file.targets(file.workbook, "sharedStrings")[0] ?? "";
    const [list] = elementsOf(file, path, "sst");
    if (!list) return [];
    const { length } = children(list, "si");
    return list.hasAttribute("uniqueCount") && numberOf(list, "uniqueCount") !== length
      ? [`${path} counts ${attribute(list, "uniqueCount")} texts and lists ${length}`]
      : [];
  },
  // From memory: a cell of kind inlineStr holds "is", and no other kind does.
  "a text within its cell is marked so": ofSheets(({ root }) =>
    elements(root, "c")
      .filter((cell) => (attribute(cell, "t") === "inlineStr") !== children(cell, "is").length > 0)
      .map((cell) => `${attribute(cell, "r")} is of kind ${attribute(cell, "t")}`),
  ),
  // MS-OI29500, 2.1.724 and 2.1.727; limits of Excel for fonts, fills and number formats; codes as Excel reads them; the name of a font has
  // up to 31 characters (typings, ChartFont.name; that a file may have no longer ones, from memory).
  "styles are not more than Excel takes, and their codes are read": (file) => {
    const path = stylesOf(file);
    const list = (name: string): XmlElement[] => elementsOf(file, path, name).flatMap((one) => children(one));
    const limits: readonly (readonly [string, number])[] = [
      ["cellXfs", 65_430],
      ["fonts", 512],
      ["fills", 256],
      ["numFmts", 250],
    ];
    const styles = list("cellStyles");
    return [
      ...limits.flatMap(([name, most]) =>
        list(name).length > most ? [`${name} are ${list(name).length}, and ${most} may be`] : [],
      ),
      ...repeated(styles.map((one) => attribute(one, "xfId") ?? "")).map(
        (id) => `two named styles have the xfId ${id}`,
      ),
      ...styles
        .filter((one) => !isBetween(numberOf(one, "builtinId", 0), 0, 53))
        .map((one) => `builtinId ${attribute(one, "builtinId")} is none`),
      ...styles.flatMap((one) => longer(one, ["name"], 255)),
      ...elementsOf(file, path, "font")
        .flatMap((font) => children(font, "name"))
        .flatMap((one) => longer(one, ["val"], 31)),
      ...list("numFmts").flatMap((one) => {
        try {
          checkedFormat(attribute(one, "formatCode"));
          return [];
        } catch {
          return [`Excel does not read the number format ${attribute(one, "formatCode")}`];
        }
      }),
    ];
  },
  // From memory, except the zoom (limits of Excel).
  "a view has selections of its panes, the cells that it names, and a zoom of Excel's": ofSheets(({ root }) =>
    elements(root, "sheetView").flatMap((view) => {
      const [pane] = children(view, "pane");
      const panes = pane
        ? [
            "topLeft",
            ...(numberOf(pane, "xSplit", 0) > 0 ? ["topRight"] : []),
            ...(numberOf(pane, "ySplit", 0) > 0 ? ["bottomLeft"] : []),
            ...(numberOf(pane, "xSplit", 0) > 0 && numberOf(pane, "ySplit", 0) > 0 ? ["bottomRight"] : []),
          ]
        : ["topLeft"];
      const selections = children(view, "selection");
      const at = (one: XmlElement): string => attribute(one, "pane") ?? "topLeft";
      const isWithin = (one: XmlElement): boolean => {
        const cell = areaOf(attribute(one, "activeCell") ?? "A1");
        const selected = areasIn([one], "sqref").map(({ area }) => area);
        if (!cell || (one.hasAttribute("sqref") && selected.length === 0)) return false;
        return (
          !one.hasAttribute("sqref") ||
          selected.some(
            ({ left, right, top, bottom }) => isBetween(cell.left, left, right) && isBetween(cell.top, top, bottom),
          )
        );
      };
      return [
        ...selections.filter((one) => !panes.includes(at(one))).map((one) => `the pane ${at(one)} is not there`),
        ...repeated(selections.map(at)).map((name) => `two selections are of the pane ${name}`),
        ...(pane && !panes.includes(attribute(pane, "activePane") ?? "topLeft")
          ? [`the active pane ${attribute(pane, "activePane")} is not there`]
          : []),
        ...selections.filter((one) => !isWithin(one)).map((one) => `${attribute(one, "activeCell")} is not selected`),
        ...["zoomScale", "zoomScaleNormal", "zoomScalePageLayoutView"]
          .filter((name) => view.hasAttribute(name) && numberOf(view, name) !== 0)
          .filter((name) => !isBetween(numberOf(view, name), 10, 400))
          .map((name) => `${name} is ${attribute(view, name)}`),
      ];
    }),
  ),
  // From memory: sheets that are selected together are a group, and each entry goes into all of them.
  "no sheets are grouped": (file) => {
    const selected = file.sheets.filter(({ path }) =>
      elements(file.xml(path), "sheetView").some((view) => /^(1|true)$/.test(attribute(view, "tabSelected") ?? "")),
    );
    return selected.length > 1 ? [`${selected.map(({ name }) => name).join(", ")} are selected together`] : [];
  },
  // ISO/IEC 29500-1, 18.3.1.46 (codes of a header and footer; "&&" is the sign itself); seamusabshere/xlsx_writer issue 22: with another
  // letter behind "&" Excel repairs the file or drops text. Limits of Excel: 1026 breaks each way.
  "headers and footers have codes that Excel knows, and breaks of pages are not too many": ofSheets(({ root }) => [
    ...["oddHeader", "oddFooter", "evenHeader", "evenFooter", "firstHeader", "firstFooter"]
      .flatMap((name) => elements(root, name))
      .flatMap((one) =>
        [...textOf(one).matchAll(/&(?:&|[LCRPNDTGFAZBIUESXYOH]|K(?:[0-9A-F]{6}|\d\d[+-]\d{3})|"[^"]*"|\d+)?/gi)]
          .filter(([code]) => code === "&")
          .map(({ index }) => `${one.localName} has no code at "${textOf(one).slice(index, index + 10)}"`),
      ),
    ...["rowBreaks", "colBreaks"]
      .flatMap((name) => elements(root, name))
      .filter((one) => children(one, "brk").length > 1_026)
      .map((one) => `${one.localName} has ${children(one, "brk").length} breaks, and 1026 may be`),
  ]),
  // Excel's Page Setup: 10 to 400 %, up to 32,767 pages (both in the typings, PageLayoutZoomOptions); margins below 49
  // inches (from memory).
  "page set-up is within Excel's limits": ofSheets(({ root }) => [
    ...elements(root, "pageSetup").flatMap((one) => [
      ...(isBetween(numberOf(one, "scale", 100), 10, 400) ? [] : [`scale ${attribute(one, "scale")}`]),
      ...["fitToWidth", "fitToHeight"]
        .filter((name) => !isBetween(numberOf(one, name, 1), 0, 32_767))
        .map((name) => `${name} ${attribute(one, name)}`),
    ]),
    ...elements(root, "pageMargins").flatMap((one) =>
      ["left", "right", "top", "bottom", "header", "footer"]
        .filter((name) => !isBetween(numberOf(one, name), 0, 49))
        .map((name) => `the margin ${name} is ${attribute(one, name)}`),
    ),
  ]),
  // Limits of Excel; MS-XLS 2.4.141 for the tip; XlsxWriter's worksheet.write_url for the length of an address.
  "links lead from cells, and are not more or longer than Excel takes": ofSheets(({ root, path }, file) => {
    const links = elements(root, "hyperlink");
    return [
      ...(links.length > 65_530 ? [`${links.length} links`] : []),
      ...links
        .filter((one) => !areaOf(attribute(one, "ref") ?? ""))
        .map((one) => `${attribute(one, "ref")} is no cell`),
      ...links.flatMap((one) => [...longer(one, ["tooltip"], 255), ...longer(one, ["location", "display"], 2_079)]),
      ...file
        .relations(path)
        .filter(({ kind, target }) => kind === "hyperlink" && target.length > 2_079)
        .map(({ target }) => `an address has ${target.length} characters`),
    ];
  }),
  // MS-OI29500, 2.1.681 (columns); exceljs issue 106 (names that differ by capitals or by a blank at the end); the others
  // from memory: Excel repairs the part of the table.
  "tables have numbers and columns of their own, and cells of their own": (file) => {
    const all = file.sheets.flatMap(({ path }) =>
      file.targets(path, "table").map((at) => ({ sheet: path, at, root: file.xml(at).documentElement })),
    );
    return [
      ...repeated(all.map(({ root }) => attribute(root, "id") ?? "")).map((id) => `two tables have the id ${id}`),
      ...all.flatMap(({ sheet, at, root }) => {
        const columns = elements(root, "tableColumn");
        const area = areaOf(attribute(root, "ref") ?? "");
        const filter = areaOf(attribute(elements(root, "autoFilter")[0] ?? root, "ref") ?? "");
        const others = [
          ...areasIn(elements(file.xml(sheet), "mergeCell"), "ref"),
          ...areasIn(
            elements(file.xml(sheet), "f").filter(
              (one) => one.hasAttribute("ref") && attribute(one, "ref")!.includes(":"),
            ),
            "ref",
          ),
          ...all
            .filter((other) => other.sheet === sheet && other.at < at)
            .flatMap((other) => areasIn([other.root], "ref")),
        ];
        return [
          ...columns.filter((one) => !(numberOf(one, "id") > 0)).map(() => "a column has the id 0"),
          ...repeated(columns.map((one) => attribute(one, "id") ?? "")).map((id) => `two columns have the id ${id}`),
          ...repeated(columns.map((one) => (attribute(one, "name") ?? "").trim().toLowerCase())).map(
            (name) => `two columns are called ${name}`,
          ),
          ...columns.flatMap((one) => longer(one, ["name", "uniqueName"], 255)),
          ...longer(root, ["displayName", "name"], 255),
          ...(area && filter && (filter.left !== area.left || filter.right !== area.right || filter.top !== area.top)
            ? ["the filter is not over the columns"]
            : []),
          ...(area ? overlapping([{ area, said: "the table" }, ...others]) : [])
            .filter(([a, b]) => a.said === "the table" || b.said === "the table")
            .map(([a, b]) => `${a.said} and ${b.said} overlap`),
        ].map((said) => `${at}: ${said}`);
      }),
    ];
  },
  // The size of a sheet (limits of Excel); that Excel then drops the drawing, from memory.
  "figures stand on the sheet": ofSheets(({ path }, file) =>
    file.targets(path, "drawing").flatMap((drawing) =>
      [...elementsOf(file, drawing, "from"), ...elementsOf(file, drawing, "to")]
        .filter((corner) => {
          const of = (name: string): number => Number(textOf(children(corner, name)[0]));
          return (
            !isBetween(of("row"), 0, LAST_ROW - 1) ||
            !isBetween(of("col"), 0, LAST_COLUMN - 1) ||
            !(of("rowOff") >= 0 && of("colOff") >= 0)
          );
        })
        .map(() => "a figure stands beside the sheet"),
    ),
  ),
  // Limits of Excel (255 series); typings, ChartSeries.name (255 characters); the caches from memory.
  "charts have series as Excel takes them, and caches of their cells": (file) =>
    chartsOf(file).flatMap(({ path, root }) => {
      const series = elements(root, "ser");
      return [
        ...(series.length > 255 ? [`${series.length} series`] : []),
        ...series
          .flatMap((one) => children(one, "tx"))
          .filter((one) => elements(one, "f").length === 0 && lengthOf(textOf(one)) > 255)
          .map(() => "the name of a series has more than 255 characters"),
        ...elements(root, "numRef").flatMap((reference) => {
          const formula = textOf(children(reference, "f")[0]);
          const area = areaOf(formula.slice(formula.lastIndexOf("!") + 1));
          const [cache] = children(reference, "numCache");
          if (!area || !cache) return [];
          const cells = (area.right - area.left + 1) * (area.bottom - area.top + 1);
          const places = children(cache, "pt").map((one) => numberOf(one, "idx"));
          return [
            ...(children(cache, "ptCount").some((one) => numberOf(one, "val") === cells)
              ? []
              : [`the cache of ${formula} is of other cells`]),
            ...(places.some((at, index) => !(at > (places[index - 1] ?? -1)))
              ? [`points of ${formula} are out of order`]
              : []),
          ];
        }),
      ].map((said) => `${path}: ${said}`);
    }),
  // From memory: each note has one box, and each box stands at one note, with the eight numbers of its place.
  "boxes of notes are one for each note, with a place on the sheet": ofSheets(({ path }, file) =>
    file.targets(path, "comments").flatMap((comments) => {
      const notes = elementsOf(file, comments, "comment").length;
      const boxes = file
        .targets(path, "vmlDrawing")
        .flatMap((drawing) => elementsOf(file, drawing, "ClientData"))
        .filter((one) => attribute(one, "ObjectType") === "Note");
      return [
        ...(boxes.length === notes ? [] : [`${boxes.length} boxes and ${notes} notes`]),
        ...boxes
          .flatMap((box) => elements(box, "Anchor"))
          .filter((anchor) => {
            const [left, , top, , right, , bottom, ...rest] = textOf(anchor).split(",").map(Number);
            const isPlace = left <= right && top <= bottom && right < LAST_COLUMN && bottom < LAST_ROW;
            return rest.length !== 1 || !isPlace || !(left >= 0 && top >= 0);
          })
          .map((anchor) => `the box at ${textOf(anchor)} has no place`),
      ];
    }),
  ),
  // MS-OI29500, conditional formats (from memory): a priority of 1 or more, its own on the sheet, and at most three formulas.
  "conditional formats have a priority of their own": ofSheets(({ root }) => {
    const rules = elements(root, "cfRule");
    return [
      ...repeated(rules.map((one) => attribute(one, "priority") ?? "")).map(
        (one) => `two rules have the priority ${one}`,
      ),
      ...rules.filter((one) => !(numberOf(one, "priority") >= 1)).map(() => "a rule has no priority"),
      ...rules.filter((one) => children(one, "formula").length > 3).map(() => "a rule has more than three formulas"),
      // ISO/IEC 29500-1, 18.17.2: the grammar of a formula has no "=" in front.
      ...rules
        .flatMap((one) => children(one, "formula").map((formula) => textOf(formula)))
        .filter((text) => text === "" || text.startsWith("="))
        .map((text) => `the formula ${text} of a rule is none`),
      ...elements(root, "conditionalFormatting")
        .filter((one) => areasIn([one], "sqref").length !== (attribute(one, "sqref") ?? "").split(/\s+/).length)
        .map((one) => `${attribute(one, "sqref")} are no cells`),
    ];
  }),
  // From memory: 65,534 rules on a sheet; a formula of a rule as a person types it has up to 255 characters.
  "rules of entry are not more or longer than Excel takes": ofSheets(({ root }) => {
    const rules = elements(root, "dataValidation");
    return [
      ...(rules.length > 65_534 ? [`${rules.length} rules`] : []),
      ...rules
        .flatMap((one) => [...children(one, "formula1"), ...children(one, "formula2")])
        .filter((one) => textOf(one).replace(/^"|"$/g, "").length > 255)
        .map((one) => `a bound has ${textOf(one).length} characters`),
    ];
  }),
  // ISO/IEC 29500-1, 18.3.1.85: a hash has its method, its salt and its count.
  "a password is kept whole": ofSheets(({ root }) =>
    elements(root, "sheetProtection")
      .filter((one) => {
        const parts = ["algorithmName", "hashValue", "saltValue", "spinCount"].filter((name) => one.hasAttribute(name));
        return parts.length !== 0 && parts.length !== 4;
      })
      .map(() => "the hash of the password lacks a part"),
  ),
  // ISO/IEC 29500-1, 18.3.1.13 and 18.3.1.73: 0 to 7.
  "lines are grouped up to seven deep": ofSheets(({ root }) =>
    [...elements(root, "row"), ...elements(root, "col")]
      .filter((one) => !isBetween(numberOf(one, "outlineLevel", 0), 0, 7))
      .map(
        (one) =>
          `${one.localName} ${attribute(one, "r") ?? attribute(one, "min")} is ${attribute(one, "outlineLevel")} deep`,
      ),
  ),
  // ISO/IEC 29500-1, 18.8.3: twelve colours of the theme, which the file must have.
  "colours of a theme are there": (file) => {
    const hasTheme = file.targets(file.workbook, "theme").length > 0;
    return [stylesOf(file), ...file.sheets.map(({ path }) => path)].flatMap((path) =>
      ["color", "fgColor", "bgColor", "tabColor"]
        .flatMap((name) => elementsOf(file, path, name))
        .filter((one) => one.hasAttribute("theme") && !(hasTheme && isBetween(numberOf(one, "theme"), 0, 11)))
        .map((one) => `${path}: the colour ${attribute(one, "theme")} of the theme is not there`),
    );
  },
};
