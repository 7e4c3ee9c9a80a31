/**
 * Corrects the part of styles for the engine's reader, which leaves out styles that it does not understand, and then
 * counts wrongly.
 */
import { say } from "../../../reduction/message";
import { WorkbookError } from "../../port";
import { toEngineFormat } from "../look/formats";
import type { FileStyle } from "./cells";
import { all, append, first } from "../../file/xml";

/** "Excel specifications and limits", Microsoft: unique cell formats. */
const MOST_STYLES = 65_490;
/** Number of colours of a theme. */
const MOST_COLOURS = 12;
/** Number formats of the file have this number or a higher one (ISO/IEC 29500-1, 18.8.30). */
const OWN_FORMATS = 164;

/**
 * The built-in number formats that show a day (ISO/IEC 29500-1, 18.8.30): mm-dd-yy, d-mmm-yy, d-mmm, mmm-yy and m/d/yy h:mm, and
 * those that show one in each East Asian language that has them.
 */
const DAY_FORMATS: readonly number[] = [14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 54, 57, 58];
/** Built-in formats that show a day in one East Asian language and a time in another (18.8.30): a time is less than a day. */
const DAYS_OR_TIMES: readonly number[] = [34, 35, 52, 53, 55, 56];

/**
 * Whether a number format shows a day; one of times alone, such as "h:mm" or "[h]:mm", does not. "e" is the year of an era, "b" a
 * Buddhist year, and "aaa" a day of the week, in East Asian formats.
 */
function showsDay(format: string): boolean {
  const letters = format.replace(/"[^"]*"|[\\_*].|\[[^\]]*\]|General|AM\/PM|A\/P|(?<=[0#?.])E[+-]/gi, "");
  return /[ydegb]|aaa/i.test(letters) || (/m/i.test(letters) && !/[hs]/i.test(letters));
}

/** Built-in number formats that the engine's reader leaves out, in the spelling of the engine. */
const BUILT_IN_FORMATS: Readonly<Record<number, string>> = {
  11: "0.00e",
  37: "#,##0;(#,##0)",
  38: "#,##0;(#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;(#,##0.00)",
  48: "##0.0e",
};

/**
 * Built-in formats of days and times (ISO/IEC 29500-1, 18.8.30) that the engine's reader takes for other ones, such as "mmm-yy" for
 * "m/d/yyyy", in the spelling of the engine. They get numbers of the file's own formats.
 */
const MISREAD_FORMATS: Readonly<Record<string, string>> = {
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "hh:mm a",
  20: "hh:mm",
  45: "mm:ss",
  46: "hhhh:mm:ss",
};

/** An empty text before a format that counts all hours: the engine's reader would make "hh" of "hhhh", and then 36 h are shown as 12 h. */
const ALL_HOURS = '"\u2060"';
const asRead = (format: string): string => (format.startsWith("hhhh") ? `${ALL_HOURS}${format}` : format);

/** Gives the formats that count all hours, as the engine has read them, their own spelling. */
export function putAllHours(formats: Record<number, string>): void {
  for (const [id, format] of Object.entries(formats))
    if (format.startsWith(ALL_HOURS)) formats[Number(id)] = format.slice(ALL_HOURS.length);
}

/** Removes colours with a number that no theme has: the engine would leave out every style with such a colour. */
export function patchColours(document: Document): void {
  for (const name of ["color", "fgColor", "bgColor", "tabColor"])
    for (const colour of all(document, name))
      if (!(Number(colour.getAttribute("theme") ?? 0) < MOST_COLOURS)) colour.removeAttribute("theme");
}

/** Refuses more styles than Excel allows, before they are read one by one. */
export function checkStyleCount(text: string): void {
  const list = /<cellXfs\b[^]*?<\/cellXfs>/.exec(text)?.[0] ?? "";
  const count = list.split("<xf").length - 1;
  if (count > MOST_STYLES)
    throw new WorkbookError(
      say`The file has ${count} cell formats, and Excel takes at most ${MOST_STYLES}: copy the sheets that are wanted into a new workbook.`,
    );
}

/** What a style shows: two styles that differ only in their lock show the same. */
const shows = (style: Element): string =>
  [
    ...["numFmtId", "fontId", "fillId", "borderId"].map((id) => style.getAttribute(id) ?? "0"),
    ...[...(first(style, "alignment")?.attributes ?? [])].map(({ name, value }) => `${name}=${value}`).sort(),
  ].join();

/**
 * Corrects the part in place. Returns, for each style, its positions in the lists of number formats and of borders, and
 * whether it shows numbers as days.
 */
export function patchStyles(document: Document): FileStyle[] {
  const list = first(document, "cellXfs");
  const styles = list ? all(list, "xf") : [];
  patchColours(document);
  for (const fill of all(document, "fill"))
    if (!fill.firstElementChild) append(fill, "patternFill", { patternType: "none" });

  const counts = Object.fromEntries(
    (["font", "fill", "border"] as const).map((kind) => {
      const of = first(document, `${kind}s`);
      return [`${kind}Id`, of ? all(of, kind).length : 0];
    }),
  );
  // The engine counts from 0 to the highest number of a format: the formats of the file get new numbers.
  const numbers = new Map<string, string>();
  const daysFrom = new Map([
    ...DAY_FORMATS.map((id) => [id, 0] as const),
    ...DAYS_OR_TIMES.map((id) => [id, 1] as const),
  ]);
  const renumbered = (element: Element): void => {
    const number = element.getAttribute("numFmtId") ?? "0";
    if (Number(number) < OWN_FORMATS && !(number in MISREAD_FORMATS)) return;
    if (!numbers.has(number)) numbers.set(number, String(OWN_FORMATS + numbers.size));
    element.setAttribute("numFmtId", numbers.get(number)!);
  };
  for (const format of all(document, "numFmt")) {
    renumbered(format);
    const code = format.getAttribute("formatCode") ?? "";
    if (showsDay(code)) daysFrom.set(Number(format.getAttribute("numFmtId")), 0);
    const known = toEngineFormat(code);
    if (known) format.setAttribute("formatCode", asRead(known));
  }
  for (const style of styles) {
    renumbered(style);
    for (const [id, count] of Object.entries(counts))
      if (!(Number(style.getAttribute(id) ?? 0) < count)) style.setAttribute(id, "0");
  }

  const root = document.documentElement;
  const formats = first(document, "numFmts") ?? append(root, "numFmts");
  root.prepend(formats);
  for (const [id, formatCode] of Object.entries(BUILT_IN_FORMATS))
    append(formats, "numFmt", { numFmtId: id, formatCode });
  for (const [id, formatCode] of Object.entries(MISREAD_FORMATS)) {
    const number = numbers.get(id);
    if (number === undefined) continue;
    append(formats, "numFmt", { numFmtId: number, formatCode: asRead(formatCode) });
    if (DAY_FORMATS.includes(Number(id))) daysFrom.set(Number(number), 0);
  }
  const plain = styles[0] && shows(styles[0]);
  return styles.map((style) => {
    const format = Number(style.getAttribute("numFmtId") ?? 0) || 0;
    const border = Number(style.getAttribute("borderId") ?? 0) || 0;
    return { isPlain: shows(style) === plain, format, border, dayFrom: daysFrom.get(format) };
  });
}
