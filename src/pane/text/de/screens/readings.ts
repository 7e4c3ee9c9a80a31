import { whole } from "../numbers";

export const readings = {
  heading: "Ablesungen einlesen",
  promise:
    "Die Datei wird nur gelesen. In der Arbeitsmappe ändert sich nichts, bis im letzten Schritt geschrieben wird.",

  fileHeading: "Datei oder Zeilen",
  open: "Textdatei öffnen",
  openHint: "Text mit Trennzeichen aus jedem Datenlogger: .csv, .txt, .dat",
  paste: "Oder Zeilen hier einfügen",
  usePasted: "Eingefügte Zeilen lesen",
  nothingPasted: "Zuerst die Zeilen einfügen, samt Überschriften.",
  opening: "Die Datei wird gelesen…",
  pasted: "Eingefügte Zeilen",
  other: "Andere Datei",
  lines: (count: number, encoding: string) => `${whole(count)} ${count === 1 ? "Zeile" : "Zeilen"}, ${encoding}`,
  hash: "SHA-256",
  hashHint: "Wird neben die Ablesungen geschrieben, damit die Datei später wiederzuerkennen ist.",
  noHash: "nicht berechnet: Diese Seite hat keine gesicherte Adresse",

  refused: {
    empty: "Die Datei ist leer: die Datei wählen, die der Datenlogger geschrieben hat.",
    archive:
      "Das ist eine Arbeitsmappe oder ein Archiv, kein Text: öffnen und die Ablesungen als Text mit Trennzeichen (.csv) speichern.",
    "not text": "Das ist keine Textdatei: den Text mit Trennzeichen wählen, den der Datenlogger geschrieben hat.",
  },
  notUnicode:
    "Die Datei ist nicht Unicode: Sie wurde als Windows-1252 gelesen; Zeichen wie ° und µ in den Überschriften prüfen.",

  columnsHeading: "Spalten und Einheiten",
  offered: "Das zeigt die Datei von sich aus. Jede Wahl prüfen, vor allem die Einheiten; dann bestätigen.",
  remembered: "Wie bei einer früheren Datei",
  notRemembered: "wie diese Datei zeigt",
  apparatus: "Gerät",
  apparatusHint: "Die Wahl wird unter diesem Namen in der Arbeitsmappe gemerkt",
  preview: "Erste Zeilen der Datei",
  line: "Zeile",
  choose: "auswählen…",
  notSaid: "Die Datei sagt es nicht",
  delimiter: "Spalten sind getrennt durch",
  delimiters: { ",": "Komma", ";": "Semikolon", "\t": "Tabulator" },
  decimal: "Dezimalzeichen",
  decimals: { ".": "Punkt", ",": "Komma" },
  firstLine: "Ablesungen beginnen in Zeile",
  time: "Zeit",
  timeForm: "Zeit in",
  timeForms: {
    s: "Sekunden",
    min: "Minuten",
    h: "Stunden",
    d: "Tagen",
    "h:mm:ss": "h:mm:ss, verstrichen",
    "m:ss": "m:ss, verstrichen",
    clock: "Uhrzeit",
  },
  date: "Datum",
  noDate: "keines, oder bei der Zeit",
  dateOrder: "Reihenfolge im Datum",
  dateOrders: { ymd: "Jahr, Monat, Tag", dmy: "Tag, Monat, Jahr", mdy: "Monat, Tag, Jahr" },
  timesRun: "Zeiten",
  timesRuns: { test: "laufen durch den Versuch", load: "beginnen mit jeder Laststufe neu" },
  reading: "Ablesung",
  readingUnit: "Ablesung in",
  division: "Skalenteile",
  sense: "Ablesungen bei Zusammendrückung",
  senses: { rise: "steigen", fall: "fallen" },
  load: "Last",
  noLoad: "keine Spalte",
  loadKind: "Die Lastspalte enthält",
  loadKinds: { stress: "Spannung", force: "Kraft", number: "Nummer der Laststufe" },
  loadUnit: "Last in",
  lever: "Hebelverhältnis",
  temperature: "Temperatur",
  celsius: "Grad Celsius",
  leverHint: "1, wo die Kraft am Probekörper wirkt",
  noReading: "Zahlen, die keine Ablesung bedeuten",
  noReadingHint: "Durch Leerzeichen getrennt",
  inColumn: (letters: string, what: string) => `Spalte ${letters}, ${what}`,
  roles: { time: "Zeit", date: "Datum", reading: "Ablesung", load: "Last" },
  readAs: (line: number, what: string) => `Zeile ${whole(line)} wird gelesen als: ${what}`,
  readAsTime: (minutes: string) => `${minutes} min`,
  readAsReading: (reading: string, unit: string) => `Ablesung ${reading} ${unit}`,
  readAsLoad: (load: string, unit: string) => `Last ${load} ${unit}`.trim(),
  noneRead: "Mit dieser Wahl ist keine Zeile lesbar. Der erste Fehler:",
  missing: (names: readonly string[]) => `Noch zu wählen: ${names.join("; ")}.`,
  confirm: "Diese Spalten verwenden",
  changed: "Die Spalten haben sich geändert: noch einmal bestätigen.",

  loadsHeading: "Gefundene Laststufen",
  readingLines: "Die Zeilen werden gelesen…",
  stop: "Anhalten",
  stopped: "Angehalten. Es wurde nichts geändert; zum erneuten Lesen die Spalten bestätigen.",
  noRows:
    "Mit diesen Spalten war keine Zeile der Datei lesbar. Die Zeilen unten ansehen und die Wahl darüber berichtigen.",
  way: "Laststufen erkennen an",
  ways: {
    load: "Änderungen der Last",
    restart: "Zeiten, die neu beginnen",
    interval: "dichter werdender Aufzeichnung",
    none: "gar nicht: eine Laststufe",
  },
  rule: "Zum Zeitpunkt 0 einer Laststufe",
  rules: {
    before: "Ablesung davor, Zeit ab erster Zeile",
    first: "erste Zeile der Laststufe",
    "last row": "letzte Zeile davor, mit ihrer Zeit",
  },
  zeroShown: (rule: string, loads: number, of: number) =>
    of === 0
      ? "Die ersten Ablesungen zeigen nicht, wann die Lasten aufgebracht wurden: die ersten Minuten der Kurven ansehen."
      : `„${rule}“: bei ${loads} von ${of} Laststufen liegen die ersten Ablesungen dann am geradesten über Wurzel t.`,
  thinning: "Zeilen für das Blatt",
  thinnings: { even: "etwa 20 je Dekade", hand: "Zeiten wie von Hand", all: "alle, die passen" },
  tooMany: (found: number, most: number) =>
    `So gesucht zerfällt die Datei in ${whole(found)} Abschnitte. Mehr als ${most} können keine Laststufen sein: die Spalte zählt vielleicht Zeilen oder Messfolgen. Die Datei ist als ein Abschnitt gezeigt: hier einen anderen Weg oder oben eine andere Lastspalte wählen, oder von Hand teilen.`,
  whichLoad: "Laststufe auf dem Blatt",
  noneOfThem: "keine",
  loadName: (load: number, stress: string) => `Laststufe ${load}${stress && `, ${stress}`}`,
  stretch: (index: number) => `Abschnitt ${index}`,
  stretchLines: (from: number, to: number) => `Zeilen ${whole(from)} bis ${whole(to)}`,
  stretchRows: (kept: number, rows: number) => `${whole(kept)} von ${whole(rows)} Zeilen auf das Blatt`,
  stretchNone: (rows: number) => `${whole(rows)} ${rows === 1 ? "Zeile" : "Zeilen"}, nicht auf das Blatt`,
  passedReadings: (load: number, passed: string) =>
    `Laststufe ${load} ist die nächste ohne Ablesungen: Laststufe ${passed} hat schon Ablesungen`,
  passedStress: (load: number, stress: string, passed: string) =>
    `Geht zu Laststufe ${load}: Sie ist die nächste mit ${stress} auf dem Blatt. Übergangen: ${passed}. Ist eine Spannung auf dem Blatt falsch eingegeben, dort berichtigen; sonst hier die Laststufe wählen`,
  noLoadOfStress: (stress: string, after: number) =>
    after === 0
      ? `Keine Laststufe des Blatts hat ${stress}: eine falsch eingegebene Spannung auf dem Blatt berichtigen oder hier die Laststufe wählen`
      : `Keine Laststufe des Blatts nach Laststufe ${after} hat ${stress}: eine falsch eingegebene Spannung auf dem Blatt berichtigen oder hier die Laststufe wählen`,
  runsBack: (count: number) =>
    count === 1
      ? "1 Zeile läuft in der Zeit zurück und bleibt weg"
      : `${whole(count)} Zeilen laufen in der Zeit zurück und bleiben weg`,
  join: "Mit dem vorigen verbinden",
  split: "Neue Laststufe beginnen bei Zeile",
  splitButton: "Teilen",
  splitWrong: "Eine Zeile eingeben, die gelesen wurde und innerhalb eines Abschnitts liegt",
  twice: (loads: string) =>
    `Mehr als einem Abschnitt zugewiesen: Laststufe ${loads}. Eine ändern oder die Abschnitte verbinden.`,
  timesShared: (loads: readonly number[]) =>
    `In Laststufe ${loads.join(", ")} wird nichts geschrieben: Die Zeiten stehen in Zellen, die andere Laststufen mitbenutzen, und die der Datei gälten für alle. Spalten mit Zeiten nur für diese Laststufen benennen, oder die Ablesungen auf dem Blatt eintippen.`,
  faultsTitle: (out: number, used: number) =>
    [
      out > 0 && `${whole(out)} ${out === 1 ? "Zeile bleibt" : "Zeilen bleiben"} weg`,
      used > 0 && `${whole(used)} ${used === 1 ? "wird" : "werden"} mit Bemerkung verwendet`,
    ]
      .filter(Boolean)
      .join("; "),
  backwards: "Die Datei beginnt mit ihrer neuesten Zeile: ihre Zeilen werden von der letzten bis zur ersten gelesen.",
  noFaults: "Jede Zeile wird verwendet.",
  fault: (line: number, said: string) => `Zeile ${whole(line)}: ${said}`,
  moreFaults: (count: number) => `und ${whole(count)} weitere, aufgeführt auf dem Blatt der Datei`,
  faults: {
    blank: "keine Ablesung oder keine Zeit; bleibt weg",
    text: "hier keine Zahl; bleibt weg",
    code: "bedeutet keine Ablesung; bleibt weg",
    short: "Zellen fehlen; bleibt weg",
    cut: "die letzte Zeile ist abgeschnitten; bleibt weg",
    "maybe-cut": "die letzte Zeile ist vielleicht abgeschnitten; verwendet, mit dem Datenlogger vergleichen",
    heading: "eine Überschrift, die wiederkehrt; bleibt weg",
    words: "Wörter, keine Ablesungen; bleibt weg",
    back: "die Zeit läuft zurück; bleibt weg, bis sie die Zeile davor überschritten hat",
    repeat: "wiederholt die Zeile davor; bleibt weg",
    "same-time": "dieselbe Zeit wie die Zeile davor mit anderer Ablesung; bleibt weg",
    "no-load": "keine Last; verwendet, unter der Last ringsum",
    midnight: "Mitternacht ist vorbei; verwendet, einen Tag später",
    far: "weit ab von allen anderen; verwendet: bedeutet sie keine Ablesung, zu den Zahlen hinzufügen, die das tun",
  },

  writeHeading: "Auf das Datenblatt schreiben",
  noSheet:
    "In dieser Arbeitsmappe ist kein Datenblatt: eines in der Ansicht „Datenblatt“ einfügen und dann hierher zurückkommen.",
  again: "Noch einmal nachsehen",
  looking: "Datenblätter werden gesucht…",
  holds: (load: number, count: number) =>
    `Laststufe ${load} enthält ${count} ${count === 1 ? "Ablesung: diese ersetzen" : "Ablesungen: diese ersetzen"}`,
  inputs: {
    dial_factor: "Uhrfaktor",
    dial_sense: "Ablesungen bei Zusammendrückung",
    zero_reading: "Nullablesung",
  },
  fillBlank: (dates: number, temperatures: number) =>
    `Leere Zellen aus der Datei füllen: ${[
      ...(dates > 0 ? [dates === 1 ? "1 Datum" : `${dates} Daten`] : []),
      ...(temperatures > 0 ? [temperatures === 1 ? "1 Temperatur" : `${temperatures} Temperaturen`] : []),
    ].join(", ")}`,
  fillIn: (name: string, wanted: string) => `${name} eintragen: ${wanted}`,
  doesNotSuit: (name: string, now: string, wanted: string) =>
    `${name}: auf dem Blatt steht ${now}; die Ablesungen dieser Datei brauchen ${wanted}`,
  longDivision: (name: string, now: string, unit: string) =>
    `${name}: auf dem Blatt steht ${now}, die Ablesungen dieser Datei sind aber Skalenteile: Ist ein Skalenteil ${now} ${unit}?`,
  clear: (name: string) => `Nein: ${name} leeren und auf dem Blatt eingeben`,
  changeTo: (name: string, wanted: string) => `${name} auf ${wanted} ändern`,
  keepAs: (name: string, now: string) => `${name} bei ${now} lassen`,
  tooLarge: (times: string) => `jede Verformung wird ${times}-mal zu groß`,
  tooSmall: (times: string) => `jede Verformung wird ${times}-mal zu klein`,
  shifted: (by: string) => `jede Verformung wird um ${by} der Ablesungen falsch`,
  turnedRound: "Setzung gilt als Hebung",
  chooseOne: "Eines wählen: Sonst liest das Blatt die Datei falsch",
  staying: (count: number, loads: string) =>
    `Das gilt auch für die Ablesungen, die auf dem Blatt bleiben: ${count === 1 ? "Laststufe" : "Laststufen"} ${loads}.`,
  undecided: (names: string) => `Noch kann nichts geschrieben werden: oben wählen, was gilt: ${names}.`,
  inputChanged: (name: string, now: string, wanted: string, file: string) =>
    `${name} wurde für die Ablesungen aus „${file}“ von ${now} auf ${wanted} geändert.`,
  inputKept: (name: string, now: string, wanted: string, file: string) =>
    `${name} blieb bei ${now}; die Ablesungen aus „${file}“ brauchen ${wanted}.`,
  inputCleared: (name: string, now: string, file: string) =>
    `${name} war ${now} und wurde geleert, weil die Ablesungen aus „${file}“ Skalenteile sind.`,
  inputLeft: (name: string, now: string, file: string) => `${name} blieb für die Skalenteile aus „${file}“ bei ${now}.`,
  stressesToo: "Spannungen werden geschrieben, wo das Blatt keine hat.",
  keep: (lines: number) =>
    lines === 1
      ? "Die Zeile der Datei in der Arbeitsmappe aufbewahren"
      : `Alle ${whole(lines)} Zeilen der Datei in der Arbeitsmappe aufbewahren`,
  keepHint: (sheet: string) => `Auf einem eigenen Blatt, „${sheet}“, mit Name und Prüfsumme der Datei.`,
  doesNotKeep: (sheet: string) =>
    `Name und Prüfsumme der Datei kommen auf das Blatt „${sheet}“, ihre Zeilen nicht: die Datei selbst anderswo aufbewahren.`,
  cannotKeep: (most: number) =>
    `Die Datei ist zu lang, um in einer Arbeitsmappe aufbewahrt zu werden, die ${whole(most)} Zeilen fasst. Name und Prüfsumme werden aufbewahrt; die Datei selbst anderswo aufbewahren.`,
  write: (count: number, sheet: string) =>
    `${count} ${count === 1 ? "Laststufe" : "Laststufen"} auf „${sheet}“ schreiben`,
  nothingToWrite:
    "Keine Laststufe ist zu schreiben: oben einem Abschnitt eine Laststufe geben oder zustimmen, dass ersetzt wird, was sie enthält.",
  keeping: "Die Zeilen der Datei werden aufbewahrt…",
  writing: "Die Ablesungen werden geschrieben…",
  stoppedKeeping: (sheet: string, lines: number) =>
    `Angehalten. Auf das Datenblatt wurde nichts geschrieben. Das Blatt „${sheet}“ enthält die ersten ${whole(lines)} Zeilen: zum Fortsetzen noch einmal schreiben, oder es löschen.`,
  sheetRenamed: (sheet: string, now: string) =>
    `Das Blatt „${sheet}“ wurde in „${now}“ umbenannt, während die Datei geschrieben wurde. Auf das Datenblatt wurde nichts geschrieben. Noch einmal schreiben.`,
  sheetGone: (sheet: string) =>
    `Das Blatt „${sheet}“ wurde gelöscht, oder eine andere Arbeitsmappe wurde geöffnet, während die Datei geschrieben wurde. Auf das Datenblatt wurde nichts geschrieben. Das Blatt zurückholen (rückgängig machen oder seine Arbeitsmappe öffnen) oder ein anderes Datenblatt wählen, und noch einmal schreiben.`,
  linesStand: (sheet: string, lines: number) =>
    `Das Blatt „${sheet}“ enthält die ersten ${whole(lines)} Zeilen der Datei: löschen, wenn es nicht gebraucht wird.`,
  failedAfter: (sheet: string) => `Das Blatt „${sheet}“ ist schon da und wird wieder verwendet.`,
  done: (loads: string, sheet: string, fileSheet: string) =>
    `${loads} auf „${sheet}“ geschrieben. Name, Prüfsumme und Zeilen der Datei stehen auf „${fileSheet}“.`,
  doneWithoutLines: (loads: string, sheet: string, fileSheet: string) =>
    `${loads} auf „${sheet}“ geschrieben. Name und Prüfsumme der Datei stehen auf „${fileSheet}“; ihre Zeilen sind nicht in der Arbeitsmappe: die Datei selbst aufbewahren.`,
  notKept: (sheet: string, line: number) =>
    `Zeile ${whole(line)} der Datei steht auf dem Blatt „${sheet}“ nicht so, wie sie gelesen wurde: eine Änderung oder ein Rückgängigmachen kam dazwischen. Auf das Datenblatt wurde nichts geschrieben. Noch einmal schreiben; hilft das nicht, das Häkchen beim Aufbewahren der Zeilen entfernen.`,
  doneLoads: (count: number) => (count === 1 ? "Eine Laststufe wurde" : `${count} Laststufen wurden`),
};
