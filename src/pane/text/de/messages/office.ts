/** What Excel refuses, with the action and the cause. */
export const office: Readonly<Record<string, string>> = {
  "The cells are as they were.": "Die Zellen sind unverändert.",
  "Some cells may have been written: compare them with what you entered.":
    "Einige Zellen können geschrieben worden sein: mit den Eingaben vergleichen.",
  "follow what changes": "Das Verfolgen der Änderungen",
  "list the sheets": "Das Auflisten der Blätter",
  "look for unfinished work": "Die Suche nach unfertiger Arbeit",
  "write into the workbook": "Das Schreiben in die Arbeitsmappe",
  "look which sheet is in front": "Die Frage nach dem vorderen Blatt",
  "look how the workbook counts days": "Die Frage, wie die Arbeitsmappe Tage zählt",
  "read the sheets": "Das Lesen der Blätter",
  "look for the data sheets": "Die Suche nach den Datenblättern",
  "calculate the workbook": "Das Berechnen der Arbeitsmappe",
  "read the named cells": "Das Lesen der benannten Zellen",
  "read the selection": "Das Lesen der Auswahl",
  'read {0} of the sheet "{1}"': "Das Lesen von {0} des Blatts „{1}“",
  'show {0} of the sheet "{1}"': "Das Anzeigen von {0} des Blatts „{1}“",
  'read the formulas of the sheet "{0}"': "Das Lesen der Formeln des Blatts „{0}“",
  'look for hidden rows of the sheet "{0}"': "Die Suche nach ausgeblendeten Zeilen des Blatts „{0}“",
  'read the named cells of the sheet "{0}"': "Das Lesen der benannten Zellen des Blatts „{0}“",
  'write into the sheet "{0}"': "Das Schreiben in das Blatt „{0}“",
  'look at the names of the sheet "{0}"': "Das Lesen der Namen des Blatts „{0}“",
  'name cells of the sheet "{0}"': "Das Benennen von Zellen des Blatts „{0}“",
  'enter the formulas of the sheet "{0}" again': "Das neue Eingeben der Formeln des Blatts „{0}“",
  "insert the sheets of the file": "Das Einfügen der Blätter der Datei",
  'look at the sheet "{0}"': "Das Lesen des Blatts „{0}“",
  'protect the sheet "{0}"': "Das Schützen des Blatts „{0}“",
  'lift the protection of the sheet "{0}"': "Das Aufheben des Schutzes des Blatts „{0}“",
  "This Excel cannot take notes or comments from a file: the sheet came without them. Move the sheet in desktop Excel to keep them.":
    "Dieses Excel kann aus einer Datei keine Notizen oder Kommentare übernehmen: Das Blatt kam ohne sie. Zum Behalten das Blatt in Excel auf dem Desktop verschieben.",
  "Excel on the web takes no file with charts: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.":
    "Excel im Web nimmt keine Datei mit Diagrammen: die Datei in Excel öffnen und ihr Blatt in diese Arbeitsmappe verschieben oder kopieren (rechts auf den Reiter klicken) oder es in Excel auf dem Desktop einfügen. Nichts wurde eingefügt.",
  "Excel did not freeze the first rows of the sheet: choose View, Freeze Panes.":
    "Excel hat die ersten Zeilen des Blatts nicht fixiert: Ansicht, Fenster fixieren wählen.",
  "Excel on the web takes no file with PivotTables or slicers: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.":
    "Excel im Web nimmt keine Datei mit PivotTables oder Datenschnitten: die Datei in Excel öffnen und ihr Blatt in diese Arbeitsmappe verschieben oder kopieren (rechts auf den Reiter klicken) oder es in Excel auf dem Desktop einfügen. Nichts wurde eingefügt.",
  "The file has {0} MB, and Excel on the web takes at most about {1} MB at once: open the file in Excel and move or copy its sheet into this workbook (right click on its tab), or insert it in desktop Excel. Nothing was inserted.":
    "Die Datei hat {0} MB, und Excel im Web nimmt höchstens etwa {1} MB auf einmal: die Datei in Excel öffnen und ihr Blatt in diese Arbeitsmappe verschieben oder kopieren (rechts auf den Reiter klicken) oder es in Excel auf dem Desktop einfügen. Nichts wurde eingefügt.",
  "This is no .xlsx workbook: save it from Excel as .xlsx, without a password. Nothing was inserted.":
    "Dies ist keine .xlsx-Arbeitsmappe: aus Excel als .xlsx ohne Kennwort speichern. Nichts wurde eingefügt.",
  "{0} Nothing was inserted.": "{0} Nichts wurde eingefügt.",
  "This Excel cannot insert sheets from a file: open the file, and move or copy its sheet into this workbook (right click on its tab), then check it here.":
    "Dieses Excel kann keine Blätter aus einer Datei einfügen: die Datei öffnen, ihr Blatt in diese Arbeitsmappe verschieben oder kopieren (rechts auf den Reiter klicken) und hier prüfen.",
  "Excel did not take all notes of the sheet: what each cell means stands in the add-in's help.":
    "Excel hat nicht alle Notizen des Blatts übernommen: Was jede Zelle bedeutet, steht in der Hilfe des Add-ins.",
  "The workbook is as it was.": "Die Arbeitsmappe ist unverändert.",
  'An unfinished sheet "{0}" was left behind: delete it.': "Ein unfertiges Blatt „{0}“ ist stehen geblieben: löschen.",
  "add a sheet": "Das Hinzufügen eines Blatts",
  "fill in the new sheet": "Das Ausfüllen des neuen Blatts",
  "draw the charts of the new sheet": "Das Zeichnen der Diagramme des neuen Blatts",
  "show the new sheet": "Das Anzeigen des neuen Blatts",
  "the printed pages": "die Druckseiten",
  "the rows repeated on each page": "die Wiederholungszeilen",
  "the footer": "die Fußzeile",
  "the paper size {0}": "das Papierformat {0}",
  "Excel did not take {0} of the sheet, as where no printer is set up: look at Page Layout before you print.":
    "Excel hat vom Blatt nicht übernommen: {0}, etwa weil kein Drucker eingerichtet ist. Vor dem Drucken das Seitenlayout ansehen.",
  "The range has {0} cells: choose fewer than {1}.": "Der Bereich hat {0} Zellen: weniger als {1} wählen.",
  "The workbook's structure is protected, so no sheet can be added: unprotect it (Review, Protect Workbook) and try again.":
    "Die Struktur der Arbeitsmappe ist geschützt, sodass kein Blatt hinzukommen kann: Schutz aufheben (Überprüfen, Arbeitsmappe schützen) und noch einmal versuchen.",
  "this Excel cannot do it: a newer one is needed": "dieses Excel kann das nicht: ein neueres ist nötig",
  "Excel is busy: wait a moment, and try again": "Excel ist beschäftigt: einen Moment warten und noch einmal versuchen",
  "it is too large for Excel to take at once: choose fewer cells":
    "es ist für Excel auf einmal zu groß: weniger Zellen wählen",
  "the connection to Excel was lost: reload the workbook, and try again":
    "die Verbindung zu Excel ging verloren: die Arbeitsmappe neu laden und noch einmal versuchen",
  "it does not fit among the cells that are there: clear the filter, or look for tables and merged cells, and try again":
    "es passt nicht zwischen die vorhandenen Zellen: den Filter aufheben oder nach Tabellen und verbundenen Zellen sehen und noch einmal versuchen",
  "it is protected, or open for reading only: unprotect it or save a copy, and try again":
    "geschützt oder nur zum Lesen geöffnet: Schutz aufheben oder eine Kopie speichern und noch einmal versuchen",
  "it is protected with a password: lift the protection in Excel, and try again":
    "mit einem Kennwort geschützt: den Schutz in Excel aufheben und noch einmal versuchen",
  "it does not tell of changes now: close the pane and open it again":
    "Änderungen werden jetzt nicht gemeldet: den Aufgabenbereich schließen und wieder öffnen",
  "someone else is changing the workbook: wait a moment, and try again":
    "jemand anderes ändert die Arbeitsmappe: einen Moment warten und noch einmal versuchen",
  "a chart has no readings to show: enter readings, and try again":
    "ein Diagramm hat keine Ablesungen zu zeigen: Ablesungen eingeben und noch einmal versuchen",
  "a formula is too long for it: choose fewer loads": "eine Formel ist zu lang: weniger Laststufen wählen",
  "it gives no reason: save the workbook, open it again, and try again":
    "ein Grund wird nicht genannt: die Arbeitsmappe speichern, wieder öffnen und noch einmal versuchen",
  "the add-in was renewed: close Excel, open it again, and try again":
    "das Add-In wurde erneuert: Excel schließen, wieder öffnen und noch einmal versuchen",
  "the workbook is not the active one: click into it, and try again":
    "die Arbeitsmappe ist nicht die aktive: hineinklicken und noch einmal versuchen",
  "Excel does not accept a value or a name in it: look whether a name or a cell was changed by hand, and try again":
    "Excel nimmt einen Wert oder einen Namen darin nicht an: nachsehen, ob ein Name oder eine Zelle von Hand geändert wurde, und noch einmal versuchen",
  "the cells have changed in the meantime: try again":
    "die Zellen haben sich inzwischen geändert: noch einmal versuchen",
  "it is not possible where the workbook stands now: click into a cell of a sheet, and try again":
    "im jetzigen Zustand der Arbeitsmappe nicht möglich: in eine Zelle eines Blatts klicken und noch einmal versuchen",
  "a cell is being edited: press Enter or Esc in that cell, and try again":
    "eine Zelle wird gerade bearbeitet: in ihr Enter oder Esc drücken und noch einmal versuchen",
  "Excel does not accept a cell reference in it: look whether cells were deleted, and try again":
    "Excel nimmt einen Zellbezug darin nicht an: nachsehen, ob Zellen gelöscht wurden, und noch einmal versuchen",
  "Excel did not understand it: a newer Excel may be needed":
    "Excel hat es nicht verstanden: vielleicht ist ein neueres Excel nötig",
  "a chart, a picture or a button is selected, or another workbook is in front: select cells of this workbook, and try again":
    "ein Diagramm, ein Bild oder eine Schaltfläche ist ausgewählt, oder eine andere Arbeitsmappe ist vorn: Zellen dieser Arbeitsmappe auswählen und noch einmal versuchen",
  "something of that name is there already: rename it, and try again":
    "etwas mit diesem Namen gibt es schon: umbenennen und noch einmal versuchen",
  "it is not there: it may have been renamed or deleted": "nicht vorhanden: vielleicht umbenannt oder gelöscht",
  "Excel has too little memory: close other workbooks, and try again":
    "Excel hat zu wenig Speicher: andere Arbeitsmappen schließen und noch einmal versuchen",
  "it would push cells off the sheet: delete blank rows and columns at its end, and try again":
    "es würde Zellen vom Blatt schieben: leere Zeilen und Spalten an seinem Ende löschen und noch einmal versuchen",
  "Excel wants you to sign in again: do so, and try again":
    "Excel verlangt eine neue Anmeldung: anmelden und noch einmal versuchen",
  "a chart sheet or a macro sheet is in front: click on the tab of a sheet with cells, and try again":
    "ein Diagramm- oder Makroblatt ist vorn: auf den Reiter eines Blatts mit Zellen klicken und noch einmal versuchen",
  "a dialog is open: close it, and try again": "ein Dialog ist offen: schließen und noch einmal versuchen",
  "Excel could not {0}: {1}. {2}": "{0} ist in Excel nicht gelungen: {1}. {2}",
  "Excel could not {0}: {1}.": "{0} ist in Excel nicht gelungen: {1}.",
  "The sheet's protection was lifted, and Excel does not put it back: protect the sheet again (Review, Protect Sheet).":
    "Der Schutz des Blatts wurde aufgehoben, und Excel setzt ihn nicht wieder: das Blatt wieder schützen (Überprüfen, Blatt schützen).",
  "The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed.":
    "Das Blatt ist mit einem Kennwort geschützt: in Excel aufheben (Überprüfen, Blattschutz aufheben) und noch einmal versuchen. Nichts wurde geändert.",
  "Nothing was written: look at the cells, and try again.":
    "Nichts wurde geschrieben: die Zellen ansehen und noch einmal versuchen.",
  'Somebody else changed cells of the sheet "{0}" in the meantime. {1}':
    "Jemand anderes hat inzwischen Zellen des Blatts „{0}“ geändert. {1}",
};
