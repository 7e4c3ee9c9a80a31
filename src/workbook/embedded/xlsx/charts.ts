/**
 * Charts in an .xlsx file as DrawingML scatter charts (ECMA-376 part 1, 20.5 and 21.2): the drawing of a sheet holds a
 * frame for each chart, which leads to a part of its own. Our frames are recognized by their name.
 */
import { unquoted } from "../../address";
import { nth } from "../../../reduction/numeric/lists";
import { evenStep, labelFormat, stepsOf } from "../../look/chart-axis";
import { plotArea } from "../../look/chart-area";
import { markSize } from "../../look/chart-marks";
import { nameAt, textSizes } from "../../look/chart-text";
import { seriesName } from "../../look/series-name";
import { NAME_PLACES, type ChartAxis, type ChartSeries, type NamePlace } from "../../port";
import { CHART_TAG, chartGetters, drawingOf, rangeText, type KeptChart, type SheetZone } from "../look/chart";
import type { Model } from "../engine";
import type { Zone } from "../zones";
import { heldText, plainText, readableText } from "../../file/escapes";
import { PACKAGE_RELATIONS, RELATIONS } from "./namespaces";
import { pathOf, relationsOf, type Parts } from "./parts";
import { makeRoom, within } from "./room";
import { all, append, child, first, parseXml, textInXml } from "../../file/xml";

const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
const CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const CHART_TYPE = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";

/** The name of our frames, before their number. */
const FRAME = "Clayledger chart";

/** English metric units, in which the file gives lengths: 9525 per pixel and 12 700 per point. */
const PER_PIXEL = 9525;
const PER_POINT = 12_700;

const written = (text: string): string => textInXml(readableText(text));

const ink = (colour: string): string => `<a:solidFill><a:srgbClr val="${colour}"/></a:solidFill>`;
const stroke = (points: number, colour = "000000", dash = ""): string =>
  `<a:ln w="${Math.round(points * PER_POINT)}">${ink(colour)}${dash && `<a:prstDash val="${dash}"/>`}<a:round/></a:ln>`;
const NO_LINE = "<a:ln><a:noFill/></a:ln>";

/** A text in a size in points. */
const words = (text: string, size: number, bold: boolean): string =>
  `<c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size * 100}" b="${Number(bold)}"/></a:pPr>` +
  `<a:r><a:rPr lang="en-US" sz="${size * 100}" b="${Number(bold)}"/><a:t>${written(text)}</a:t></a:r></a:p></c:rich></c:tx>`;

const title = (text: string, size: number, bold = false): string =>
  `<c:title>${words(text, size, bold)}<c:overlay val="0"/></c:title>`;

/** Numbers that are not turned, and names that are not broken within a word. */
const [LEVEL, UNBROKEN] = [' rot="0" vert="horz"', ' wrap="none"'];

/** The look of texts, by the attributes of their box. */
const textOf = (size: number, box: string): string =>
  `<c:txPr><a:bodyPr${box}/><a:p><a:pPr><a:defRPr sz="${size * 100}"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>`;

/** The reference to a column, with the numbers that the column held. */
function reference(range: string, values: readonly (number | null)[]): string {
  const points = values.map((value, i) => (value === null ? "" : `<c:pt idx="${i}"><c:v>${value}</c:v></c:pt>`));
  return (
    `<c:numRef><c:f>${written(range)}</c:f><c:numCache><c:formatCode>General</c:formatCode>` +
    `<c:ptCount val="${values.length}"/>${points.join("")}</c:numCache></c:numRef>`
  );
}

type Drawn = NonNullable<ReturnType<typeof drawingOf>>["series"][number];

const LINES = { line: [1.5, ""], thin: [0.75, ""], dashed: [0.75, "dash"] } as const;
/**
 * The fill of open symbols, and that of files of earlier versions: LibreOffice draws symbols without their outline, so that white
 * ones were not to be seen.
 */
const OPEN: readonly string[] = ["BFBFBF", "FFFFFF"];

