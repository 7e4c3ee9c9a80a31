/** What a workbook refuses: names, cells and sheets. */
export const workbook: Readonly<Record<string, string>> = {
  "Excel is still calculating {0} and {1} more: wait until no cell shows #BUSY!, and try again. Nothing was made.":
    "Excel berechnet noch {0} und {1} weitere: warten, bis keine Zelle #BUSY! zeigt, und noch einmal versuchen. Nichts wurde erstellt.",
  "Excel is still calculating {0}: wait until no cell shows #BUSY!, and try again. Nothing was made.":
    "Excel berechnet noch {0}: warten, bis keine Zelle #BUSY! zeigt, und noch einmal versuchen. Nichts wurde erstellt.",
  "The sheet on this page failed in the middle of the work, and a part of it may stand in the workbook. Do not save it over your file: reload the page, and open the file that was saved last. Please report this.":
    "Das Blatt auf dieser Seite ist mitten in der Arbeit ausgefallen, und ein Teil davon kann in der Arbeitsmappe stehen. Nicht über die eigene Datei speichern: die Seite neu laden und die zuletzt gespeicherte Datei öffnen. Bitte melden.",
  "{0}, and nothing was changed: {1}.": "{0}, und nichts wurde geändert: {1}.",
  'The sheet "{0}" could not be made and nothing was changed: {1}.':
    "Das Blatt „{0}“ konnte nicht erstellt werden, und nichts wurde geändert: {1}.",
  'The sheet "{0}" could not be written: it is protected, and row {1} of "{2}" is none of its inputs. Nothing was written: lift the protection (Data sheet, Sheet check), and try again.':
    "Das Blatt „{0}“ konnte nicht beschrieben werden: Es ist geschützt, und Zeile {1} von „{2}“ ist keine seiner Eingaben. Nichts wurde geschrieben: den Schutz aufheben (Datenblatt, Blattprüfung) und noch einmal versuchen.",
  'The sheet "{0}" could not be written': "Das Blatt „{0}“ konnte nicht beschrieben werden",
  '"{0}" is no address of cells.': "„{0}“ ist keine Adresse von Zellen.",
  "The cells could not be named": "Die Zellen konnten nicht benannt werden",
  "The formulas could not be entered again": "Die Formeln konnten nicht neu eingegeben werden",
  "The sheets of the file could not be inserted": "Die Blätter der Datei konnten nicht eingefügt werden",
  "Another workbook was opened while the file was read. Nothing was inserted: insert the file again.":
    "Während die Datei gelesen wurde, wurde eine andere Arbeitsmappe geöffnet. Nichts wurde eingefügt: Die Datei noch einmal einfügen.",
  "Another workbook was opened while sheets were inserted. Nothing was inserted: insert them again.":
    "Während Blätter eingefügt wurden, wurde eine andere Arbeitsmappe geöffnet. Nichts wurde eingefügt: Die Blätter noch einmal einfügen.",
  "Not undone: the steps before this one were let go, because the page has room for a limited number. A file that was saved has the workbook as it was when it was saved.":
    "Nicht rückgängig gemacht: Die Schritte davor sind nicht mehr da, weil die Seite nur für eine begrenzte Zahl Platz hat. Eine gespeicherte Datei hat die Arbeitsmappe, wie sie beim Speichern war.",
  "Not done: sheets are being inserted. Wait until they are there, or stop it in the pane; then try again.":
    "Nicht ausgeführt: Es werden gerade Blätter eingefügt. Warten, bis sie da sind, oder das Einfügen im Aufgabenbereich anhalten; dann noch einmal versuchen.",
  "Not done: cells are being written. Wait until they are there, then try again.":
    "Nicht ausgeführt: Es werden gerade Zellen geschrieben. Warten, bis sie da sind, dann noch einmal versuchen.",
  "Another workbook was opened while cells were written. Nothing was written: write them again.":
    "Während Zellen geschrieben wurden, wurde eine andere Arbeitsmappe geöffnet. Nichts wurde geschrieben: Die Zellen noch einmal schreiben.",
  "Not done: a step is being done again. Wait until it is done, or stop it at the top of the page; then try again.":
    "Nicht ausgeführt: Ein Schritt wird gerade wiederholt. Warten, bis er fertig ist, oder ihn oben auf der Seite anhalten; dann noch einmal versuchen.",
  "Not done: the pane is writing to “{0}”. Wait until it has ended, or stop it in the pane; then try again.":
    "Nicht ausgeführt: Der Aufgabenbereich schreibt gerade in „{0}“. Warten, bis er fertig ist, oder ihn dort anhalten; dann noch einmal versuchen.",
  "The protection could not be changed": "Der Schutz konnte nicht geändert werden",
  'The sheet "{0}" is locked: unlock it (right click on its tab, Unlock the whole sheet), and try again. Nothing was changed.':
    "Das Blatt „{0}“ ist gesperrt: entsperren (rechts auf den Reiter klicken, Ganzes Blatt entsperren) und noch einmal versuchen. Nichts wurde geändert.",
  "{0} is protected, as results and labels are: fill in the framed cells. To change it, lift the protection in the pane: Data sheet, “Lift protection”.":
    "{0} ist geschützt, wie es Ergebnisse und Beschriftungen sind: die umrahmten Zellen ausfüllen. Zum Ändern den Schutz im Aufgabenbereich aufheben: Datenblatt, „Blattschutz aufheben“.",
  "{0} was not changed. What may stand there: {1}": "{0} wurde nicht geändert. Was dort stehen darf: {1}",
  "{0} was not changed. {1}": "{0} wurde nicht geändert. {1}",
  "{0} was not changed: {1}. Shorten the text.": "{0} wurde nicht geändert: {1}. Den Text kürzen.",
  'The name "{0}" is already at {1} and was left there: say that it may be moved.':
    "Der Name „{0}“ steht schon bei {1} und blieb dort: angeben, dass er verschoben werden darf.",
  comma: "Komma",
  point: "Punkt",
  "Not taken: {0}. Write each number with one decimal mark, the same in all, or choose the mark at the top of the page; then try again.":
    "Nicht übernommen: {0}. Jede Zahl mit einem Dezimalzeichen schreiben, in allen dasselbe, oder das Zeichen oben auf der Seite wählen; dann noch einmal versuchen.",
  "Is the {0} in “{1}” a decimal mark, so that the cell {2} holds {3}?":
    "Ist das Zeichen {0} in „{1}“ ein Dezimalzeichen, sodass die Zelle {2} den Wert {3} erhält?",
  "{0} of the numbers have a {1}: {2}. Is it the decimal mark in all of them, so that the first is {3}?":
    "{0} der Zahlen enthalten das Zeichen {1}: {2}. Ist es in allen das Dezimalzeichen, sodass die erste {3} ist?",
  "The numbers could not be written: {0}.": "Die Zahlen konnten nicht geschrieben werden: {0}.",
  "{0}: as it was. Type numbers without separators for thousands.":
    "{0}: unverändert. Zahlen ohne Tausendertrennzeichen eingeben.",
  "{0}: as they were. Type numbers without separators for thousands.":
    "{0}: alle unverändert. Zahlen ohne Tausendertrennzeichen eingeben.",
  '"{0}" of the sheet "{1}" holds 1 value already. Nothing was written: say that they may be replaced, or clear them.':
    "„{0}“ des Blatts „{1}“ enthält schon 1 Wert. Nichts wurde geschrieben: angeben, dass er ersetzt werden darf, oder ihn löschen.",
  '"{0}" of the sheet "{1}" holds {2} values already. Nothing was written: say that they may be replaced, or clear them.':
    "„{0}“ des Blatts „{1}“ enthält schon {2} Werte. Nichts wurde geschrieben: angeben, dass sie ersetzt werden dürfen, oder sie löschen.",
  'The sheet "{0}" has no cells named "{1}": choose a data sheet. Nothing was written.':
    "Das Blatt „{0}“ hat keine Zellen namens „{1}“: ein Datenblatt wählen. Nichts wurde geschrieben.",
  '"{0}" of the sheet "{1}" has {2} cells, and {3} are needed. Nothing was written: choose fewer rows.':
    "„{0}“ des Blatts „{1}“ hat {2} Zellen, und {3} werden gebraucht. Nichts wurde geschrieben: weniger Zeilen wählen.",
  'Row {0} of "{1}" is to hold a number that no cell of the sheet "{2}" takes: the largest is 1.8E+308. Nothing was written: mend the number in the file.':
    "Zeile {0} von „{1}“ soll eine Zahl erhalten, die keine Zelle des Blatts „{2}“ aufnimmt: Die größte ist 1,8E+308. Nichts wurde geschrieben: die Zahl in der Datei berichtigen.",
  'Row {0} of "{1}" is to hold a text of more than {2} characters on the sheet "{3}", which no cell takes. Nothing was written: shorten it.':
    "Zeile {0} von „{1}“ soll einen Text von mehr als {2} Zeichen auf dem Blatt „{3}“ erhalten, den keine Zelle aufnimmt. Nichts wurde geschrieben: kürzen.",
  'Row {0} of "{1}" is to hold a text of more than {2} line feeds on the sheet "{3}", which no cell takes. Nothing was written: shorten it.':
    "Zeile {0} von „{1}“ soll einen Text mit mehr als {2} Zeilenumbrüchen auf dem Blatt „{3}“ erhalten, den keine Zelle aufnimmt. Nichts wurde geschrieben: kürzen.",
  'Row {0} of "{1}" on the sheet "{2}" was filled in the meantime, in another window perhaps. Nothing was written: look at the row, and try again.':
    "Zeile {0} von „{1}“ auf dem Blatt „{2}“ wurde inzwischen ausgefüllt, vielleicht in einem anderen Fenster. Es wurde nichts geschrieben: die Zeile ansehen und noch einmal versuchen.",
  'Row {0} of "{1}" on the sheet "{2}" was changed in the meantime, in another window perhaps. Nothing was written: look at the row, and try again.':
    "Zeile {0} von „{1}“ auf dem Blatt „{2}“ wurde inzwischen geändert, vielleicht in einem anderen Fenster. Es wurde nichts geschrieben: die Zeile ansehen und noch einmal versuchen.",
  'Rows or columns of the sheet "{0}" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again.':
    "Zeilen oder Spalten des Blatts „{0}“ wurden inzwischen eingefügt oder gelöscht, oder seine Namen wurden geändert. Es wurde nichts geschrieben: das Blatt ansehen und noch einmal versuchen.",
  'The new sheet would show other cells of the sheet "{0}": in the meantime its rows or columns were inserted or deleted, its names were changed, or it was renamed or deleted. Nothing was inserted: try again.':
    "Das neue Blatt würde andere Zellen des Blatts „{0}“ zeigen: Inzwischen wurden dessen Zeilen oder Spalten eingefügt oder gelöscht, seine Namen geändert, oder es wurde umbenannt oder gelöscht. Es wurde nichts eingefügt: noch einmal versuchen.",
  "somebody else has changed it in the meantime, and it shows {0} by now":
    "jemand anders hat sie inzwischen geändert, und sie zeigt jetzt {0}",
  'Row {0} of "{1}" on the sheet "{2}" holds a formula. Nothing was written: put a value in its place first.':
    "Zeile {0} von „{1}“ auf dem Blatt „{2}“ enthält eine Formel. Nichts wurde geschrieben: erst einen Wert an ihre Stelle setzen.",
  "a name of cells has no letters": "ein Name von Zellen hat keine Buchstaben",
  'the name "{0}..." has {1} characters, and {2} at most are taken':
    "der Name „{0}...“ hat {1} Zeichen, und höchstens {2} sind erlaubt",
  'the name "{0}" is none for cells: it begins with a letter, and holds letters, digits, "_" and "." only':
    "„{0}“ ist kein Name für Zellen: Er beginnt mit einem Buchstaben und enthält nur Buchstaben, Ziffern, „_“ und „.“",
  "choose one block of cells": "einen Block von Zellen wählen",
  '"{0}" could not be named, and nothing was changed: {1}.':
    "„{0}“ konnte nicht benannt werden, und nichts wurde geändert: {1}.",
  "The blocks picked together stand in different rows ({0}): pick blocks that begin and end in the same rows, or one block.":
    "Die zusammen ausgewählten Blöcke stehen in verschiedenen Zeilen ({0}): Blöcke auswählen, die in denselben Zeilen beginnen und enden, oder einen Block.",
  "Some cells were picked twice: pick each column once, holding Ctrl from the second on.":
    "Einige Zellen wurden zweimal ausgewählt: jede Spalte einmal auswählen, ab der zweiten mit gedrückter Strg-Taste.",
  "the formula {0} refers to {{1}}, which has no cells": "die Formel {0} verweist auf {{1}}, das keine Zellen hat",
  "a formula has {0} characters, and {1} at most are taken":
    "eine Formel hat {0} Zeichen, und höchstens {1} sind erlaubt",
  'its choice "{0}" has a comma, at which Excel parts a list':
    "ihre Auswahl „{0}“ enthält ein Komma, an dem Excel eine Liste trennt",
  "its choices have {0} characters together, and {1} at most are taken":
    "ihre Auswahlen haben zusammen {0} Zeichen, und höchstens {1} sind erlaubt",
  "it lies outside the sheet's {0} rows and {1} columns":
    "sie liegt außerhalb der {0} Zeilen und {1} Spalten des Blatts",
  "its text has {0} characters, and {1} at most are taken": "ihr Text hat {0} Zeichen, und höchstens {1} sind erlaubt",
  "its text has {0} line feeds, and {1} at most are taken":
    "ihr Text hat {0} Zeilenumbrüche, und höchstens {1} sind erlaubt",
  'the name "{0}" differs from another in capitals only':
    "der Name „{0}“ unterscheidet sich von einem anderen nur in Großbuchstaben",
  "cell {0}: {1}": "Zelle {0}: {1}",
  'There is no sheet called "{0}" in this workbook.': "In dieser Arbeitsmappe gibt es kein Blatt namens „{0}“.",
  'The sheet "{0}" is hidden by a macro or another add-in, and only these can show it: ask whoever made the workbook.':
    "Das Blatt „{0}“ ist von einem Makro oder einem anderen Add-In ausgeblendet, und nur diese können es einblenden: fragen, wer die Arbeitsmappe erstellt hat.",
  'The sheet "{0}" is hidden: show it (right click on a sheet\'s tab, Unhide), and try again.':
    "Das Blatt „{0}“ ist ausgeblendet: einblenden (rechts auf den Reiter eines Blatts klicken, Einblenden) und noch einmal versuchen.",
  "no sheet has such a cell": "eine solche Zelle hat kein Blatt",
  "a formula begins with =": "eine Formel beginnt mit =",
  "it holds {0} already: say that it may be replaced, or clear it":
    "sie enthält schon {0}: angeben, dass es ersetzt werden darf, oder sie leeren",
  "it has the format of a text, in which a formula stays a text: give it the format General":
    "sie hat das Format Text, in dem eine Formel ein Text bleibt: ihr das Format Standard geben",
  'its formula refers to "{0}", which has no cells on the sheet "{1}"':
    "ihre Formel verweist auf „{0}“, das auf dem Blatt „{1}“ keine Zellen hat",
  "it is to be written twice": "sie soll zweimal geschrieben werden",
  '{0} of the sheet "{1}" could not be written, and nothing was changed: {2}.':
    "{0} des Blatts „{1}“ konnte nicht geschrieben werden, und nichts wurde geändert: {2}.",
};
