/** Messages about the reduction of the whole test: preconsolidation stress, indices, sample quality, stiffness. */
export const curve: Readonly<Record<string, string>> = {
  // Methods of preconsolidation stress.
  Work: "Arbeit",
  Intersection: "Schnittpunkt",
  Janbu: "Janbu",
  // Rows of the curve.
  "row {0}": "Zeile {0}",
  "rows {0}": "Zeilen {0}",
  "row {0}: the stress is {1}, below zero: correct or clear it":
    "Zeile {0}: die Spannung ist {1}, unter null: berichtigen oder leeren",
  'row {0}: a strain of {1} cannot be: strains are ratios, 0.12 for 12 percent; give kind "e" for void ratios':
    "Zeile {0}: eine Stauchung von {1} kann nicht sein: Stauchungen sind Verhältnisse, 0,12 für 12 Prozent; für Porenzahlen „e“ angeben",
  "{0}: no void ratio against the stress, left out": "{0}: keine Porenzahl zur Spannung, bleibt weg",
  "{0}: no strain against the stress, left out": "{0}: keine Stauchung zur Spannung, bleibt weg",
  "{0}: a value without a stress, left out: log of stress has no zero":
    "{0}: ein Wert ohne Spannung, bleibt weg: der Logarithmus der Spannung kennt keine Null",
  "void ratios of {0} to {1} are those of no soil: void ratios are ratios, 0.85 for 85 percent; check that the values are no percentages or heights":
    "Porenzahlen von {0} bis {1} hat kein Boden: Porenzahlen sind Verhältnisse, 0,85 für 85 Prozent; prüfen, ob die Werte Prozente oder Höhen sind",
  "{0}: a void ratio below zero cannot be: check the dry mass and the specific gravity":
    "{0}: eine Porenzahl unter null kann nicht sein: Trockenmasse und Korndichte prüfen",
  "there is no row with both a stress and a value: enter them, or choose the two columns that hold them":
    "es gibt keine Zeile mit Spannung und Wert: beide eingeben, oder die beiden Spalten wählen, die sie enthalten",
  "{0} points, and at most {1} are read: choose the rows of one test, or one row in {2}":
    "{0} Punkte, und höchstens {1} werden gelesen: die Zeilen eines Versuchs wählen, oder jede {2}. Zeile",
  "row {0}: the stress {1} does not fit the rows around it, where about {2} would: check its decimal point, its zeros and its unit":
    "Zeile {0}: die Spannung {1} passt nicht zu den Zeilen daneben, etwa {2} würde passen: Komma, Nullen und Einheit prüfen",
  "row {0}: the void ratio {1} does not fit the rows around it while the stress rises: check it":
    "Zeile {0}: die Porenzahl {1} passt bei steigender Spannung nicht zu den Zeilen daneben: prüfen",
  "row {0}: the strain {1} does not fit the rows around it while the stress rises: check it":
    "Zeile {0}: die Stauchung {1} passt bei steigender Spannung nicht zu den Zeilen daneben: prüfen",
  'the values rise as the stress rises: check them, or give kind "strain"':
    "die Werte steigen mit der Spannung: prüfen, oder „strain“ angeben, wenn es Stauchungen sind",
  'the values fall as the stress rises: give kind "e" if they are void ratios, or compression as positive':
    "die Werte fallen mit steigender Spannung: „e“ angeben, wenn es Porenzahlen sind, oder Stauchung positiv",
  "row {0} has the stress of the row before (water added, or the load left standing); the later value is used":
    "Zeile {0}: noch einmal die Spannung der Zeile davor (gewässert, oder die Last blieb stehen); der spätere Wert gilt",
  "the specimen swelled up to stress {0}: first loading is read from there":
    "der Probekörper schwoll bis zur Spannung {0}: die Erstbelastung wird von dort an gelesen",
  "row {0}: the specimen collapsed under stress {1}: first loading is read up to there, before the collapse":
    "Zeile {0}: der Probekörper sackte unter der Spannung {1}: die Erstbelastung wird bis dahin gelesen, vor der Sackung",
  "row {0}: the specimen collapsed under stress {1}: first loading is read from there, after the collapse":
    "Zeile {0}: der Probekörper sackte unter der Spannung {1}: die Erstbelastung wird von dort an gelesen, nach der Sackung",
  "the test has one first-loading point only: there is no curve to read":
    "der Versuch hat nur einen Punkt der Erstbelastung: es gibt keine Kurve",

  // A curve read for yield.
  "only {0} first-loading points: a preconsolidation stress needs {1} at the least":
    "nur {0} Punkte der Erstbelastung: eine Vorbelastungsspannung braucht mindestens {1}",
  "recompression from": "Wiederbelastung ab",
  "recompression to": "Wiederbelastung bis",
  "virgin from": "Erstbelastung ab",
  "virgin to": "Erstbelastung bis",
  "loop from": "Schleife ab",
  "loop to": "Schleife bis",
  "unloading from": "Entlastung ab",
  "unloading to": "Entlastung bis",
  "the picked {0} ({1}) must lie below {2} ({3}): move one of them":
    "die Festlegung {0} ({1}) muss unter {2} ({3}) liegen: eine der beiden verschieben",
  "the virgin line picked from {0} to {1} has fewer than two points of first loading: move an end":
    "die von {0} bis {1} festgelegte Erstbelastungsgerade hat weniger als zwei Punkte der Erstbelastung: ein Ende verschieben",
  "the recompression line picked from {0} to {1} has fewer than two points of first loading: move an end":
    "die von {0} bis {1} festgelegte Gerade der Wiederbelastung hat weniger als zwei Punkte der Erstbelastung: ein Ende verschieben",
  "the greatest curvature picked at {0} lies outside the loads ({1} to {2}): move it":
    "die bei {0} festgelegte größte Krümmung liegt außerhalb der Lasten ({1} bis {2}): verschieben",
  "no loop reaches the picked ends of its line: pick stresses within {0}":
    "keine Schleife reicht bis zu den festgelegten Enden ihrer Geraden: Spannungen innerhalb von {0} festlegen",
  "a line through a loop is picked, and the test has no unload-reload loop: set the pick back to automatic":
    "eine Gerade durch eine Schleife ist festgelegt, und der Versuch hat keine Ent- und Wiederbelastungsschleife: zurück auf automatisch stellen",
  "the recompression line ({0}) begins above the virgin line ({1}): move one of them":
    "die Wiederbelastungsgerade ({0}) beginnt über der Erstbelastungsgeraden ({1}): eine von beiden verschieben",
  "no {0}: {1}": "kein {0}: {1}",
  "the recompression line ({0}) and the virgin line ({1}) overlap: move an end of one of them":
    "die Wiederbelastungsgerade ({0}) und die Erstbelastungsgerade ({1}) überlappen sich: ein Ende einer der beiden verschieben",
  "the unloading line picked from {0} to {1} has fewer than two points of the unloading: move an end":
    "die von {0} bis {1} festgelegte Gerade der Entlastung hat weniger als zwei Punkte der Entlastung: ein Ende verschieben",
  "an unloading line is picked, and the test has no final unloading: set the pick back to automatic":
    "eine Gerade der Entlastung ist festgelegt, und der Versuch hat keine Entlastung am Ende: zurück auf automatisch stellen",
  "the value given": "der angegebene Wert",
  "only {0} first-loading points": "nur {0} Punkte der Erstbelastung",
  "the virgin line rests on {0} points only": "die Erstbelastungsgerade ruht auf nur {0} Punkten",
  "only one load step before yield: the line of recompression is uncertain":
    "nur eine Laststufe vor der Vorbelastungsspannung: die Gerade der Wiederbelastung ist unsicher",
  "a weak bend: the virgin line is only {0} times as steep as the start":
    "ein schwacher Knick: die Erstbelastungsgerade ist nur {0}-mal so steil wie der Anfang",
  "steep from the first load: yield may lie among the first loads, or the specimen be disturbed":
    "steil von der ersten Last an: die Vorbelastungsspannung liegt vielleicht unter den ersten Lasten, oder der Probekörper ist gestört",
  "the virgin part flattens beyond stress {0}: its steepest stretch is used, and yield may read low":
    "der Erstbelastungsast wird über der Spannung {0} flacher: sein steilstes Stück gilt, und die Vorbelastungsspannung liest sich vielleicht zu niedrig",
  "the virgin part flattens beyond stress {0}: its steepest stretch is used":
    "der Erstbelastungsast wird über der Spannung {0} flacher: sein steilstes Stück gilt",
  "the slope still grows at the last load ({0} times that of the step before): the virgin line may not be reached, and yield and Cc may read low":
    "die Neigung wächst noch bei der letzten Last (das {0}-Fache der Stufe davor): die Erstbelastungsgerade ist vielleicht nicht erreicht, und Vorbelastungsspannung und Cc lesen sich zu niedrig",
  "the specimen did not compress in the step before the last: check that reading; the virgin line may not be reached, and yield and Cc may read low":
    "der Probekörper hat sich in der vorletzten Laststufe nicht zusammengedrückt: Ablesung prüfen; die Erstbelastungsgerade ist vielleicht nicht erreicht, und Vorbelastungsspannung und Cc lesen sich zu niedrig",
  "the bend is widely rounded: the specimen may be disturbed, and yield may read high":
    "der Knick ist weit ausgerundet: der Probekörper ist vielleicht gestört, und die Vorbelastungsspannung liest sich zu hoch",
  "row {0}: the specimen compressed as load was taken off: check the stress and the value":
    "Zeile {0}: der Probekörper wurde beim Entlasten zusammengedrückt: Spannung und Wert prüfen",
  "{0}, and whether a load is missing before it; this unloading gives no slope, unless its ends are picked":
    "{0}, auch ob davor eine Last fehlt; diese Entlastung ergibt keine Neigung, solange ihre Enden nicht von Hand festgelegt sind",
  "the specimen is higher under {0} than under {1}: choose other stresses":
    "der Probekörper ist unter {0} höher als unter {1}: andere Spannungen wählen",
  "row {0}: the specimen swelled as the stress rose: check the reading":
    "Zeile {0}: der Probekörper schwoll bei steigender Spannung: Ablesung prüfen",
  "{0}; or give the two stresses between which the slope is wanted":
    "{0}; oder die beiden Spannungen angeben, zwischen denen die Neigung gesucht ist",
  "no bend in the curve: loading is no steeper than unloading, so yield was not reached; load further":
    "kein Knick in der Kurve: Belastung ist nicht steiler als Entlastung, die Vorbelastungsspannung wurde also nicht erreicht; weiter belasten",
  "no bend in the curve: it is steep from the first loads on, so yield lies below them; begin at lower loads":
    "kein Knick in der Kurve: sie ist von den ersten Lasten an steil, die Vorbelastungsspannung liegt also darunter; bei kleineren Lasten beginnen",
  "no bend in the curve to read: yield was not reached, lies below the first loads, or the specimen is disturbed":
    "kein lesbarer Knick in der Kurve: die Vorbelastungsspannung wurde nicht erreicht, liegt unter den ersten Lasten, oder der Probekörper ist gestört",
  "the curve turns down only in the last load step: there is no virgin line yet; load further":
    "die Kurve knickt erst in der letzten Laststufe ab: es gibt noch keine Erstbelastungsgerade; weiter belasten",

  // The methods.
  "the bisector meets the virgin line outside the loads: there is no yield to read":
    "die Winkelhalbierende trifft die Erstbelastungsgerade außerhalb der Lasten: es gibt keine Vorbelastungsspannung zu lesen",
  "the two lines meet outside the loads": "die beiden Geraden treffen sich außerhalb der Lasten",
  "the load steps about yield are coarser than {0} times: the fall of the modulus lies within one step":
    "die Laststufen um die Vorbelastungsspannung sind gröber als das {0}-Fache: der Abfall des Moduls liegt in einer Stufe",
  "the modulus does not fall at yield": "der Modul fällt bei der Vorbelastungsspannung nicht ab",
  "modulus of the steps ending at {0}": "Modul der Stufen, die bei {0} enden",
  "recompression {0}, virgin {1}": "Wiederbelastung {0}, Erstbelastung {1}",
  "virgin {0}, smooth curve": "Erstbelastung {0}, geglättete Kurve",
  "the virgin line meets the initial value before the first load":
    "die Erstbelastungsgerade trifft den Anfangswert vor der ersten Last",
  "the construction ends beyond the loads": "die Konstruktion endet außerhalb der Lasten",
  "the curve bends at about {0}, before the second load ({1}): yield cannot be read":
    "die Kurve knickt bei etwa {0}, vor der zweiten Last ({1}): die Vorbelastungsspannung ist nicht zu lesen",
  "the greatest stress is only {0} times the result: load to {1} times or more":
    "die größte Spannung ist nur das {0}-Fache des Ergebnisses: bis zum {1}-Fachen oder weiter belasten",
  "greatest curvature depends on the scale of the drawing": "die größte Krümmung hängt vom Maßstab der Zeichnung ab",
  "the greatest stresses weigh most, and on coarse loads or a rounded bend its lines meet late":
    "die größten Spannungen wiegen am meisten, und bei groben Lasten oder rundem Knick treffen sich seine Geraden spät",
  "it takes the virgin part as straight on ln(1 + e)": "es nimmt den Erstbelastungsast über ln(1 + e) als gerade",
  "it takes both parts as straight and leaves the rounding out":
    "es nimmt beide Äste als gerade und lässt die Ausrundung weg",
  "an approximation by construction, which reads low": "eine zeichnerische Näherung, die niedrig liest",
  "it reads half-way between the ends of two load steps": "es liest in der Mitte zwischen den Enden zweier Laststufen",
  "neither high nor low": "weder zu hoch noch zu niedrig",
  "about {0} percent high": "etwa {0} Prozent zu hoch",
  "about {0} percent low": "etwa {0} Prozent zu niedrig",
  "where the virgin part flattens it reads {0}": "wo der Erstbelastungsast flacher wird, liest es {0}",
  "on a widely rounded bend it reads {0}": "bei weit ausgerundetem Knick liest es {0}",
  "{0} ({1})": "{0} ({1})",
  "{0} to {1}": "{0} bis {1}",
  "unreliable: the methods spread over {0} percent of the median":
    "unzuverlässig: die Verfahren liegen um {0} Prozent des Medians auseinander",
  "uncertain: the methods spread over {0} percent of the median; look at the curve and the points each method used":
    "unsicher: die Verfahren liegen um {0} Prozent des Medians auseinander; die Kurve und die Punkte jedes Verfahrens ansehen",
  "the methods agree within {0} percent of the median, but see the remarks":
    "die Verfahren stimmen auf {0} Prozent des Medians überein; aber die Bemerkungen beachten",
  "the methods agree within {0} percent of the median": "die Verfahren stimmen auf {0} Prozent des Medians überein",
  "well defined: the methods agree within {0} percent of the median":
    "gut bestimmt: die Verfahren stimmen auf {0} Prozent des Medians überein",
  "these points allow {0} to {1}: smaller load steps about yield would say more":
    "diese Punkte lassen {0} bis {1} zu: kleinere Laststufen um die Vorbelastungsspannung würden mehr sagen",
  "outside the range that these points allow: {0}; see the row of each method":
    "außerhalb des Bereichs, den diese Punkte zulassen: {0}; siehe die Zeile jedes Verfahrens",
  above: "oberhalb",
  below: "unterhalb",
  "{0} the range that these points allow: {1}": "{0} des Bereichs, den diese Punkte zulassen: {1}",

  // Indices and the field curve.
  "the two stresses are the same: give two different ones":
    "die beiden Spannungen sind gleich: zwei verschiedene angeben",
  "{0} from {1} to {2}": "{0} von {1} bis {2}",
  "no {0} branch reaches both {1} and {2}: choose stresses within the loads":
    "kein Ast ({0}) reicht bis {1} und bis {2}: Spannungen innerhalb der Lasten wählen",
  "{0} and {1}": "{0} und {1}",
  "first loading": "Erstbelastung",
  "virgin line {0}": "Erstbelastungsgerade {0}",
  reload: "Wiederbelastung",
  "reload loop": "Ent- und Wiederbelastung",
  "final unloading": "Entlastung am Ende",
  "Cr from the final unloading: the test has no reload loop":
    "Cr aus der Entlastung am Ende: der Versuch hat keine Ent- und Wiederbelastung",
  "initial loading {0}": "Anfangsbelastung {0}",
  "Cr from initial loading, which disturbance steepens: a reload loop is better":
    "Cr aus der Anfangsbelastung, die durch Störung steiler wird: eine Ent- und Wiederbelastung ist besser",
  unloading: "Entlastung",
  "unloading of the loop": "Entlastung der Schleife",
  "the test has no unloading: there is no swelling index":
    "der Versuch hat keine Entlastung: es gibt keinen Schwellbeiwert",
  "the factor is {0}: it must lie between 0 and 1; 0.42 is usual":
    "der Faktor ist {0}: er muss zwischen 0 und 1 liegen; üblich ist 0,42",
  "the laboratory virgin line reaches {0} e0 at stress {1}, before yield: check e0 and the in-situ stress":
    "die Erstbelastungsgerade des Labors erreicht {0} e0 bei der Spannung {1}, vor der Vorbelastungsspannung: e0 und In-situ-Spannung prüfen",
  "the meeting point lies beyond the greatest load ({0}): the virgin line is extended":
    "der Schnittpunkt liegt über der größten Last ({0}): die Erstbelastungsgerade ist verlängert",

  // Secondary compression.
  "granular soil": "grobkörniger Boden",
  "shale or mudstone": "Ton- oder Schluffstein",
  "inorganic clay or silt": "anorganischer Ton oder Schluff",
  "organic clay or silt": "organischer Ton oder Schluff",
  peat: "Torf",
  "outside {0} to {1}, usual for {2}: check that both are void ratio or both strain, and taken at the same stress":
    "außerhalb von {0} bis {1}, üblich für: {2}; prüfen, dass beides Porenzahl oder beides Stauchung ist, bei derselben Spannung",
  "outside {0} to {1}: check that both are void ratio or both strain, and taken at the same stress":
    "außerhalb von {0} bis {1}: prüfen, dass beides Porenzahl oder beides Stauchung ist, bei derselben Spannung",

  // Quality of the sample and stress history.
  "very good to excellent": "sehr gut bis ausgezeichnet",
  "good to fair": "gut bis befriedigend",
  poor: "schlecht",
  "very poor": "sehr schlecht",
  "the in-situ stress {0} lies outside the loads ({1} to {2}): the change of volume there is not known":
    "die In-situ-Spannung {0} liegt außerhalb der Lasten ({1} bis {2}): die Volumenänderung dort ist nicht bekannt",
  "the specimen swelled up to the in-situ stress; above {0} % it has no class: check the zero reading":
    "der Probekörper schwoll bis zur In-situ-Spannung; über {0} % hat er keine Klasse: Nullablesung prüfen",
  "change of void ratio needs the initial void ratio": "die Änderung der Porenzahl braucht die Anfangsporenzahl",
  "Lunne's class needs the preconsolidation stress": "die Klasse nach Lunne braucht die Vorbelastungsspannung",
  "Lunne's table begins at OCR 1: its first column is used":
    "die Tabelle nach Lunne beginnt bei OCR 1: ihre erste Spalte gilt",
  "Lunne's table ends at OCR 4: its second column is used":
    "die Tabelle nach Lunne endet bei OCR 4: ihre zweite Spalte gilt",
  "disturbed: yield and Cc read low": "gestört: Vorbelastungsspannung und Cc lesen sich zu niedrig",
  "OCR below 0.9: disturbance, ground still consolidating, or a wrong in-situ stress (water table?)":
    "OCR unter 0,9: Störung, noch nicht konsolidierter Baugrund oder eine falsche In-situ-Spannung (Grundwasserstand?)",
  "OCR above 20: check the in-situ stress and its unit": "OCR über 20: In-situ-Spannung und ihre Einheit prüfen",

  // Stiffness.
  "the stress is the same before and after (water added, or the load left standing), so the load has no stiffness; if a load was put on, correct one of the two stresses":
    "die Spannung ist vorher und nachher gleich (gewässert, oder die Last blieb stehen), also hat die Last keine Steifigkeit; wurde belastet, eine der beiden Spannungen berichtigen",
  "the specimen swelled under the load, so it has no compressibility; check the values if no water was added":
    "der Probekörper schwoll unter der Last, hat also keine Zusammendrückbarkeit; die Werte prüfen, wenn nicht gewässert wurde",
  "the specimen compressed as the load was taken off, so it has no compressibility; check the values":
    "der Probekörper setzte sich beim Entlasten, hat also keine Zusammendrückbarkeit; die Werte prüfen",
  "av from strain needs the initial void ratio: give it": "av aus Stauchungen braucht die Anfangsporenzahl: angeben",
  "mv on the initial height needs the initial void ratio: give it":
    "mv auf die Anfangshöhe braucht die Anfangsporenzahl: angeben",
  "the load did not compress the specimen: the modulus has no value":
    "die Last drückte den Probekörper nicht zusammen: der Modul hat keinen Wert",
};