function marker({ style, symbol = "filled", shape, points }: Drawn, isSmall: boolean | undefined): string {
  if (style !== "points") return `<c:marker><c:symbol val="none"/></c:marker>`;
  const name = symbol === "cross" ? "x" : shape === "triangle" ? "triangle" : "circle";
  const size = markSize(symbol, points.length, isSmall);
  const fill = symbol === "cross" ? "<a:noFill/>" : ink(symbol === "open" ? OPEN[0]! : "000000");
  return `<c:marker><c:symbol val="${name}"/><c:size val="${size}"/><c:spPr>${fill}${stroke(0.75)}</c:spPr></c:marker>`;
}

/** The places of names in the file (ST_DLblPos). */
const PLACES: Readonly<Record<NamePlace, string>> = { above: "t", below: "b", left: "l", right: "r" };

/** The name of a line as a label of its last point. */
function lettering(series: Drawn, size: number): string {
  const { lettered, points, isUpright } = series;
  if (!lettered) return "";
  const shown = (on: boolean): string =>
    `<c:showLegendKey val="0"/><c:showVal val="0"/><c:showCatName val="0"/><c:showSerName val="${Number(on)}"/>` +
    `<c:showPercent val="0"/><c:showBubbleSize val="0"/>`;
  return (
    `<c:dLbls><c:dLbl><c:idx val="${points.length - 1}"/><c:spPr>${isUpright ? ink("FFFFFF") : "<a:noFill/>"}${NO_LINE}</c:spPr>${textOf(size, UNBROKEN)}` +
    `<c:dLblPos val="${PLACES[nameAt(series)]}"/>${shown(true)}</c:dLbl>${shown(false)}</c:dLbls>`
  );
}

function seriesXml(
  series: Drawn,
  index: number,
  [xRange, yRange]: readonly [string, string],
  isSmall: boolean | undefined,
): string {
  const { name, style, points } = series;
  const line = style === "points" ? NO_LINE : stroke(LINES[style][0], "000000", LINES[style][1]);
  return (
    `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${written(heldText(seriesName(name)))}</c:v></c:tx>` +
    `<c:spPr>${line}</c:spPr>${marker(series, isSmall)}${lettering(series, textSizes(isSmall).letters)}` +
    `<c:xVal>${reference(
      xRange,
      points.map((point) => point?.[0] ?? null),
    )}</c:xVal>` +
    `<c:yVal>${reference(
      yRange,
      points.map((point) => point?.[1] ?? null),
    )}</c:yVal><c:smooth val="0"/></c:ser>`
  );
}

/** The axis `of` a chart. The other axis crosses it where the labels are at the left, or at the bottom. */
function axisXml(chart: Pick<KeptChart, "x" | "y" | "isSmall">, of: "x" | "y"): string {
  const [axis, other, id, at] = of === "x" ? [chart.x, chart.y, 1, "b"] : [chart.y, chart.x, 2, "l"];
  const { label, scale, domain, reversed } = axis;
  const size = textSizes(chart.isSmall).axis;
  const step = evenStep(domain, stepsOf(chart.isSmall));
  const units =
    scale === "linear"
      ? `<c:crossBetween val="midCat"/><c:majorUnit val="${step}"/><c:minorUnit val="${step / 5}"/>`
      : `<c:crossBetween val="midCat"/>`;
  // In a small chart the lines between even steps would lie so close that they look grey.
  const isFine = scale === "log" || !chart.isSmall;
  const grid = (name: string, colour: string): string =>
    `<c:${name}><c:spPr>${stroke(0.5, colour)}</c:spPr></c:${name}>`;
  return (
    `<c:valAx><c:axId val="${id}"/><c:scaling>${scale === "log" ? `<c:logBase val="10"/>` : ""}` +
    `<c:orientation val="${reversed ? "maxMin" : "minMax"}"/><c:max val="${domain[1]}"/><c:min val="${domain[0]}"/></c:scaling>` +
    `<c:delete val="0"/><c:axPos val="${at}"/>${grid("majorGridlines", "A6A6A6")}${isFine ? grid("minorGridlines", "E0E0E0") : ""}` +
    `${title(label, size)}<c:numFmt formatCode="${labelFormat(axis, chart.isSmall)}" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/>` +
    `<c:tickLblPos val="nextTo"/><c:spPr>${stroke(0.75)}</c:spPr>${textOf(size, chart.isSmall ? LEVEL : "")}<c:crossAx val="${3 - id}"/>` +
    `<c:crosses val="${other.reversed ? "max" : "min"}"/>${units}</c:valAx>`
  );
}

