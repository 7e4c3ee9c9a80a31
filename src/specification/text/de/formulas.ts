/** The texts that formulas show on a German sheet, by their English texts. Labels of cells stand in `labels`. */
export const formulas: Readonly<Record<string, string>> = {
  // The head of the sheet.
  "And ": "Und ",
  " more: see What next.": " weitere: siehe Wie weiter.",
  ": enter {0}. ": ": {0} eingeben. ",
  ": choose a word of its list. ": ": ein Wort der Liste wählen. ",
  ": enter the number of a load. ": ": Nummer einer Laststufe eingeben. ",
  "Pick by hand of cv by, ": "Festlegung „cv nach“, ",
  "Pick by hand of procedure, ": "Festlegung „Verfahren“, ",
  ": enter log time or root time, or automatic. ": ": log t, Wurzel t oder automatisch eingeben. ",
  ": enter aided or drawn, or automatic. ": ": gestützt, gezeichnet oder automatisch eingeben. ",
  "Load ": "Laststufe ",
  "the readings jump by ": "die Ablesungen springen bei ",
  " gives no point of the curve: ": " gibt keinen Punkt der Kurve: ",
  "its height at the end is not above the height of solids, or greater than any specimen has: correct its last readings, the initial height, ":
    "ihre Höhe am Ende liegt nicht über der Höhe der Festmasse, oder ist größer als die jedes Probekörpers: zu berichtigen sind ihre letzten Ablesungen, die Anfangshöhe, ",
  ", the zero reading, ": ", die Nullablesung, ",
  ", the dial factor, ": ", der Uhrfaktor, ",
  ", or the sense of the readings, ": ", oder der Sinn der Ablesungen, ",
  "the table of deflection, from ": "die Tabelle der Eigenverformung, ab ",
  " on, does not reach its stress, ": ", reicht nicht bis zu ihrer Spannung, ",
  ", or the seating stress, ": ", oder zur Anfangsspannung, ",
  ": correct the stress, or extend the table": ": die Spannung berichtigen oder die Tabelle ergänzen",
  "Ring + wet soil before, ": "Ring + feuchter Boden vorher, ",
  "Ring + wet soil after, ": "Ring + feuchter Boden nachher, ",
  ", must be heavier than the ring, ": ", muss schwerer sein als der Ring, ",
  ", must be heavier than ring + dry soil, ": ", muss schwerer sein als Ring + trockener Boden, ",
  ": correct one of them. ": ": eines von beiden berichtigen. ",
  ", or as heavy: correct one of them. ": ", oder gleich schwer: eines von beiden berichtigen. ",
  "The solids alone would fill the ring: correct the height, ":
    "Die Körner allein würden den Ring füllen: zu berichtigen sind die Höhe, ",
  ", the diameter, ": ", der Durchmesser, ",
  ", the masses, ": ", die Massen, ",
  " and ": " und ",
  ", or the specific gravity, ": ", oder die Korndichte, ",
  "The water content by ring + wet soil before, ": "Der Wassergehalt aus Ring + feuchter Boden vorher, ",
  "The water content by ring + wet soil after, ": "Der Wassergehalt aus Ring + feuchter Boden nachher, ",
  ", is above 2000 %: correct it. ": ", liegt über 2000 %: berichtigen. ",
  "Enter a date:": "Datum eingeben:",
  "Enter a date:. ": "Datum eingeben:. ",
  "Enter a number that can be:": "Mögliche Zahl eingeben:",
  "Enter a number that can be:. ": "Mögliche Zahl eingeben:. ",
  "Choose a word of the list:": "Ein Wort der Liste wählen:",
  "Choose a word of the list:. ": "Ein Wort der Liste wählen:. ",
  "Correct the number or its unit, too large for an oedometer test:":
    "Zahl oder Einheit berichtigen, zu groß für einen Ödometerversuch:",
  "Correct the number or its unit, too large for an oedometer test:. ":
    "Zahl oder Einheit berichtigen, zu groß für einen Ödometerversuch:. ",
  "Check the number and its unit, unusual for an oedometer test:":
    "Zahl und Einheit prüfen, ungewöhnlich für einen Ödometerversuch:",
  "Check the number and its unit, unusual for an oedometer test:. ":
    "Zahl und Einheit prüfen, ungewöhnlich für einen Ödometerversuch:. ",
  "The specimen swelled under load ": "Der Probekörper schwoll unter Laststufe ",
  " and is highest under the greatest stress: correct readings taken backwards or after the dial passed its zero, the sense of the readings, ":
    " und ist unter der größten Spannung am höchsten: Ablesungen berichtigen, die rückwärts oder nach dem Lauf der Messuhr über null gelesen wurden, den Sinn der Ablesungen, ",
  ", or the stresses. ": ", oder die Spannungen. ",
  "The height, ": "Die Höhe, ",
  ", is not less than the diameter, ": ", ist nicht kleiner als der Durchmesser, ",
  ": check whether they were exchanged. ": ": prüfen, ob sie vertauscht wurden. ",
  "The bulk density is ": "Die Feuchtdichte ist ",
  " Mg/m3: check the masses, ": " Mg/m3: zu prüfen sind die Massen, ",
  " with its ring and ": " mit Ring und ",
  ", and the height, ": ", und die Höhe, ",
  "The zero reading, ": "Die Nullablesung, ",
  ", lies more than a tenth of the height from the first reading of load 1, ":
    ", liegt mehr als ein Zehntel der Höhe von der ersten Ablesung der Laststufe 1, ",
  ": check both, and whether the dial was reset. ": ", entfernt: beide prüfen, und ob die Messuhr neu gestellt wurde. ",
  "Cc, ": "Cc, ",
  ", over 1 + e0 is ": ", durch 1 + e0 ist ",
  ", which is rare outside peat: check the stresses and the last readings of the loads. ":
    ", was außer bei Torf selten ist: die Spannungen und die letzten Ablesungen der Laststufen prüfen. ",
  "Missing: ": "Es fehlt: ",
  "specific gravity, ": "Korndichte Gs, ",
  "diameter, ": "Durchmesser, ",
  "initial height, ": "Anfangshöhe, ",
  "ring mass, ": "Masse des Rings, ",
  "ring + wet soil before, ": "Ring + feuchter Boden vorher, ",
  "ring + wet soil after, ": "Ring + feuchter Boden nachher, ",
  "ring + dry soil, ": "Ring + trockener Boden, ",
  "dial factor, ": "Uhrfaktor, ",
  "zero reading, ": "Nullablesung, ",
  "in-situ stress (for OCR, field curve and quality), ": "In-situ-Spannung (für OCR, Feldkurve und Güte), ",
  "stresses of the loads, from ": "Spannungen der Laststufen, ab ",
  "stress of load ": "Spannung der Laststufe ",
  "readings of load ": "Ablesungen der Laststufe ",
  ", in row ": ", ab Zeile ",
  " and below": "",
  "Loads, from ": "Laststufen, ab ",
  " on: ": ": ",
  "The loads so far give no preconsolidation stress yet: read further loads. ":
    "Die bisherigen Laststufen geben noch keine Vorbelastungsspannung: weitere Laststufen ablesen. ",

  // Adopted values.
  adopted: "eingesetzt",
  ", no reason": ", ohne Grund",
  ", no initials": ", ohne Kürzel",
  "as by ": "nach ",
  ", by a pick": ", festgelegt",
  "as by the virgin line": "Erstbelastung",
  "as by loop or unloading": "Schleife oder Entlastung",
  "as by the unloading": "Entlastung",
  "no load chosen": "keine Stufe gewählt",
  "as by load ": "nach Laststufe ",
  "give both stresses, the lower first": "beide Spannungen, die kleinere zuerst",
  "each load's choice": "Wahl der Stufe",
  "1 load": "1 Stufe",
  " loads": " Stufen",
  "no load with a cv in it": "keine Stufe mit cv darin",
  "no load with a cv there": "dort keine Stufe mit cv",
  "{0} adopted: ": " eingesetzt: ",
  " by ": " von ",
  "no initials": "ohne Kürzel",
  "no reason": "ohne Begründung",
  " (the constructions gave ": " (die Konstruktionen gaben ",
  "no value": "keinen Wert",
  " from ": " von ",
  " to ": " bis ",

  // Results.
  "no in-situ stress: RR and SR only": "ohne In-situ-Sp.: nur RR, SR",
  "no in-situ stress: ratios only": "ohne In-situ-Sp.: nur Verh.",
  "beyond the curve: see Remarks": "außerhalb: s. Bemerkungen",
  "field curve": "Feldkurve",
  "lab. curve": "Laborkurve",
  " over ": " über ",
  " stages; these results: load ": " Stufen; diese: Laststufe ",
  "/div": "/Skt",
  div: "Skt",

  // Remarks on loads.
  "no stress, and the next load has one: enter it; ": "keine Spannung, und die nächste Laststufe hat eine: eingeben; ",
  "readings and no stress: enter it; ": "Ablesungen und keine Spannung: eingeben; ",
  "the specimen compressed while load was taken off: check this stress, that of the load before, and the readings; ":
    "der Probekörper setzte sich, während Last abgenommen wurde: diese Spannung, die der Laststufe davor und die Ablesungen prüfen; ",
  "the specimen rose above its initial height: check the readings, unless the soil swells; ":
    "der Probekörper stieg über seine Anfangshöhe: die Ablesungen prüfen, wenn der Boden nicht quillt; ",
  "the stress is not a number greater than 0: enter the stress of the load; ":
    "die Spannung ist keine Zahl über 0: die Spannung der Laststufe eingeben; ",
  "the stress turns back under this load alone: correct it, or that of the load above, if it was mistyped; ":
    "die Spannung kehrt nur unter dieser Laststufe um: sie oder die darüber berichtigen, wenn vertippt; ",
  "row ": "Zeile ",
  ": the stress ": ": die Spannung ",
  "check whether the stress was mistyped: it is more than 8 times that of the load before":
    "prüfen, ob die Spannung vertippt ist: sie ist mehr als das 8-Fache der Laststufe davor",
  ": check whether the stress was mistyped: it is more than 8 times that of the load before. ":
    ": prüfen, ob die Spannung vertippt ist: sie ist mehr als das 8-Fache der Laststufe davor. ",
  "check whether the stress was mistyped: it is more than 8 times that of the load before; ":
    "prüfen, ob die Spannung vertippt ist: sie ist mehr als das 8-Fache der Laststufe davor; ",
  "the time in row ": "die Zeit in Zeile ",
  " (": " (",
  " min) is before the load: correct or clear it; ": " min) liegt vor der Belastung: berichtigen oder löschen; ",
  "enter a number that can be in row ": "mögliche Zahl eingeben in Zeile ",
  " of the times; ": " der Zeiten; ",
  " of the readings; ": " der Ablesungen; ",
  "check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: applied before the load above it; ":
    "prüfen, ob ein Zeitpunkt der Belastung einen halben Tag daneben liegt, wie 1:30 statt 13:30, oder ohne Uhrzeit ist: vor der Laststufe darüber aufgebracht; ",
  "check whether the moment of loading was mistyped: it is that of the load above; ":
    "prüfen, ob der Zeitpunkt vertippt ist: derselbe wie darüber; ",
  "the moment of loading is blank, and other loads have one: enter it; ":
    "der Zeitpunkt der Belastung fehlt, und andere Laststufen haben einen: eintragen; ",
  "check whether ": "prüfen, ob ",
  "check whether the times are seconds: the last one is ": "prüfen, ob die Zeiten Sekunden sind: die letzte ist ",
  " min, which is ": " min, das sind ",
  " days; ": " Tage; ",
  "check whether the times are hours: the last one is ": "prüfen, ob die Zeiten Stunden sind: die letzte ist ",
  " min, and the next load was applied 60 times as long after this one; ":
    " min, und die nächste Laststufe wurde 60-mal so lang nach dieser aufgebracht; ",
  "check whether the times are times of day, or count from the start of the test: they begin at ":
    "prüfen, ob die Zeiten Uhrzeiten sind oder ab Versuchsbeginn zählen: sie beginnen bei ",
  " min, and the next follows within a fiftieth of it; ":
    " min, und die nächste folgt innerhalb eines Fünfzigstels davon; ",
  "check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: the last time is ":
    "prüfen, ob ein Zeitpunkt der Belastung einen halben Tag daneben liegt, wie 1:30 statt 13:30, oder ohne Uhrzeit ist: die letzte Zeit ist ",
  " min, and the next load was applied ": " min, und die nächste Laststufe wurde ",
  " min after this one; ": " min nach dieser aufgebracht; ",
  "check whether the seating stress is smaller than load 1, as the two are equal and no water is marked: enter the stress under which the zero was read; ":
    "prüfen, ob die Anfangsspannung kleiner als Stufe 1 ist, denn beide sind gleich und keine Wasserzugabe ist vermerkt: die Spannung eingeben, unter der die Nullablesung gemacht wurde; ",
  "check whether this stress is an increment, as it is that of load 1 and no water is marked: the sheet takes total stresses; ":
    "prüfen, ob diese Spannung ein Zuwachs ist, denn sie ist die der Laststufe 1, und keine Wasserzugabe ist angegeben: das Blatt nimmt gesamte Spannungen; ",
  "check whether load was taken off, the dial passed its zero or was read backwards: the specimen swelled under the greatest stress so far; ":
    "prüfen, ob entlastet wurde, die Messuhr über null lief oder rückwärts gelesen wurde: der Probekörper schwoll unter der bisher größten Spannung; ",
  "not corrected for the apparatus; ": "nicht um das Gerät berichtigt; ",
  "the deflection table does not reach the seating stress: enter a row for it; ":
    "die Tabelle der Eigenverformung reicht nicht bis zur Anfangsspannung: eine Zeile für sie eingeben; ",
  "the deflection table does not reach this stress: correct the stress or extend the table; ":
    "die Tabelle der Eigenverformung reicht nicht bis zu dieser Spannung: die Spannung berichtigen oder die Tabelle ergänzen; ",
  "the height at the end is not above the height of solids: correct the readings; ":
    "die Höhe am Ende liegt nicht über der Höhe der Festmasse: die Ablesungen berichtigen; ",
  "marked as wetting, but the stress is not that of the load before: enter the stress that was kept; ":
    "als Wässern markiert, aber die Spannung ist nicht die der Laststufe davor: die gehaltene Spannung eintragen; ",
  "wetting: no cv, mv, k or C alpha; ": "Wässern: kein cv, mv, k oder C alpha; ",
  "the specimen swelled under the load: no cv, mv, k or C alpha":
    "der Probekörper schwoll unter der Last: kein cv, mv, k oder C alpha",
  "the specimen swelled under the load: no cv, mv, k or C alpha; ":
    "der Probekörper schwoll unter der Last: kein cv, mv, k oder C alpha; ",
  "no d100: the curve shows the end of the load; ": "kein d100: die Kurve zeigt das Ende der Laststufe; ",
  "the time curve is refused: its first cell says why": "die Zeitkurve wird abgelehnt: ihre erste Zelle sagt, warum",

  // The series of wetted specimens.
  "enter the stress": "Spannung eingeben",
  swelled: "schwoll",
  compressed: "setzte sich",
  "did not move": "blieb gleich",

  // Picks by hand.
  "unfinished: not used": "unfertig: gilt nicht",
  "no such load: not used": "keine solche Laststufe: gilt nicht",
  "automatic again": "wieder automatisch",
  used: "gilt",
  "replaced further down": "weiter unten ersetzt",
  "cannot be used": "nicht verwendbar",

  // What a live register lacks.
  "ring ": "Ring ",
  "frame ": "Rahmen ",
  "dial ": "Messuhr ",
  "balance ": "Waage ",
  "deflection set ": "Verformungssatz ",
  " is not in the register": " steht nicht im Verzeichnis",
  " stands in several rows of the register": " steht in mehreren Zeilen des Verzeichnisses",
  ": its values were kept; ": ": die Werte blieben stehen; ",
  " is not in the register: its values were kept; ": " steht nicht im Verzeichnis: die Werte blieben stehen; ",
  " stands in several rows of the register: its values were kept; ":
    " steht in mehreren Zeilen des Verzeichnisses: die Werte blieben stehen; ",
  " has no deflections in the register: the table was kept; ":
    " hat im Verzeichnis keine Verformungen: die Tabelle blieb stehen; ",
  " has more than 12 rows: the table was kept; ": " hat mehr als 12 Zeilen: die Tabelle blieb stehen; ",
};
