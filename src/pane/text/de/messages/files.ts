/** Files that are opened, inserted and saved. */
export const files: Readonly<Record<string, string>> = {
  "It is no .xlsx workbook: save it as .xlsx, and choose it again.":
    "Es ist keine .xlsx-Arbeitsmappe: als .xlsx speichern und noch einmal wählen.",
  "It is no .xlsx workbook: choose another file.": "Es ist keine .xlsx-Arbeitsmappe: eine andere Datei wählen.",
  '1 chart of "{0}" did not come along.': "1 Diagramm von „{0}“ kam nicht mit.",
  '{0} charts of "{1}" did not come along.': "{0} Diagramme von „{1}“ kamen nicht mit.",
  'The sheet "{0}" is called "{1}" here: the sheet on this page allows no apostrophe in a name.':
    "Das Blatt „{0}“ heißt hier „{1}“: Das Blatt auf dieser Seite erlaubt im Namen keinen Apostroph.",
  'the sheet "{0}" has a row {1}, and no sheet has': "das Blatt „{0}“ hat eine Zeile {1}, und die hat kein Blatt",
  'the sheet "{0}" has a cell {1}, and no sheet has': "das Blatt „{0}“ hat eine Zelle {1}, und die hat kein Blatt",
  'the cell {0} of the sheet "{1}" {2}': "die Zelle {0} des Blatts „{1}“ {2}",
  "shows text {0} of the file, which has {1} texts counted from 0":
    "zeigt Text {0} der Datei, die {1} Texte hat, von 0 an gezählt",
  'holds "{0}" as a date': "enthält „{0}“ als Datum",
  'holds "{0}" as a number': "enthält „{0}“ als Zahl",
  "holds {0}, and no number is larger than 1.8E+308": "enthält {0}, und keine Zahl ist größer als 1,8E+308",
  'is of an unknown kind "{0}"': "ist von unbekannter Art „{0}“",
  'the sheet "{0}" has two cells {1}': "das Blatt „{0}“ hat zwei Zellen {1}",
  'The formulas of the sheet "{0}" are said to fill more than {1} cells, which is too many to open here: choose smaller ranges for them in Excel.':
    "Die Formeln des Blatts „{0}“ sollen mehr als {1} Zellen füllen, zu viele, um sie hier zu öffnen: in Excel kleinere Bereiche für sie wählen.",
  'The look of {0} cells of "{1}" is not in the file: they look plain here.':
    "Das Format von {0} Zellen von „{1}“ steht nicht in der Datei: Sie erscheinen hier schlicht.",
  'The look of blank cells in whole rows and columns of "{0}" was left out: they are too many.':
    "Das Format leerer Zellen in ganzen Zeilen und Spalten von „{0}“ wurde weggelassen: Es sind zu viele.",
  '{0} formulas of "{1}" are not in the file, only their values: the cells hold these as constants.':
    "{0} Formeln von „{1}“ stehen nicht in der Datei, nur ihre Werte: Die Zellen enthalten diese als Konstanten.",
  '{0} formulas of "{1}" have too many operators for the sheet on this page: their cells hold the values as constants. Split them in Excel.':
    "{0} Formeln von „{1}“ haben zu viele Operatoren für das Blatt auf dieser Seite: Ihre Zellen enthalten die Werte als Konstanten. In Excel aufteilen.",
  'The sheet on this page does not have {0}: formulas of "{1}" with it show an error here ({2}), and so do the cells that read them. They are saved as they stand, and Excel calculates them.':
    "Das Blatt auf dieser Seite hat {0} nicht: Formeln von „{1}“ damit zeigen hier einen Fehler ({2}), und ebenso die Zellen, die sie lesen. Sie werden gespeichert, wie sie sind, und Excel berechnet sie.",
  'The sheet on this page cannot read formulas of "{0}": they show an error here ({1}), and so do the cells that read them. They are saved as they stand, and Excel calculates them.':
    "Das Blatt auf dieser Seite kann Formeln von „{0}“ nicht lesen: Sie zeigen hier einen Fehler ({1}), und ebenso die Zellen, die sie lesen. Sie werden gespeichert, wie sie sind, und Excel berechnet sie.",
  '{0} links of "{1}" were left out: only texts can have one here, to a web page, a mail address or a sheet.':
    "{0} Links von „{1}“ wurden weggelassen: Nur Texte können hier einen haben, zu einer Webseite, einer Mailadresse oder einem Blatt.",
  "open it in Excel or LibreOffice and save it as .xlsx": "in Excel oder LibreOffice öffnen und als .xlsx speichern",
  "The file is empty and not an .xlsx workbook: choose another one.":
    "Die Datei ist leer und keine .xlsx-Arbeitsmappe: eine andere wählen.",
  "This workbook is locked with a password: open it in Excel and save it without one (File, Info, Protect Workbook, Encrypt with Password, clear the field).":
    "Diese Arbeitsmappe ist mit einem Kennwort gesperrt: in Excel öffnen und ohne Kennwort speichern (Datei, Informationen, Arbeitsmappe schützen, Mit Kennwort verschlüsseln, das Feld leeren).",
  "This is a workbook of the old .xls kind: open it in Excel and save it as .xlsx.":
    "Dies ist eine Arbeitsmappe der alten Art .xls: in Excel öffnen und als .xlsx speichern.",
  "This is a workbook of the old .xls kind, or one locked with a password: save it from Excel as .xlsx without a password.":
    "Dies ist eine Arbeitsmappe der alten Art .xls oder eine mit Kennwort: aus Excel als .xlsx ohne Kennwort speichern.",
  "This is a PDF file and not an .xlsx workbook: choose another one.":
    "Dies ist eine PDF-Datei und keine .xlsx-Arbeitsmappe: eine andere wählen.",
  "This is not an .xlsx workbook, whatever its name says: choose another one.":
    "Dies ist keine .xlsx-Arbeitsmappe, was immer ihr Name sagt: eine andere wählen.",
  "This is a web page or an XML file, whatever its name says, and not an .xlsx workbook: {0}.":
    "Dies ist eine Webseite oder eine XML-Datei, was immer ihr Name sagt, und keine .xlsx-Arbeitsmappe: {0}.",
  "This is a file of text, as .csv and .txt are, whatever its name says, and not an .xlsx workbook: {0}; readings of a logger are taken in as they are under Readings.":
    "Dies ist eine Textdatei wie .csv und .txt, was immer ihr Name sagt, und keine .xlsx-Arbeitsmappe: {0}; Ablesungen eines Datenloggers werden unter „Ablesungen“ eingelesen, wie sie sind.",
  "This is an OpenDocument file, as .ods is: {0}.": "Dies ist eine OpenDocument-Datei wie .ods: {0}.",
  "This is a workbook of the binary .xlsb kind: {0}.": "Dies ist eine Arbeitsmappe der binären Art .xlsb: {0}.",
  "This is a document of Word or PowerPoint and no workbook: choose another file.":
    "Dies ist ein Dokument von Word oder PowerPoint und keine Arbeitsmappe: eine andere Datei wählen.",
  "This is a zip archive that holds {0}: unpack it first, and open that.":
    "Dies ist ein Zip-Archiv mit {0}: erst entpacken und das öffnen.",
  "This is a zip archive and not an .xlsx workbook, or a damaged one: choose another file, or get this one once more from where it came from.":
    "Dies ist ein Zip-Archiv und keine .xlsx-Arbeitsmappe oder eine beschädigte: eine andere Datei wählen oder diese noch einmal von ihrer Herkunft holen.",
  "The file has {0} cell formats, and Excel takes at most {1}: copy the sheets that are wanted into a new workbook.":
    "Die Datei hat {0} Zellformate, und Excel nimmt höchstens {1}: die gewünschten Blätter in eine neue Arbeitsmappe kopieren.",
  "The sheet on this page does not keep these contents of the file: {0}. Keep the file, and save under another name.":
    "Diese Inhalte der Datei bleiben auf dieser Seite nicht erhalten: {0}. Die Datei aufheben und unter anderem Namen speichern.",
  "The file counts days from 1904 and the sheet on this page from 1900: the dates in {0} cells were converted and show the same days. Dates typed as numbers inside formulas, or in cells without a date format, were not: check those.":
    "Die Datei zählt Tage ab 1904 und das Blatt auf dieser Seite ab 1900: Die Daten in {0} Zellen wurden umgerechnet und zeigen dieselben Tage. Als Zahl geschriebene Daten in Formeln oder in Zellen ohne Datumsformat wurden es nicht: diese prüfen.",
  "pivot tables (the values stay)": "Pivot-Tabellen (die Werte bleiben)",
  "slicers and timelines": "Datenschnitte und Zeitachsen",
  "comments with answers (as notes they stay)": "Kommentare mit Antworten (als Notizen bleiben sie)",
  "queries and connections to data": "Abfragen und Datenverbindungen",
  "The value of the file is saved with a formula that cannot be calculated here until a cell that it reads changes; then an error is saved.":
    "Der Wert der Datei wird mit einer Formel gespeichert, die sich hier nicht berechnen lässt, bis sich eine Zelle ändert, die sie liest; dann wird ein Fehler gespeichert.",
  "By the settings of this file Excel {0}. The sheet on this page calculates with all digits and after every entry, and shows an error in circular formulas: its values may differ from those of the file. The settings are saved again.":
    "Nach den Einstellungen dieser Datei {0}. Das Blatt auf dieser Seite rechnet mit allen Stellen und nach jeder Eingabe und zeigt in Zirkelbezügen einen Fehler: Seine Werte können von denen der Datei abweichen. Die Einstellungen werden wieder gespeichert.",
  'calculates with the figures as they are shown ("precision as displayed")':
    "rechnet Excel mit den Ziffern, die angezeigt werden („Genauigkeit wie angezeigt“)",
  'calculates circular formulas step by step ("iterative calculation")':
    "berechnet Excel Zirkelbezüge schrittweise („iterative Berechnung“)",
  "calculates only when a person asks for it (manual calculation)":
    "rechnet Excel nur, wenn es jemand verlangt (manuelle Berechnung)",
  "buttons and other controls": "Schaltflächen und andere Steuerelemente",
  diagrams: "Schaubilder",
  "data of other programs (custom XML)": "Daten anderer Programme (benutzerdefiniertes XML)",
  "the digital signature": "die digitale Signatur",
  "shapes and text boxes": "Formen und Textfelder",
  "cells that give the series of a scatter chart their names (the names stay as texts)":
    "Zellen, die den Reihen eines Punktdiagramms ihre Namen geben (die Namen bleiben als Text)",
  "x values of the second and further series of a scatter chart (all take those of the first)":
    "x-Werte der zweiten und weiterer Reihen eines Punktdiagramms (alle nehmen die der ersten)",
  sparklines: "Sparklines",
  "conditional formats of Excel 2010 and later": "bedingte Formate von Excel 2010 und neuer",
  "rules of entry that read another sheet": "Eingaberegeln, die ein anderes Blatt lesen",
  scenarios: "Szenarien",
  "ranges that some people may edit": "Bereiche, die einzelne Personen bearbeiten dürfen",
  "objects of other programs": "Objekte anderer Programme",
  "conditional formats for averages, errors or days": "bedingte Formate für Mittelwerte, Fehler oder Tage",
  "the password of a protected sheet": "das Kennwort eines geschützten Blatts",
  "the look of single words in a cell": "das Aussehen einzelner Wörter in einer Zelle",
  "phonetic text": "phonetischer Text",
  "rows and columns printed on every page": "Zeilen und Spalten, die auf jeder Seite gedruckt werden",
  "sheets that only a macro can show (they are hidden as others are)":
    "Blätter, die nur ein Makro zeigen kann (sie sind ausgeblendet wie andere)",
  "the protection of the workbook's structure": "der Schutz der Struktur der Arbeitsmappe",
  "properties of the document": "Eigenschaften des Dokuments",
  "conditional formats": "bedingte Formate",
  "rules of entry": "Eingaberegeln",
  "pictures and charts": "Bilder und Diagramme",
  tables: "Tabellen",
  "links to other files": "Verknüpfungen zu anderen Dateien",
  'Rules of "{0}" for whole numbers, times or lengths of text ({1}) were left out: the sheet on this page has none such.':
    "Regeln von „{0}“ für ganze Zahlen, Uhrzeiten oder Textlängen ({1}) wurden weggelassen: Das Blatt auf dieser Seite kennt sie nicht.",
  "The name {0} leads to {1}, far beyond the cells of its sheet: it was cut there.":
    "Der Name {0} führt zu {1}, weit über die Zellen seines Blatts hinaus: Er wurde dort gekürzt.",
  "The file's {0} were left out: they could not be read.": "Aus der Datei weggelassen, weil nicht lesbar: {0}.",
  "Names that are not one range of cells were left out: {0}.":
    "Namen, die nicht ein Zellbereich sind, wurden weggelassen: {0}.",
  "{0} The workbook on the page is as it was.": "{0} Die Arbeitsmappe auf der Seite ist unverändert.",
  "The file could not be opened: something in it cannot be read. Open it in Excel or LibreOffice, save it anew as .xlsx, and try that. The workbook on the page is as it was.":
    "Die Datei konnte nicht geöffnet werden: Etwas darin ist nicht lesbar. In Excel oder LibreOffice öffnen, neu als .xlsx speichern und damit versuchen. Die Arbeitsmappe auf der Seite ist unverändert.",
  "its part {0} is not valid XML": "ihr Teil {0} ist kein gültiges XML",
  'its part {0} is none of a workbook (it begins with <{1}> of "{2}")':
    "ihr Teil {0} gehört zu keiner Arbeitsmappe (er beginnt mit <{1}> aus „{2}“)",
  "chart sheet": "Diagrammblatt",
  "dialog sheet": "Dialogblatt",
  "macro sheet": "Makroblatt",
  "The file has {0} sheets, and at most {1} can be opened here: move those that are wanted to a workbook of their own in Excel.":
    "Die Datei hat {0} Blätter, und höchstens {1} lassen sich hier öffnen: die gewünschten in Excel in eine eigene Arbeitsmappe verschieben.",
  'The {0} "{1}" was left out: it has no cells.': "Weggelassen, weil ohne Zellen: {0} „{1}“.",
  sheet: "Blatt",
  'its sheet "{0}" is missing': "ihr Blatt „{0}“ fehlt",
  'The sheet "{0}" names parts that the file does not lead to: pictures, notes, links or tables of it are missing here.':
    "Das Blatt „{0}“ nennt Teile, zu denen die Datei nicht führt: Bilder, Notizen, Links oder Tabellen davon fehlen hier.",
  "The file has no sheet of cells, so there is nothing to open here: choose another file.":
    "Die Datei hat kein Blatt mit Zellen, also ist hier nichts zu öffnen: eine andere Datei wählen.",
  "The macros of the file were left out: the sheet on this page runs none.":
    "Die Makros der Datei wurden weggelassen: Das Blatt auf dieser Seite führt keine aus.",
  "The file names parts that it does not have, which were left out: {0}.":
    "Die Datei nennt Teile, die sie nicht hat; sie wurden weggelassen: {0}.",
  'Merged cells of "{0}" that overlap, or reach far beyond its cells, were cut or left out ({1}).':
    "Verbundene Zellen von „{0}“, die sich überschneiden oder weit über seine Zellen hinausreichen, wurden gekürzt oder weggelassen ({1}).",
  "The workbook was not saved: its part {0} could not be read again, so the file could not be opened. The workbook is as it was. Please report this; a new workbook takes the sheets one by one meanwhile.":
    "Die Arbeitsmappe wurde nicht gespeichert: Ihr Teil {0} ließ sich nicht wieder lesen, die Datei wäre also nicht zu öffnen. Die Arbeitsmappe ist unverändert. Bitte melden; eine neue Arbeitsmappe nimmt die Blätter inzwischen einzeln auf.",
  "A picture in the workbook is not held in it and cannot be saved: remove it.":
    "Ein Bild in der Arbeitsmappe ist nicht in ihr enthalten und kann nicht gespeichert werden: entfernen.",
  "the characters of its part {0} cannot be read": "die Zeichen ihres Teils {0} sind nicht lesbar",
  "The file is not opened: its part {0} declares a document type, which no workbook does and which can harm. Have it saved anew by Excel or LibreOffice.":
    "Die Datei wird nicht geöffnet: Ihr Teil {0} erklärt einen Dokumenttyp, was keine Arbeitsmappe tut und was schaden kann. Von Excel oder LibreOffice neu speichern lassen.",
  "elements of its part {0} stand more than {1} deep in one another":
    "Elemente ihres Teils {0} stehen mehr als {1} tief ineinander",
  "The file is damaged: {0}. Get the file once more from where it came from, or let Excel or LibreOffice repair it and save it anew.":
    "Die Datei ist beschädigt: {0}. Die Datei noch einmal von ihrer Herkunft holen oder von Excel oder LibreOffice reparieren und neu speichern lassen.",
  "The file unpacks to more than {0} MB: it is too large to open here. Open it in Excel, and save the sheets that are wanted as a file of their own.":
    "Die Datei ist entpackt größer als {0} MB: zu groß, um sie hier zu öffnen. In Excel öffnen und die gewünschten Blätter als eigene Datei speichern.",
  "its end is missing, so it was cut short or is no .xlsx workbook":
    "ihr Ende fehlt, sie ist also abgeschnitten oder keine .xlsx-Arbeitsmappe",
  "its list of parts is broken": "ihr Verzeichnis der Teile ist zerstört",
  "the part {0} is not where the file says": "der Teil {0} ist nicht, wo die Datei es sagt",
  "the part {0} is not as long as the file says": "der Teil {0} ist nicht so lang, wie die Datei es sagt",
  "the part {0} cannot be unpacked": "der Teil {0} lässt sich nicht entpacken",
  "The file is locked with a password: save it without one.":
    "Die Datei ist mit einem Kennwort gesperrt: ohne Kennwort speichern.",
  "the part {0} is cut short": "der Teil {0} ist abgeschnitten",
  "The file is packed in a way that is not read here (method {0}): open it in Excel or LibreOffice and save it anew.":
    "Die Datei ist auf eine Art gepackt, die hier nicht gelesen wird (Verfahren {0}): in Excel oder LibreOffice öffnen und neu speichern.",
  "the part {0} is not what was packed (its check sum differs)":
    "der Teil {0} ist nicht, was gepackt wurde (seine Prüfsumme weicht ab)",
  "it has two parts that are called {0}": "sie hat zwei Teile namens {0}",
  "its part {0} is missing": "ihr Teil {0} fehlt",
};