/** The place of the area within the axes, in shares of the chart (ST_LayoutTarget "inner"). */
const layoutXml = ({ x, y, w, h }: ReturnType<typeof plotArea>): string =>
  `<c:layout><c:manualLayout><c:layoutTarget val="inner"/><c:xMode val="edge"/><c:yMode val="edge"/>` +
  `<c:x val="${x}"/><c:y val="${y}"/><c:w val="${w}"/><c:h val="${h}"/></c:manualLayout></c:layout>`;

/** The part of a chart, whose size is in pixels. `nameOf` gives the name of a sheet. */
function chartXml(
  model: Model,
  { id, width, height }: { readonly id: string; readonly width: number; readonly height: number },
  chart: KeptChart,
  nameOf: (sheetId: string) => string,
): string {
  const drawing = drawingOf(model, id)!;
  const points = (pixels: number): number => (pixels * PER_PIXEL) / PER_POINT;
  const size = { width: points(width), height: points(height) };
  const range = ({ sheetId, zone }: SheetZone): string => rangeText(nameOf(sheetId), zone);
  const sizes = textSizes(chart.isSmall);
  const series = drawing.series.map((one, i) => {
    const { x, y } = nth(chart.series, i);
    return seriesXml(one, i, [range(x), range(y)], chart.isSmall);
  });
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n` +
    `<c:chartSpace xmlns:c="${CHART}" xmlns:a="${MAIN}" xmlns:r="${RELATIONS}"><c:roundedCorners val="0"/><c:chart>` +
    `${title(chart.title, sizes.title, true)}<c:autoTitleDeleted val="0"/><c:plotArea>${layoutXml(plotArea(chart, size))}` +
    `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series.join("")}` +
    `<c:axId val="1"/><c:axId val="2"/></c:scatterChart>` +
    axisXml(chart, "x") +
    axisXml(chart, "y") +
    `<c:spPr>${stroke(0.75)}</c:spPr></c:plotArea><c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>` +
    `<c:spPr>${ink("FFFFFF")}${stroke(0.5, "A6A6A6")}</c:spPr></c:chartSpace>`
  );
}

/** A corner of a frame: a cell, and the offset in pixels within it. */
export interface Corner {
  readonly col: number;
  readonly row: number;
  readonly x: number;
  readonly y: number;
}

const cornerXml = (name: string, { col, row, x, y }: Corner): string =>
  `<xdr:${name}><xdr:col>${col}</xdr:col><xdr:colOff>${Math.round(x * PER_PIXEL)}</xdr:colOff>` +
  `<xdr:row>${row}</xdr:row><xdr:rowOff>${Math.round(y * PER_PIXEL)}</xdr:rowOff></xdr:${name}>`;

const frameXml = (number: number, relation: string, from: Corner, to: Corner): string =>
  `<xdr:twoCellAnchor xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}">${cornerXml("from", from)}${cornerXml("to", to)}` +
  `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${1000 + number}" name="${FRAME} ${number}"/>` +
  `<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>` +
  `<a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" xmlns:r="${RELATIONS}" r:id="${relation}"/>` +
  `</a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;

/** The cell and offset that a length in pixels reaches from one cell. */
function reach(first: number, offset: number, length: number, sizeOf: (index: number) => number): [number, number] {
  let index = first;
  let left = offset + length;
  while (left >= sizeOf(index) && sizeOf(index) > 0) left -= sizeOf(index++);
  return [index, left];
}

const NO_RELATIONS = `<Relationships xmlns="${PACKAGE_RELATIONS}"/>`;

/** The drawing of the sheet; made and named in the sheet if there is none. */
function drawingPath(parts: Parts, sheet: number): string {
  const sheetPath = `xl/worksheets/sheet${sheet}.xml`;
  const root = parts.document(sheetPath).documentElement;
  const relations = parts.document(relationsOf(sheetPath), NO_RELATIONS);
  const present = first(root, "drawing")?.getAttributeNS(RELATIONS, "id");
  if (present) {
    const relation = all(relations, "Relationship").find((one) => one.getAttribute("Id") === present)!;
    return pathOf(relation.getAttribute("Target")!, sheetPath);
  }
  const path = `xl/drawings/clayledger${sheet + 1}.xml`;
  parts.set(path, `<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"/>`);
  addType(parts, path, DRAWING_TYPE);
  const Target = `../drawings/clayledger${sheet + 1}.xml`;
  append(relations.documentElement, "Relationship", { Id: "charts", Type: `${RELATIONS}/drawing`, Target });
  const drawing = append(root, "drawing");
  drawing.setAttributeNS(RELATIONS, "r:id", "charts");
  [...root.children].find(({ localName }) => BEHIND.includes(localName))?.before(drawing);
  return path;
}

