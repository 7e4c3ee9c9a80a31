/** The page layout of a sheet: settings, headers and footers, print area and titles. */
import { addressOf, COLS, ROWS, type Box } from "../book/address";
import type { Sheet } from "../book/book";
import { invalidArgument, Refusal } from "../refusal";
import { Bag, type BagRules, type Host } from "./being";
import { areasOf, Range, RangeAreas } from "./range";

/** Characters of a header or a footer (Excel specifications and limits). */
const LONGEST_FOOTER = 255;
/** Per cent (Excel's Page Setup). */
const SCALE = { least: 10, most: 400 };
const LONGEST_AREA = 255;

const CODE = /&(?:&|[LCRPNDTGFAZBIUESXYOH]|K(?:[0-9A-F]{6}|\d\d[+-]\d{3})|"[^"]*"|\d+)?/gi;

/** The areas of an address, with the list separator of this Excel between them. */
const printed = (bag: Bag, address: string): Box[] =>
  address
    .split(bag.host.switches.listSeparator)
    .flatMap((part) => {
      if (/[,;]/.test(part)) throw invalidArgument(`"${address}" is no address that this Excel knows.`);
      return areasOf(bag.host.book, sheetOf(bag), part);
    })
    .map(({ box }) => box);

/** The limit is that of the three sections together, with the code before each that is not empty: "&L", "&C", "&R". */
const footer =
  (member: string) =>
  (bag: Bag, text: unknown): void => {
    // The codes of a header (ISO/IEC 29500-1, 18.3.1.46): with another letter behind "&" Excel drops text.
    const [wrong] = [...String(text ?? "").matchAll(CODE)].filter(([code]) => code === "&");
    if (wrong) throw invalidArgument(`A header or footer has no code at "${String(text).slice(wrong.index)}".`);
    const kind = member.replace(/^(left|center|right)/, "");
    const length = ["left", "center", "right"]
      .map((side) => (`${side}${kind}` === member ? text : bag.get(`${side}${kind}`)))
      .reduce((sum: number, section) => sum + (typeof section === "string" && section ? section.length + 2 : 0), 0);
    if (length > LONGEST_FOOTER)
      throw invalidArgument(`A header or footer takes at most ${LONGEST_FOOTER} characters, not ${length}.`);
  };

type Lines = "rows" | "cols";

function setTitles(bag: Bag, range: Range | string, lines: Lines): void {
  bag.mayChange();
  const box = range instanceof Range ? range.box : areasOf(bag.host.book, sheetOf(bag), range)[0].box;
  const isWhole = lines === "rows" ? box.cols === COLS : box.rows === ROWS;
  if (!isWhole) throw invalidArgument(`Titles are whole ${lines === "rows" ? "rows" : "columns"}.`);
  bag.put(lines === "rows" ? "titleRows" : "titleColumns", addressOf(box, "$"));
}

const sheets = new WeakMap<object, Sheet>();
const sheetOf = (bag: Bag): Sheet => sheets.get(bag.held)!;

const RULES: BagRules = {
  defaults: {
    "PageLayout.orientation": "Portrait",
    "PageLayout.zoom": { scale: 100 },
    "PageLayout.printErrors": "AsDisplayed",
  },
  checks: {
    ...Object.fromEntries(
      ["leftHeader", "centerHeader", "rightHeader", "leftFooter", "centerFooter", "rightFooter"].map((part) => [
        `HeaderFooter.${part}`,
        footer(part),
      ]),
    ),
    "PageLayout.zoom": (_, zoom) => {
      const { scale, horizontalFitToPages, verticalFitToPages } = zoom as Record<string, number | undefined>;
      if (scale !== undefined && scale !== null && !(scale >= SCALE.least && scale <= SCALE.most))
        throw invalidArgument(`A scale goes from ${SCALE.least} to ${SCALE.most} per cent.`);
      for (const pages of [horizontalFitToPages, verticalFitToPages])
        if (pages !== undefined && pages !== null && !(Number.isInteger(pages) && pages >= 0 && pages <= 32_767))
          throw invalidArgument(`A sheet cannot be fitted to ${pages} pages.`);
    },
  },
  methods: {
    "PageLayout.setPrintArea": (bag, area) => {
      bag.mayChange();
      const boxes =
        area instanceof Range ? [area.box] : area instanceof RangeAreas ? area.boxes : printed(bag, area as string);
      const text = boxes.map((box) => addressOf(box, "$")).join(",");
      if (bag.host.switches.limitsPrintArea && text.length > LONGEST_AREA)
        throw invalidArgument(`A print area takes at most ${LONGEST_AREA} characters, not ${text.length}.`);
      bag.put("printArea", text);
    },
    "PageLayout.getPrintAreaOrNullObject": (bag) => {
      const text = bag.get("printArea") as string | undefined;
      if (!text) return null;
      return new RangeAreas(
        bag.host,
        sheetOf(bag),
        areasOf(bag.host.book, sheetOf(bag), text).map(({ box }) => box),
      );
    },
    "PageLayout.setPrintTitleRows": (bag, range) => setTitles(bag, range as Range | string, "rows"),
    "PageLayout.setPrintTitleColumns": (bag, range) => setTitles(bag, range as Range | string, "cols"),
    "PageLayout.setPrintMargins": (bag, unit, margins) => {
      bag.mayChange();
      const points = { Points: 1, Inches: 72, Centimeters: 72 / 2.54 }[unit as string]!;
      for (const [side, length] of Object.entries(margins as Record<string, number>))
        bag.put(`${side}Margin`, length * points);
    },
  },
};

export function pageLayoutOf(host: Host, sheet: Sheet): Bag {
  sheets.set(sheet.settings, sheet);
  return new Bag(host, "PageLayout", sheet.settings, "pageLayout.", RULES, () => {
    if (host.switches.hasNoPrinter) throw new Refusal("GeneralException", "There is no printer.");
  });
}
