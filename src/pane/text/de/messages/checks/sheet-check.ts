/** What the check of the sheet finds, and the reasons why cells cannot get a name. */
export const sheetCheck: Readonly<Record<string, string>> = {
  "1 column": "1 Spalte",
  "{0} columns": "{0} Spalten",
  "1 row": "1 Zeile",
  "{0} rows": "{0} Zeilen",
  "Selected: {0}. Select the times, and the readings of each load.":
    "Markiert: {0}. Die Zeiten und die Ablesungen jeder Laststufe markieren.",
  "Selected: {0}. Every load has two, its times and its readings: select both of each load.":
    "Markiert: {0}. Jede Laststufe hat zwei, Zeiten und Ablesungen: beide jeder Laststufe markieren.",
  "{0} loads from load {1} on are more than the names reach to: select fewer.":
    "{0} Laststufen ab Laststufe {1} sind mehr, als die Namen reichen: weniger auswählen.",
  "{0} and {1} more": "{0} und {1} weitere",
  "Without it this is not read for records, checks and export.":
    "Ohne diese Zelle fehlt die Angabe in Aufzeichnung, Prüfungen und Ausgabe.",
  "Without it there is no answer for: {0}.": "Ohne sie gibt es keine Antwort für: {0}.",
  "{0} leads to no cell: what it named was deleted (#REF!). {1}":
    "{0} führt zu keiner Zelle: Was so hieß, wurde gelöscht (#REF!). {1}",
  "{0} is missing. {1}": "{0} fehlt. {1}",
  "{0} is there {1} times, at {2}. The sheet's own, at {3}, is read: delete the other in the name manager.":
    "{0} ist {1}-mal da, bei {2}. Gelesen wird der Name des Blatts selbst, bei {3}: den anderen im Namens-Manager löschen.",
  "{0} is there {1} times, at {2}. It is not certain which is read: delete the other in the name manager.":
    "{0} ist {1}-mal da, bei {2}. Es ist nicht sicher, welcher gelesen wird: den anderen im Namens-Manager löschen.",
  "{0} and {1} stand at the same cells ({2}): give one of them its own.":
    "{0} und {1} stehen in denselben Zellen ({2}): einem davon eigene geben.",
  "{0} does not cover the same {1} as {2} ({3}): name the same of each.":
    "{0} umfasst nicht dieselben {1} wie {2} ({3}): von beiden dieselben benennen.",
  "{0} do not cover the same {1} as {2} ({3}): name the same of each.":
    "{0} umfassen nicht dieselben {1} wie {2} ({3}): von allen dieselben benennen.",
  "{0} covers {1} rows ({2}), and only the first is read: name one cell.":
    "{0} umfasst {1} Zeilen ({2}), und nur die erste wird gelesen: eine Zelle benennen.",
  "{0} was put into the load table and has no load number: it is no load, and nothing typed there is used. Take it out, or use a free load at the end of the table.":
    "{0} wurde in die Lasttabelle eingefügt und hat keine Nummer: Sie ist keine Laststufe, und nichts, was dort steht, wird verwendet. Sie löschen oder eine freie Laststufe am Ende der Tabelle verwenden.",
  "{0} and {1} of the load table both have the number {2}: they would share one load's readings. Take one out, or use a free load at the end of the table.":
    "{0} und {1} der Lasttabelle haben beide die Nummer {2}: Sie würden sich die Ablesungen einer Laststufe teilen. Eine löschen oder eine freie Laststufe am Ende der Tabelle verwenden.",
  "Row {0}": "Zeile {0}",
  "Column {0}": "Spalte {0}",
  "Row {0} of the table of picks": "Zeile {0} der Tabelle der Festlegungen",
  "{0} of the picks by hand is unfinished and not used: it needs a load, a pick and a new value.":
    "{0} der Festlegungen von Hand ist unvollständig und wird nicht verwendet: Sie braucht eine Laststufe, eine Größe und einen neuen Wert.",
  "{0} picks {1}, and there is no such load: correct the load, or clear the row.":
    "{0} legt {1} fest, und diese Laststufe gibt es nicht: die Laststufe berichtigen oder die Zeile leeren.",
  '{0} picks "{1}" as {2}, which cannot be used: enter {3} or {4}.':
    "{0} legt „{1}“ als {2} fest, was nicht geht: eines davon eingeben: {3} oder {4}.",
  '{0} picks "{1}" as {2}, which cannot be used: enter a number, or {3}.':
    "{0} legt „{1}“ als {2} fest, was nicht geht: eine Zahl oder {3} eingeben.",
  initials: "Kürzel",
  "reason and initials": "Grund und Kürzel",
  reason: "Grund",
  "{0} picks {1} without {2}: it is used, and a reviewer will ask.":
    "{0} legt {1} fest; es fehlt: {2}. Die Festlegung wird verwendet, und ein Prüfer wird fragen.",
  "This is a sheet of another kind: it has none of the data sheet's names. Nothing was read from it. To use it for a test, attach the names to its cells.":
    "Dieses Blatt ist von anderer Art: Es hat keinen der Namen des Datenblatts. Nichts wurde daraus gelesen. Um es für einen Versuch zu verwenden, die Namen an seine Zellen heften.",
  "1 result shows #NAME?: the add-in's functions were not there when the sheet was opened, or a name is missing. Attach missing names, then enter the formulas again.":
    "1 Ergebnis zeigt #NAME?: Die Funktionen des Add-ins waren beim Öffnen des Blatts nicht da, oder ein Name fehlt. Fehlende Namen vergeben, dann die Formeln neu eingeben.",
  "{0} results show #NAME?: the add-in's functions were not there when the sheet was opened, or a name is missing. Attach missing names, then enter the formulas again.":
    "{0} Ergebnisse zeigen #NAME?: Die Funktionen des Add-ins waren beim Öffnen des Blatts nicht da, oder ein Name fehlt. Fehlende Namen vergeben, dann die Formeln neu eingeben.",
  "Since data sheet {0}: {1}": "Seit Datenblatt {0}: {1}",
  "The sheet is of version {0}, and this add-in knows {1}: what is newer is not read. Update the add-in.":
    "Das Blatt hat die Version {0}, und dieses Add-In kennt {1}: Neueres wird nicht gelesen. Das Add-In aktualisieren.",
  "{0} is a list: select its cells in one column, or in one row if the table lies on its side.":
    "{0} ist eine Liste: ihre Zellen in einer Spalte auswählen, oder in einer Zeile, wenn die Tabelle auf der Seite liegt.",
  "{0} is one cell, and {1} holds {2} values: select one cell.":
    "{0} ist eine Zelle, und {1} enthält {2} Werte: eine Zelle auswählen.",
};