/** Elements of a sheet that must come after its drawing. */
const BEHIND = ["legacyDrawing", "legacyDrawingHF", "tableParts", "extLst"];

function addType(parts: Parts, path: string, ContentType: string): void {
  append(parts.document("[Content_Types].xml").documentElement, "Override", { ContentType, PartName: `/${path}` });
}

/** Adds the charts of a sheet to the parts of the file; `sheet` counts from 0. */
export function addCharts(parts: Parts, sheet: number, model: Model, sheetId: string): void {
  const { getters } = model;
  const figures = getters.getFigures(sheetId).filter(({ tag }) => tag === CHART_TAG);
  if (figures.length === 0) return;
  const path = drawingPath(parts, sheet);
  const drawing = parts.document(path);
  const relations = parts.document(relationsOf(path), NO_RELATIONS);
  figures.forEach(({ id, col, row, offset, width, height }, index) => {
    const chart = chartGetters(model).getChartOf(id);
    if (!chart) return;
    const number = index + 1;
    const chartPath = `xl/charts/clayledger${sheet + 1}-${number}.xml`;
    parts.set(
      chartPath,
      chartXml(model, { id, width, height }, chart, (of) => getters.getSheetName(of)),
    );
    addType(parts, chartPath, CHART_TYPE);
    append(relations.documentElement, "Relationship", {
      Id: `clayledger${number}`,
      Type: `${RELATIONS}/chart`,
      Target: `../charts/clayledger${sheet + 1}-${number}.xml`,
    });
    const [lastCol, x] = reach(col, offset.x, width, (at) => getters.getColSize(sheetId, at));
    const [lastRow, y] = reach(row, offset.y, height, (at) => getters.getRowSize(sheetId, at));
    const from = { col, row, x: offset.x, y: offset.y };
    const frame = parseXml(frameXml(number, `clayledger${number}`, from, { col: lastCol, row: lastRow, x, y }));
    drawing.documentElement.append(drawing.importNode(frame.documentElement, true));
  });
}

/** A chart as in the file: sheets by name, and the cells that the chart covers. */
export interface FileChart {
  readonly chart: KeptChart<{ readonly sheet: string; readonly zone: Zone }>;
  readonly from: Corner;
  readonly to: Corner;
}

