/** Sentences of the report. */
export const reportTexts: Readonly<Record<string, string>> = {
  "Design values: from the in-situ stress over the increase":
    "Kennwerte: von der In-situ-Spannung über den Spannungszuwachs",
  "e at the in-situ stress": "e bei der In-situ-Spannung",
  "e after the increase": "e nach dem Zuwachs",
  "mv over the increase": "mv über den Zuwachs",
  "Constrained modulus M": "Steifemodul M",
  "cv in the middle of it": "cv in dessen Mitte",
  "k from cv and mv": "k aus cv und mv",
  "Compression ratio CR": "Kompressionsverhältnis CR",
  "Recompression ratio RR": "Wiederbelastungsverhältnis RR",
  "Swelling ratio SR": "Schwellverhältnis SR",
  "Modulus number (Janbu)": "Steifebeiwert (Janbu)",
  "e, mv, M and CR are read from Schmertmann's field curve over {0}, CR from Cc if that is adopted; RR and SR are those of the test.":
    "e, mv, M und CR sind über {0} aus der Feldkurve nach Schmertmann gelesen, CR aus Cc, falls das festgelegt ist; RR und SR sind die des Versuchs.",
  "e, mv and M are read from the laboratory loading curve over {0}.":
    "e, mv und M sind über {0} aus der Laborkurve der Belastung gelesen.",
  "cv is the one adopted for the range of stress.": "cv ist das für den Spannungsbereich festgelegte.",
  "mv and M are calculated before rounding: from e in print they follow only within 0.001 of its change.":
    "mv und M sind vor dem Runden berechnet: aus den gedruckten Porenzahlen folgen sie nur auf 0,001 ihrer Änderung genau.",
  "cv of a range of stress is the geometric mean of its loads of first loading, unless it is adopted.":
    "cv eines Spannungsbereichs ist das geometrische Mittel seiner Laststufen der Erstbelastung, wenn keines eingesetzt ist.",
  "cv is interpolated between the loads on log stress.":
    "cv ist zwischen den Laststufen über log Spannung interpoliert.",
  "No in-situ stress is given: only the ratios are shown.":
    "Es ist keine In-situ-Spannung angegeben: nur die Verhältnisse sind gezeigt.",
  "A stress lies beyond the curve: e, mv and M are not given; the remark of the data sheet names the stress.":
    "Eine Spannung liegt außerhalb der Kurve: e, mv und M sind nicht angegeben; die Bemerkung des Datenblatts nennt die Spannung.",
  "The data sheet still says what it said when this report was made.":
    "Das Datenblatt sagt noch, was es beim Anlegen dieses Berichts sagte.",
  "OUT OF DATE: {0} of {1} compared differ, the first: {2}. Make it again.":
    "VERALTET: {0} von {1} verglichenen Angaben sind anders, zuerst: {2}. Neu anlegen.",
  "Numbers are live: they follow the data sheet, rounded once, where they are shown. Sentences (remarks, checks, methods, what is missing) are a snapshot of {0} by Clayledger {1}.":
    "Zahlen leben: sie folgen dem Datenblatt und sind einmal gerundet, wo sie stehen. Sätze (Bemerkungen, Prüfungen, Verfahren, was fehlt) sind der Stand vom {0}, von Clayledger {1}.",
  "The data sheet has no load with a stress or readings.":
    "Das Datenblatt hat keine Laststufe mit Spannung oder Ablesungen.",
  "Ranges. e0: limits of error, k = 2. Preconsolidation stress: what the points of the curve allow, about 95 %. By all methods: the least and the greatest of them. cv: loads of first loading from the preconsolidation stress on, without reloading.":
    "Bereiche. e0: Fehlergrenzen, k = 2. Vorbelastungsspannung: was die Punkte der Kurve zulassen, etwa 95 %. Nach allen Verfahren: das kleinste und das größte Ergebnis. cv: Laststufen der Erstbelastung ab der Vorbelastungsspannung, ohne Wiederbelastung.",
  "{0} passed; not passed: {1} that stop the issue, {2} to be explained, {3} to be noted. Required items that are missing: {4}":
    "{0} bestanden; nicht bestanden: {1}, die die Ausgabe aufhalten, {2} zu erklären, {3} als Hinweis. Fehlende Pflichtangaben: {4}",
  "These results feed settlement design. They support, and do not replace, the judgement of a licensed engineer or authorised signatory. Preconsolidation stress and indices are interpretations; several answers can be defended. All cautions stand among the details.":
    "Diese Ergebnisse gehen in Setzungsberechnungen ein. Sie stützen das Urteil eines befugten Ingenieurs oder Unterzeichners und ersetzen es nicht. Vorbelastungsspannung und Beiwerte sind Auslegungen; mehrere Antworten sind vertretbar. Alle Hinweise zur Vorsicht stehen bei den Einzelheiten.",

  // Conduct.
  "yes: the deflection table of the data sheet is subtracted":
    "ja: die Verformungstabelle des Datenblatts ist abgezogen",
  "no: deformations are as measured": "nein: Setzungen wie gemessen",
  "no: cv is that of the test's temperature; cv at 20 deg C stands in a column of its own":
    "nein: cv gilt für die Versuchstemperatur; cv bei 20 °C hat eine eigene Spalte",
  "no: cv is that of the test's temperature, and no temperature was entered":
    "nein: cv gilt für die Versuchstemperatur; keine Temperatur ist eingetragen",
  "the data sheet does not say which construction was chosen":
    "das Datenblatt sagt nicht, welche Konstruktion gewählt wurde",
  "by root time (Taylor): T90 = {0}, line factor {1}, unless a load's row says otherwise":
    "nach Wurzel t (Taylor): T90 = {0}, Geradenfaktor {1}, wenn die Zeile nichts anderes sagt",
  "by log time (Casagrande): T50 = {0}, unless a load's row says otherwise":
    "nach log t (Casagrande): T50 = {0}, wenn die Zeile nichts anderes sagt",
  "the data sheet does not say": "das Datenblatt sagt es nicht",
  "the end of primary (d100), or the end of the load where there is no d100":
    "dem Ende der Primärsetzung (d100), ohne d100 dem Ende der Stufe",
  "the end of each load": "dem Ende jeder Laststufe",

  // Tables.
  '-  nothing to show: the remarks on loads and the list of what is missing say why. "error": the cell of the data sheet shows one. mv is strain of the load on its starting height over the increase of stress, calculated before rounding: from the heights in print it follows within one unit of the last digit of their difference. k is calculated from cv, mv and the unit weight of water; it is no substitute for a direct test.':
    "-  nichts zu zeigen: die Bemerkungen zu den Laststufen und die Liste des Fehlenden sagen, warum. „Fehler“: die Zelle des Datenblatts zeigt einen. mv ist die Stauchung der Stufe, bezogen auf ihre Anfangshöhe, durch die Zunahme der Spannung, vor dem Runden berechnet: aus den gedruckten Höhen folgt er auf eine Einheit der letzten Stelle ihres Unterschieds genau. k ist aus cv, mv und der Wichte des Wassers berechnet; es ersetzt keinen direkten Versuch.",
  'A height is H0 less the compression from the zero reading to the level, by the dial factor, plus the deflection of the apparatus since the seating stress. It gives e = H / Hs - 1, at the end of the load as at d100 of the construction in the column "cv by". C alpha, strain per log cycle, is the slope of the tail by the dial factor, over H0. The levels are those in use, picks by hand included.':
    "Eine Höhe ist H0 abzüglich der Setzung von der Nullablesung bis zur Ablesung, mit dem Uhrfaktor, plus die Verformung des Geräts seit der Anfangsspannung. Aus ihr folgt e = H / Hs - 1, am Ende der Stufe wie bei d100 der Konstruktion in der Spalte „cv nach“. C alpha, die Stauchung je Dekade, ist die Neigung des Kriechasts mal Uhrfaktor, bezogen auf H0. Die Ablesungen sind die verwendeten, auch die von Hand gewählten.",
  "What the plots are drawn from, not printed. A point that does not show has #N/A for its y, on purpose.":
    "Woraus die Diagramme gezeichnet sind, nicht gedruckt. Ein Punkt, der nicht erscheint, hat mit Absicht #N/A als y.",
  "What the report was made from. This list is not printed; the line at the top of the report counts what differs.":
    "Woraus der Bericht angelegt wurde. Diese Liste wird nicht gedruckt; die Zeile oben im Bericht zählt, was anders ist.",

  // Interpretation and uncertainty.
  "The data sheet has no table of methods (preconsolidation_spread).":
    "Das Datenblatt hat keine Tabelle der Verfahren (preconsolidation_spread).",
  "The methods gave nothing: the curve has no points, or they do not apply to it.":
    "Die Verfahren gaben nichts: die Kurve hat keine Punkte, oder sie gelten nicht für sie.",
  "This is a spread of interpretation, shown apart: it is no uncertainty of measurement, has no probability, and is added to none of the intervals. The constructions of cv spread likewise: see the table of time curves.":
    "Dies ist eine Spanne der Auswertung, für sich gezeigt: sie ist keine Messunsicherheit, hat keine Wahrscheinlichkeit und ist in keinem der Intervalle. Die Konstruktionen von cv streuen ebenso: siehe die Tabelle der Zeit-Setzungs-Kurven.",
  "A quantity lies anywhere within -+ its limit: its standard uncertainty u is limit / root 3 (JCGM 100:2008, 4.3.7). A deformation is the difference of two readings. Inputs count as independent; first order (5.1.2). Give initials and reason beside a limit that you change: the next report keeps it.":
    "Eine Größe liegt irgendwo innerhalb von -+ ihrer Grenze: ihre Standardunsicherheit ist u = Grenze / Wurzel 3 (JCGM 100:2008, 4.3.7). Eine Setzung ist die Differenz zweier Ablesungen. Die Größen gelten als unabhängig; erste Ordnung (5.1.2). Neben einer geänderten Grenze Kürzel und Grund angeben: der nächste Bericht behält sie.",
  "It is not said whether Gs was measured: it counts as assumed.":
    "Es ist nicht gesagt, ob Gs gemessen wurde: es gilt als angenommen.",
  "Gs is stated as measured.": "Gs ist als gemessen angegeben.",
  "Gs IS ASSUMED: its limit of error is an estimate, and governs e.":
    "Gs IST ANGENOMMEN: seine Fehlergrenze ist geschätzt und bestimmt e.",
  "cv follows from t50 or t90 and the height at 50 % of consolidation, half way between d0 and d100 (table of levels and heights); the two columns of cv show the spread of interpretation. U is k times the standard uncertainty. The interval of cv is a factor, from the 95 % interval that the fit to theory leaves on the same readings, made 1.5 times (log time) or 3 times (root time) as wide, and the height; with k = 2 it held the truth in 94 and 91 of 100 simulated curves. It says nothing of a time zero that is off, of swings of temperature, or of which construction is right. Other way: drawn where the construction in use is aided, and aided where it is drawn; a snapshot.":
    "cv folgt aus t50 oder t90 und der Höhe bei 50 % der Konsolidation, in der Mitte zwischen d0 und d100 (Tabelle der Ablesungen und Höhen); die beiden Spalten von cv zeigen, wie weit die Auswertungen auseinanderliegen. U ist k mal die Standardunsicherheit. Das Intervall von cv ist ein Faktor, aus dem 95-%-Intervall, das die Anpassung an die Theorie für dieselben Ablesungen lässt, 1,5-fach (log t) oder 3-fach (Wurzel t) verbreitert, und aus der Höhe; mit k = 2 enthielt es die Wahrheit in 94 und 91 von 100 simulierten Kurven. Es sagt nichts über einen falschen Zeitnullpunkt, über Schwankungen der Temperatur oder darüber, welche Konstruktion richtig ist. Anders: gezeichnet, wo die verwendete Konstruktion gestützt ist, und gestützt, wo sie gezeichnet ist; Stand beim Anlegen",

  // Remarks and picks.
  "nothing is said.": "keine Angabe.",
  "the data sheet has no cell for it.": "das Datenblatt hat keine Zelle dafür.",
  "nothing is said (no readings, or no remark column).":
    "keine Angabe (keine Ablesungen oder keine Spalte für Bemerkungen).",
  "The curve": "Druck-Setzungs-Kurve",
  "{0}, {1}: {2} was replaced by {3}. Reason: {4}. By {5}, {6}.":
    "{0}, {1}: {2} wurde durch {3} ersetzt. Grund: {4}. Von {5}, {6}.",
  "{0} Replaced again below.": "{0} Weiter unten noch einmal ersetzt.",
  "{0}. Reason: {1}. By {2}.": "{0}. Grund: {1}. Von {2}.",
  "{0}. Reason: {1}. By {2}, {3}.": "{0}. Grund: {1}. Von {2}, {3}.",
  "{0}, adopted: {1}": "{0}, eingesetzt: {1}",
  "Cells: {0}.": "Zellen: {0}.",
  "No pick is recorded as replaced by hand, and no formula is known to be typed over.":
    "Kein Punkt ist als von Hand ersetzt verzeichnet, und von keiner überschriebenen Formel ist etwas bekannt.",

  // Checks.
  "{0} against {1}": "{0} gegen {1}",
  "{0} ({1}) {2} {3}": "{0} ({1}) {2} {3}",
  "Acknowledged: {0}.": "Zur Kenntnis genommen: {0}.",
  "Not acknowledged.": "Nicht zur Kenntnis genommen.",
  "{0} [{1}] Basis: {2}. {3}": "{0} [{1}] Grundlage: {2}. {3}",
  "{0} Basis: {1}. {2}": "{0} Grundlage: {1}. {2}",
  "{0} questions were asked of the data sheet: {1} passed, {2} did not, {3} could not be asked for want of numbers":
    "{0} Fragen wurden an das Datenblatt gestellt: {1} bestanden, {2} nicht, {3} ließen sich mangels Zahlen nicht stellen",
  "{0} ({1}).": "{0} ({1}).",
  "{0}.": "{0}.",
  "Limit of the firm: {0}.": "Grenze des Büros: {0}.",
  "{0} ({1}, {2}; the check then said: {3})": "{0} ({1}, {2}; die Prüfung sagte damals: {3})",
  "{0} ({1}, {2})": "{0} ({1}, {2})",
  "“{0}” is {1} in place of {2} ({3}: {4})": "„{0}“ ist {1} statt {2} ({3}: {4})",
  "no name": "kein Name",

  // Methods.
  "Preconsolidation stress: Casagrande's construction on the curve of e against log stress, with the virgin line drawn at a declared slope ({0}, rise over run on the paper), since greatest curvature depends on the scale of the drawing. {1}":
    "Vorbelastungsspannung: Casagrandes Konstruktion an der Kurve von e über dem Logarithmus der Spannung; die Erstbelastungsgerade ist in festgelegter Neigung gezeichnet ({0}, Höhe durch Länge auf dem Papier), denn die größte Krümmung hängt vom Maßstab der Zeichnung ab. {1}",
  "Preconsolidation stress: {0}, {1}. {2}": "Vorbelastungsspannung: {0}, {1}. {2}",
  "The range that these points allow is what they leave open for the knee of the curve; it leaves out the choice of method, whose spread stands apart under Interpretation.":
    "Der Bereich, den die Punkte zulassen, ist das, was sie für das Knie der Kurve offen lassen; die Wahl des Verfahrens ist nicht darin, ihre Spanne steht für sich unter Auswertung.",
  'Lines of the compression curve were picked by hand, as listed under "Replaced by hand"; the stress, the indices and the field curve follow the picks, and the table of all methods does not.':
    "Geraden der Druck-Setzungs-Kurve sind von Hand festgelegt, wie unter „Von Hand ersetzt“ verzeichnet; Spannung, Beiwerte und Feldkurve folgen den Festlegungen, die Tafel aller Verfahren nicht.",
  'Adopted by the engineer in the place of what the constructions give, and used in all that follows: {0}; by whom and why stands under "Replaced by hand".':
    "Vom Ingenieur anstelle dessen eingesetzt, was die Konstruktionen ergeben, und in allem Folgenden verwendet: {0}; von wem und warum, steht unter „Von Hand ersetzt“.",
  "Cc is the slope of the virgin line, Cr that of reload loops between their ends (of the final unloading where there is no loop, of initial loading where there is neither), Cs that of unloading; the stresses of each stand beside it. Per log cycle, by void ratio.":
    "Cc ist die Neigung der Erstbelastungsgeraden, Cr die der Wiederbelastungsschleifen zwischen ihren Enden (ohne Schleife die der letzten Entlastung, ohne beide die der ersten Belastung), Cs die der Entlastung; die Spannungen stehen jeweils daneben. Je Dekade, nach der Porenzahl.",
  "Height of solids Hs = dry mass / (Gs x density of water x area), void ratio e = (H - Hs) / Hs, saturation S = w Gs / e.":
    "Höhe der Festmasse Hs = Trockenmasse / (Gs x Dichte des Wassers x Fläche), Porenzahl e = (H - Hs) / Hs, Sättigung S = w Gs / e.",
  "{0} The density of water is taken as 1.000 g/cm3.": "{0} Die Dichte des Wassers ist mit 1,000 g/cm3 angesetzt.",
  "{0} The density of water is that at the temperature of the test.":
    "{0} Die Dichte des Wassers ist die bei der Versuchstemperatur.",
  "The salt of the pore water is taken out of the dry mass, and its brine counts as water.":
    "Das Salz des Porenwassers ist aus der Trockenmasse herausgerechnet, und seine Lösung zählt als Wasser.",
  "Strain is the corrected deformation over the initial height. Water contents are of the specimen itself, by its ring masses; that of the trimmings stands beside.":
    "Die Stauchung ist die korrigierte Setzung durch die Anfangshöhe. Die Wassergehalte sind die des Probekörpers selbst, aus den Massen mit Ring; der der Abschnitte steht daneben.",
  "ASSUMED: the apparatus does not deflect; no deflection table was entered.":
    "ANGENOMMEN: das Gerät verformt sich nicht; keine Verformungstabelle ist eingetragen.",
  "The deflection of the apparatus is interpolated on the logarithm of stress in the table of the data sheet, less that at the seating stress.":
    "Die Verformung des Geräts ist in der Tabelle des Datenblatts über dem Logarithmus der Spannung interpoliert, abzüglich der bei der Anfangsspannung.",
  "The deflection of the apparatus is interpolated on the logarithm of stress in the table of the data sheet.":
    "Die Verformung des Geräts ist in der Tabelle des Datenblatts über dem Logarithmus der Spannung interpoliert.",
  "Log of time (Casagrande and Fadum): d0 by the parabola rule, d100 where the tangent at the inflection meets the tail, cv = {0} Hdr^2 / t50. Root of time (Taylor): line factor {1}, cv = {2} Hdr^2 / t90.":
    "Log t (Casagrande und Fadum): d0 nach der Parabelregel, d100 im Schnitt der Wendetangente mit dem Kriechast, cv = {0} Hdr^2 / t50. Wurzel t (Taylor): Geradenfaktor {1}, cv = {2} Hdr^2 / t90.",
  "{0} Hdr is of the height at 50 % of consolidation, by each construction's own d0 and d100.":
    "{0} Hdr gehört zur Höhe bei 50 % Konsolidation, nach d0 und d100 der jeweiligen Konstruktion.",
  "{0} Hdr is of the height at the middle of the load.": "{0} Hdr gehört zur Höhe in der Mitte der Laststufe.",
  "The constructions are made aided: theory chooses the readings and straightens a short tail; the remarks say by how much a reading was altered.":
    "Die Konstruktionen sind gestützt gemacht: die Theorie wählt die Ablesungen und streckt einen kurzen Kriechast; die Bemerkungen sagen, um wie viel eine Ablesung verändert wurde.",
  "The constructions of every load are drawn: lines through raw readings, nothing subtracted.":
    "Die Konstruktionen aller Laststufen sind gezeichnet: Geraden durch rohe Ablesungen, nichts abgezogen.",
  "The constructions of load {0} are drawn: lines through raw readings, nothing subtracted; those of the others are made aided, by theory.":
    "Die Konstruktionen der Laststufe {0} sind gezeichnet: Geraden durch rohe Ablesungen, nichts abgezogen; die der anderen sind gestützt gemacht, mit der Theorie.",
  "cv, k and C alpha are given for loads that consolidate the specimen: they are blank on unloading and on wetting, and C alpha is blank where the readings past the end of primary span less than 0.25 of a log cycle.":
    "cv, k und C alpha stehen bei Laststufen, die den Probekörper konsolidieren: bei Entlastung und Wässern sind sie leer, und C alpha ist leer, wo die Ablesungen nach dem Ende der Primärsetzung weniger als 0,25 einer Dekade umfassen.",
  "Single drainage was chosen: Hdr is that whole height, and cv is 4 times that of double drainage.":
    "Einseitige Entwässerung ist gewählt: Hdr ist diese ganze Höhe, und cv ist viermal so groß wie bei beidseitiger.",
  "The data sheet gives cv of unloading as well: it is none of consolidation.":
    "Das Datenblatt gibt cv auch für Entlastung an: es ist keines der Konsolidation.",
  "cv by root time is reported for loads {0}.": "Für die Laststufen {0} ist cv nach Wurzel t berichtet.",
  "ASSUMED: the specific gravity of solids, or it is not said that it was measured.":
    "ANGENOMMEN: die Korndichte, oder es ist nicht gesagt, dass sie gemessen wurde.",
  "ASSUMED: a seating stress of zero; none was entered.":
    "ANGENOMMEN: eine Anfangsspannung von null; keine ist eingetragen.",
  "ASSUMED: drainage at both faces; none was entered.":
    "ANGENOMMEN: Entwässerung an beiden Seiten; keine ist eingetragen.",
  "ASSUMED: the apparatus deflects on unloading as on loading.":
    "ANGENOMMEN: das Gerät verformt sich bei Entlastung wie bei Belastung.",
  "Where a load has no temperature, nothing is corrected for it.":
    "Wo eine Laststufe keine Temperatur hat, ist nichts dafür korrigiert.",

  // Cautions.
  "These results feed settlement design. They support, and do not replace, the judgement of a licensed engineer or authorised signatory. The contract's standard and edition, local codes and licensing law come first.":
    "Diese Ergebnisse gehen in Setzungsberechnungen ein. Sie stützen das Urteil eines befugten Ingenieurs oder Unterzeichners und ersetzen es nicht. Norm und Ausgabe des Vertrags, örtliche Vorschriften und das Berufsrecht gehen vor.",
  "Preconsolidation stress, d0, d100 and the indices are interpretations: several answers can be defended. Look at the construction, the interval and the remarks.":
    "Vorbelastungsspannung, d0, d100 und die Beiwerte sind Auslegungen: mehrere Antworten sind vertretbar. Konstruktion, Intervall und Bemerkungen ansehen.",
  "Terzaghi's theory assumes a saturated soil, small strain, constant cv and drainage in one direction; a small specimen may not represent the field. cv is not valid for unsaturated soil.":
    "Terzaghis Theorie setzt gesättigten Boden, kleine Stauchung, unveränderliches cv und Entwässerung in einer Richtung voraus; ein kleiner Probekörper muss nicht für das Feld stehen. Für ungesättigten Boden gilt cv nicht.",
  "Disturbance of the sample lowers the preconsolidation stress and the compression index.":
    "Störung der Probe mindert Vorbelastungsspannung und Kompressionsbeiwert.",
  "Checks and remarks can be wrong both ways; no remark is no proof of quality.":
    "Prüfungen und Bemerkungen können in beide Richtungen irren; keine Bemerkung ist kein Beweis von Güte.",
  "Not for constant-rate-of-strain, hydraulic-cell or radial-drainage tests. The text of standards is not reproduced here.":
    "Nicht für Versuche mit fester Stauchungsrate, in hydraulischen Zellen oder mit radialer Entwässerung. Der Text von Normen ist hier nicht wiedergegeben.",
  "The uncertainties stated do not cover the disturbance of the sample, the variability of the ground, or the choice of a construction.":
    "Die genannten Unsicherheiten umfassen nicht die Störung der Probe, die Streuung des Baugrunds und die Wahl der Konstruktion.",
  "Protection of the sheets keeps formulas from slips and is no security: they have no password.":
    "Der Schutz der Blätter bewahrt Formeln vor Versehen und ist keine Sicherheit: er hat kein Kennwort.",

  // What is missing.
  "({0}) {1}.": "({0}) {1}.",
  "{0}, no cell of this name on the sheet": "{0}, keine Zelle dieses Namens auf dem Blatt",
  "{0}, cell {1}": "{0}, Zelle {1}",
  "{0}, cells {1}": "{0}, Zellen {1}",
  "loads {0}": "Laststufen {0}",
  "{0}, or {1}": "{0}, oder {1}",
  "{0}, by a mark: {1}, or a row below it": "{0}, durch eine Markierung: {1}, oder eine Zeile darunter",
  "{0}: only where it was measured or is known": "{0}: nur wo gemessen oder bekannt",
  "loads: {0}, holds none": "Laststufen: {0}, enthält keine",
  "{0}, of {1}": "{0}, für {1}",
  "duration of {0}: no readings were entered, so that none can be given":
    "Dauer für {0}: keine Ablesungen eingetragen, daher keine anzugeben",
  "wetting, or the specimen moved against the load; the remark on the load says which":
    "gewässert, oder der Probekörper bewegte sich gegen die Last; die Bemerkung zur Laststufe sagt, was",
  "nothing consolidated, or the construction chosen gave none; the remark on the load says why":
    "nichts konsolidierte, oder die gewählte Konstruktion gab nichts; die Bemerkung zur Laststufe sagt, warum",
  "nothing consolidated, or no straight tail; the remark on the load says why":
    "nichts konsolidierte, oder kein gerader Kriechast; die Bemerkung zur Laststufe sagt, warum",
  "no temperature was entered": "keine Temperatur ist eingetragen",
  "Required by the standards' report clauses, and not there. The number is that of the item of the usual checklist (from memory: check against the edition that the contract names).":
    "Von den Normen für den Bericht verlangt und nicht da. Die Nummer ist die des Punkts der üblichen Liste (aus dem Gedächtnis: mit der im Vertrag genannten Ausgabe vergleichen).",
  "Nothing that the standards' report clauses require is missing.":
    "Nichts fehlt, was die Normen für den Bericht verlangen.",
  "Wanted only where it was measured, known or obtained; not there:":
    "Nur verlangt, wo gemessen, bekannt oder ermittelt; nicht da:",
};
