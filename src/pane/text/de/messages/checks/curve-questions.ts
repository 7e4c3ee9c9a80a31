/** The reviewer's questions on time curves and on the compression curve, with their possible answers. */
export const curveQuestions: Readonly<Record<string, string>> = {
  // Time curves: Q23 to Q39.
  "it needs loads with readings (times_01, readings_01 and on)":
    "es braucht Laststufen mit Ablesungen (times_01, readings_01 und weitere)",
  "the readings give no time": "die Ablesungen geben keine Zeit",
  "Do the readings of each load move in one direction?": "Laufen die Ablesungen einer Laststufe in eine Richtung?",
  "the load has fewer than 3 readings": "die Laststufe hat weniger als 3 Ablesungen",
  "the greatest step back": "größter Schritt zurück",
  "row {0} of the readings ({1} min) goes back against the movement (one turn of the dial's hand): check it":
    "Zeile {0} der Ablesungen ({1} min) läuft gegen die Bewegung zurück (eine Umdrehung des Zeigers der Messuhr): prüfen",
  "row {0} of the readings ({1} min) goes against the movement of the others: check it":
    "Zeile {0} der Ablesungen ({1} min) läuft gegen die Bewegung der anderen: prüfen",
  "Does each load begin at the reading at which the one before ended?":
    "Beginnt jede Laststufe mit der Ablesung, mit der die vorige endete?",
  "the load has no reading at time 0": "die Laststufe hat keine Ablesung zur Zeit 0",
  "the reading before the load is not known ({0})": "die Ablesung vor der Laststufe ist nicht bekannt ({0})",
  "reading at time 0": "Ablesung zur Zeit 0",
  "reading before the load": "Ablesung vor der Laststufe",
  "the dial was reset, or the zero was taken with the load on":
    "die Messuhr wurde verstellt, oder die Nullablesung wurde unter der Last genommen",
  "Do the times of each load begin at 0 and grow?": "Beginnen die Zeiten jeder Laststufe bei 0 und wachsen sie?",
  "row {0} has a reading and no time": "Zeile {0} hat eine Ablesung und keine Zeit",
  "time in the row before": "Zeit in der Zeile davor",
  "time in row {0}": "Zeit in Zeile {0}",
  "moment of loading": "Zeitpunkt der Belastung",
  "row {0} is at {1} min, before the load: correct or clear it":
    "Zeile {0} ist bei {1} min, vor der Belastung: sie berichtigen oder löschen",
  "row {0} is at {1} min, not after the {2} min of the row before":
    "Zeile {0} steht bei {1} min, nicht nach den {2} min der Zeile davor",
  "first time": "erste Zeit",
  expected: "erwartet",
  "the times begin at 0 and grow": "die Zeiten beginnen bei 0 und wachsen",
  "the first reading is at {0} min: the reading before the load is missing":
    "die erste Ablesung ist bei {0} min: die Ablesung vor der Laststufe fehlt",
  "Are all times in minutes?": "Sind alle Zeiten in Minuten?",
  "it needs three readings in order of time": "es braucht drei Ablesungen in der Reihenfolge der Zeit",
  "the greatest change from one step of time to the next": "größte Änderung von einem Zeitschritt zum nächsten",
  "are some times in seconds, hours or days?": "Sind einige Zeiten in Sekunden, Stunden oder Tagen?",
  "Was the first reading early enough?": "Kam die erste Ablesung früh genug?",
  "the load has no reading after time 0": "die Laststufe hat keine Ablesung nach der Zeit 0",
  "the first reading": "erste Ablesung",
  "the beginning of the curve is not seen: read earlier": "der Anfang der Kurve ist nicht zu sehen: früher ablesen",
  "Are there enough readings before t50?": "Gibt es genug Ablesungen vor t50?",
  "readings before t50 ({0} min)": "Ablesungen vor t50 ({0} min)",
  "half of it was over before the first reading: cv cannot be found":
    "die Hälfte war vor der ersten Ablesung vorbei: cv ist nicht zu finden",
  "cv rests on few readings": "cv ruht auf wenigen Ablesungen",
  "Do t90 and t100 lie within the readings?": "Liegen t90 und t100 innerhalb der Ablesungen?",
  "the load has neither t90 nor t100": "die Laststufe hat weder t90 noch t100",
  "the later of t90 and t100": "das spätere von t90 und t100",
  "it lies beyond the last reading: it was not measured": "es liegt nach der letzten Ablesung: es wurde nicht gemessen",
  "Did each load stay until primary consolidation was over?":
    "Blieb jede Laststufe, bis die Primärkonsolidation vorbei war?",
  "{0}; loads that stay to the end of primary: ASTM D2435, method B, from memory":
    "{0}; Laststufen bis zum Ende der Primärkonsolidation: ASTM D2435, Verfahren B, aus dem Gedächtnis",
  "the last reading over t100 ({0} min)": "letzte Ablesung durch t100 ({0} min)",
  "the load was changed before primary was over": "die Last wurde gewechselt, bevor die Primärkonsolidation vorbei war",
  "the load was changed too early to show its tail": "die Last wurde zu früh gewechselt, um den Kriechast zu zeigen",
  "Is the tail long enough for the coefficient of secondary compression?":
    "Ist der Kriechast lang genug für den Sekundärkonsolidationsbeiwert?",
  "the loads stay to the end of primary ({0}): no C alpha is given, and no tail is due":
    "die Laststufen dauern bis zum Ende der Primärkonsolidation ({0}): C alpha wird nicht angegeben, und ein Kriechast wird nicht verlangt",
  "the tail beyond t100, in log cycles": "Kriechast nach t100, in Dekaden der Zeit",
  "do not rely on C alpha of this load": "nicht auf C alpha dieser Laststufe verlassen",
  "Do log time and root time agree on {0}?": "Stimmen log t und Wurzel t bei {0} überein?",
  "{0} by log time": "{0} nach log t",
  "{0} by root time": "{0} nach Wurzel t",
  "look at both plots": "beide Diagramme ansehen",
  "Do log time and root time agree on cv?": "Stimmen log t und Wurzel t bei cv überein?",
  "{0}; root time is usually the higher (Sridharan et al. 1987; Al-Zoubi 2008, from their abstracts)":
    "{0}; Wurzel t ist meist höher (Sridharan et al. 1987; Al-Zoubi 2008, aus den Kurzfassungen)",
  "the greater over the lesser cv": "das größere durch das kleinere cv",
  "rely on neither without looking at the plots": "auf keines verlassen, ohne die Diagramme anzusehen",
  "cv by root time": "cv nach Wurzel t",
  "cv by log time": "cv nach log t",
  "Does cv change gradually from load to load of first loading?":
    "Ändert sich cv von Laststufe zu Laststufe der Erstbelastung allmählich?",
  "cv over that of the load before, or the reverse": "cv durch das der Laststufe davor, oder umgekehrt",
  "look at both time curves": "beide Zeitkurven ansehen",
  "it needs cv of two loads beyond the preconsolidation stress":
    "es braucht cv zweier Laststufen über der Vorkonsolidationsspannung",
  "Does each load stay on one side of the preconsolidation stress?":
    "Bleibt jede Laststufe auf einer Seite der Vorkonsolidationsspannung?",
  "no load with readings passes it": "keine Laststufe mit Ablesungen überschreitet sie",
  "{0} passes {1}: cv and d100 are averages over both sides; take those of the loads before and after it":
    "{0} überschreitet {1}: cv und d100 sind Mittel über beide Seiten; die der Laststufen davor und danach nehmen",
  "Is cv that of a soil?": "Ist cv das eines Bodens?",
  cv: "cv",
  "check the units of time and height": "Einheiten von Zeit und Höhe prüfen",
  "Is primary compression large against the resolution of the dial?":
    "Ist die Primärsetzung groß gegen die Auflösung der Messuhr?",
  "arithmetic: half a step of 20 is 10 % of cv": "Rechnung: ein halber Schritt von 20 ist 10 % von cv",
  "primary compression in steps of the dial": "Primärsetzung in Schritten der Messuhr",
  "the whole movement in steps of the dial": "ganze Bewegung in Schritten der Messuhr",
  "cv of this load is lost in the resolution": "cv dieser Laststufe geht in der Auflösung unter",
  "the readings show no step": "die Ablesungen zeigen keinen Schritt",
  "Is the initial compression small?": "Ist die Sofortsetzung klein?",
  "it needs Dial factor ({0})": "es braucht Dial factor ({0})",
  "the specimen did not compress under the load": "der Probekörper setzte sich unter der Last nicht",
  "share of compression at once, less the apparatus": "Anteil der Sofortsetzung, ohne das Gerät",
  "gas in the pores, bedding, or a stiff soil: look at the first readings":
    "Gas in den Poren, Bettung oder ein steifer Boden: die ersten Ablesungen ansehen",
  "Was the specimen saturated where cv is reported?": "War der Probekörper gesättigt, wo cv berichtet wird?",
  "ASTM D2435, scope: cv applies to saturated soil": "ASTM D2435, Anwendungsbereich: cv gilt für gesättigten Boden",
  "no cv is reported": "kein cv wird berichtet",
  "cv is valid only if water filled the voids later: say so, or leave cv out":
    "cv gilt nur, wenn das Wasser die Poren später füllte: das sagen oder cv weglassen",

  // The compression curve: Q44 to Q57.
  "Does the virgin line have enough points, and reach far enough beyond yield?":
    "Hat die Erstbelastungsgerade genug Punkte, und reicht sie weit genug über die Vorbelastungsspannung?",
  "{0}; the result depends on the greatest stress (J. Mar. Sci. Eng. 2026, 14(8), 740, from its abstract)":
    "{0}; das Ergebnis hängt von der größten Spannung ab (J. Mar. Sci. Eng. 2026, 14(8), 740, aus der Kurzfassung)",
  "points on the virgin line": "Punkte auf der Erstbelastungsgeraden",
  "more loads, or closer ones, make it certain": "mehr oder engere Laststufen machen sie sicher",
  "the greatest stress over the preconsolidation stress": "größte Spannung durch Vorbelastungsspannung",
  "load further (eight times is the aim)": "weiter belasten (das Ziel ist das Achtfache)",
  "virgin line": "Erstbelastungsgerade",
  "Does the preconsolidation stress lie between the loads that could show it?":
    "Liegt die Vorbelastungsspannung zwischen den Lasten, die sie zeigen können?",
  "it needs two loads of first loading": "es braucht zwei Laststufen der Erstbelastung",
  "preconsolidation stress": "Vorbelastungsspannung",
  "the test has no points on one side of it": "der Versuch hat auf einer Seite davon keine Punkte",
  "Do the methods agree on the preconsolidation stress?":
    "Stimmen die Verfahren bei der Vorbelastungsspannung überein?",
  "spread of the methods over their median": "Spanne der Verfahren durch ihren Median",
  "unreliable: do not report one number": "unzuverlässig: nicht eine einzige Zahl berichten",
  "look at the curve, and at the points that each method used": "die Kurve und die Punkte jedes Verfahrens ansehen",
  "Does the curve have a bend, like that of an undisturbed specimen?":
    "Hat die Kurve einen Knick, wie die eines ungestörten Probekörpers?",
  "slope of the first loads over that of the virgin line":
    "Neigung der ersten Lasten durch die der Erstbelastungsgeraden",
  "the curve is rounded: disturbed, or already yielding under the first loads":
    "die Kurve ist rund: gestört, oder schon unter den ersten Lasten über der Vorbelastungsspannung",
  "Are recompression and swelling index in proportion?": "Passen Wiederbelastungs- und Schwellbeiwert zueinander?",
  "Cr over Cc": "Cr durch Cc",
  "look at where each slope was taken": "ansehen, wo jede Neigung genommen wurde",
  "the greater over the lesser of Cs and Cr": "das größere durch das kleinere von Cs und Cr",
  "unloading and reloading should be about as steep": "Ent- und Wiederbelastung sollten etwa gleich steil sein",
  indices: "Beiwerte",
  "Is the compression index that of a soil?": "Ist der Kompressionsbeiwert der eines Bodens?",
  "compression index Cc": "Kompressionsbeiwert Cc",
  "check the void ratios, and that it is per log cycle": "die Porenzahlen prüfen, und dass er je Dekade gilt",
  "compression ratio CR": "Kompressionsverhältnis CR",
  "check the strains, and that it is per log cycle": "die Stauchungen prüfen, und dass es je Dekade gilt",
  "it needs void ratios, or the whole specimen": "es braucht Porenzahlen oder den ganzen Probekörper",
  "Is secondary compression in proportion to the slope of the curve under the same load?":
    "Passt die Sekundärsetzung zur Neigung der Kurve unter derselben Last?",
  "Mesri & Castro 1987 (concept); limits from Terzaghi, Peck & Mesri 1996, from memory":
    "Mesri & Castro 1987 (Gedanke); Grenzen nach Terzaghi, Peck & Mesri 1996, aus dem Gedächtnis",
  "C alpha over the slope of the curve": "C alpha durch die Neigung der Kurve",
  "check that both are void ratio, at one stress, and that the tail is long enough":
    "prüfen, dass beides Porenzahl ist, bei einer Spannung, und dass der Kriechast lang genug ist",
  "it needs C alpha of loads beyond the preconsolidation stress ({0})":
    "es braucht C alpha von Laststufen über der Vorbelastungsspannung ({0})",
  "Is the sample good enough, by its volume change up to the in-situ stress?":
    "Ist die Probe gut genug, nach ihrer Volumenänderung bis zur In-situ-Spannung?",
  "Lunne et al. 1997; Terzaghi, Peck & Mesri 1996 (SQD), limits as the reduction has them":
    "Lunne et al. 1997; Terzaghi, Peck & Mesri 1996 (SQD), Grenzen wie in der Auswertung",
  unknown: "unbekannt",
  "class {0} (Lunne), {1} (SQD); {2}": "Klasse {0} (Lunne), {1} (SQD); {2}",
  "strain at the in-situ stress": "Stauchung bei der In-situ-Spannung",
  "change of void ratio over e0": "Änderung der Porenzahl durch e0",
  "Is the overconsolidation ratio possible, and does it rest on an in-situ stress?":
    "Ist der Überkonsolidierungsgrad möglich, und ruht er auf einer In-situ-Spannung?",
  "an OCR of {0} stands on the sheet without an in-situ stress: fill in {1}":
    "ein OCR von {0} steht auf dem Blatt ohne In-situ-Spannung: {1} ausfüllen",
  OCR: "OCR",
  "disturbance, ground still consolidating, or a wrong in-situ stress (water table?)":
    "Störung, noch nicht konsolidierter Baugrund oder eine falsche In-situ-Spannung (Grundwasserstand?)",
  "Does the in-situ stress agree with the depth?": "Passt die In-situ-Spannung zur Tiefe?",
  "arithmetic: unit weights from buoyant soft soil to dense dry soil":
    "Rechnung: Wichten von weichem Boden unter Auftrieb bis zu dichtem trockenem Boden",
  "{0} is not above zero": "{0} ist nicht größer als null",
  "in-situ stress over depth, kPa/m": "In-situ-Spannung durch Tiefe, kPa/m",
  "check the depth, the water table and the units": "Tiefe, Grundwasserstand und Einheiten prüfen",
  "Is the conductivity from cv that of a clay?": "Ist die Durchlässigkeit aus cv die eines Tons?",
  k: "k",
  "check cv and mv, and their units": "cv und mv und ihre Einheiten prüfen",
  "it needs k of a load ({0})": "es braucht k einer Laststufe ({0})",
  "Are all void ratios above zero, and does unloading open the soil?":
    "Sind alle Porenzahlen über null, und lockert die Entlastung den Boden?",
  logic: "Logik",
  "void ratio": "Porenzahl",
  "check the dry mass, the specific gravity and the readings": "Trockenmasse, Korndichte und Ablesungen prüfen",
  "void ratio of the load before": "Porenzahl der Laststufe davor",
  "the void ratio falls as the load is taken off: check the readings and the correction":
    "die Porenzahl fällt beim Entlasten: Ablesungen und Berichtigung prüfen",
  "the void ratio does not fall as the load is taken off, beyond creep ({0} % of the initial height)":
    "die Porenzahl fällt beim Entlasten nicht, über das Kriechen hinaus ({0} % der Anfangshöhe)",
  "it needs void ratios: readings, dry mass, specific gravity and diameter":
    "es braucht Porenzahlen: Ablesungen, Trockenmasse, Korndichte und Durchmesser",
  "Is swell on wetting reported?": "Ist das Schwellen beim Wässern genannt?",
  "the water was added under the seating stress, before the zero of the deformations was read":
    "gewässert wurde unter der Anfangsspannung, bevor die Nullablesung genommen wurde",
  "no load is marked as inundated ({0})": "keine Laststufe ist als geflutet bezeichnet ({0})",
  "strain on wetting ({0})": "Stauchung beim Wässern ({0})",
  "swell on wetting ({0})": "Schwellen beim Wässern ({0})",
  "say so in {0}": "das in {0} sagen",
  "{0} (the remarks do)": "{0} (die Bemerkungen tun es)",
  "Is rebound less than the compression before it?": "Ist die Hebung kleiner als die Setzung davor?",
  "the test has no unloading": "der Versuch hat keine Entlastung",
  rebound: "Hebung",
  "it is more than the specimen had been compressed: check the readings":
    "sie ist größer, als der Probekörper zusammengedrückt war: Ablesungen prüfen",
  "Does an adopted preconsolidation stress lie within the range of the methods, or has it a reason?":
    "Liegt eine festgelegte Vorkonsolidationsspannung im Bereich der Verfahren, oder hat sie eine Begründung?",
  "Do picks by hand of the compression curve leave the preconsolidation stress near that without them?":
    "Lassen die Festlegungen von Hand an der Druck-Setzungs-Kurve die Vorbelastungsspannung nahe der ohne sie?",
  "{0}: two persons who draw the construction differ by up to 15 percent":
    "{0}: zwei Personen, die die Konstruktion zeichnen, unterscheiden sich um bis zu 15 Prozent",
  "nothing was picked by hand on the compression curve": "an der Druck-Setzungs-Kurve ist nichts von Hand festgelegt",
  "change of the preconsolidation stress by picks": "Änderung der Vorbelastungsspannung durch Festlegungen",
  "look at the lines in the review, and at the reasons of the picks":
    "die Geraden in der Durchsicht und die Begründungen der Festlegungen ansehen",
  "Does every adopted index lie within what the test gives step by step, or has it a reason?":
    "Liegt jeder festgelegte Beiwert in dem, was der Versuch Stufe für Stufe ergibt, oder hat er eine Begründung?",
  "the test gives no {0} to compare with": "der Versuch ergibt kein {0} zum Vergleich",
  "{0} is adopted; the steps of the test give {1} to {2}":
    "{0} ist festgelegt; die Stufen des Versuchs ergeben {1} bis {2}",
  "no index is adopted: those of the constructions are used":
    "kein Beiwert ist festgelegt: es gelten die der Konstruktionen",
  "cv, recompression": "cv, Wiederbelastung",
  "cv, virgin": "cv, Erstbelastung",
  "cv, another range": "cv, weiterer Bereich",
  "a cv is adopted without a range of stress: enter the stresses in {0} and {1}":
    "ein cv ist ohne Spannungsbereich festgelegt: die Spannungen in {0} und {1} eingeben",
  "{0} is adopted, and no load that ends within the range has a cv":
    "{0} ist festgelegt, und keine Laststufe, die in dem Bereich endet, hat ein cv",
  "{0} is adopted; the loads that end within the range give {1} to {2}":
    "{0} ist festgelegt; die Laststufen, die in dem Bereich enden, ergeben {1} bis {2}",
  "Does every adopted cv lie within the cv of the loads of its range, or has it a reason?":
    "Liegt jedes festgelegte cv in dem der Laststufen seines Bereichs, oder hat es eine Begründung?",
  "no cv is adopted: those of the loads are used": "kein cv ist festgelegt: es gelten die der Laststufen",
  Cc: "Cc",
  Cr: "Cr",
  Cs: "Cs",
  "no index can be compared": "kein Beiwert lässt sich vergleichen",
  "no preconsolidation stress is adopted: that of the method chosen is used":
    "keine Vorkonsolidationsspannung ist festgelegt: die des gewählten Verfahrens gilt",
  "{0} {1} is adopted; the methods read {2} to {3} {4}": "{0} {1} ist festgelegt; die Verfahren lesen {2} bis {3} {4}",
  "{0}; the reason: {1}": "{0}; die Begründung: {1}",
  "{0}: give the reason in {1}": "{0}: die Begründung in {1} angeben",
  // Classification: Q67 and Q68.
  "Do limits, grading and water content agree with one another?":
    "Passen Zustandsgrenzen, Körnung und Wassergehalt zueinander?",
  classification: "Einordnung",
  "{0} is {1} %, {2} {3} %": "{0} ist {1} %, {2} {3} %",
  "{0}: the two may be swapped, or one of them is mistyped":
    "{0}: vielleicht sind die beiden vertauscht, oder eine Zahl ist falsch eingegeben",
  "the liquidity index": "die Liquiditätszahl",
  "are limits and water content of the same soil?": "sind Zustandsgrenzen und Wassergehalt von demselben Boden?",
  "it needs {0} and {1}, or {2} and {3}": "es braucht {0} und {1}, oder {2} und {3}",
  "Is Cc plausible for this soil, by correlations with its classification?":
    "Ist Cc für diesen Boden plausibel, nach Korrelationen mit seiner Einordnung?",
  "the correlations named in the answer; their spread of 30 % is that of Terzaghi & Peck, from memory":
    "die Korrelationen, die die Antwort nennt; ihre Streuung von 30 % ist die von Terzaghi & Peck, aus dem Gedächtnis",
  "it needs the initial void ratio": "es braucht die Anfangsporenzahl",
  "no correlation gives a value above zero for this soil": "keine Korrelation ergibt für diesen Boden mehr als null",
  "structure or sensitivity raises it, disturbance lowers it":
    "Struktur oder Sensitivität erhöht den Wert, Störung der Probe senkt ihn",
  "{0}; the correlations give {1}": "{0}; die Korrelationen ergeben {1}",
  "0.009 (LL - 10), Terzaghi & Peck 1967": "0,009 (wL - 10), Terzaghi & Peck 1967",
  "Gs PI / 200, Wood & Wroth 1978": "Gs IP / 200, Wood & Wroth 1978",
  "PI / 74, Kulhawy & Mayne 1990": "IP / 74, Kulhawy & Mayne 1990",
  "0.40 (e0 - 0.25), Azzouz et al. 1976, from memory": "0,40 (e0 - 0,25), Azzouz u. a. 1976, aus dem Gedächtnis",
  "0.01 w, from memory": "0,01 w, aus dem Gedächtnis",
};
