/** Messages about the reduction of the specimen, water, loads, units and uncertainty. */
export const specimen: Readonly<Record<string, string>> = {
  // Measurements by name.
  "the force": "die Kraft",
  "the diameter": "der Durchmesser",
  "the lever ratio": "das Hebelverhältnis",
  "the first stress": "die erste Spannung",
  "the maximum stress": "die größte Spannung",
  "the load increment ratio": "das Laststeigerungsverhältnis",
  "the last time": "die letzte Zeit",
  "the first time": "die erste Zeit",
  "the initial height": "die Anfangshöhe",
  "the stress": "die Spannung",
  "the wet mass": "die feuchte Masse",
  "the dry mass": "die Trockenmasse",
  "the specific gravity": "die Korndichte (Gs)",
  "the water density": "die Dichte des Wassers",
  "the height": "die Höhe",
  "the height of solids": "die Höhe der Festmasse",
  "the initial void ratio": "die Anfangsporenzahl",
  "the water content": "der Wassergehalt",
  "the void ratio": "die Porenzahl",
  "the mass": "die Masse",
  "the ring mass": "die Masse des Rings",
  "the ring and wet soil before": "Ring und feuchter Boden vorher",
  "the ring and wet soil after": "Ring und feuchter Boden nachher",
  "the ring and dry soil": "Ring und trockener Boden",
  "the final height": "die Endhöhe",
  "the ring": "der Ring",
  "the deformation": "die Setzung",
  "the apparatus deflection": "die Eigenverformung des Geräts",
  "the time": "die Zeit",
  "less than": "kleiner als",
  "the same as": "gleich:",
  "{0} is blank or zero: enter a number greater than zero":
    "{0} ist leer oder null: eine Zahl größer als null eingeben",
  "{0} is {1}: it cannot be negative": "{0} ist {1}: negativ geht nicht",
  "{0} is not a number: enter a number greater than zero": "{0} ist keine Zahl: eine Zahl größer als null eingeben",
  "{0} is {1}: it must be greater than zero": "{0} ist {1}: der Wert muss größer als null sein",

  // The specimen.
  "the specific gravity is {0}, which no soil has: enter it relative to water, about 2.6 to 2.8":
    "die Korndichte (Gs) ist {0}, das hat kein Boden: bezogen auf Wasser eingeben, etwa 2,6 bis 2,8",
  "the tare is {0}: a mass cannot be negative": "die Tara ist {0}: eine Masse kann nicht negativ sein",
  "the dry mass ({0}) must be greater than the tare ({1}): check the two weighings, they may be swapped":
    "die Trockenmasse ({0}) muss größer sein als die Tara ({1}): beide Wägungen prüfen, vielleicht sind sie vertauscht",
  "the wet mass ({0}) is less than the dry mass ({1}): check the two weighings, they may be swapped":
    "die feuchte Masse ({0}) ist kleiner als die Trockenmasse ({1}): beide Wägungen prüfen, vielleicht sind sie vertauscht",
  "the water density is {0}: enter it in g/cm3 (1.000 for fresh water, about 1.02 for sea water)":
    "die Dichte des Wassers ist {0}: in g/cm3 eingeben (1,000 für Süßwasser, etwa 1,02 für Meerwasser)",
  "the height ({0}) is not above the height of solids ({1}), which leaves no voids: check both, and that they are in one unit":
    "die Höhe ({0}) ist nicht größer als die Höhe der Festmasse ({1}), es bleiben keine Poren: beide prüfen, auch auf dieselbe Einheit",
  "the strain is {0}: enter it as a ratio, 0.05 for 5 %, compression positive":
    "die Stauchung ist {0}: als Verhältnis eingeben, 0,05 für 5 %, Stauchung positiv",
  "a strain of {0} from a void ratio of {1} leaves no voids: check both (the strain is a ratio, 0.05 for 5 %)":
    "eine Stauchung von {0} bei einer Porenzahl von {1} lässt keine Poren: beide prüfen (die Stauchung ist ein Verhältnis, 0,05 für 5 %)",
  "the water content is {0}: enter it as a ratio, {1} for {2} %":
    "der Wassergehalt ist {0}: als Verhältnis eingeben, {1} für {2} %",
  "{0} ({1}) is {2} {3} ({4}): check the two weighings, they may be swapped":
    "{0} ({1}): {2} {3} ({4}); beide Wägungen prüfen, vielleicht sind sie vertauscht",
  "{0} ({1}) is not above the height of solids ({2}) that the dry mass, the specific gravity and the diameter give: check {3}, the diameter, the masses and the length unit":
    "{0} ({1}) ist nicht größer als die Höhe der Festmasse ({2}) aus Trockenmasse, Korndichte und Durchmesser: {3}, Durchmesser, Massen und Längeneinheit prüfen",
  "S0 is {0}, more water than the voids hold: check the height, the masses and the specific gravity":
    "S0 ist {0}, mehr Wasser, als in die Poren passt: Höhe, Massen und Korndichte prüfen",
  "S0 is {0}: not saturated as placed, so cv is not valid unless water filled it later; check the height and the masses":
    "S0 ist {0}: beim Einbau nicht gesättigt, cv gilt also nur, wenn das Wasser die Poren später füllte; Höhe und Massen prüfen",
  "Sf is {0}: the final void ratio is {1} from the final height but {2} from the final water content; check the final height, and that free water was wiped off before weighing":
    "Sf ist {0}: die Endporenzahl ist {1} aus der Endhöhe, aber {2} aus dem Endwassergehalt; die Endhöhe prüfen, und ob freies Wasser vor dem Wägen abgewischt wurde",
  "the final height ({0}) is above the initial height ({1}): correct only if the specimen swelled":
    "die Endhöhe ({0}) ist größer als die Anfangshöhe ({1}): nur richtig, wenn der Probekörper schwoll",
  "the specific gravity {0} is unusual (most soils 2.6 to 2.8): confirm that it was measured on this soil":
    "die Korndichte (Gs) {0} ist ungewöhnlich (die meisten Böden 2,6 bis 2,8): bestätigen, dass sie an diesem Boden bestimmt wurde",
  "the density {0} Mg/m3 is outside 1.2 to 2.3: check the sizes, their unit and the masses":
    "die Dichte {0} Mg/m3 liegt außerhalb von 1,2 bis 2,3: Maße, ihre Einheit und die Massen prüfen",
  "e0 {0} is outside 0.2 to 4: check the height, the dry mass and the specific gravity":
    "e0 {0} liegt außerhalb von 0,2 bis 4: Höhe, Trockenmasse und Korndichte prüfen",
  "diameter over height is {0}, below {1}: ring friction counts for more":
    "Durchmesser durch Höhe ist {0}, unter {1}: die Reibung am Ring zählt mehr",
  "the diameter is below the usual least of {0}: check it against the standard you report to":
    "der Durchmesser liegt unter dem üblichen Mindestmaß von {0}: an der Norm prüfen, nach der berichtet wird",
  "the height is below the usual least of {0}: check it against the standard you report to":
    "die Höhe liegt unter dem üblichen Mindestmaß von {0}: an der Norm prüfen, nach der berichtet wird",

  // Water and its salt.
  "the temperature is {0}: give degrees Celsius above 0 and up to 60":
    "die Temperatur ist {0}: Grad Celsius über 0 und bis 60 angeben",
  "{0}, so {1} for {2} {3}": "{0}, also {1} für {2} {3}",
  "the salt content is {0}: enter the mass of salt over that of the pore water as a ratio, 0.035 for sea water":
    "der Salzgehalt ist {0}: Masse des Salzes durch Masse des Porenwassers als Verhältnis eingeben, 0,035 für Meerwasser",
  "the wet mass ({0}) is not above the dry mass ({1}): check the two weighings, they may be swapped":
    "die feuchte Masse ({0}) ist nicht größer als die Trockenmasse ({1}): beide Wägungen prüfen, vielleicht sind sie vertauscht",
  "the pore water would hold {0} of salt, more than the dry mass ({1}): check the masses and the salt content":
    "das Porenwasser enthielte {0} Salz, mehr als die Trockenmasse ({1}): Massen und Salzgehalt prüfen",

  // Loads, deformations and the apparatus.
  "the maximum stress ({0}) is less than the first ({1}): the two may be swapped":
    "die größte Spannung ({0}) ist kleiner als die erste ({1}): vielleicht sind sie vertauscht",
  "a load increment ratio of {0} needs {1} loads: enter 1 to double, 0.5 for half":
    "ein Laststeigerungsverhältnis von {0} braucht {1} Laststufen: 1 eingeben für Verdoppeln, 0,5 für die Hälfte",
  "the stress to unload to ({0}) must be greater than zero and less than the last load ({1})":
    "die Spannung, bis zu der entlastet wird ({0}), muss größer als null und kleiner als die letzte Last ({1}) sein",
  "the number of unloading steps is {0}: enter a whole number, 1 or more":
    "die Zahl der Entlastungsstufen ist {0}: eine ganze Zahl eingeben, 1 oder mehr",
  "the last time ({0} min) must be after the first ({1} min)":
    "die letzte Zeit ({0} min) muss nach der ersten ({1} min) liegen",
  "reading times run from 0.0001 to 10,000,000 minutes: enter both times in minutes":
    "Ablesezeiten gehen von 0,0001 bis 10.000.000 Minuten: beide Zeiten in Minuten eingeben",
  "the factor is zero: enter the length of one division, negative for a dial that runs backwards":
    "der Faktor ist null: die Länge eines Skalenteils eingeben, negativ für eine rückwärts laufende Messuhr",
  "the deformation ({0} less {1} of apparatus) is not below the initial height ({2}): check that both are in one length unit":
    "die Setzung ({0} weniger {1} des Geräts) ist nicht kleiner als die Anfangshöhe ({2}): prüfen, dass beide dieselbe Längeneinheit haben",
  "the deformation ({0}) is not below the initial height ({1}): check that both are in one length unit":
    "die Setzung ({0}) ist nicht kleiner als die Anfangshöhe ({1}): prüfen, dass beide dieselbe Längeneinheit haben",
  "row {0} of the calibration stresses is {1}: it cannot be negative":
    "Zeile {0} der Spannungen der Kalibrierung ist {1}: negativ geht nicht",
  "the calibration is blank or zero throughout: enter its stresses and deflections":
    "die Kalibrierung ist durchweg leer oder null: ihre Spannungen und Verformungen eingeben",
  "rows {0} and {1} of the calibration give two deflections at {2}: choose the rows of loading or of unloading, not both":
    "die Zeilen {0} und {1} der Kalibrierung geben zwei Verformungen bei {2}: die Zeilen der Belastung oder der Entlastung wählen, nicht beide",
  "the stress {0} is {1} the calibrated range ({2} to {3}): extend the calibration, and check that both are in one stress unit":
    "die Spannung {0} liegt {1} des kalibrierten Bereichs ({2} bis {3}): die Kalibrierung erweitern und prüfen, ob beide dieselbe Einheit haben",

  // Units.
  'the unit "{0}" is not known: use one of {1}': "die Einheit „{0}“ ist nicht bekannt: eine von diesen nehmen: {1}",
  '"{0}" does not measure what "{1}" measures: convert it to one of {2}':
    "„{0}“ misst nicht, was „{1}“ misst: in eine von diesen umrechnen: {2}",

  // Uncertainty.
  "the uncertainty of {0} is {1}: enter a standard deviation, 0 or more":
    "die Unsicherheit ({0}) ist {1}: eine Standardabweichung eingeben, 0 oder mehr",
  "the coverage factor is {0}: enter 2 for about 95 %": "der Erweiterungsfaktor ist {0}: 2 eingeben für etwa 95 %",
  "no uncertainty is stated: enter one for an input at least":
    "keine Unsicherheit ist angegeben: mindestens eine für einen Eingangswert eingeben",
  "no uncertainty is stated for {0}: it counts as zero": "keine Unsicherheit angegeben für: {0}; sie zählt als null",
  "the specific gravity is assumed: its uncertainty is an estimate":
    "die Korndichte (Gs) ist angenommen: ihre Unsicherheit ist geschätzt",
  "the interval of the fit is {0} to {1}: it must have two ends above zero":
    "das Intervall der Anpassung ist {0} bis {1}: es muss zwei Enden über null haben",
  "a spread needs the results of two constructions at least":
    "eine Spanne braucht die Ergebnisse von mindestens zwei Konstruktionen",
  "the cap and the ball ({0} kg) alone give more than this stress ({1} kg): take a lighter cap, or count it in the stress":
    "Kopfplatte und Kugel ({0} kg) allein geben mehr als diese Spannung ({1} kg): eine leichtere Kopfplatte nehmen, oder die Kopfplatte zur Spannung rechnen",
};
