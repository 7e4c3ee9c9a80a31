/** Notes of cells on a German sheet, by their English texts. The meanings of the words of a list are added from `choices`. */
const NOT_CONVERTED =
  "Ein Wechsel benennt die Zahlen um, die in dieser Einheit eingetragen sind; er rechnet sie nicht um.";
const PRACTICE = "(übliche Praxis, ohne Quelle)";

export const notes: Readonly<Record<string, string>> = {
  "The language of the titles, labels and notes of this sheet. It is chosen when the sheet is inserted.":
    "Die Sprache der Überschriften, Beschriftungen und Notizen dieses Blatts. Sie wird beim Einfügen des Blatts gewählt.",
  "Inputs that are still to be typed, and impossible inputs, each with its cell. Results stay blank until they are there. If there are too many, the others stand on the screen What next and on the page of remarks.":
    "Eingaben, die noch fehlen, und Eingaben, die nicht sein können, je mit ihrer Zelle. Ergebnisse bleiben leer, bis sie da sind. Sind es zu viele, stehen die übrigen unter „Wie weiter“ und auf der Seite der Bemerkungen.",

  // Identification.
  "Tube, block, piston; as the client's own list has it.": "Rohr, Block, Kolben; wie in der Liste des Auftraggebers.",
  "The number under which the sample is kept and handed over with its data.":
    "Die Nummer, unter der die Probe aufbewahrt und mit ihren Daten übergeben wird.",
  "Trimming, time from extrusion, anything patched or lost.":
    "Herausarbeiten, Zeit seit dem Ausdrücken, was geflickt wurde oder verloren ging.",
  "Depth of the top of the sample below ground level.": "Tiefe der Oberkante der Probe unter Gelände.",
  "Group symbol in the system that the contract names, such as CH.":
    "Bodengruppe nach dem System, das der Vertrag nennt, wie TA.",
  "The standard and edition that the contract names.":
    "Norm und Ausgabe, die der Vertrag nennt, wie DIN EN ISO 17892-5 mit dem Jahr.",
  "The client's own reference, letter for letter: a changed one cannot be matched later.":
    "Die Bezeichnung des Auftraggebers, Buchstabe für Buchstabe: eine geänderte lässt sich später nicht zuordnen.",
  "Depth of the middle of the specimen below ground level.": "Tiefe der Mitte des Probekörpers unter Gelände.",
  "How the specimen's axis stood in the ground.": "Wie die Achse des Probekörpers im Boden stand.",
  "State of the specimen before the test.": "Zustand des Probekörpers vor dem Versuch.",
  "How long each load stays: a fixed time, or until primary has ended.":
    "Wie lange jede Laststufe steht: eine feste Zeit, oder bis zum Ende der Primärkonsolidation.",

  // Ring, sizes and masses.
  "Diameter of the ring in the register; the measured diameter is typed below.":
    "Durchmesser des Rings im Verzeichnis; der gemessene wird darunter eingetragen.",
  "Mean inside diameter of the ring as measured, not the nominal one.":
    "Gemessener mittlerer Innendurchmesser des Rings, nicht das Nennmaß.",
  "Trimmed specimen in its ring before the test.": "Herausgearbeiteter Probekörper im Ring vor dem Versuch.",
  "Optional: a check on the height from the readings, and used in its place where there are none.":
    "Freiwillig: zur Kontrolle der Höhe aus den Ablesungen, und an ihrer Stelle, wo es keine gibt.",
  "Optional: temperature of the water that the specific gravity is relative to, usually 20. Where it is blank, water has 1.000 g/cm3.":
    "Freiwillig: Temperatur des Wassers, auf das sich die Korndichte bezieht, meist 20. Ist die Zelle leer, hat Wasser 1,000 g/cm3.",
  "Md = (ring + dry soil) - ring, less the salt of the pore water where its content is given.":
    "Md = (Ring + trockener Boden) - Ring, ohne das Salz des Porenwassers, wo sein Gehalt angegeben ist.",
  "As weighed: (wet mass before - dry mass) / dry mass, the salt in the dry mass.":
    "Wie gewogen: (feuchte Masse vorher - Trockenmasse) / Trockenmasse, das Salz in der Trockenmasse.",
  "Particle density over that of water, 1.000 Mg/m3.": "Korndichte, bezogen auf die Dichte des Wassers, 1,000 Mg/m3.",
  "Height of the ring in the register.": "Höhe des Rings im Verzeichnis.",
  "Height of the specimen in the ring before seating.": "Höhe des Probekörpers im Ring vor dem Anlegen der Last.",
  "Dismantled quickly, free water blotted off.": "Rasch ausgebaut, freies Wasser abgetupft.",
  "Largest grain or inclusion found in the specimen after the test.":
    "Größtes Korn oder größter Einschluss, nach dem Versuch im Probekörper gefunden.",
  "By Kell (1975), from the temperature.": "Nach Kell (1975), aus der Temperatur.",
  "Hs = Md / (Gs rho_w A), A = pi D^2 / 4, rho_w = 1.000 g/cm3, or that of the temperature given.":
    "Hs = Md / (Gs rho_w A), A = pi D^2 / 4, rho_w = 1,000 g/cm3 oder die Dichte bei der angegebenen Temperatur.",
  "As weighed: (wet mass after - dry mass) / dry mass, the salt in the dry mass.":
    "Wie gewogen: (feuchte Masse nachher - Trockenmasse) / Trockenmasse, das Salz in der Trockenmasse.",
  "An assumed value must be reported as such.": "Ein angenommener Wert ist als solcher zu berichten.",
  "Mass of the ring in the register, clean and dry.": "Masse des Rings im Verzeichnis, sauber und trocken.",
  "Ring alone, clean and dry.": "Ring allein, sauber und trocken.",
  "After oven drying to constant mass, with all soil kept.":
    "Nach dem Trocknen im Ofen bis zur Massenkonstanz, ohne Verlust an Boden.",
  "Stress that held the height on inundation, where it was measured.":
    "Spannung, die beim Wässern die Höhe hielt, wo sie gemessen wurde.",
  "Optional: mass of salt over mass of pore water at the end of the test, 3.5 % in sea water. Drying leaves the salt with the soil: it is taken out of the dry mass.":
    "Freiwillig: Masse des Salzes durch Masse des Porenwassers am Ende des Versuchs, 3,5 % in Meerwasser. Beim Trocknen bleibt das Salz im Boden: es wird aus der Trockenmasse herausgerechnet.",
  "Pore water = (wet after - dry) / (1 - s), salt = pore water less (wet after - dry); IODP Proceedings 330, Table T9.":
    "Porenwasser = (feucht nachher - trocken) / (1 - s), Salz = Porenwasser weniger (feucht nachher - trocken); IODP Proceedings 330, Table T9.",
  "Empty tin, clean and dry.": "Leere Schale, sauber und trocken.",
  "w = (wet - dry) / (dry - tin).": "w = (feucht - trocken) / (trocken - Schale).",
  "Mean of the tins.": "Mittel der Schalen.",
  "Md = wet mass before / (1 + w of trimmings): a check on the oven-dry mass, not used in the reduction.":
    "Md = feuchte Masse vorher / (1 + w der Abschnitte): zur Kontrolle der ofentrockenen Masse, in der Auswertung nicht verwendet.",
  "More than 2 % either way: look at the weighings (common practice, no source).": `Mehr als 2 % nach oben oder unten: die Wägungen ansehen ${PRACTICE}.`,

  // Apparatus.
  "Whether readings rise or fall when the specimen compresses.":
    "Ob die Ablesungen steigen oder fallen, wenn sich der Probekörper setzt.",
  "Both faces drain in a fixed or floating ring with two porous disks.":
    "Beide Flächen entwässern in einem festen oder schwebenden Ring mit zwei Filtersteinen.",
  "Of the specimen's depth. A change relabels the numbers that are typed in this unit; it does not convert them.": `Der Tiefe des Probekörpers. ${NOT_CONVERTED}`,
  "Strain per unit of stress. A change relabels the numbers that are typed in this unit; it does not convert them.": `Stauchung je Einheit der Spannung. ${NOT_CONVERTED}`,
  "Of a lever frame, such as 10; blank for other frames.": "Eines Hebelrahmens, etwa 10; leer bei anderen Rahmen.",
  "Length of one division, such as 0.002 mm or 0.0001 in; 1 where the logger already records lengths.":
    "Länge eines Skalenteils, etwa 0,002 mm oder 0,0001 in; 1, wo der Datenlogger schon Längen aufzeichnet.",
  "Date and reference of the apparatus deflection calibration.":
    "Datum und Zeichen der Kalibrierung der Eigenverformung des Geräts.",
  "Dial reading under the seating stress, before the first load.":
    "Ablesung der Messuhr unter der Anfangsspannung, vor der ersten Laststufe.",
  "Of sizes, dial factor and deflections. A change relabels the numbers that are typed in this unit; it does not convert them.": `Der Maße, des Uhrfaktors und der Eigenverformungen. ${NOT_CONVERTED}`,
  "kN/m3 and pcf are weights per volume at standard gravity. A change relabels the numbers that are typed in this unit; it does not convert them.": `kN/m3 und pcf sind Wichten bei Normfallbeschleunigung. ${NOT_CONVERTED}`,
  "Hydraulic conductivity. A change relabels the numbers that are typed in this unit; it does not convert them.": `Durchlässigkeitsbeiwert. ${NOT_CONVERTED}`,
  "Stress under which the zero reading was taken; blank counts as zero.":
    "Spannung, unter der die Nullablesung genommen wurde; leer zählt als null.",
  "The US tsf is the 2000 lbf ton per square foot. A change relabels the numbers that are typed in this unit; it does not convert them.": `Die tsf der USA sind Tonnen von 2000 lbf je Quadratfuß. ${NOT_CONVERTED}`,
  "The year is 365.25 days. A change relabels the numbers that are typed in this unit; it does not convert them.": `Das Jahr hat 365,25 Tage. ${NOT_CONVERTED}`,
  "The register whose values stand here, and the day on which they were taken; left blank, they were typed.":
    "Das Verzeichnis, dessen Werte hier stehen, und der Tag, an dem sie übernommen wurden; leer: sie sind eingetippt.",
  "Stresses of the blank test on a metal disk with the same disks and papers.":
    "Spannungen des Leerversuchs an einer Metallscheibe mit denselben Filtersteinen und Papieren.",
  "Cumulative deflection of the apparatus on loading. An empty table means no correction.":
    "Gesamte Eigenverformung des Geräts bei Belastung. Eine leere Tabelle heißt: keine Korrektur.",
  "Cumulative deflection of the apparatus on unloading. Where it is empty, the loading column serves both.":
    "Gesamte Eigenverformung des Geräts bei Entlastung. Ist sie leer, gilt die Spalte der Belastung für beides.",
  "frozen: as they were on the day they were taken. live: formulas that follow the register; a number that it does not have keeps the value that stood here.":
    "fest: wie am Tag der Übernahme. mitgehend: Formeln, die dem Verzeichnis folgen; fehlt ihm eine Nummer, bleibt der Wert, der hier stand.",
  "Live values only: the numbers that the register does not have; their values stay as they were when they were taken.":
    "Nur bei lebenden Werten: die Nummern, die das Verzeichnis nicht hat; ihre Werte bleiben wie bei der Übernahme.",
  "Interpolated in the loading column on log stress. The zero reading was taken under it, so that a load is corrected by the table's value less this one. 0 where the seating stress is blank or 0. Blank where the table does not reach down to the seating stress: enter a row for that stress, with deflection 0 where the blank test was zeroed under it.":
    "In der Spalte der Belastung über log Spannung interpoliert. Unter ihr wurde die Nullablesung genommen, deshalb wird eine Laststufe um den Wert der Tabelle weniger diesen korrigiert. 0, wo die Anfangsspannung leer oder 0 ist. Leer, wo die Tabelle nicht bis zur Anfangsspannung reicht: eine Zeile für diese Spannung eingeben, mit Verformung 0, wenn der Leerversuch unter ihr genullt wurde.",
  "Number of the set in the register, for the frame, disks and papers of this test.":
    "Nummer des Satzes im Verzeichnis, für Rahmen, Filtersteine und Papiere dieses Versuchs.",
  "The load frame that the set was made with: it is compared with that of the test.":
    "Der Lastrahmen, mit dem der Satz aufgenommen wurde: er wird mit dem des Versuchs verglichen.",

  // Classification.
  "Water content in percent: type 62%.": "Wassergehalt in Prozent: 62% eintippen.",
  "Water content in percent; blank where the soil is not plastic: say so in the remarks.":
    "Wassergehalt in Prozent; leer, wo der Boden nicht plastisch ist: das in den Bemerkungen sagen.",
  "Share by mass finer than 0.063 mm (0.075 mm in US practice).":
    "Massenanteil feiner als 0,063 mm (0,075 mm in den USA).",
  "Share by mass finer than 0.002 mm.": "Massenanteil feiner als 0,002 mm.",
  "Share by mass; the remarks say by which method.": "Massenanteil; die Bemerkungen nennen das Verfahren.",
  "Undrained strength intact over remoulded.": "Undränierte Festigkeit ungestört durch gestört.",
  "Liquid limit - plastic limit.": "Fließgrenze - Ausrollgrenze.",
  "(w0 - plastic limit) / plasticity index.": "(w0 - Ausrollgrenze) / Plastizitätszahl.",
  "Plasticity index / clay; Skempton (1953).": "Plastizitätszahl / Tonanteil; Skempton (1953).",
  "(e0 - e*100) / C*c; Burland (1990).": "(e0 - e*100) / C*c; Burland (1990).",
  "Void ratio of the reconstituted soil at 100 kPa, by correlation with the liquid limit; Burland (1990).":
    "Porenzahl des aufbereiteten Bodens bei 100 kPa, aus der Korrelation mit der Fließgrenze; Burland (1990).",
  "Compression index of the reconstituted soil, by correlation with the liquid limit; Burland (1990).":
    "Kompressionsbeiwert des aufbereiteten Bodens, aus der Korrelation mit der Fließgrenze; Burland (1990).",

  // Choices.
  "Vertical effective stress in the ground at the depth of the specimen.":
    "Lotrechte effektive Spannung im Boden in der Tiefe des Probekörpers.",
  "The construction whose d100 and cv are reported and used further; both are shown.":
    "Die Konstruktion, deren d100 und cv berichtet und weiter verwendet werden; beide sind gezeigt.",
  "The construction whose preconsolidation stress is used further unless another value is adopted; every method is shown among the results.":
    "Die Konstruktion, deren Vorbelastungsspannung weiter verwendet wird, wenn kein anderer Wert eingesetzt ist; jedes Verfahren steht bei den Ergebnissen.",
  "The height that the strain on wetting is divided by: that just before wetting (ASTM D4546), or the initial height (ASTM D5333).":
    "Die Höhe, auf die sich die Stauchung beim Wässern bezieht: die unmittelbar davor (ASTM D4546) oder die Anfangshöhe (ASTM D5333).",
  "laboratory: e, mv, M and CR from the laboratory loading curve; field: from Schmertmann's field curve. RR and SR are those of the test.":
    "Laborkurve: e, mv, M und CR aus der Belastungskurve des Labors; Feldkurve: aus der Feldkurve nach Schmertmann. RR und SR sind die des Versuchs.",
  "What the compression curve shows: void ratios at the end of each load, or at d100.":
    "Was die Druck-Setzungs-Kurve zeigt: Porenzahlen am Ende jeder Laststufe oder bei d100.",
  "aided: theory helps to choose the readings and straightens a short tail. drawn: as a hand repeats them with a ruler, through raw readings. A load may have its own in the table of picks.":
    "gestützt: die Theorie hilft, die Ablesungen zu wählen, und richtet einen kurzen Kriechast. gezeichnet: wie von Hand mit dem Lineal, durch die rohen Ablesungen. Eine Laststufe kann in der Tabelle der Festlegungen ihre eigene Weise haben.",
  "Rise of stress above the in-situ stress over which the design values are given; blank counts as 100 kPa.":
    "Spannungszuwachs über die In-situ-Spannung, für den die Kennwerte gelten; leer zählt als 100 kPa.",
  "measured: as typed among sizes and masses. load back, constant volume: from the loads after the wetting. zero strain: of several specimens, typed from the sheet of the series.":
    "gemessen: wie bei Maßen und Massen eingetragen. Rückbelastung, konst. Volumen: aus den Laststufen nach dem Wässern. Stauchung null: mehrerer Probekörper, vom Blatt der Reihe eingetragen.",
  "What the plots of the pane and the first page of the report show; the other curve stands beside it, and every number in both.":
    "Was die Diagramme im Aufgabenbereich und die erste Seite des Berichts zeigen; die andere Kurve steht daneben, und jede Zahl in beidem.",
  "Number of the load whose C alpha is reported.": "Nummer der Laststufe, deren C alpha berichtet wird.",
  "Share of e0 at which the field curve meets the laboratory line: 0.42 by Schmertmann (1955); some use 0.40.":
    "Anteil von e0, bei dem die Feldkurve die Laborgerade trifft: 0,42 nach Schmertmann (1955); manche nehmen 0,40.",
  "The contract's rule for the end of a load, by which the running load is judged; blank counts as the load duration above.":
    "Die Regel des Vertrags für das Ende einer Laststufe, nach der die laufende beurteilt wird; leer zählt als die Dauer oben.",
  "Minutes of a fixed time (blank counts as a day), or how many times t100; the other rules need no number.":
    "Minuten einer festen Zeit (leer zählt als ein Tag) oder das Wievielfache von t100; die anderen Regeln brauchen keine Zahl.",

  // Adopted values.
  "Value by the constructions; an adopted value does not change it.":
    "Wert der Konstruktionen; ein eingesetzter Wert ändert ihn nicht.",
  "Typed by the engineer; blank keeps what the constructions give. OCR, field curve, quality, checks, report and export use the adopted value.":
    "Vom Ingenieur eingetragen; leer gilt, was die Konstruktionen geben. OCR, Feldkurve, Güte, Prüfungen, Bericht und Ausgabe rechnen mit dem eingesetzten Wert.",
  "Whether the value in use was adopted or is that of the constructions, and what an adopted one lacks.":
    "Ob der gültige Wert eingesetzt oder der der Konstruktionen ist, und was einem eingesetzten fehlt.",
  "Why the engineer departs from the constructions.": "Warum der Ingenieur von den Konstruktionen abweicht.",
  "Blank: the in-situ stress to the preconsolidation stress for recompression, and from there to the greatest load for virgin.":
    "Leer: von der In-situ-Spannung bis zur Vorbelastungsspannung für die Wiederbelastung, von dort bis zur größten Laststufe für die Erstbelastung.",
  "The stress in use: the one typed, otherwise that of the test; an upper stress that is not above the lower one is left out.":
    "Die gültige Spannung: die eingetragene, sonst die des Versuchs; eine obere Spannung, die nicht über der unteren liegt, bleibt weg.",
  "Geometric mean of the cv of the loads of first loading that begin and end within the range (where none does, of those that end within it), whatever is adopted beside it.":
    "Geometrisches Mittel der cv der Laststufen der Erstbelastung, die im Bereich beginnen und enden (gibt es keine, derer, die in ihm enden), was auch daneben eingesetzt ist.",
  "Typed by the engineer; blank keeps what the loads give. Design values, checks, report and summary go on with the adopted cv. Where ranges overlap the lower row counts.":
    "Vom Ingenieur eingetragen; leer gilt, was die Laststufen geben. Kennwerte, Prüfungen, Bericht und Übersicht rechnen mit dem eingesetzten cv. Wo Bereiche sich überdecken, gilt die untere Zeile.",
  "Whether the cv in use was adopted or is that of the loads, and what an adopted one lacks.":
    "Ob das gültige cv eingesetzt oder das der Laststufen ist, und was einem eingesetzten fehlt.",

  // Results.
  "Each departure from the standard, with the reason; where there was none, say so.":
    "Jede Abweichung von der Norm mit ihrem Grund; gab es keine, das sagen.",
  "Disturbance, shells, seams, anything else a reader must know.":
    "Störung, Muscheln, Schlieren und was ein Leser sonst wissen muss.",
  "The first load that has a stress and no reading.": "Die erste Laststufe, die eine Spannung und keine Ablesung hat.",
  "over: every load that has a stress is read, and there is a load of unloading, or the date of the end and more than five loads. While the test is running, a method that does not apply yet leaves its cells blank; after it, #N/A says that it does not apply.":
    "beendet: jede Laststufe mit Spannung ist abgelesen, und es gibt eine Entlastung, oder das Datum des Endes und mehr als fünf Laststufen. Läuft der Versuch, bleiben die Zellen eines noch nicht anwendbaren Verfahrens leer; danach sagt #N/A, dass es nicht anwendbar ist.",
  "w0 = (wet mass before - dry mass) / dry mass, of the specimen itself.":
    "w0 = (feuchte Masse vorher - Trockenmasse) / Trockenmasse, des Probekörpers selbst.",
  "wf = (wet mass after - dry mass) / dry mass.": "wf = (feuchte Masse nachher - Trockenmasse) / Trockenmasse.",
  "Wet mass before / (A H0).": "Feuchte Masse vorher / (A H0).",
  "Dry mass / (A H0).": "Trockenmasse / (A H0).",
  "e0 = (H0 - Hs) / Hs.": "e0 = (H0 - Hs) / Hs.",
  "S0 = w0 Gs / e0; where the pore water has salt, its greater density counts.":
    "S0 = w0 Gs / e0; hat das Porenwasser Salz, zählt seine größere Dichte.",
  "Initial height less the corrected deformation at the end of the last load; the measured height where there are no readings.":
    "Anfangshöhe weniger die korrigierte Setzung am Ende der letzten Laststufe; die gemessene Höhe, wo es keine Ablesungen gibt.",
  "ef = (Hf - Hs) / Hs, from the readings.": "ef = (Hf - Hs) / Hs, aus den Ablesungen.",
  "ef = wf Gs where the specimen ends saturated: the second route, for comparison.":
    "ef = wf Gs, wenn der Probekörper am Ende gesättigt ist: der zweite Weg, zum Vergleich.",
  "Sf = wf Gs / ef; where the pore water has salt, its greater density counts.":
    "Sf = wf Gs / ef; hat das Porenwasser Salz, zählt seine größere Dichte.",
  "More than 0.1 mm (0.004 in) either way: look at the readings and the zero (common practice, no source).": `Mehr als 0,1 mm (0,004 in) nach oben oder unten: Ablesungen und Nullablesung ansehen ${PRACTICE}.`,
  "More than 0.02 + 2 % of e either way: look at masses, readings and blotting (common practice, no source).": `Mehr als 0,02 + 2 % von e nach oben oder unten: Massen, Ablesungen und Abtupfen ansehen ${PRACTICE}.`,
  "More than 2 points either way: the trimmings may not stand for the specimen (common practice, no source).": `Mehr als 2 Prozentpunkte nach oben oder unten: die Abschnitte stehen vielleicht nicht für den Probekörper ${PRACTICE}.`,
  "Stress of the load that is marked as inundated, or the seating stress where that is marked.":
    "Spannung der als geflutet markierten Laststufe, oder die Anfangsspannung, wo diese markiert ist.",
  "Strain at the end of the inundated load less that of the load before; negative where the specimen swelled. Inundate under a load of its own to see swell or collapse alone; blank where the water was added under the seating stress.":
    "Stauchung am Ende der gefluteten Laststufe weniger die der Laststufe davor; negativ, wo der Probekörper schwoll. Unter einer Laststufe für sich fluten, um Schwellen oder Sackung allein zu sehen; leer, wo unter der Anfangsspannung gewässert wurde.",
  "The value adopted, or else by the method chosen on the void ratio against log stress curve.":
    "Der eingesetzte Wert, sonst der nach dem gewählten Verfahren, an der Kurve der Porenzahl über log Spannung.",
  "Lower end of the range that these points allow; the choice of method is not in it.":
    "Unteres Ende des Bereichs, den diese Punkte zulassen; die Wahl des Verfahrens ist nicht darin.",
  "Upper end of the range that these points allow; the choice of method is not in it.":
    "Oberes Ende des Bereichs, den diese Punkte zulassen; die Wahl des Verfahrens ist nicht darin.",
  "OCR = preconsolidation stress / in-situ effective stress.":
    "OCR = Vorbelastungsspannung / effektive In-situ-Spannung.",
  "Fall of void ratio per log cycle of stress on the virgin line, unless another value is adopted.":
    "Abnahme der Porenzahl je Dekade der Spannung auf der Erstbelastungsgeraden, wenn kein anderer Wert eingesetzt ist.",
  "Fall of void ratio per log cycle of stress on reloading, unless another value is adopted.":
    "Abnahme der Porenzahl je Dekade der Spannung bei der Wiederbelastung, wenn kein anderer Wert eingesetzt ist.",
  "Rise of void ratio per log cycle of stress on unloading, unless another value is adopted.":
    "Zunahme der Porenzahl je Dekade der Spannung bei der Entlastung, wenn kein anderer Wert eingesetzt ist.",
  "Strain per log cycle of time of the load chosen, on the initial height, unless another value is adopted.":
    "Stauchung je Dekade der Zeit der gewählten Laststufe, bezogen auf die Anfangshöhe, wenn kein anderer Wert eingesetzt ist.",
  "Both by void ratio: C alpha (1 + e0) / Cc. Cc is that of the virgin line, so choose a load on it.":
    "Beide nach der Porenzahl: C alpha (1 + e0) / Cc. Cc ist das der Erstbelastungsgeraden, also eine Laststufe auf ihr wählen.",
  "Mean cv of the loads within the range, unless another is adopted; the ranges stand among the adopted values.":
    "Mittleres cv der Laststufen des Bereichs, wenn kein anderes eingesetzt ist; die Bereiche stehen bei den eingesetzten Werten.",
  "Slope of Schmertmann's field curve beyond the preconsolidation stress.":
    "Neigung der Feldkurve nach Schmertmann über der Vorbelastungsspannung.",
  "Slope of the field curve from the in-situ stress to the preconsolidation stress; the next line says which branch it was read from.":
    "Neigung der Feldkurve von der In-situ-Spannung bis zur Vorbelastungsspannung; die nächste Zeile sagt, aus welchem Ast.",
  "The branch of the test that Cr was read from: a reload loop first; the rebound at the end only where there is no loop.":
    "Der Ast des Versuchs, aus dem Cr gelesen ist: zuerst eine Wiederbelastungsschleife; die letzte Entlastung nur, wo es keine gibt.",
  "Stress at which the field curve meets the laboratory curve.":
    "Spannung, bei der die Feldkurve die Laborkurve trifft.",
  "The share of e0 chosen above.": "Der oben gewählte Anteil von e0.",
  "One formula spills the table: every method's stress with the points it used, then median, spread and interval.":
    "Eine Formel füllt die Tabelle: die Spannung jedes Verfahrens mit seinen Punkten, dann Median, Spanne und Intervall.",
  "Change of void ratio on loading to the in-situ stress, over e0.":
    "Änderung der Porenzahl bei Belastung bis zur In-situ-Spannung, durch e0.",
  "Lunne, Berre and Strandvik (1997), for overconsolidation ratios up to 4.":
    "Lunne, Berre und Strandvik (1997), für Überkonsolidierungsgrade bis 4.",
  "Volumetric strain on loading to the in-situ stress.": "Volumenstauchung bei Belastung bis zur In-situ-Spannung.",
  "Specimen quality designation A (best) to E, after Andresen and Kolstad (1979).":
    "Güte des Probekörpers von A (beste) bis E, nach Andresen und Kolstad (1979).",
  "On the laboratory loading curve, interpolated on log stress.":
    "Auf der Belastungskurve des Labors, über log Spannung interpoliert.",
  "On the laboratory loading curve, at the in-situ stress and the increase.":
    "Auf der Belastungskurve des Labors, bei der In-situ-Spannung und dem Zuwachs.",
  "Strain on the height at the in-situ stress per unit of stress, from the in-situ stress over the increase.":
    "Stauchung, bezogen auf die Höhe bei der In-situ-Spannung, je Einheit der Spannung, von der In-situ-Spannung über den Zuwachs.",
  "M = 1 / mv, from the in-situ stress over the increase.": "M = 1 / mv, von der In-situ-Spannung über den Zuwachs.",
  "CR = Cc / (1 + e0), of the index in use; with the field curve, of its slope unless Cc is adopted.":
    "CR = Cc / (1 + e0), aus dem gültigen Beiwert; mit der Feldkurve aus deren Neigung, wenn Cc nicht eingesetzt ist.",
  "RR = Cr / (1 + e0), of the index in use.": "RR = Cr / (1 + e0), aus dem gültigen Beiwert.",
  "SR = Cs / (1 + e0), of the index in use.": "SR = Cs / (1 + e0), aus dem gültigen Beiwert.",
  "m = ln 10 / CR, of virgin compression; Janbu (1963).": "m = ln 10 / CR, der Erstbelastung; Janbu (1963).",
  "At the in-situ stress and half the increase: the cv adopted for the range that holds it, otherwise interpolated between the loads on log stress.":
    "Bei der In-situ-Spannung und dem halben Zuwachs: das für den Bereich eingesetzte cv, sonst zwischen den Laststufen über log Spannung interpoliert.",
  "Whether the cv was adopted for a range of stress, or lies between the loads.":
    "Ob das cv für einen Spannungsbereich eingesetzt ist (adopted) oder zwischen den Laststufen liegt (between the loads).",
  "k = cv mv x unit weight of water. No substitute for a direct test.":
    "k = cv mv x Wichte des Wassers. Kein Ersatz für einen direkten Versuch.",
  "The value in use.": "Der gültige Wert.",
  "The curve that the values were read from with the increase in stress, or that the in-situ stress is missing: it stands among the choices.":
    "Die Kurve, aus der die Werte gelesen sind, mit dem Spannungszuwachs, oder dass die In-situ-Spannung fehlt: sie steht bei den Festlegungen des Ingenieurs.",

  // Wetting.
  'The first load marked "wetting", or the first marked "inundated" whose stress is that of the load before.':
    "Die erste Laststufe mit der Markierung „Wässern“, oder die erste mit „geflutet“, deren Spannung die der Laststufe davor ist.",
  "Stress of that load.": "Spannung dieser Laststufe.",
  "Height at the end of the load before; the initial height where the stage is the first load.":
    "Höhe am Ende der Laststufe davor; die Anfangshöhe, wo das Wässern die erste Laststufe ist.",
  "Height at the end of the stage.": "Höhe am Ende des Wässerns.",
  "(height before - height after) / the height chosen among the choices: positive for collapse, negative for swell.":
    "(Höhe davor - Höhe danach) / gewählte Bezugshöhe: positiv bei Sackung, negativ bei Schwellen.",
  "The same as a positive number; blank where the specimen did not swell.":
    "Dasselbe als positive Zahl; leer, wo der Probekörper nicht schwoll.",
  "Strain per log cycle of time on the straight tail of the stage, on the height of the strain; negative while the specimen swells.":
    "Stauchung je Dekade der Zeit auf dem geraden Ast des Wässerns, auf die Bezugshöhe; negativ, solange der Probekörper schwillt.",
  "On the initial height (ASTM D5333); blank where the specimen did not collapse.":
    "Auf die Anfangshöhe (ASTM D5333); leer, wo der Probekörper nicht sackte.",
  "The potential if the specimen was wetted under 200 kPa (2 tsf) within 5 %.":
    "Das Potential, wenn unter 200 kPa (2 tsf) auf 5 % genau gewässert wurde.",
  "ASTM D5333: none, slight, moderate, moderately severe, severe.":
    "ASTM D5333: none = keine, slight = gering, moderate = mäßig, moderately severe = mäßig stark, severe = stark.",
  "By the method chosen among the choices. The methods do not agree: state the method with the value.":
    "Nach dem gewählten Verfahren. Die Verfahren stimmen nicht überein: das Verfahren mit dem Wert angeben.",
  "The stress below it that was read.": "Die abgelesene Spannung darunter.",
  "The stress above it that was read.": "Die abgelesene Spannung darüber.",
  "Remarks on the swelling pressure by that method.": "Bemerkungen zum Schwelldruck nach diesem Verfahren.",
  "Where the specimen was wetted in several stages: each has its strain among the coefficients of the loads; strain, collapse, class and swelling pressure here are of the stage named.":
    "Wo in mehreren Stufen gewässert wurde: jede hat ihre Stauchung bei den Beiwerten der Laststufen; Stauchung, Sackung, Klasse und Schwelldruck hier sind die der genannten Stufe.",

  // Remarks.
  "Remarks on the masses and sizes.": "Bemerkungen zu Massen und Maßen.",
  "What was adopted, by whom and why, and the remarks on the construction that was chosen, or why there is none.":
    "Was eingesetzt wurde, von wem und warum, und die Bemerkungen zur gewählten Konstruktion, oder warum es keine gibt.",
  "How far the methods agree.": "Wie weit die Verfahren übereinstimmen.",
  "The points that each method used, or why it has no answer.":
    "Die Punkte, die jedes Verfahren verwendet hat, oder warum es keine Antwort hat.",
  "Remarks on the field curve.": "Bemerkungen zur Feldkurve.",
  "Remarks on the quality of the sample.": "Bemerkungen zur Güte der Probe.",
  "Which part of the increase is virgin; if a stress lies beyond the curve, which stress and which curve.":
    "Welcher Teil des Zuwachses Erstbelastung ist; liegt eine Spannung außerhalb der Kurve, welche Spannung und welche Kurve.",
  "Remarks on the loads: each stands once, with the loads that it applies to.":
    "Bemerkungen zu den Laststufen: jede steht einmal, mit den Laststufen, für die sie gilt.",
  "Impossible numbers, each with its cell and what to enter. Results that need them stay blank.":
    "Zahlen, die nicht sein können, je mit ihrer Zelle und dem, was einzugeben ist. Ergebnisse, die sie brauchen, bleiben leer.",
  "Dates, numbers and words that cannot be and that no result follows from, by their cells. No result stays blank for them.":
    "Daten, Zahlen und Wörter, die nicht sein können und aus denen kein Ergebnis folgt, mit ihren Zellen. Kein Ergebnis bleibt ihretwegen leer.",
  "Words that are not on the list of their cell, and impossible numbers of the classification and of the adopted cv. Results that need them stay blank.":
    "Wörter, die nicht in der Liste ihrer Zelle stehen, und Zahlen der Einordnung und des eingesetzten cv, die nicht sein können. Ergebnisse, die sie brauchen, bleiben leer.",
  "A load that was read and has no point on the curve, or points that rise with the stress, and why. The results of the curve stay blank until that is corrected.":
    "Eine abgelesene Laststufe ohne Punkt auf der Kurve, und warum. Die Ergebnisse der Kurve bleiben leer, bis sie einen hat.",
  "Inputs that are still to be typed, and impossible inputs, each with its cell. The head of the sheet shows as much of it as fits.":
    "Eingaben, die noch fehlen, und Eingaben, die nicht sein können, je mit ihrer Zelle. Der Kopf des Blatts zeigt davon, was hineinpasst.",

  // Loads.
  "Total axial stress of the load, in test order: loading, unloading and reloading. Where the load was taken off, the stress of cap and disk is left.":
    "Gesamte Axialspannung der Laststufe, in der Reihenfolge des Versuchs: Be-, Ent- und Wiederbelastung. Wurde die Last abgenommen, bleibt die Spannung von Kopfplatte und Filterstein.",
  "inundated: water was added under this load. wetting: a stage of its own, in which the specimen was wetted under the stress of the load before.":
    "geflutet: unter dieser Laststufe wurde Wasser zugegeben. Wässern: eine Stufe für sich, in der unter der Spannung der Laststufe davor gewässert wurde.",
  "Numbers that no oedometer test has in the unit beside them, by their cells. Void ratios, and what follows from them, stay blank.":
    "Zahlen, die in der Einheit daneben kein Ödometerversuch hat, mit ihren Zellen. Porenzahlen, und was aus ihnen folgt, bleiben leer.",
  "Numbers that few oedometer tests have in the unit beside them, by their cells, and the first load whose times, stress or readings look like a slip. They count; no result stays blank for them.":
    "Zahlen, die in der Einheit daneben wenige Ödometerversuche haben, mit ihren Zellen, und die erste Laststufe, deren Zeiten, Spannung oder Ablesungen nach einem Versehen aussehen. Sie gelten; kein Ergebnis bleibt ihretwegen leer.",
  "Mark this cell where the specimen was inundated under the seating stress, before the first load. Where the readings of that wetting stand in the first load, mark the first load instead.":
    "Diese Zelle markieren, wo der Probekörper unter der Anfangsspannung, vor der ersten Laststufe, gewässert wurde. Stehen die Ablesungen dieses Wässerns in der ersten Laststufe, diese markieren.",
  "Date and time of day, typed as 2031-03-07 09:15 or in this computer's own form. A date alone shows 00:00 and counts as a day whose time is not known.":
    "Datum und Uhrzeit, als 2031-03-07 09:15 oder in der Form dieses Rechners. Ein Datum allein zeigt 00:00 und zählt als Tag mit unbekannter Uhrzeit.",
  "Unloading where the stress is less than that of the load before; wetting where it is the same within 0.5 %: water was added, or the load was left standing.":
    "entlastet, wo die Spannung kleiner ist als die der Laststufe davor; Wässern, wo sie auf 0,5 % gleich ist: es wurde gewässert, oder die Last blieb stehen.",
  "The reading at the latest time that has one.": "Die Ablesung zur spätesten Zeit, die eine hat.",
  "(end reading - zero reading) x dial factor, compression positive.":
    "(Endablesung - Nullablesung) x Uhrfaktor, Stauchung positiv.",
  "Deflection since the seating stress: interpolated on log stress in the apparatus deflection table, on the branch of the load, less the deflection at the seating stress; on wetting that of the load before; 0 where the table is empty, blank where it does not reach the stress.":
    "Eigenverformung seit der Anfangsspannung: in der Tabelle über log Spannung interpoliert, auf dem Ast der Laststufe, weniger die bei der Anfangsspannung; beim Wässern die der Laststufe davor; 0, wo die Tabelle leer ist, leer, wo sie nicht bis zur Spannung reicht.",
  "Measured deformation less apparatus deflection, since the zero reading.":
    "Gemessene Setzung weniger Eigenverformung des Geräts, seit der Nullablesung.",
  "Corrected deformation / initial height.": "Korrigierte Setzung / Anfangshöhe.",
  "Initial height less corrected deformation.": "Anfangshöhe weniger korrigierte Setzung.",
  "e = (H - Hs) / Hs.": "e = (H - Hs) / Hs.",
  "d100 of the load's own construction, as corrected cumulative deformation; blank where it gave none.":
    "d100 nach der Konstruktion der Laststufe, als korrigierte Gesamtsetzung; leer, wo sie keines gab.",
  "Corrected deformation at d100 / initial height.": "Korrigierte Setzung bei d100 / Anfangshöhe.",
  "Void ratio at the end of primary consolidation.": "Porenzahl am Ende der Primärkonsolidation.",
  "The values that the compression curve is drawn through, as chosen among the choices. Where d100 was chosen and a load has none, the end of that load is used, and the next part says so.":
    "Die Werte, durch die die Druck-Setzungs-Kurve gezeichnet wird, wie bei den Festlegungen gewählt. Wo d100 gewählt ist und eine Laststufe keines hat, gilt ihr Ende, und der nächste Teil sagt es.",
  "Whether the compression curve shows this load at d100 or at its end.":
    "Ob die Druck-Setzungs-Kurve diese Laststufe bei d100 oder am Ende (end) zeigt.",
  "Initial height less the corrected deformation at d50 of the log-time construction: the drainage path of its cv follows from it.":
    "Anfangshöhe weniger die korrigierte Setzung bei d50 der Konstruktion nach log t: daraus folgt der Entwässerungsweg ihres cv.",
  "cv = 0.197 Hdr^2 / t50; Hdr is half the height at 50 % of consolidation in double drainage.":
    "cv = 0,197 Hdr^2 / t50; Hdr ist bei beidseitiger Entwässerung die halbe Höhe bei 50 % der Konsolidation.",
  "Initial height less the corrected deformation half way between d0 and d100 of the root-time construction: the drainage path of its cv follows from it.":
    "Anfangshöhe weniger die korrigierte Setzung in der Mitte zwischen d0 und d100 der Konstruktion nach Wurzel t: daraus folgt der Entwässerungsweg ihres cv.",
  "cv = 0.848 Hdr^2 / t90; Hdr is half the height at 50 % of consolidation in double drainage.":
    "cv = 0,848 Hdr^2 / t90; Hdr ist bei beidseitiger Entwässerung die halbe Höhe bei 50 % der Konsolidation.",
  'The construction whose d100 and cv are reported and used further: the last "cv by" of the load in the table of picks, otherwise the one chosen among the choices.':
    "Die Konstruktion, deren d100 und cv berichtet und weiter verwendet werden: das letzte „cv nach“ der Laststufe in der Tabelle der Festlegungen, sonst die gewählte.",
  "cv of the load's own construction.": "cv nach der Konstruktion der Laststufe.",
  "Mean temperature while the load stood.": "Mittlere Temperatur, während die Laststufe stand.",
  "Chosen cv times the viscosity of water at the temperature over that at 20 degrees Celsius; k is that of the test.":
    "Gewähltes cv mal der Viskosität des Wassers bei der Temperatur durch die bei 20 Grad Celsius; k ist das des Versuchs.",
  "mv = strain of the load on its starting height / increase of stress; blank on wetting, and where the specimen moved against the load.":
    "mv = Stauchung der Laststufe, bezogen auf ihre Anfangshöhe / Zunahme der Spannung; leer beim Wässern, und wo sich der Probekörper gegen die Last bewegte.",
  "k = cv mv x unit weight of water; loading only. No substitute for a direct test.":
    "k = cv mv x Wichte des Wassers; nur bei Belastung. Kein Ersatz für einen direkten Versuch.",
  "Strain per log cycle of time on the straight tail, on the initial height; loading only. Blank where the tail was not measured far enough past the end of primary: the remark says so.":
    "Stauchung je Dekade der Zeit auf dem geraden Kriechast, bezogen auf die Anfangshöhe; nur bei Belastung. Leer, wo der Kriechast nicht weit genug über das Ende der Primärkonsolidation gemessen ist: die Bemerkung sagt es.",
  "(height before - height after) / the height chosen among the choices, of each stage of wetting: positive for collapse, negative for swell.":
    "(Höhe davor - Höhe danach) / gewählte Bezugshöhe, jeder Stufe des Wässerns: positiv bei Sackung, negativ bei Schwellen.",
  "Remarks on the load; in full on the page of remarks.":
    "Bemerkungen zur Laststufe; ganz auf der Seite der Bemerkungen.",
  'aided or drawn: the last "procedure" of the load in the table of picks, otherwise the one chosen among the choices.':
    "gestützt oder gezeichnet: das letzte „Verfahren“ der Laststufe in der Tabelle der Festlegungen, sonst das gewählte.",
  "One formula spills the whole row: the log-of-time and root-time constructions on the load's readings, with the picks by hand of the load. Blank where a method does not apply.":
    "Eine Formel füllt die ganze Zeile: die Konstruktionen nach log t und Wurzel t an den Ablesungen der Laststufe, mit deren Festlegungen von Hand. Leer, wo ein Verfahren nicht anwendbar ist.",
  "Half way between d0 and d100.": "In der Mitte zwischen d0 und d100.",
  "Tangent at the inflection meets the tail.": "Wo die Wendetangente den Kriechast trifft.",
  "Time of d50.": "Zeit von d50.",
  "Time of d100.": "Zeit von d100.",
  "The straight part at time zero.": "Das gerade Stück bei der Zeit null.",
  "Where the line 1.15 times as far out meets the curve.": "Wo die Gerade mit 1,15-fachem Abstand die Kurve trifft.",
  "d0 + (d90 - d0) / 0.9.": "d0 + (d90 - d0) / 0,9.",
  "Time of d90.": "Zeit von d90.",
  "Readings per log cycle of time.": "Skalenteile je Dekade der Zeit.",
  "Remarks on the time curve; in full on the page of remarks.":
    "Bemerkungen zur Zeitkurve, die der Tabellenfunktion, also englisch; ganz auf der Seite der Bemerkungen.",

  // Picks by hand.
  'Number of the load that the pick is of, or "curve" for the compression curve of the whole test.':
    "Nummer der Laststufe, für die die Festlegung gilt, oder „Kurve“ für die Druck-Setzungs-Kurve des ganzen Versuchs.",
  "d0, d90, d100: readings. The straight part of the root-time plot, the tail and the tangent of the log-time plot: the times, in minutes, from which and to which they are drawn; 4:1 pair at: the first time of the pair. cv by: the construction whose d100 and cv the load reports; procedure: how its constructions are made. For the compression curve, as stresses: greatest curvature; the readings from which and to which the lines of recompression, of the virgin part and of the final unloading are drawn; the two points of the line through the loop.":
    "d0, d90, d100: Ablesungen. Gerades Stück über Wurzel t, Kriechast und Tangente über log t: die Zeiten in Minuten, von denen und bis zu denen sie gezeichnet sind; 4:1-Paar ab: die erste Zeit des Paars. cv nach: die Konstruktion, deren d100 und cv die Laststufe berichtet; Verfahren: wie konstruiert wird. Für die Druck-Setzungs-Kurve, als Spannungen: Krümmung, wo sie am größten ist; die Ablesungen, von denen und bis zu denen die Geraden der Wiederbelastung, der Erstbelastung und der letzten Entlastung gezeichnet sind; die zwei Punkte der Geraden durch die Schleife.",
  "What stood there before the change, for the record; nothing is worked out from it.":
    "Was vor der Änderung da stand, fürs Protokoll; nichts wird daraus berechnet.",
  'The value picked; for "cv by": log time or root time; for procedure: aided or drawn. "automatic" goes back to what the constructions find. 0 counts as blank.':
    "Der festgelegte Wert; für „cv nach“: log t oder Wurzel t; für „Verfahren“: gestützt oder gezeichnet. „automatisch“ kehrt zu dem zurück, was die Konstruktionen finden. 0 zählt als leer.",
  "Whether this row counts, and what it lacks.": "Ob diese Zeile gilt, und was ihr fehlt.",
  "Why the automatic value is not used: what the plot shows.":
    "Warum der automatische Wert nicht verwendet wird: was das Diagramm zeigt.",
};
