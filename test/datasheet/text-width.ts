/** Widths of texts in the sheets' font, by the metrics of Helvetica, which Arial shares (Adobe Font Metrics files, Core 14; from memory). */

/** Widths in thousandths of the font size. */
const REGULAR =
  "!278 #556 %889 &667 '191 (333 )333 *389 +584 ,278 -333 .278 /278 :278 ;278 =584 ?556 A667 B667 C722 D722 E667 F611 G778 " +
  "H722 I278 J500 K667 L556 M833 N722 O778 P667 Q778 R722 S667 T611 U722 V667 W944 X667 Y667 Z611 _556 a556 b556 c500 d556 " +
  "e556 f278 g556 h556 i222 j222 k500 l222 m833 n556 o556 p556 q556 r333 s500 t278 u556 v500 w722 x500 y500 z500";
const BOLD =
  "!333 #556 %889 &722 '238 (333 )333 *389 +584 ,278 -333 .278 /278 :333 ;333 =584 ?611 A722 B722 C722 D722 E667 F611 G778 " +
  "H722 I278 J556 K722 L611 M833 N722 O778 P667 Q778 R722 S667 T611 U722 V667 W944 X667 Y667 Z611 _556 a556 b611 c556 d611 " +
  "e556 f333 g611 h611 i278 j278 k556 l278 m889 n611 o611 p611 q611 r389 s556 t333 u611 v556 w778 x556 y556 z500";

const tableOf = (list: string): ReadonlyMap<string, number> =>
  new Map([[" ", 278], ...list.split(" ").map((one): [string, number] => [one.slice(0, 1), Number(one.slice(1))])]);
const TABLES = { regular: tableOf(REGULAR), bold: tableOf(BOLD) };
/** The width of a digit, and of any other character. */
const OTHER = 556;

/** 9 points at 96 pixels per inch. */
const PIXELS = 12;

/** The width of a text in pixels. */
export const textWidth = (text: string, weight: keyof typeof TABLES): number =>
  ([...text].reduce((sum, sign) => sum + (TABLES[weight].get(sign) ?? OTHER), 0) * PIXELS) / 1000;