const RANGE = /^(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/;

const column = (letters: string): number => [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;

function readRange(text: string): { sheet: string; zone: Zone } | undefined {
  const found = RANGE.exec(text.trim());
  if (!found) return undefined;
  const [, quoted, bare] = found;
  const [left, top] = [nth(found, 3), nth(found, 4)];
  const [right = left, bottom = top] = found.slice(5);
  const sheet = unquoted(quoted, bare);
  if (sheet === undefined) return undefined;
  return {
    sheet,
    zone: { left: column(left), right: column(right), top: Number(top) - 1, bottom: Number(bottom) - 1 },
  };
}

const valueOf = (within: Element | undefined, name: string): string | undefined =>
  (within && first(within, name)?.getAttribute("val")) ?? undefined;

const titleOf = (within: Element | undefined): string =>
  within === undefined
    ? ""
    : all(within, "t")
        .map(({ textContent }) => textContent)
        .join("");

function readAxis(axis: Element): ChartAxis {
  const scaling = first(axis, "scaling");
  return {
    label: titleOf(child(axis, "title")),
    scale: valueOf(scaling, "logBase") === undefined ? "linear" : "log",
    domain: [Number(valueOf(scaling, "min")), Number(valueOf(scaling, "max"))],
    reversed: valueOf(scaling, "orientation") === "maxMin",
  };
}

/** Whether the name of a series stands beside its line, and where. */
function readName(
  series: Element,
  style: ChartSeries["style"],
): Pick<ChartSeries, "lettered" | "nameAt" | "isUpright"> {
  const labels = child(series, "dLbls");
  if (!labels) return {};
  const held = valueOf(labels, "dLblPos");
  const place = NAME_PLACES.find((one) => PLACES[one] === held);
  const ground = first(labels, "spPr");
  return {
    lettered: true,
    ...(place && place !== nameAt({ style }) && { nameAt: place }),
    ...(ground && child(ground, "solidFill") && { isUpright: true }),
  };
}

function readSeries(series: Element): FileChart["chart"]["series"][number] | undefined {
  const [x, y] = ["xVal", "yVal"].map((name) => {
    const formula = child(series, name) && first(child(series, name)!, "f");
    return formula && readRange(formula.textContent);
  });
  if (!x || !y) return undefined;
  const look = child(series, "spPr");
  const mark = child(series, "marker");
  const symbol = valueOf(mark, "symbol");
  const isLine = symbol === "none";
  const width = Number(look && first(look, "ln")?.getAttribute("w"));
  const isOpen = mark && OPEN.includes([...all(mark, "srgbClr")][0]?.getAttribute("val") ?? "");
  const style = !isLine ? "points" : valueOf(look, "prstDash") ? "dashed" : width > PER_POINT ? "line" : "thin";
  return {
    name: plainText(first(child(series, "tx") ?? series, "v")?.textContent ?? ""),
    x,
    y,
    style,
    ...(!isLine && { symbol: symbol === "x" ? ("cross" as const) : isOpen ? ("open" as const) : ("filled" as const) }),
    ...(symbol === "triangle" && { shape: "triangle" as const }),
    ...readName(series, style),
  };
}

export const corner = (anchor: Element, name: string): Corner => {
  const at = (of: string): number => Number(first(child(anchor, name)!, of)?.textContent);
  return { col: at("col"), row: at("row"), x: at("colOff") / PER_PIXEL, y: at("rowOff") / PER_PIXEL };
};

/**
 * Takes our charts out of the drawing of a sheet, so that the engine's own reader, which would turn them into other
 * charts, does not see them. It parses every part that it is given, so the parts of these charts go too.
 */
export function takeCharts(parts: Parts, sheetPath: string): FileChart[] {
  if (!parts.has(relationsOf(sheetPath))) return [];
  const drawings = all(parts.document(relationsOf(sheetPath)), "Relationship")
    .filter((relation) => relation.getAttribute("Type")?.endsWith("/drawing"))
    .map((relation) => pathOf(relation.getAttribute("Target") ?? "", sheetPath));
  return drawings
    .filter((path) => parts.has(path) && parts.has(relationsOf(path)))
    .flatMap((path) => {
      const targets = new Map(
        all(parts.document(relationsOf(path)), "Relationship").map((relation) => [
          relation.getAttribute("Id"),
          pathOf(relation.getAttribute("Target") ?? "", path),
        ]),
      );
      const drawing = parts.document(path).documentElement;
      const partOf = (anchor: Element) => targets.get(first(anchor, "chart")?.getAttributeNS(RELATIONS, "id") ?? null);
      const taken = new Set<string>();
      const charts = [...drawing.children].flatMap((anchor) => {
        const name = first(anchor, "cNvPr")?.getAttribute("name") ?? "";
        const part = partOf(anchor);
        if (!name.startsWith(FRAME) || anchor.localName !== "twoCellAnchor" || !part || !parts.has(part)) return [];
        const chart = readChart(parseXml(parts.get(part)!));
        if (!chart) return [];
        anchor.remove();
        taken.add(part);
        return [{ chart, from: corner(anchor, "from"), to: corner(anchor, "to") }];
      });
      for (const anchor of drawing.children) taken.delete(partOf(anchor) ?? "");
      for (const part of taken) parts.delete(part);
      return charts;
    });
}

function readChart(document: Document): FileChart["chart"] | undefined {
  const root = first(document, "chart")!;
  const [x, y] = all(root, "valAx");
  const plot = first(root, "scatterChart");
  if (!x || !y || !plot) return undefined;
  const series = [...plot.children]
    .filter(({ localName }) => localName === "ser")
    .flatMap((one) => readSeries(one) ?? []);
  const heading = child(root, "title");
  const isSmall = Number(heading && first(heading, "defRPr")?.getAttribute("sz")) === 100 * textSizes(true).title;
  return { title: titleOf(heading), x: readAxis(x), y: readAxis(y), series, ...(isSmall && { isSmall }) };
}

/** The part of the engine's data on a sheet that figures need. */
export interface SheetData {
  readonly id: string;
  readonly name: string;
  rowNumber: number;
  colNumber: number;
  readonly cols?: Readonly<Record<number, { readonly size?: number }>>;
  readonly rows?: Readonly<Record<number, { readonly size?: number }>>;
  readonly figures: object[];
}

/** Size in pixels of a column and a row whose size the file does not give. */
const DEFAULT_SIZE = { col: 96, row: 23 };

/** The pixels from the first to before the last of the columns, and of the rows, of a sheet. */
export function spansOf(sheet: SheetData): Record<"across" | "down", (first: number, last: number) => number> {
  const sum = (sizes: SheetData["cols"], usual: number) => (first: number, last: number) => {
    let pixels = 0;
    for (let line = first; line < last; line++) pixels += sizes?.[line]?.size ?? usual;
    return pixels;
  };
  return { across: sum(sheet.cols, DEFAULT_SIZE.col), down: sum(sheet.rows, DEFAULT_SIZE.row) };
}

/**
 * Puts the charts of a file on a sheet of the engine's data, which is made large enough to hold them. Series of sheets
 * that do not exist are dropped.
 */
export function putCharts(sheet: SheetData, charts: readonly FileChart[], sheets: readonly SheetData[]): void {
  const sheetNamed = new Map(sheets.map((one) => [one.name, one]));
  const { across, down } = spansOf(sheet);
  charts.forEach(({ chart, from: wanted, to }, index) => {
    makeRoom(sheet, to);
    const from = {
      ...wanted,
      col: Math.min(wanted.col, sheet.colNumber - 1),
      row: Math.min(wanted.row, sheet.rowNumber - 1),
    };
    const series = chart.series.flatMap((one) => {
      const [x, y] = [one.x, one.y].map((range): SheetZone | undefined => {
        const of = sheetNamed.get(range.sheet);
        if (!of) return undefined;
        makeRoom(of, { col: range.zone.right, row: range.zone.bottom });
        const zone = within(range.zone, of);
        return zone && { sheetId: of.id, zone };
      });
      return x && y ? [{ ...one, x, y }] : [];
    });
    sheet.figures.push({
      id: `${sheet.id}-chart-${index + 1}`,
      tag: CHART_TAG,
      col: from.col,
      row: from.row,
      offset: { x: from.x, y: from.y },
      width: Math.max(80, Math.round(across(from.col, to.col) - from.x + to.x)),
      height: Math.max(80, Math.round(down(from.row, to.row) - from.y + to.y)),
      data: { ...chart, series },
    });
  });
}
