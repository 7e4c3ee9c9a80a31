/** The working of the calculation book. Formulas are the same in every language, but for symbols whose index is a word. */
export const book: Readonly<Record<string, string>> = {
  // Symbols. m, m_d and m_B with these indices are those of DIN 18121 (from memory); ges and R are common practice, no source.
  M_wet: "M_f",
  M_dry: "M_d",
  M_tare: "M_B",
  M_all: "M_ges",
  M_ring: "M_R",
  "no working: one of its numbers is not on the sheet, or the method refused":
    "kein Rechengang: eine seiner Zahlen steht nicht auf dem Blatt, oder das Verfahren ist nicht anwendbar",
  "the {0}": "{0}",
  "{0} at {1}": "{0} bei {1}",
  "{0} = {1} / {2}": "{0} = {1} / {2}",
  "I_P / clay": "I_P / Ton",
  "as typed ({0})": "wie eingetragen ({0})",

  // Adopted values.
  "adopted by {0}: {1}": "eingesetzt von {0}: {1}",
  "no initials": "ohne Kürzel",

  // Slopes.
  "between the ends of {0}": "zwischen den Enden ({0})",
  "between two points on the best line through the points of {0}":
    "zwischen zwei Punkten der Ausgleichsgeraden durch die Punkte ({0})",
  "{0}; the mean of {1} loops, of which this is the first": "{0}; das Mittel aus {1} Schleifen, hier die erste",
  "the virgin line, {0} to {1}": "Erstbelastungsgerade, {0} bis {1}",
  "the virgin line, {0} to {1}, picked by hand": "Erstbelastungsgerade, {0} bis {1}, von Hand festgelegt",

  // What each method of the preconsolidation stress draws.
  "Casagrande: where the bisector between horizontal and tangent at the greatest curvature meets the virgin line":
    "Casagrande: Schnitt der Winkelhalbierenden zwischen Waagerechter und Tangente an der größten Krümmung mit der Erstbelastungsgeraden",
  "work per unit volume: where the line before yield meets the line after it, on work against stress":
    "Arbeit je Volumen: Schnitt der Geraden vor und nach der Vorbelastungsspannung, Arbeit über der Spannung",
  "bilogarithmic: where the two straight lines meet, on ln(1 + e) against log of stress":
    "doppeltlogarithmisch: Schnitt der beiden Geraden, ln(1 + e) über dem Logarithmus der Spannung",
  "intersection: where the recompression line meets the virgin line":
    "Schnittpunkt: Schnitt der Geraden der Wiederbelastung mit der Erstbelastungsgeraden",
  "Pacheco Silva: from the virgin line at the initial void ratio down to the curve, and across to the virgin line":
    "Pacheco Silva: von der Erstbelastungsgeraden bei der Anfangsporenzahl senkrecht zur Kurve, dann waagerecht zur Erstbelastungsgeraden",
  "Janbu: half-way through the fall of the modulus, on modulus against stress":
    "Janbu: Mitte des Abfalls des Moduls, Modul über der Spannung",
  "{0}; the plot shows the lines": "{0}; das Diagramm zeigt die Geraden",
  "{0}; picked by hand: {1}": "{0}; von Hand festgelegt: {1}",
  "the lower end of the range that these points allow for the knee of the curve":
    "das untere Ende des Bereichs, den diese Punkte für den Knick der Kurve zulassen",
  "the upper end of the range that these points allow for the knee of the curve":
    "das obere Ende des Bereichs, den diese Punkte für den Knick der Kurve zulassen",

  // The specimen.
  "the salt of the pore water taken out": "ohne das Salz des Porenwassers",
  "the density of water at the temperature, by Kell (1975)":
    "die Dichte des Wassers bei der Temperatur, nach Kell (1975)",
  "pore water = (wet after - dry) / (1 - s); salt = pore water less (wet after - dry)":
    "Porenwasser = (feucht danach - trocken) / (1 - s); Salz = Porenwasser abzüglich (feucht danach - trocken)",
  "w of the one tin": "w der einen Schale",
  "the mean of {0} tins": "das Mittel aus {0} Schalen",
  "shown to 0.1 %": "auf 0,1 % gerundet",
  "shown to three decimals": "auf drei Dezimalen gerundet",
  "shown to four decimals": "auf vier Dezimalen gerundet",
  "the measured final height": "die gemessene Endhöhe",
  "at the end of load {0}": "am Ende der Laststufe {0}",
  "strains at the ends of the loads": "Stauchungen an den Enden der Laststufen",

  // The deflection of the apparatus.
  "the zero reading was taken without load": "die Nullablesung wurde ohne Last genommen",
  "as the table gives it at {0} {1}": "wie in der Tabelle bei {0} {1}",
  "between two rows of the table": "zwischen zwei Zeilen der Tabelle",
  "no deflection table: nothing is corrected": "keine Verformungstabelle: nichts wird abgezogen",
  "that of the load before: the load stands": "die der Laststufe davor: die Last bleibt stehen",
  "{0}; less that at the seating stress: {1}": "{0}; abzüglich der bei der Anfangsspannung: {1}",

  // Wetting.
  "the seating stress, which is marked": "die Anfangsspannung, die markiert ist",
  "the stress of load {0}, which is marked": "die Spannung der Laststufe {0}, die markiert ist",
  "load {0}, which is marked": "Laststufe {0}, die markiert ist",
  "the stress of load {0}": "die Spannung der Laststufe {0}",
  "the initial height: the stage is the first load": "die Anfangshöhe: die Stufe ist die erste Laststufe",
  "the height at the end of load {0}": "die Höhe am Ende der Laststufe {0}",
  "the strain on wetting, its sign changed": "die Stauchung beim Wässern mit umgekehrtem Vorzeichen",
  "the collapse potential: the specimen was wetted under 200 kPa (2 tsf), within 5 %":
    "das Sackungspotential: der Probekörper wurde unter 200 kPa (2 tsf) gewässert, auf 5 % genau",
  "load back: the stress at which the specimen is back at its height before wetting, on log of stress":
    "Rückbelastung: die Spannung, bei der der Probekörper wieder die Höhe vor dem Wässern hat, auf dem Logarithmus der Spannung",
  "constant volume: the stress that held the height before wetting":
    "konstantes Volumen: die Spannung, die die Höhe vor dem Wässern hielt",
  "the stress below it that was read": "die abgelesene Spannung darunter",
  "the stress above it that was read": "die abgelesene Spannung darüber",

  // Creep, field curve and design values.
  "C alpha of load {0}": "C alpha der Laststufe {0}",
  "C alpha in use": "das eingesetzte C alpha",
  "from the end of the field recompression line to where both curves meet":
    "vom Ende der Wiederbelastungsgeraden der Feldkurve bis zum Treffpunkt beider Kurven",
  "C_r: the field curve runs parallel to the recompression up to the preconsolidation stress":
    "C_r: die Feldkurve verläuft bis zur Vorbelastungsspannung parallel zur Wiederbelastung",
  "on the virgin line": "auf der Erstbelastungsgeraden",
  "the curve chosen at the in-situ stress, straight between two points on log of stress":
    "die gewählte Kurve bei der In-situ-Spannung, gerade zwischen zwei Punkten auf dem Logarithmus der Spannung",
  "the curve chosen at the in-situ stress and the increase, straight between two loads on log of stress":
    "die gewählte Kurve bei der In-situ-Spannung und nach dem Zuwachs, gerade zwischen zwei Laststufen auf dem Logarithmus der Spannung",
  "cv at the in-situ stress and half the increase: {0}": "cv bei der In-situ-Spannung und dem halben Zuwachs: {0}",
  "1 load": "1 Laststufe",
  "{0} loads": "{0} Laststufen",
  "the geometric mean of the cv of {0} from {1} to {2}, {3} to {4}":
    "das geometrische Mittel der cv aus {0} von {1} bis {2}, {3} bis {4}",

  // The loads.
  "the reading at the latest time of the load": "die Ablesung zur spätesten Zeit der Laststufe",
  "{0} at d100; {1}": "{0} bei d100; {1}",
  "the void ratio at d100": "die Porenzahl bei d100",
  "the void ratio at the end of the load": "die Porenzahl am Ende der Laststufe",
  "at d50 by log time": "bei d50 nach log t",
  "at d50 by root time": "bei d50 nach Wurzel t",
  "cv by {0}": "cv nach {0}",
  "f_T the viscosity of water at {0} deg C over that at 20":
    "f_T die Viskosität des Wassers bei {0} °C, geteilt durch die bei 20",
  "log time: the early parabola, on which movement goes with the root of time, carried back to time zero":
    "log t: die anfängliche Parabel, auf der die Verformung mit Wurzel t geht, zurück zur Zeit null",
  "log time: where the tangent at the inflection meets the line of the tail":
    "log t: Schnitt der Wendetangente mit der Geraden des Kriechasts",
  "log time: the time at which the curve reaches d50": "log t: die Zeit, zu der die Kurve d50 erreicht",
  "log time: the time at which tangent and tail meet":
    "log t: die Zeit, zu der sich Wendetangente und Kriechast treffen",
  "root time: the straight part carried back to time zero": "Wurzel t: das gerade Stück, zurück zur Zeit null",
  "root time: where the line 1.15 times as far out meets the curve":
    "Wurzel t: Schnitt der 1,15-mal so weit außen liegenden Geraden mit der Kurve",
  "root time: the time of d90": "Wurzel t: die Zeit von d90",
  "log time: readings per log cycle of time on the line of the tail":
    "log t: Skalenteile je Dekade der Zeit auf der Geraden des Kriechasts",
};
