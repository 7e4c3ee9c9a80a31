/** Texts of the sheets beside a German data sheet: the register, the series of wetted specimens, the sheet to fill in by hand, the summary. */
export const beside: Readonly<Record<string, string>> = {
  // The register.
  Register: "Geräteverzeichnis",
  "Register of rings, frames, dials, balances and deflection sets":
    "Verzeichnis der Ringe, Rahmen, Messuhren, Waagen und Verformungssätze",
  "One row for each. A ring has diameter, height and mass; a frame its lever ratio; a dial the length of one division; a mass of a hanger its mass; a deflection set its frame, disks and paper.":
    "Eine Zeile für jedes: Ring mit Durchmesser, Höhe, Masse; Rahmen mit Hebelverhältnis; Messuhr mit der Länge eines Skalenteils; Waage; Gehängemasse mit ihrer Masse; Verformungssatz mit Rahmen, Filtersteinen, Papier.",
  "A deflection set has its deflections in the table on the right: one row for each stress, cumulative since the seating stress.":
    "Ein Verformungssatz hat seine Verformungen in der Tabelle rechts: eine Zeile je Spannung, gesamt seit der Anfangsspannung.",
  "Unit of diameter, height, dial factor and deflections:":
    "Einheit von Durchmesser, Höhe, Uhrfaktor und Verformungen:",
  "Unit of the stresses of deflection sets:": "Einheit der Spannungen der Verformungssätze:",
  Kind: "Art",
  Number: "Nummer",
  Diameter: "Durchm.",
  Height: "Höhe",
  "Mass, g": "Masse, g",
  "Lever ratio": "Hebelverh.",
  "Set: frame": "Satz: Rahmen",
  "Set: disks": "Satz: Steine",
  "Set: paper": "Satz: Papier",
  "Calibrated on": "Kalibriert am",
  Due: "Fällig",
  By: "Von",
  Remark: "Bemerkung",
  "Deflection set": "Satz",
  Stress: "Spannung",
  "On loading": "Belastung",
  "On unloading": "Entlastung",
  "Row of the set": "Zeile im Satz",

  // The series of wetted specimens.
  "Wetting series": "Wässerungsversuche",
  "Specimens wetted under different stresses: swelling pressure by zero strain":
    "Unter verschiedenen Spannungen gewässerte Probekörper: Schwelldruck bei Stauchung null",
  "One row for each specimen. Heights are those just before wetting and at its end, under the same stress, less the deflection of the apparatus. Swell is negative.":
    "Eine Zeile je Probekörper. Höhen unmittelbar vor dem Wässern und an seinem Ende, unter derselben Spannung, ohne die Eigenverformung des Geräts. Schwellen ist negativ.",
  "A cell may refer to a data sheet of this workbook, as in ='Test 1'!wetting_stress, ='Test 1'!wetting_height_before, ='Test 1'!wetting_height_after.":
    "Eine Zelle kann auf ein Datenblatt dieser Mappe verweisen, wie ='Test 1'!wetting_stress, ='Test 1'!wetting_height_before, ='Test 1'!wetting_height_after.",
  "Unit of stress, and of height:": "Einheit der Spannung und der Höhe:",
  "Initial w": "w Anfang",
  "Dry density": "Trockend.",
  "Stress kept": "Spannung",
  "Height before": "Höhe davor",
  "Height after": "Höhe danach",
  "Strain on wetting": "Stauch. Wässern",
  "The specimen": "Probekörper",
  "Of the series": "Der Reihe",
  "Swelling pressure, zero strain": "Schwelldruck, Stauchung null",

  // Beside the results that are laid out on a firm's own sheet.
  "Language of this sheet": "Sprache dieses Blatts",

  // The answers to the reviewer's questions.
  "Answers to checks": "Antworten auf Prüffragen",
  "Answers to the reviewer's questions": "Antworten auf die Prüffragen",
  "Each row answers one question of one data sheet. Of two for the same question, the lower counts.":
    "Jede Zeile beantwortet eine Frage zu einem Datenblatt. Von zweien zur selben Frage gilt die untere.",
  Question: "Frage",
  "To do": "Zu tun",
  "What it said": "Befund",
  Answer: "Antwort",
  When: "Wann",

  // The limits of a firm.
  Limits: "Grenzwerte",
  "Limits of the reviewer's questions": "Grenzwerte der Prüffragen",
  "Enter your firm's limit under Yours, and who changed it, why and since when. A blank one leaves the default in force.":
    "Den Grenzwert des Büros unter „Eigener“ eintragen, dazu wer ihn geändert hat, warum und seit wann. Ohne Eintrag gilt die Vorgabe.",
  "In a cell: =CLAY.CHECKS(the named values, the columns Limit and In force of this sheet).":
    "In einer Zelle: =CLAY.CHECKS(die benannten Werte; die Spalten „Grenzwert“ und „Gilt“ dieses Blatts).",
  Limit: "Grenzwert",
  "In force": "Gilt",
  Yours: "Eigener",
  Default: "Vorgabe",
  "Of the question": "Zur Frage",
  "Changed by": "Geändert von",
  Why: "Warum",
  Since: "Seit",

  // The comparison by hand.
  "Comparison by hand": "Vergleich von Hand",
  "Results compared with values by hand": "Ergebnisse im Vergleich mit Werten von Hand",
  "Each row is one number of a data sheet as it stood when it was compared, the value by hand, and who compared it.":
    "Jede Zeile ist eine Zahl eines Datenblatts, wie sie beim Vergleich dort stand, der Wert von Hand, und wer verglichen hat.",
  Quantity: "Größe",
  Sheet: "Blatt",
  "By hand": "Von Hand",
  Tolerance: "Toleranz",
  Difference: "Differenz",
  "of by hand": "von Hand",
  Result: "Ergebnis",

  // The calculation book.
  "Calculation book": "Rechenbuch",
  "Calculation book of {0}": "Rechenbuch von {0}",
  "The working is text, as the sheet stood when this was made; the last number follows the data sheet.":
    "Der Rechengang ist Text, wie das Blatt stand, als er entstand; die letzte Zahl folgt dem Datenblatt.",
  "Lines that come to more digits are rounded where they are shown, and nowhere else.":
    "Zahlen mit mehr Stellen sind nur in der Anzeige gerundet.",
  Working: "Rechengang",
  Then: "Damals",
  Unit: "Einheit",
  Now: "Jetzt",

  // The sheet that keeps the lines of a file.
  "Readings as they were read, for “{0}”": "Ablesungen, wie sie eingelesen wurden, für „{0}“",
  "The lines of the file stand below, none altered. The few that went to the data sheet were chosen from them.":
    "Die Zeilen der Datei stehen unten, unverändert. Die wenigen auf dem Datenblatt wurden aus ihnen gewählt.",
  "The lines of the file are not kept in this workbook. Its hash tells whether a file is the one that was read.":
    "Die Zeilen der Datei stehen nicht in dieser Arbeitsmappe. An der Prüfsumme zeigt sich, ob eine Datei die eingelesene ist.",
  "rows pasted into the pane": "in den Aufgabenbereich eingefügte Zeilen",
  of: "von",
  "the {0} bytes of the file": "den {0} Bytes der Datei",
  "the pasted text in UTF-8, {0} bytes": "dem eingefügten Text in UTF-8, {0} Bytes",
  Characters: "Zeichensatz",
  Apparatus: "Gerät",
  "Lines kept here": "Zeilen auf diesem Blatt",
  none: "keine",
  "all {0} lines": "alle {0} Zeilen",
  "not finished: the lines below are not all of them": "nicht fertig: unten stehen noch nicht alle Zeilen",
  "Layout, for the next file": "Aufbau, für die nächste Datei",
  "Read so far": "Bisher gelesen",
  "from line": "von Zeile",
  "to line": "bis Zeile",
  rows: "Zeilen",
  "on sheet": "auf dem Blatt",
  "What was said of lines": "Bemerkungen zu Zeilen",
  "What was said of lines (the first {0}; {1} more were told)":
    "Bemerkungen zu Zeilen (die ersten {0}; {1} weitere wurden genannt)",
  Line: "Zeile",
  "Read again on": "Erneut gelesen",
  "lines then": "Zeilen dann",
  "SHA-256 then": "SHA-256 dann",
  "what came in": "was hinzukam",
  "Line 1 of the file stands in row {0}": "Zeile 1 der Datei steht in Zeile {0}",

  // The sheet to fill in by hand.
  "Readings of a consolidation test": "Ablesungen eines Ödometerversuchs",
  "Time, min": "Zeit, min",
  Clock: "Uhrzeit",
  Reading: "Ablesung",
  "Filled in by hand at the frame, then entered into the data sheet":
    "Am Gerät von Hand ausgefüllt, dann in das Datenblatt eingetragen",
  "Load {0}: {1}": "Laststufe {0}: {1}",
  "On the hanger: {0} kg, cap and ball not counted": "Am Gehänge: {0} kg, ohne Kopfplatte und Kugel",
  "On the hanger: ______ kg": "Am Gehänge: ______ kg",
  "Applied on {0} at {1}": "Belastet am {0} um {1}",
  "Ring {0}": "Ring {0}",
  "Frame {0}": "Rahmen {0}",
  "Dial {0}": "Messuhr {0}",
  "Data sheet {0}": "Datenblatt {0}",
  "Readings {0}": "Ablesungen {0}",

  // The summary of a project.
  Summary: "Übersicht",
  "Summary of the project": "Übersicht des Projekts",
  "One row for each data sheet, by formulas that follow it. Rows and columns of your own may be added: they stay.":
    "Eine Zeile für jedes Datenblatt, mit Formeln, die ihm folgen. Eigene Zeilen und Spalten dürfen dazukommen: sie bleiben.",
  "Open checks and rows from other files are constants of the day on which they were read: bring the summary up to date in the pane (Summary).":
    "Offene Prüffragen und Zeilen aus anderen Dateien sind Konstanten des Tages, an dem sie gelesen wurden: die Übersicht im Aufgabenbereich (Übersicht) aktualisieren.",
  "Limits as text": "Grenzen als Text",
  Density: "Dichte",
  "Void index": "Porenindex",
  "In-situ stress": "In-situ- Spannung",
  "Preconsol. stress": "Vorbelast.- spannung",
  "not less than": "nicht kleiner als",
  "not more than": "nicht größer als",
  "cv from": "cv von",
  "cv to": "cv bis",
  "Wetted under": "Gewässert unter",
  "Collapse index": "Sackungs- index",
  Quality: "Güte",
  "Open checks": "Offene Prüffragen",
  "Read on": "Gelesen am",
  File: "Datei",
  "SHA-256 of the file": "SHA-256 der Datei",

  // The charts of a summary.
  "Summary charts": "Diagramme der Übersicht",
  "Every number here is a formula: it follows the summary and the data sheets. Insert the charts once more when a sheet was added.":
    "Jede Zahl hier ist eine Formel: sie folgt der Übersicht und den Datenblättern. Kommt ein Blatt dazu, die Diagramme neu einfügen.",
  "in-situ stress": "In-situ-Spannung",
  "preconsolidation stress": "Vorbelastungsspannung",
  "Cc by w0": "Cc nach w0",
  "Cc by liquid limit": "Cc nach Fließgrenze",
  "line: stress": "Linie: Spannung",
  "intrinsic line": "intrinsische Linie",
  "sedimentation line": "Sedimentationslinie",
  stress: "Spannung",
  strain: "Stauchung",
  "Compression curves": "Druck-Setzungs-Kurven",
  "Compression curves in strain": "Druck-Setzungs-Kurven in Stauchung",
  "Compression curves in e/e0": "Druck-Setzungs-Kurven in e/e0",
  "Compression curves in void index": "Druck-Setzungs-Kurven im Porenindex",
  "cv against stress": "cv über der Spannung",
  "Void ratio e": "Porenzahl e",
  Strain: "Stauchung",
  Depth: "Tiefe",
  "Liquid limit": "Fließgrenze",
  "Stresses against depth: open in situ, filled preconsolidation, crosses its range":
    "Spannungen über der Tiefe: offen in situ, gefüllt Vorbelastung, Kreuze deren Bereich",
  "Cc against initial water content": "Cc über dem Anfangswassergehalt",
  "Cc against liquid limit": "Cc über der Fließgrenze",
};
