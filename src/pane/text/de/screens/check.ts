export const check = {
  heading: "Blattprüfung",
  purpose:
    "Ein Datenblatt arbeitet über die Namen seiner Zellen, wie immer es aussieht. Hier steht, was auf dem Blatt im Vordergrund fehlt oder doppelt ist und was ohne das nicht geht. Das Nachsehen ändert nichts.",
  look: "Blatt im Vordergrund prüfen",
  looking: "Das Blatt wird angesehen…",
  of: (sheet: string) => `Das Blatt „${sheet}“`,
  version: (version: number | undefined) =>
    version === undefined ? "Es sagt nicht, welche Version des Datenblatts es ist." : `Datenblatt Version ${version}.`,
  whole: "Jeder Name ist einmal vorhanden, und keine Zelle enthält, was sie nicht soll.",
  faulty: (count: number) =>
    count === 1 ? "Eine Formel fehlt oder ist verändert" : `${count} Formeln fehlen oder sind verändert`,
  mend: "Formel schreiben",
  mendAt: (place: string) => `Die Formel von ${place} schreiben`,
  mended: (places: string, sheet: string) => `Die Formel steht in ${places} von „${sheet}“.`,
  stop: (count: number) => (count === 1 ? "Eines geht nicht" : `${count} Dinge gehen nicht`),
  consider: (count: number) => (count === 1 ? "Eines ist anzusehen" : `${count} Dinge sind anzusehen`),
  news: "Neu, seit dieses Blatt angelegt wurde",
  newsHint: "Das Blatt arbeitet so, wie es ist. Das Neue steht auf einem neu eingefügten Blatt.",
  formulas: "Formeln und Blattschutz",
  reenter: "Formeln neu eingeben",
  reentering: "Die Formeln werden neu eingegeben…",
  stoppedReentering: "Angehalten. Die eingegebenen Formeln bleiben: die übrigen noch einmal eingeben.",
  reenterHint: "Für Ergebnisse, die #NAME? zeigen oder leer bleiben, etwa weil das Add-In nach dem Blatt kam.",
  reentered: (found: number, left: number) =>
    found === 0
      ? "Jede Formel ist mit dem Add-In verbunden."
      : left === 0
        ? `${found} ${found === 1 ? "Formel wurde" : "Formeln wurden"} neu eingegeben und ${found === 1 ? "arbeitet" : "arbeiten"}.`
        : `${found} ${found === 1 ? "Formel wurde" : "Formeln wurden"} neu eingegeben; ${left} ${left === 1 ? "zeigt" : "zeigen"} weiter #NAME?: fehlende Namen vergeben oder nachsehen, ob das Add-In da ist.`,
  lift: "Blattschutz aufheben",
  protect: "Alles außer den Eingaben schützen",
  protectHint:
    "Es gibt kein Kennwort: Der Schutz bewahrt Formeln vor Versehen, nicht vor Menschen. Zeilen lassen sich auch mit Schutz einfügen. Um Zeilen zu löschen, den Schutz vorher aufheben: Excel löscht keine Zeile mit einer gesperrten Zelle.",
  lifted: (sheet: string) => `„${sheet}“ ist nicht mehr geschützt.`,
  protected: (sheet: string) => `„${sheet}“ ist bis auf seine Eingaben geschützt.`,
  own: "Ein eigenes Blatt",
  ownHint:
    "Die eigene .xlsx-Datei des Büros, aus der Vorlage gemacht oder hier mit den Namen versehen. Ihre Blätter kommen als neue Blätter herein; kein anderes wird berührt.",
  insert: "Blätter aus einer Datei einfügen…",
  inserting: "Die Blätter werden eingefügt…",
  inserted: (sheets: readonly string[]) => `Eingefügt: ${sheets.map((sheet) => `„${sheet}“`).join(", ")}.`,
  attach: "Eine Zelle benennen",
  attachHint:
    "Auswählen, was es ist, auf dem Blatt seine Zelle (oder die Zellen seiner Spalte oder Zeile) markieren und dann den Namen vergeben.",
  name: "Name",
  missingGroup: "Nicht auf dem Blatt",
  presentGroup: "Auf dem Blatt",
  give: "An die markierten Zellen vergeben",
  move: (name: string) => `${name} trotzdem hierher versetzen`,
  attached: (name: string, place: string, sheet: string) => `${name} steht jetzt bei ${place} von „${sheet}“.`,
  missing: "Namen ohne Zellen",
  missingHint:
    "Einen Namen wählen, seine Zellen auf dem Blatt markieren und den Namen vergeben. Ein Ergebnis wird in seine Zellen geschrieben, sobald das, was es braucht, Zellen hat.",
  find: "Suchen",
  first: "Zuerst nötig",
  missingOf: (title: string, missing: number, all: number) => `${title}: ${missing} von ${all}`,
  nothingFound: "Kein Name ohne Zellen hat das in seiner Bezeichnung.",
  after: (names: string) => `nach ${names}`,
  layout: "Formeln im eigenen Layout",
  layoutHint:
    "Formeln kommen in leere Zellen, die einen Namen haben, und die Zellen behalten ihre Formate. Eine Zelle, die etwas enthält, bleibt, wie sie ist.",
  writeMissing: (count: number) =>
    count === 1 ? "Die fehlende Formel schreiben" : `Alle ${count} fehlenden Formeln schreiben`,
  written: (count: number, sheet: string) =>
    count === 1 ? `1 Formel ist auf „${sheet}“ geschrieben.` : `${count} Formeln sind auf „${sheet}“ geschrieben.`,
  leftHeld: (places: string) => `Unverändert, weil sie etwas anderes enthalten: ${places}.`,
  leftWaiting: (names: string) =>
    `Noch nicht geschrieben: ${names}. Sie brauchen Namen, die noch keine Zellen haben: siehe „Namen ohne Zellen“.`,
  formulaWritten: (name: string) => `Die Formel von ${name} ist geschrieben.`,
  formulaWaits: (names: string) => `Die Formel wird geschrieben, sobald diese Namen Zellen haben: ${names}.`,
  formulaHeld: (places: string) => `${places} enthält etwas anderes, das stehen blieb.`,
  replace: (places: string) => `Die Formel über den Inhalt von ${places} schreiben`,
  fromLoad: "Erste Laststufe",
  fromLoadWrong: "Die Nummer einer Laststufe eingeben.",
  readings: "Ablesungen mehrerer Laststufen",
  readingsHint:
    "Die Spalten der Zeiten und Ablesungen markieren, nebeneinander oder nacheinander: Zeiten und Ablesungen der ersten Laststufe, dann die der nächsten. Liegen die Reihen in Zeilen, werden die Zeilen ebenso markiert.",
  sharedTimes: "Die erste davon hat die Zeiten aller Laststufen",
  sharedTimesHint:
    "Zuerst die Zeiten markieren, dann die Ablesungen jeder Laststufe. Die Ablesungen auf dem Blatt eintippen, oder in der Ansicht „Am Gerät“ zu den Zeiten der Spalte eingeben: Eine Zeit einer Laststufe gälte für alle, daher wird in diese Laststufen keine Datei eingelesen.",
  nameReadings: { columns: "An die markierten Spalten vergeben", rows: "An die markierten Zeilen vergeben" },
  noTimes: (cells: string, load: number, name: string) =>
    `Es wurde nichts benannt: ${cells} wären die Zeiten der Laststufe ${load}, aber die Zahlen steigen nicht wie Minuten seit der Belastung. Hat eine Spalte oder Zeile die Zeiten aller Laststufen, das oben ankreuzen und sie zuerst markieren. Sind es die Zeiten, sie berichtigen, oder ${name} einzeln an sie vergeben.`,
  readingsNamed: (from: number, to: number, sheet: string) =>
    from === to
      ? `Die Ablesungen der Laststufe ${from} haben auf „${sheet}“ ihre Namen.`
      : `Die Ablesungen der Laststufen ${from} bis ${to} haben auf „${sheet}“ ihre Namen.`,
  workings: "Den Rest ab der markierten Zelle anlegen",
  workingsHint:
    "Ergebnisse ohne Zelle bekommen freie Zellen mit Bezeichnungen: die der Laststufen in deren Zeilen, ab der Spalte der markierten Zelle, die anderen darunter. Nichts wird überschrieben. Wenn rechts keine Zelle frei ist, dort zuerst Spalten einfügen.",
  workingsHeld: (place: string) =>
    `Die Ergebnisse würden ${place} bedecken, und dort ist nicht leer. Nichts wurde geschrieben: Eine Zelle markieren, neben und unter der freie Zellen sind, oder zuerst Spalten einfügen.`,
  nameGone: (name: string) => `Danach hat jemand ${name} wieder entfernt: den Namen noch einmal vergeben.`,
  workingsNamed: (sheet: string) =>
    `Die Zellen von „${sheet}“ haben ihre Namen schon: die fehlenden Formeln schreiben und die Beschriftungen eintippen.`,
  laidOut: (count: number, sheet: string) =>
    count === 1 ? `1 Ergebnis wurde auf „${sheet}“ angelegt.` : `${count} Ergebnisse wurden auf „${sheet}“ angelegt.`,
  nothingToLayOut: "Jedes Ergebnis, das berechnet werden kann, hat eine Zelle.",
  oneBlock: "Eine Zelle oder einen Block von Zellen markieren.",
};
