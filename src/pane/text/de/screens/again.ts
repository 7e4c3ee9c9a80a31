import { whole } from "../numbers";

/** Eine Datei, die wieder gelesen wird, während der Logger sie noch schreibt. */
export const again = {
  heading: "Diese Datei wurde schon gelesen",
  looking: "Die Datei wird mit den aufbewahrten Zeilen verglichen…",
  same: (sheet: string) => `In der Datei ist nichts neu, seit sie auf das Blatt „${sheet}“ gelesen wurde.`,
  grown: (lines: number, sheet: string) =>
    `${lines === 1 ? "1 Zeile ist" : `${whole(lines)} Zeilen sind`} neu, seit sie auf „${sheet}“ gelesen wurde. Was schon gelesen ist, bleibt, wie es ist.`,
  waits: "Die letzte Zeile und die letzten Reihen einer Laststufe warten, bis die Datei weitergeht.",
  finished: "Die Datei ist fertig: bis zum Ende lesen",
  load: (load: number, rows: number, kept: number, from: number, to: number) =>
    `Laststufe ${load} geht weiter: ${whole(rows)} neue Reihen, Zeilen ${whole(from)} bis ${whole(to)}; ${whole(kept)} auf das Blatt`,
  newLoad: (load: number, rows: number, kept: number, from: number, to: number) =>
    `Laststufe ${load} beginnt: ${whole(rows)} Reihen, Zeilen ${whole(from)} bis ${whole(to)}; ${whole(kept)} auf das Blatt`,
  without: (load: number | null, from: number, to: number) =>
    load === null
      ? `Die Zeilen ${whole(from)} bis ${whole(to)} gehören zu keiner Laststufe des Blatts und werden nicht geschrieben: die Datei unten als neue lesen und ihnen eine Laststufe geben`
      : `Die Zeilen ${whole(from)} bis ${whole(to)} scheinen Laststufe ${load} zu sein, die schon Ablesungen hat: sie werden nicht geschrieben; die Datei unten als neue lesen, um sie zu ersetzen`,
  faults: (count: number) =>
    count === 1
      ? "1 der neuen Zeilen bleibt weg oder wird mit einer Bemerkung verwendet:"
      : `${whole(count)} der neuen Zeilen bleiben weg oder werden mit einer Bemerkung verwendet:`,
  recut: (line: number) =>
    `Zeile ${whole(line)} war abgeschnitten, als sie gelesen wurde, und ist jetzt vollständig. Ihre Ablesung auf dem Blatt`,
  recutChoices: { write: "wird neu geschrieben, wie die Datei sie jetzt hat", leave: "bleibt, wie sie ist" },
  factor: (now: string, wanted: string) =>
    wanted === ""
      ? `Der Uhrfaktor auf dem Blatt ist ${now}, die Ablesungen dieser Datei sind aber Skalenteile: trotzdem schreiben`
      : `Der Uhrfaktor auf dem Blatt ist ${now}; die Ablesungen dieser Datei brauchen ${wanted}: trotzdem schreiben`,
  recutOpen: "Eines wählen: die abgeschnittene Zeile kann eine falsche Ablesung ergeben haben",
  changed: (lines: string, count: number, missing: number) =>
    [
      count > 0 &&
        `${count === 1 ? "Zeile" : "Zeilen"} ${lines}${count > 20 ? ` und ${whole(count - 20)} weitere` : ""} der Datei ${count === 1 ? "hat" : "haben"} sich geändert, seit sie gelesen ${count === 1 ? "wurde" : "wurden"}.`,
      missing > 0 &&
        `Die Datei ist um ${whole(missing)} ${missing === 1 ? "Zeile" : "Zeilen"} kürzer als das, was aufbewahrt ist.`,
      "Nichts wird geschrieben. Um die Datei zu nehmen, wie sie jetzt ist, sie unten als neue lesen: dort wird gefragt, bevor Ablesungen ersetzt werden.",
    ]
      .filter(Boolean)
      .join(" "),
  otherLoads: (line: number) =>
    `Die Datei zeigt jetzt den Beginn einer Laststufe nahe Zeile ${whole(line)}, in schon gelesenen Zeilen. Nichts wird geschrieben: die Datei unten als neue lesen und ihre Laststufen prüfen.`,
  nothing: "Noch ist keine neue Ablesung zum Schreiben bereit.",
  write: (sheet: string) => `Neues auf „${sheet}“ schreiben`,
  writing: "Das Neue wird geschrieben…",
  stopped: "Angehalten. Das Datenblatt wurde nicht geändert: zum Fortsetzen das Neue noch einmal schreiben.",
  done: (readings: number, sheet: string, fileSheet: string) =>
    `${readings === 1 ? "1 Ablesung kam" : `${whole(readings)} Ablesungen kamen`} auf „${sheet}“ hinzu. Die neuen Zeilen und der Hash der Datei stehen auf „${fileSheet}“.`,
  full: (sheet: string) =>
    `Die Liste der Lesungen auf dem Blatt „${sheet}“ ist voll, und nichts wurde geschrieben: unten die Datei als neue lesen.`,
  filled: (load: number, sheet: string) =>
    `In „${sheet}“ wurden inzwischen Ablesungen der Laststufe ${load} eingetragen, und nichts wurde dort geschrieben. Was in der Datei neu ist, steht unten aktuell: mit diesen Ablesungen vergleichen und schreiben, falls es noch fehlt.`,
  orNew: "Oder als neue Datei lesen:",
};
