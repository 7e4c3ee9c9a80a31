/** Messages about the cells of a record, its loads, and the files made from it. */
export const record: Readonly<Record<string, string>> = {
  "the load has a reading at {0} min already, in row {1} of its times: write this one only if the time is wrong there":
    "die Laststufe hat bei {0} min schon eine Ablesung, in Zeile {1} ihrer Zeiten: diese nur eintragen, wenn die Zeit dort falsch ist",
  // Cells.
  "{0} {1}": "{0} {1}",
  "{0}, row {1}, {2}": "{0}, Zeile {1}, {2}",
  lengths: "Längen",
  stresses: "Spannungen",
  "coefficients of consolidation": "Konsolidationsbeiwerte",
  densities: "Dichten",
  "values of mv": "Werte von mv",
  "values of k": "Werte von k",
  depths: "Tiefen",
  length: "Länge",
  density: "Dichte",
  mv: "mv",
  conductivity: "Durchlässigkeit",
  force: "Kraft",
  'holds "{0}", which is no unit of {1}: enter one of the list':
    "enthält „{0}“, keine Einheit dieser Größe ({1}): eine aus der Liste eingeben",
  "holds {0}: enter a number": "enthält {0}: eine Zahl eingeben",
  "shows {0}: look at the cells that it needs": "zeigt {0}: die Zellen ansehen, die sie braucht",
  'holds "{0}" stored as text: re-enter it as a number': "enthält „{0}“ als Text: als Zahl neu eingeben",
  'holds "{0}" where a number is needed: correct or clear it':
    "enthält „{0}“, wo eine Zahl stehen muss: berichtigen oder leeren",
  "holds {0}, which looks like a date ({1}): re-enter it":
    "enthält {0}, das sieht nach einem Datum aus ({1}): neu eingeben",
  "gives no unit, so that {0} cannot be read: enter the unit":
    "gibt keine Einheit an; nicht lesbar sind darum: {0}; die Einheit eingeben",
  'holds "{0}": choose one of {1}': "enthält „{0}“: eines von diesen wählen: {1}",
  'holds "{0}", which is no date here: re-enter the date': "enthält „{0}“, hier kein Datum: das Datum neu eingeben",

  // Loads.
  "load {0}": "Laststufe {0}",
  "load {0} ({1})": "Laststufe {0} ({1})",
  "it needs {0}": "es braucht {0}",
  "{0} is {1} g and {2} is {3} g: the ring with dry soil must be heavier than the ring; correct one of them":
    "{0} ist {1} g und {2} ist {3} g: der Ring mit trockenem Boden muss schwerer sein als der Ring; einen von beiden berichtigen",
  "it needs a tin of trimmings ({0})": "es braucht eine Schale mit Abschnitten ({0})",
  "nothing consolidates on unloading, on wetting, or where the specimen swelled: there is no cv":
    "beim Entlasten, beim Wässern und wo der Probekörper schwoll, konsolidiert nichts: es gibt kein cv",
  "{0} ends with a reading of zero, which counts as blank": "{0} endet mit einer Ablesung null, die als leer zählt",
  "{0} has no reading": "{0} hat keine Ablesung",
  "{0} has no stress": "{0} hat keine Spannung",
  "the deflection at the seating stress, which is deducted from that of each load: {0}; or enter a row for the seating stress, with deflection 0 where the blank test was zeroed under it":
    "die Eigenverformung bei der Anfangsspannung, die bei jeder Laststufe abgezogen wird: {0}; oder eine Zeile für die Anfangsspannung eingeben, mit Verformung 0, wenn der Leerversuch unter ihr genullt wurde",
  "it needs readings that show their step": "es braucht Ablesungen, die ihren Schritt zeigen",

  // Remarks of the sheet.
  "the time curve is refused: {0}": "die Zeitkurve wird abgelehnt: {0}",
  ok: "ok",

  // Plots and charts.
  "the sheet has no such point": "das Blatt hat keinen solchen Punkt",
  "no load that was put on has a value: choose the stresses of all loads, in test order, and the values beside them":
    "keine aufgebrachte Last hat einen Wert: die Spannungen aller Laststufen in der Reihenfolge des Versuchs wählen, und die Werte daneben",
  "there is no row with both a time and a reading: select the column of times and that of readings":
    "es gibt keine Zeile mit Zeit und Ablesung: die Spalte der Zeiten und die der Ablesungen auswählen",
  'the sheet "{0}" has no cells named {1}: name them in the sheet check':
    "das Blatt „{0}“ hat keine Zellen mit den Namen {1}: in der Blattprüfung benennen",
  'the sheet "{0}" has no load with readings to draw': "das Blatt „{0}“ hat keine Laststufe mit Ablesungen zu zeichnen",

  // The calculation book.
  "the void ratio does not fall as the stress rises: check the order of the two points":
    "die Porenzahl fällt nicht mit steigender Spannung: die Reihenfolge der beiden Punkte prüfen",
  "the reading is zero, which counts as blank in a column of readings":
    "die Ablesung ist null, das zählt in einer Spalte von Ablesungen als leer",
  "the two times are the same: give two different ones": "die beiden Zeiten sind gleich: zwei verschiedene angeben",

  // The AGS4 file.
  "the issue of the file": "die Nummer der Ausgabe",
  "the producer of the file": "den Ersteller der Datei",
  "the recipient of the file": "den Empfänger der Datei",
  "the status of the file": "der Status der Datei",
  "the date of the file as yyyy-mm-dd": "das Datum der Datei als JJJJ-MM-TT",
  "the AGS4 file needs {0}: fill in these cells": "die AGS4-Datei braucht {0}: diese Zellen ausfüllen",
  "the AGS4 file needs {0}, and the sheet has no cells named {1}: attach these names to cells (Data sheet, Sheet check), and fill them in":
    "die AGS4-Datei braucht {0}, und das Blatt hat keine Zellen mit den Namen {1}: diese Namen vergeben (Datenblatt, Blattprüfung) und die Zellen ausfüllen",
  "the AGS4 file needs {0}: fill in these fields of the pane":
    "die AGS4-Datei braucht {0}: diese Felder im Aufgabenbereich ausfüllen",
  '{0} is "{1}": use an AGS4 abbreviation, one of {2}':
    "{0} ist „{1}“: eine Abkürzung aus AGS4 nehmen, eine von diesen: {2}",
  "AGS4 is ASCII only, so {0} were spelt with other letters":
    "AGS4 kennt nur ASCII, darum wurden {0} mit anderen Buchstaben geschrieben",
  "the {0} readings of deformation against time": "die {0} Ablesungen der Setzung über der Zeit",
  "the preconsolidation stress, its interval and its method":
    "die Vorbelastungsspannung, ihr Intervall und ihr Verfahren",
  "Cc, Cr and Cs": "Cc, Cr und Cs",
  "the in-situ stress and the OCR": "die In-situ-Spannung und das OCR",
  "final void ratio and saturation": "Endporenzahl und Endsättigung",
  "the strain of the load under which the water came (CONG_SATH is that of wetting alone)":
    "die Stauchung der Laststufe, unter der gewässert wurde (CONG_SATH ist die des Wässerns allein)",
  "strains and heights of the loads": "Stauchungen und Höhen der Laststufen",
  "d0, d50, d90, d100, t50, t90 and t100 of the loads": "d0, d50, d90, d100, t50, t90 und t100 der Laststufen",
  "void ratios at d100: CONS_INCE is that at the end of the load":
    "Porenzahlen bei d100: CONS_INCE ist die am Ende der Laststufe",
  "that mv rests on void ratios at d100": "dass mv auf Porenzahlen bei d100 beruht",
  "k of the loads": "k der Laststufen",
  "which of the two cv is reported": "welches der beiden cv berichtet wird",
  "the deflections of the apparatus (CONG_CORR says only that they were used)":
    "die Eigenverformungen des Geräts (CONG_CORR sagt nur, dass sie verwendet wurden)",
  "the tins of trimmings and the weighings": "die Schalen mit Abschnitten und die Wägungen",
  "the drainage": "die Entwässerung",
  "who tested and who checked": "wer den Versuch ausführte und wer ihn prüfte",
  "the dates of the test and of its loads": "die Datumsangaben des Versuchs und seiner Laststufen",
  "the apparatus used": "die verwendeten Geräte",
  "what was replaced by hand, and why": "was von Hand ersetzt wurde, und warum",
  "group symbol, organic content and sensitivity": "Bodengruppe, organischer Anteil und Sensitivität",
  "the limits that stand as text (LLPL has numbers only)":
    "die Zustandsgrenzen, die als Text dastehen (LLPL hat nur Zahlen)",
  "the fines (GRAG_FINE is finer than 0.063 mm)": "das Feinkorn (GRAG_FINE ist feiner als 0,063 mm)",
  "liquidity index, activity and void index": "Liquiditätszahl, Aktivitätszahl und Porenindex",
  "no test can be written: {0}": "kein Versuch kann geschrieben werden: {0}",
  '{0} is "{1}", and that of {2} is "{3}": an AGS4 file has one project':
    "{0} ist „{1}“ und die von {2} ist „{3}“: eine AGS4-Datei hat ein Projekt",
  "it is of the same specimen as {0}: correct {1}, or leave one of the two out":
    "es ist derselbe Probekörper wie {0}: {1} berichtigen oder einen der beiden weglassen",
  "adopted value ({0})": "eingesetzter Wert ({0})",
  "no reason given": "ohne Begründung",
  "{0}; the construction gave {1}": "{0}; die Konstruktion ergab {1}",
};
