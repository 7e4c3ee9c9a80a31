/** The reviewer's questions on the specimen, the loads and the record, with their possible answers. */
export const questions: Readonly<Record<string, string>> = {
  // Specimen: Q01 to Q16.
  "the register's values were typed on the sheet ({0}): what one person types twice is not compared":
    "die Werte des Verzeichnisses wurden auf dem Blatt eingetippt ({0}): was einer zweimal tippt, wird nicht verglichen",
  "last load": "letzte Last",
  "the specimen was dismantled under {0} and takes up water when this load is taken off: the final water content belongs to a looser state":
    "der Probekörper wurde unter {0} ausgebaut: beim Entlasten nimmt er Wasser auf, der Endwassergehalt gehört also zu einem lockereren Zustand",
  "Was the specimen saturated, and not more than saturated, before the test?":
    "War der Probekörper vor dem Versuch gesättigt, und nicht mehr als gesättigt?",
  "{0} for intact soil from below the water table": "{0} für ungestörten Boden aus dem Grundwasser",
  "initial saturation S0": "Anfangssättigung S0",
  "check the height, the diameter, the masses and the specific gravity":
    "Höhe, Durchmesser, Massen und Korndichte prüfen",
  "Does the final water content fill the final voids?": "Füllt der Endwassergehalt die Poren am Ende?",
  "there is no final height: it needs readings, or the measured final height":
    "es gibt keine Endhöhe: es braucht Ablesungen oder die gemessene Endhöhe",
  "final saturation Sf": "Endsättigung Sf",
  "{0}; unload to the seating stress before dismantling": "{0}; vor dem Ausbau bis zur Anfangsspannung entlasten",
  "check the final height, and that free water was wiped off and no soil lost before weighing":
    "die Endhöhe prüfen, und ob vor dem Wägen freies Wasser abgewischt wurde und kein Boden verloren ging",
  "Is the specific gravity that of a soil?": "Ist die Korndichte (Gs) die eines Bodens?",
  "specific gravity": "Korndichte (Gs)",
  "confirm that it was measured on this soil, and its unit":
    "bestätigen, dass sie an diesem Boden bestimmt wurde, und ihre Einheit",
  "Was the specific gravity measured?": "Wurde die Korndichte (Gs) bestimmt?",
  "AGS4 dictionary 4.1.1: CONG_PDEN carries # where the particle density is assumed":
    "AGS4-Wörterbuch 4.1.1: CONG_PDEN trägt #, wo die Korndichte angenommen ist",
  "the specific gravity {0} was measured": "die Korndichte (Gs) {0} wurde bestimmt",
  "the specific gravity {0} is assumed: say so wherever e or S is reported":
    "die Korndichte (Gs) {0} ist angenommen: das sagen, wo immer e oder S berichtet wird",
  "change of e0 for {0} of specific gravity": "Änderung von e0 für {0} der Korndichte",
  "{0}; {1} more or less of it moves e0 by {2}": "{0}; {1} mehr oder weniger ändert e0 um {2}",
  "Do the trimmings give the same dry mass as the oven?":
    "Ergeben die Abschnitte dieselbe Trockenmasse wie der Trockenschrank?",
  "dry mass by the trimmings": "Trockenmasse nach den Abschnitten",
  "dry mass by the oven": "Trockenmasse nach dem Trockenschrank",
  "look at the weighings, and for soil lost before drying":
    "die Wägungen ansehen, und ob vor dem Trocknen Boden verloren ging",
  "Do the trimmings have the water content of the specimen?": "Haben die Abschnitte den Wassergehalt des Probekörpers?",
  "water content of the trimmings": "Wassergehalt der Abschnitte",
  "water content of the specimen": "Wassergehalt des Probekörpers",
  "the trimmings may not stand for the specimen": "die Abschnitte stehen vielleicht nicht für den Probekörper",
  "Do the readings and the final water content give the same final void ratio?":
    "Geben die Ablesungen und der Endwassergehalt dieselbe Endporenzahl?",
  "final void ratio by water": "Endporenzahl nach dem Wasser",
  "final void ratio by height": "Endporenzahl nach der Höhe",
  "look at masses, readings and blotting": "Massen, Ablesungen und Abtupfen ansehen",
  "Is the measured final height the one that the readings give?":
    "Ist die gemessene Endhöhe die, die sich aus den Ablesungen ergibt?",
  "it needs readings (readings_01 and on)": "es braucht Ablesungen (readings_01 und weitere)",
  "measured final height": "gemessene Endhöhe",
  "final height by the readings": "Endhöhe nach den Ablesungen",
  "look at the readings, the zero and the correction for the apparatus":
    "Ablesungen, Nullablesung und Berichtigung um das Gerät ansehen",
  "Are diameter and height those of the ring in the register?":
    "Sind Durchmesser und Höhe die des Rings im Verzeichnis?",
  "as typed": "wie eingegeben",
  "in the register": "im Verzeichnis",
  "measure again, and check the ring's number": "noch einmal messen und die Nummer des Rings prüfen",
  "it needs the register's sizes ({0})": "es braucht die Maße des Verzeichnisses ({0})",
  "Is the mass of the ring that of the register?": "Ist die Masse des Rings die des Verzeichnisses?",
  "ring as weighed": "Ring, wie gewogen",
  "ring in the register": "Ring im Verzeichnis",
  "check the ring's number, and that it was clean and dry":
    "die Nummer des Rings prüfen, und ob er sauber und trocken war",
  "Is the specimen of a size and shape that the standards allow?":
    "Hat der Probekörper Maße und Form, die die Normen zulassen?",
  "ASTM D2435 and ISO 17892-5: height 12 mm; BS 1377-5: 18 mm, where the sheet names it; diameter 2.5 times the height in all (BS 1377-5 says it as a height of 0.4 diameters); from memory: check the edition that applies":
    "ASTM D2435 und ISO 17892-5: Höhe 12 mm; BS 1377-5: 18 mm, wo das Blatt sie nennt; Durchmesser das 2,5-Fache der Höhe in allen (BS 1377-5 sagt es als Höhe von 0,4 Durchmessern); aus dem Gedächtnis: die geltende Ausgabe prüfen",
  "check it against the standard that you report to": "an der Norm prüfen, nach der berichtet wird",
  "diameter over height": "Durchmesser durch Höhe",
  diameter: "Durchmesser",
  height: "Höhe",
  size: "Maße",
  "Is the largest particle small against the height?": "Ist das größte Korn klein gegen die Höhe?",
  "ASTM D2435 (a tenth of the height) and BS 1377-5 (a fifth), from memory: check the edition that applies":
    "ASTM D2435 (ein Zehntel der Höhe) und BS 1377-5 (ein Fünftel), aus dem Gedächtnis: die geltende Ausgabe prüfen",
  "largest particle": "größtes Korn",
  "the specimen is too thin for this soil": "der Probekörper ist zu dünn für diesen Boden",
  "Is everything wet heavier than everything dry, and everything dry heavier than its container?":
    "Ist alles Feuchte schwerer als alles Trockene, und alles Trockene schwerer als sein Behälter?",
  ring: "Ring",
  "tin and wet soil": "Schale und feuchter Boden",
  "tin and dry soil": "Schale und trockener Boden",
  "the tin weighs {0} g wet and {1} g dry": "die Schale wiegt feucht {0} g und trocken {1} g",
  "tin {0}": "Schale {0}",
  "it needs two masses to compare ({0}, ...)": "es braucht zwei Massen zum Vergleich ({0}, ...)",
  "Are the densities those of a soil?": "Sind die Dichten die eines Bodens?",
  "check the sizes, their unit and the masses": "Maße, ihre Einheit und die Massen prüfen",
  "bulk density": "Feuchtdichte",
  "dry density": "Trockendichte",
  "no soil is denser than its grains: {0}": "kein Boden ist dichter als sein Korn: {0}",
  "before the test": "vor dem Versuch",
  "Is the initial void ratio that of a soil?": "Ist die Anfangsporenzahl die eines Bodens?",
  "initial void ratio": "Anfangsporenzahl",
  "check the height, the diameter, the dry mass and the specific gravity":
    "Höhe, Durchmesser, Trockenmasse und Korndichte prüfen",
  "Are the masses this specimen's own, not left from another test?":
    "Sind die Massen die dieses Probekörpers, nicht von einem anderen Versuch übrig?",
  "it needs the data sheet of another specimen: the pane compares the masses":
    "es braucht das Datenblatt eines anderen Probekörpers: der Aufgabenbereich vergleicht die Massen",
  "sheet “{0}”": "Blatt „{0}“",
  "it needs {0} in both tests": "es braucht {0} in beiden Versuchen",
  "number of equal masses": "Anzahl gleicher Massen",
  "correct them on the sheet where they were left from the other test: {0}":
    "auf dem Blatt berichtigen, auf dem sie vom anderen Versuch stehen geblieben sind: {0}",
  "{0} {1} g is more than {2} {3} g": "{0} {1} g ist mehr als {2} {3} g",
  "{0} {1} g is not more than {2} {3} g: the two may be swapped":
    "{0} {1} g ist nicht mehr als {2} {3} g: vielleicht sind sie vertauscht",

  // Loads: Q17 to Q22, Q40 to Q43.
  "it needs the masses on the hanger ({0})": "es braucht die Massen am Gehänge ({0})",
  "Do the stresses rise, fall and rise again as a test is loaded?":
    "Steigen, fallen und steigen die Spannungen, wie ein Versuch belastet wird?",
  "the stress rises {0} times and does not fall before the end of loading":
    "die Spannung steigt {0}-mal und fällt nicht vor dem Ende der Belastung",
  "number of steps of unloading": "Anzahl der Entlastungsstufen",
  "unloading from {0}": "Entlastung von {0}",
  "is it a loop, or a stress typed wrongly?": "Ist es eine Schleife oder eine falsch getippte Spannung?",
  "Does each load of first loading about double the stress?":
    "Verdoppelt jede Laststufe der Erstbelastung etwa die Spannung?",
  "{0}; ASTM D2435's usual load increment ratio is 1":
    "{0}; das übliche Laststeigerungsverhältnis nach ASTM D2435 ist 1",
  "load increment ratio": "Laststeigerungsverhältnis",
  "small steps blur the time curve, large ones the bend of the compression curve":
    "kleine Stufen verwischen die Zeitkurve, große den Knick der Druck-Setzungs-Kurve",
  "it needs two loads ({0})": "es braucht zwei Laststufen ({0})",
  "Is each stress the one that the masses on the hanger give?":
    "Ist jede Spannung die, die sich aus den Massen am Gehänge ergibt?",
  "stress as typed": "Spannung, wie eingegeben",
  "stress by the lever": "Spannung nach dem Hebel",
  "check the masses, the lever ratio and the unit": "Massen, Hebelverhältnis und Einheit prüfen",
  "Are all stresses in one unit?": "Haben alle Spannungen dieselbe Einheit?",
  "arithmetic: ratios of stress units": "Rechnung: Verhältnisse der Spannungseinheiten",
  "it needs four loads, and the stresses of the apparatus table ({0})":
    "es braucht vier Laststufen und die Spannungen der Tabelle der Eigenverformung ({0})",
  "loads that meet a stress of the apparatus table":
    "Laststufen, die eine Spannung der Tabelle der Eigenverformung treffen",
  enough: "genug",
  "the loads and the apparatus table agree only if one of them is in {0}, not {1}: which?":
    "Laststufen und Tabelle der Eigenverformung stimmen nur überein, wenn eines davon in {0} ist, nicht in {1}: welches?",
  "{0} of the loads meet a stress of the apparatus table as typed; no other unit makes them agree":
    "{0} der Laststufen treffen eine Spannung der Tabelle der Eigenverformung, wie eingegeben; keine andere Einheit bringt sie zusammen",
  "Is the whole strain possible for a soil, and not in another unit?":
    "Ist die ganze Stauchung für einen Boden möglich, und nicht in einer anderen Einheit?",
  "the greatest strain ({0})": "größte Stauchung ({0})",
  "check the dial factor (25.4 between inches and mm) and the initial height":
    "den Faktor der Messuhr (25,4 zwischen Zoll und mm) und die Anfangshöhe prüfen",
  "Does the specimen go on compressing as the load rises?": "Setzt sich der Probekörper weiter, wenn die Last steigt?",
  "compression under the load": "Setzung unter der Last",
  "it moved back under a greater load: a swell, a reset dial, or a wrong correction":
    "er ging unter größerer Last zurück: Schwellen, eine verstellte Messuhr oder eine falsche Berichtigung",
  "it needs two loads with readings": "es braucht zwei Laststufen mit Ablesungen",
  "Is there a correction for the apparatus, and is it small against the deformation of the specimen?":
    "Gibt es eine Berichtigung um das Gerät, und ist sie klein gegen die Verformung des Probekörpers?",
  "{0}; ASTM D2435 asks for it above 0.1 % of the height, from memory":
    "{0}; ASTM D2435 verlangt sie über 0,1 % der Höhe, aus dem Gedächtnis",
  "rows of the apparatus table": "Zeilen der Tabelle der Eigenverformung",
  "rows needed": "nötige Zeilen",
  "nothing is corrected for the apparatus: fill in {0} and its deflections, or say why not":
    "nichts ist um das Gerät berichtigt: {0} und die Verformungen ausfüllen oder sagen, warum nicht",
  "share of the apparatus in the deformation of the load": "Anteil des Geräts an der Setzung der Laststufe",
  "strain, e and stiffness of this load depend on the calibration":
    "Stauchung, e und Steifigkeit dieser Laststufe hängen an der Kalibrierung",
  "it needs a load with readings": "es braucht eine Laststufe mit Ablesungen",
  "Does the apparatus table reach every load, on its own branch?":
    "Reicht die Tabelle der Eigenverformung bis zu jeder Laststufe, auf deren eigenem Ast?",
  "it needs the apparatus table ({0})": "es braucht die Tabelle der Eigenverformung ({0})",
  "it needs the loads ({0})": "es braucht die Laststufen ({0})",
  stress: "Spannung",
  "end of the table": "Ende der Tabelle",
  "unloading is corrected with the deflections of loading":
    "die Entlastung ist mit den Verformungen der Belastung berichtigt",
  "the table reaches it": "die Tabelle reicht bis dahin",
  "Were dial, frame, balance and deflection set in calibration throughout the test?":
    "Waren Messuhr, Rahmen, Waage und Verformungssatz während des ganzen Versuchs kalibriert?",
  "Was the deflection set made with the frame of the test?":
    "Wurde der Verformungssatz mit dem Rahmen des Versuchs aufgenommen?",
  "the deflection set {0} was made with the frame {1} of the test":
    "der Verformungssatz {0} wurde mit dem Rahmen {1} des Versuchs aufgenommen",
  "the deflection set {0} was made with the frame {1}, the test with the frame {2}: take a set of this frame":
    "der Verformungssatz {0} wurde mit dem Rahmen {1} aufgenommen, der Versuch mit dem Rahmen {2}: einen Satz dieses Rahmens nehmen",
  "ISO/IEC 17025 (equipment), from memory; common practice":
    "ISO/IEC 17025 (Einrichtungen), aus dem Gedächtnis; übliche Praxis",
  "due on {0}, before the test ended on {1}": "fällig am {0}, vor dem Ende des Versuchs am {1}",
  "due on {0}, not before the test ended on {1}": "fällig am {0}, nicht vor dem Ende des Versuchs am {1}",
  "Did the temperature stay steady?": "Blieb die Temperatur gleich?",
  "ASTM D2435 and BS 1377-5: 4 C either way, from memory; common practice":
    "ASTM D2435 und BS 1377-5: 4 C nach beiden Seiten, aus dem Gedächtnis; übliche Praxis",
  "it needs the temperature of the loads ({0})": "es braucht die Temperatur der Laststufen ({0})",
  "the greatest difference of a load's temperature from the mean of the loads":
    "größter Abstand der Temperatur einer Laststufe vom Mittel der Laststufen",
  "cv and the dial reading changed with it": "cv und die Ablesung der Messuhr änderten sich mit ihr",
  "lowest temperature": "niedrigste Temperatur",
  "cv should be corrected to the reference temperature": "cv sollte auf die Bezugstemperatur umgerechnet werden",
  "highest temperature": "höchste Temperatur",
  temperature: "Temperatur",
  "it needs loads with readings": "es braucht Laststufen mit Ablesungen",

  // The record: Q58 to Q65.
  "ISO/IEC 17025 (records, checking, changes), from memory":
    "ISO/IEC 17025 (Aufzeichnungen, Prüfung, Änderungen), aus dem Gedächtnis",
  "no final height": "keine Endhöhe",
  test: "Versuch",
  "{0} on the sheet is {1}, recalculated {2}: this cell, or a cell that it needs, was overwritten or refers to another cell":
    "{0} auf dem Blatt ist {1}, nachgerechnet {2}: die Zelle oder eine, die sie braucht, wurde überschrieben oder verweist auf eine andere Zelle",
  "{0} of load {1}": "{0} (Laststufe {1})",
  "{0} of the curve": "{0} der Druck-Setzungs-Kurve",
  "Does every result on the sheet follow from its inputs?": "Folgt jedes Ergebnis auf dem Blatt aus seinen Eingaben?",
  arithmetic: "Rechnung",
  "{0} on the sheet": "{0} auf dem Blatt",
  recalculated: "nachgerechnet",
  "results follow from their inputs": "die Ergebnisse folgen aus ihren Eingaben",
  "no result of the sheet can be recalculated": "kein Ergebnis des Blatts kann nachgerechnet werden",
  "Does every load have the results that the other loads have?":
    "Hat jede Laststufe die Ergebnisse, die die anderen haben?",
  "lost and overwritten formulas are the commonest faults of sheets (Powell, Baker & Lawson 2007)":
    "verlorene und überschriebene Formeln sind die häufigsten Fehler von Rechenblättern (Powell, Baker & Lawson 2007)",
  "no load shows a result": "keine Laststufe zeigt ein Ergebnis",
  "results that are missing": "Ergebnisse, die fehlen",
  "results that could be there": "Ergebnisse, die da sein könnten",
  "{0}: {1} is blank, though its inputs are there: copy the formula from a neighbour":
    "{0}: {1} ist leer, obwohl die Eingaben da sind: die Formel von einer Nachbarzelle kopieren",
  "{0} ({1} such cells)": "{0} ({1} solche Zellen)",
  "no load lacks a result that others have": "keiner Laststufe fehlt ein Ergebnis, das andere haben",
  "Do all cells hold what belongs in them?": "Enthalten alle Zellen, was in sie gehört?",
  "a sheet gives no sign of numbers stored as text and of numbers turned into dates; common practice":
    "Zahlen als Text und aus Zahlen gemachte Daten fallen auf einem Blatt nicht auf; übliche Praxis",
  "cells at fault": "fehlerhafte Zellen",
  allowed: "zulässig",
  "no text, date or logical value stands where a number belongs":
    "kein Text, Datum oder Wahrheitswert steht, wo eine Zahl hingehört",
  "Does the record hold everything that a report must show?":
    "Enthält die Aufzeichnung, was ein Bericht enthalten muss?",
  "ASTM D2435 and BS 1377-5 / ISO 17892-5, from memory: check the edition that applies":
    "ASTM D2435 und BS 1377-5 / ISO 17892-5, aus dem Gedächtnis: die geltende Ausgabe prüfen",
  "cells missing": "fehlende Zellen",
  "cells required": "verlangte Zellen",
  "missing: {0}": "es fehlt: {0}",
  "all {0} cells are filled in": "alle {0} Zellen sind ausgefüllt",
  "Was the record checked by a second person, with dates in order?":
    "Wurde die Aufzeichnung von einer zweiten Person geprüft, mit stimmigen Daten?",
  "the sheet has no cells for {0} and {1}": "das Blatt hat keine Zellen für {0} und {1}",
  "{0} is blank": "{0} ist leer",
  "{0} tested and checked: a second person must check": "{0} führte aus und prüfte: eine zweite Person muss prüfen",
  "{0} lies before {1}": "{0} liegt vor {1}",
  "tested by {0}, checked by {1}, dates in order": "ausgeführt von {0}, geprüft von {1}, Daten stimmig",
  "Has every value that was replaced by hand a reason and a name?":
    "Hat jeder von Hand ersetzte Wert eine Begründung und einen Namen?",
  "replaced without reason or name": "ohne Begründung oder Namen ersetzt",
  "replaced by hand": "von Hand ersetzt",
  "Preconsolidation stress, adopted": "Vorbelastungsspannung, eingesetzt",
  "Compression index Cc, adopted": "Kompressionsbeiwert Cc, eingesetzt",
  "Recompression index Cr, adopted": "Wiederbelastungsbeiwert Cr, eingesetzt",
  "Swelling index Cs, adopted": "Schwellbeiwert Cs, eingesetzt",
  "C alpha-epsilon, adopted": "C alpha-epsilon, eingesetzt",
  "cv, recompression, adopted": "cv, Wiederbelastung, eingesetzt",
  "cv, virgin, adopted": "cv, Erstbelastung, eingesetzt",
  "cv, another range, adopted": "cv, anderer Bereich, eingesetzt",
  "no reason or no name for: {0}": "keine Begründung oder kein Name für: {0}",
  "every one has a reason and a name": "jeder hat eine Begründung und einen Namen",
  "nothing was replaced by hand": "nichts wurde von Hand ersetzt",
  "{0} (now {1}, row {2} of the picks)": "{0} (jetzt {1}, Zeile {2} der Festlegungen)",
  "{0} ({1} to {2}, row {3} of the picks)": "{0} ({1} zu {2}, Zeile {3} der Festlegungen)",
};
