/**
 * The sentences of the head of a German sheet, by the English templates that the pane reads them back as. They are what
 * the formulas of `impossible.ts` and `missing.ts` show with the texts of `formulas`.
 */
export const head: Readonly<Record<string, string>> = {
  "a number greater than {0} and not more than {1}": "Zahl über {0} bis {1}",
  "a number not less than {0} and not more than {1}": "Zahl von {0} bis {1}",
  "a number greater than {0}": "Zahl über {0}",
  "a number not less than {0}": "Zahl nicht unter {0}",
  "a number not more than {0}": "Zahl bis {0}",
  "a number": "Zahl",
  "the number of a load": "Nummer einer Laststufe",

  "specific gravity": "Korndichte Gs",
  diameter: "Durchmesser",
  "initial height": "Anfangshöhe",
  "ring mass": "Masse des Rings",
  "ring + wet soil before": "Ring + feuchter Boden vorher",
  "ring + wet soil after": "Ring + feuchter Boden nachher",
  "ring + dry soil": "Ring + trockener Boden",
  "Ring + wet soil before": "Ring + feuchter Boden vorher",
  "Ring + wet soil after": "Ring + feuchter Boden nachher",
  "Ring + dry soil": "Ring + trockener Boden",
  "dial factor": "Uhrfaktor",
  "zero reading": "Nullablesung",
  "in-situ stress (for OCR, field curve and quality)": "In-situ-Spannung (für OCR, Feldkurve und Güte)",
  "the ring": "der Ring",

  "stresses of the loads, from {0}": "Spannungen der Laststufen, ab {0}",
  "readings of load {0}, in row {1} and below": "Ablesungen der Laststufe {0}, ab Zeile {1}",
  "stress of load {0}, {1}": "Spannung der Laststufe {0}, {1}",
  "Missing: ": "Es fehlt: ",

  "{0}, {1}: choose a word of its list.": "{0}, {1}: ein Wort der Liste wählen.",
  "{0}, {1}: enter {2}.": "{0}, {1}: {2} eingeben.",
  "{0}, {1}, must be heavier than {2}, {3}, or as heavy: correct one of them.":
    "{0}, {1}, muss schwerer sein als {2}, {3}, oder gleich schwer: eines von beiden berichtigen.",
  "{0}, {1}, must be heavier than {2}, {3}: correct one of them.":
    "{0}, {1}, muss schwerer sein als {2}, {3}: eines von beiden berichtigen.",
  "The solids alone would fill the ring: correct the height, {0}, the diameter, {1}, the masses, {2} and {3}, or the specific gravity, {4}.":
    "Die Körner allein würden den Ring füllen: zu berichtigen sind die Höhe, {0}, der Durchmesser, {1}, die Massen, {2} und {3}, oder die Korndichte, {4}.",
  "The water content by {0}, {1}, is above {2} %: correct it.":
    "Der Wassergehalt aus {0}, {1}, liegt über {2} %: berichtigen.",
  "Load {0} gives no point of the curve: its height at the end is not above the height of solids: correct its last readings, the initial height, {1}, the zero reading, {2}, the dial factor, {3}, or the sense of the readings, {4}.":
    "Laststufe {0} gibt keinen Punkt der Kurve: ihre Höhe am Ende liegt nicht über der Höhe der Festmasse: zu berichtigen sind ihre letzten Ablesungen, die Anfangshöhe, {1}, die Nullablesung, {2}, der Uhrfaktor, {3}, oder der Sinn der Ablesungen, {4}.",
  "Load {0} gives no point of the curve: the table of deflection, from {1} on, does not reach its stress, {2}, or the seating stress, {3}: correct the stress, or extend the table.":
    "Laststufe {0} gibt keinen Punkt der Kurve: die Tabelle der Eigenverformung, ab {1}, reicht nicht bis zu ihrer Spannung, {2}, oder zur Anfangsspannung, {3}: die Spannung berichtigen oder die Tabelle ergänzen.",
  "Loads, from {0} on: {1}.": "Laststufen, ab {0}: {1}.",
  "The loads so far give no virgin line yet: read further loads.":
    "Die bisherigen Laststufen geben noch keine Erstbelastungsgerade: weitere Laststufen ablesen.",
};
