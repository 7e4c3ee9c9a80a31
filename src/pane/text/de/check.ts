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
  stop: (count: number) => (count === 1 ? "Eines geht nicht" : `${count} Dinge gehen nicht`),
  consider: (count: number) => (count === 1 ? "Eines ist anzusehen" : `${count} Dinge sind anzusehen`),
  news: "Neu, seit dieses Blatt angelegt wurde",
  newsHint: "Das Blatt arbeitet so, wie es ist. Das Neue steht auf einem neu eingefügten Blatt.",
  formulas: "Formeln und Blattschutz",
  reenter: "Formeln neu eingeben",
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
    "Auswählen, was es ist, auf dem Blatt seine Zelle (oder die Zellen seiner Spalte) markieren und dann den Namen vergeben.",
  name: "Name",
  missingGroup: "Nicht auf dem Blatt",
  presentGroup: "Auf dem Blatt",
  give: "An die markierten Zellen vergeben",
  move: (name: string) => `${name} trotzdem hierher versetzen`,
  attached: (name: string, place: string, sheet: string) => `${name} steht jetzt bei ${place} von „${sheet}“.`,
  oneBlock: "Eine Zelle oder einen Block von Zellen markieren.",
};
