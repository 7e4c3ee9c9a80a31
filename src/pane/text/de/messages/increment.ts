/** Messages about the reduction of one load increment. */
export const increment: Readonly<Record<string, string>> = {
  // Readings.
  "rows {0} and {1}": "Zeilen {0} und {1}",
  "rows {0} and {1} more": "Zeilen {0} und {1} weitere",
  "{0} ({1} min)": "{0} ({1} min)",
  "rows {0} to {1}": "Zeilen {0} bis {1}",
  "{0} is left out: {1}": "{0} bleibt weg: {1}",
  "{0} are left out: {1}": "{0} bleiben weg: {1}",
  "row {0} of the times is {1}: a time before the load cannot be used; correct or clear that row":
    "Zeile {0} der Zeiten ist {1}: Eine Zeit vor der Belastung ist nicht verwendbar; die Zeile berichtigen oder leeren",
  "a reading without a time (a time of zero counts only in the first row)":
    "eine Ablesung ohne Zeit (eine Zeit null zählt nur in der ersten Zeile)",
  "the reading is blank or zero": "die Ablesung ist leer oder null",
  "the time in row {0} is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong":
    "die Zeit in Zeile {0} liegt vor einer Zeit darüber: die Ablesungen wurden nach der Zeit geordnet; die Zeit berichtigen, wenn die Uhr falsch ging",
  "{0} repeat a time: readings at the same time were averaged":
    "{0} wiederholen eine Zeit: Ablesungen zur selben Zeit wurden gemittelt",
  "far off the readings before and after": "weit ab von den Ablesungen davor und danach",
  "the time jumps from {0} to {1} min ({2}): are all times in minutes?":
    "die Zeit springt von {0} auf {1} min ({2}): Sind alle Zeiten in Minuten?",
  "the times look like days, as a sheet keeps the clock time 0:15: enter minutes":
    "die Zeiten sehen nach Tagen aus, wie ein Blatt die Uhrzeit 0:15 führt: Minuten eingeben",
  "{0} readings at different times are needed; there is {1}":
    "{0} Ablesungen zu verschiedenen Zeiten sind nötig; es gibt {1}",
  "{0} readings at different times are needed; there are {1}":
    "{0} Ablesungen zu verschiedenen Zeiten sind nötig; es gibt {1}",
  "all readings are the same: there is no movement to reduce":
    "alle Ablesungen sind gleich: es gibt keine Bewegung auszuwerten",
  "check whether the last reading was mistyped: the load ends with it":
    "prüfen, ob die letzte Ablesung vertippt ist: die Laststufe endet mit ihr",
  "{0} is left out as a wrong reading: {1} lies {2} off the curve of the other readings":
    "{0} bleibt als falsche Ablesung weg: {1} liegt um {2} neben der Kurve der anderen Ablesungen",
  "{0} goes back against the movement: check the reading": "{0} läuft gegen die Bewegung zurück: Ablesung prüfen",
  "initial compression is {0} % of the movement: gas, bedding or the deflection of the apparatus":
    "die Sofortsetzung ist {0} % der Bewegung: Gas, Bettung oder Eigenverformung des Geräts",
  "{0} divisions, {1} % of primary": "{0} Skalenteile, {1} % der Primärsetzung",
  "{0} in the readings, {1} % of primary": "{0} in der Ablesung, {1} % der Primärsetzung",
  "{0} % of primary": "{0} % der Primärsetzung",

  // The fit to theory.
  "the fit to theory": "Anpassung an die Theorie",
  "the fit to theory does not apply: {0}": "die Anpassung an die Theorie ist nicht anwendbar: {0}",
  "go on reading": "weiter ablesen",
  "the readings fit better if the load came {0} s {1} the clock was started: check the time zero; the fit allows for it, the constructions do not":
    "die Ablesungen passen besser, wenn die Last {0} s {1} dem Start der Uhr kam: Zeitnullpunkt prüfen; die Anpassung berücksichtigt das, die Konstruktionen nicht",
  before: "vor",
  after: "nach",
  "the readings fit a cv {0} times this one nearly as well: do not rely on either":
    "zu den Ablesungen passt das {0}-fache cv fast ebenso gut: auf keines von beiden verlassen",
  "the degree of consolidation is {0}: give a ratio from 0 to less than 1 (0.9 for 90 %; theory never reaches 1)":
    "der Konsolidationsgrad ist {0}: ein Verhältnis von 0 bis unter 1 angeben (0,9 für 90 %; die Theorie erreicht 1 nie)",

  // Whether a method can be trusted.
  "the whole movement is only {0} steps of the instrument: it is lost in the resolution":
    "die ganze Bewegung ist nur {0} Schritte des Messgeräts: sie geht in der Auflösung unter",
  "primary compression is only {0} times the scatter of the readings: it is lost in the noise":
    "die Primärsetzung ist nur das {0}-Fache der Streuung der Ablesungen: sie geht im Rauschen unter",
  "the readings stop at about {0} of primary compression: not finished enough for this method; {1}":
    "die Ablesungen enden bei etwa {0} der Primärsetzung: für dieses Verfahren nicht weit genug; {1}",
  "no inflection in the readings: the curve is nowhere clearly steeper than its tail; {0}":
    "kein Wendepunkt in den Ablesungen: die Kurve ist nirgends deutlich steiler als ihr Kriechast; {0}",
  "about {0} of primary compression was over before the first reading: the beginning cannot be found; read earlier, with a logger if need be":
    "etwa {0} der Primärsetzung waren vor der ersten Ablesung vorbei: der Anfang ist nicht zu finden; früher ablesen, nötigenfalls mit einem Datenlogger",
  "only {0} of the readings lie in the first half of primary compression: {1} are needed; read earlier":
    "nur {0} der Ablesungen liegen in der ersten Hälfte der Primärsetzung: {1} sind nötig; früher ablesen",
  "primary compression is only {0} steps of the instrument: cv is uncertain":
    "die Primärsetzung ist nur {0} Schritte des Messgeräts: cv ist unsicher",
  "primary compression is only {0} times the scatter of the readings: cv is uncertain":
    "die Primärsetzung ist nur das {0}-Fache der Streuung der Ablesungen: cv ist unsicher",
  "the tail is nearly as steep as the primary part (much secondary compression): the end of primary is uncertain":
    "der Kriechast ist fast so steil wie der primäre Teil (viel Sekundärsetzung): das Ende der Primärkonsolidation ist unsicher",
  "the readings stop soon after (or before) the end of primary (T = {0}): the end of primary is uncertain":
    "die Ablesungen enden bald nach (oder vor) dem Ende der Primärkonsolidation (T = {0}): dieses Ende ist unsicher",
  "about {0} of primary compression was over before the first reading: d0 is uncertain":
    "etwa {0} der Primärsetzung waren vor der ersten Ablesung vorbei: d0 ist unsicher",
  "only {0} readings in the first half of primary compression":
    "nur {0} Ablesungen in der ersten Hälfte der Primärsetzung",
  "the readings depart from theory by {0} of primary on average, several in a row to the same side: look at the plot":
    "die Ablesungen weichen im Mittel um {0} der Primärsetzung von der Theorie ab, mehrere nacheinander zur selben Seite: Diagramm ansehen",
  "the readings depart from theory by {0} of primary on average: look at the plot":
    "die Ablesungen weichen im Mittel um {0} der Primärsetzung von der Theorie ab: Diagramm ansehen",

  // Both constructions.
  "log time": "log t",
  "root time": "Wurzel t",
  "cv by {0} is {1} times that by {2}": "cv nach {0} ist das {1}-Fache von dem nach {2}",
  "{0}: do not rely on either without looking at the plot": "{0}: auf keines verlassen, ohne das Diagramm anzusehen",
  "{0} by log time and by root time differ by {1} % of primary compression":
    "{0} nach log t und nach Wurzel t unterscheiden sich um {1} % der Primärsetzung",
  "neither construction applies: {0}": "keine der beiden Konstruktionen ist anwendbar: {0}",
  "the first reading, {0}, stands off the straight part on root time by up to {1} and is left out of the beginning: bedding, slow loading or a late start of the clock":
    "die erste Ablesung, {0}, liegt bis zu {1} neben dem geraden Stück über Wurzel t und bleibt am Anfang weg: Bettung, langsames Belasten oder eine zu spät gestartete Uhr",
  "the first {0} readings, {1}, stand off the straight part on root time by up to {2} and are left out of the beginning: bedding, slow loading or a late start of the clock":
    "die ersten {0} Ablesungen, {1}, liegen bis zu {2} neben dem geraden Stück über Wurzel t und bleiben am Anfang weg: Bettung, langsames Belasten oder eine zu spät gestartete Uhr",

  // Picks.
  "picked by hand: {0}": "von Hand festgelegt: {0}",
  d0: "d0",
  d90: "d90",
  d100: "d100",
  "straight part from": "Gerade ab",
  "straight part to": "Gerade bis",
  "tail from": "Kriechast ab",
  "tail to": "Kriechast bis",
  "4:1 pair at": "4:1-Paar ab",
  "tangent from": "Tangente ab",
  "tangent to": "Tangente bis",
  "{0} = {1}": "{0} = {1}",
  "straight span": "Spanne des geraden Stücks",
  "tail span": "Spanne des Kriechasts",
  "tangent span": "Spanne der Wendetangente",
  "the picked 4:1 pair has a negative time: give minutes":
    "das festgelegte 4:1-Paar hat eine negative Zeit: Minuten angeben",
  "the picked {0} has a negative time: give minutes": "festgelegte {0}: eine Zeit ist negativ; Minuten angeben",
  "the picked {0} ({1} min) must come before {2} ({3} min)":
    "das festgelegte {0} ({1} min) muss vor {2} ({3} min) liegen",

  // Where both constructions refuse.
  "try the fit to theory": "die Anpassung an die Theorie versuchen",
  "{0}, or pick {1} by hand": "{0}, oder {1} von Hand festlegen",
  "d0 and d100": "d0 und d100",
  "d0 and d90": "d0 und d90",

  // Log time.
  "the log-of-time method does not apply:": "das Verfahren nach log t ist nicht anwendbar:",
  "try the root-of-time method": "das Verfahren nach Wurzel t versuchen",
  "the picked d100 ({0}) lies outside the readings: pick it within them":
    "das festgelegte d100 ({0}) liegt außerhalb der Ablesungen: innerhalb festlegen",
  "the tangent and the tail do not cross within the readings: pick the tangent on the steepest part, or a later tail":
    "Wendetangente und Kriechast schneiden sich nicht innerhalb der Ablesungen: die Tangente am steilsten Stück festlegen oder einen späteren Kriechast",
  "the readings move by {0}, more than the height of {1}: they are in another unit; cv and the times hold, and the readings of the answer are in the unit of the readings":
    "die Ablesungen ändern sich um {0}, mehr als die Höhe von {1}: sie sind in einer anderen Einheit; cv und die Zeiten gelten, und die Ablesungen der Antwort sind in der Einheit der Ablesungen",
  "the fit and the constructions leave the jump out: d0 to d100 are readings of the dial before it":
    "die Anpassung und die Konstruktionen lassen den Sprung weg: d0 bis d100 sind Ablesungen der Messuhr vor ihm",
  "the readings jump by {0} at {1}, and follow one curve without the jump: was the dial reset or touched? The deformation at the end of this load and of every later load contains the jump":
    "die Ablesungen springen bei {1} um {0} und folgen ohne den Sprung einer Kurve: wurde die Messuhr verstellt oder berührt? Die Verformung am Ende dieser und jeder späteren Laststufe enthält den Sprung",
  "the times ({0} to {1}) look like dates with clock times: enter minutes since the load was applied, the time of the reading less that of loading, times 1440":
    "die Zeiten ({0} bis {1}) sehen aus wie Daten mit Uhrzeit: Minuten seit dem Aufbringen der Last eingeben, Zeitpunkt der Ablesung weniger Zeitpunkt der Belastung, mal 1440",
  "the tangent ({0} to {1} min) and the tail ({2} to {3} min) overlap: move an end of one of them":
    "Wendetangente ({0} bis {1} min) und Kriechast ({2} bis {3} min) überlappen sich: ein Ende eines der beiden verschieben",
  "the tangent and the tail do not cross within the readings; {0}":
    "Wendetangente und Kriechast schneiden sich nicht innerhalb der Ablesungen; {0}",
  "d0 ({0}) and d100 ({1}) run against the readings: check the picks":
    "d0 ({0}) und d100 ({1}) laufen gegen die Ablesungen: Festlegungen prüfen",
  "half of primary compression was over before the first reading ({0} min); read earlier":
    "die halbe Primärsetzung war vor der ersten Ablesung ({0} min) vorbei; früher ablesen",
  "{0}; the slope of the tail is not given": "{0}; die Neigung des Kriechasts wird nicht angegeben",
  "the slope of the tail is that of the fit to theory: it is uncertain":
    "die Neigung des Kriechasts ist die der Anpassung an die Theorie: sie ist unsicher",
  "4:1 pair at {0} and {1} min": "4:1-Paar bei {0} und {1} min",
  "tangent through the readings from {0} to {1} min": "Tangente durch die Ablesungen von {0} bis {1} min",
  "tail through those from {0} to {1} min": "Kriechast durch die von {0} bis {1} min",
  "log time as drawn: {0}": "log t, wie gezeichnet: {0}",
  "log time as drawn: by the picks": "log t, wie gezeichnet: nach den Festlegungen",
  "the 4:1 pairs of the early parabola give d0 from {0} to {1}, {2} apart: bedding, slow loading or a late start of the clock":
    "die 4:1-Paare der Anfangsparabel geben d0 von {0} bis {1}, um {2} auseinander: Bettung, langsames Belasten oder eine zu spät gestartete Uhr",
  "the picked 4:1 pair at {0} min and four times it must lie within the readings ({1} to {2} min)":
    "die festgelegte erste Zeit des 4:1-Paars ({0} min) und ihr Vierfaches müssen innerhalb der Ablesungen liegen ({1} bis {2} min)",
  "no reading and four times its time lie before half of primary compression; read earlier, or pick d0":
    "keine Ablesung liegt samt der vierfachen Zeit vor der halben Primärsetzung; früher ablesen oder d0 festlegen",
  "the 4:1 pair reaches {0} % of primary compression: d0 is uncertain":
    "das 4:1-Paar reicht bis {0} % der Primärsetzung: d0 ist unsicher",
  "no three readings show a steepest part; {0}": "keine drei Ablesungen zeigen ein steilstes Stück; {0}",
  "the picked tangent ({0} to {1} min) holds 1 reading: it needs 2":
    "die festgelegte Tangente ({0} bis {1} min) enthält 1 Ablesung: sie braucht 2",
  "the picked tangent ({0} to {1} min) holds no readings: it needs 2":
    "die festgelegte Tangente ({0} bis {1} min) enthält keine Ablesung: sie braucht 2",
  "the picked tangent ({0} to {1} min) runs against the readings: check the picks":
    "die festgelegte Tangente ({0} bis {1} min) läuft gegen die Ablesungen: Festlegungen prüfen",

  // The tail.
  "the readings": "Ablesungen",
  "the readings of the span": "Ablesungen der Spanne",
  "{0} past the end of primary span {1} of a log cycle: secondary compression needs {2} of a log cycle; go on reading":
    "{0} nach dem Ende der Primärkonsolidation reichen über {1} einer Dekade der Zeit: die Sekundärsetzung braucht {2}; weiter ablesen",
  "no two of {0} lie past the end of primary: secondary compression needs {1} of a log cycle; go on reading":
    "keine zwei {0} liegen nach dem Ende der Primärkonsolidation: die Sekundärsetzung braucht {1} einer Dekade der Zeit; weiter ablesen",
  "the tail is only {0} of a log cycle long: its slope is uncertain":
    "der Kriechast ist nur {0} einer Dekade der Zeit lang: seine Neigung ist unsicher",
  "the tail is only {0} of a log cycle long": "der Kriechast ist nur {0} einer Dekade der Zeit lang",
  "the picked tail ({0} to {1} min) holds {2} readings: it needs 2":
    "der festgelegte Kriechast ({0} bis {1} min) enthält {2} Ablesungen: er braucht 2",
  '{0}, or use the procedure "{1}"': "{0}, oder das Verfahren „{1}“ wählen",
  "the tail begins at {0} times the end of primary: some of it is still primary compression":
    "der Kriechast beginnt beim {0}-Fachen des Endes der Primärkonsolidation: ein Teil ist noch Primärsetzung",
  "the tail is too short to show its slope: d100 leans on that of the fit to theory":
    "der Kriechast ist zu kurz, um seine Neigung zu zeigen: d100 stützt sich auf die der Anpassung an die Theorie",
  "readings of the tail were corrected by up to {0} for primary compression still to come and creep just begun: {1}":
    "Ablesungen des Kriechasts wurden um bis zu {0} berichtigt, für die noch ausstehende Primärsetzung und das eben begonnene Kriechen: {1}",
  "secondary compression needs 2 readings in its span ({0} to {1} min); there is 1":
    "die Sekundärsetzung braucht 2 Ablesungen in ihrer Spanne ({0} bis {1} min); es gibt 1",
  "secondary compression needs 2 readings in its span ({0} to {1} min); there are none":
    "die Sekundärsetzung braucht 2 Ablesungen in ihrer Spanne ({0} bis {1} min); es gibt keine",

  // Root time.
  "the root-of-time method does not apply:": "das Verfahren nach Wurzel t ist nicht anwendbar:",
  "try the log-of-time method or the fit to theory":
    "das Verfahren nach log t oder die Anpassung an die Theorie versuchen",
  "the picked d90 ({0}) lies outside the readings: pick it within them":
    "das festgelegte d90 ({0}) liegt außerhalb der Ablesungen: innerhalb festlegen",
  "the {0} line does not meet the curve within the readings; {1}":
    "die {0}-fache Gerade trifft die Kurve nicht innerhalb der Ablesungen; {1}",
  "root time as drawn: straight part through the readings from {0} to {1} min":
    "Wurzel t, wie gezeichnet: gerades Stück durch die Ablesungen von {0} bis {1} min",
  "the picked straight part holds fewer than 2 readings: it needs 2":
    "das festgelegte gerade Stück enthält weniger als 2 Ablesungen: es braucht 2",
  "fewer than 2 readings in the straight part; read earlier":
    "weniger als 2 Ablesungen im geraden Stück; früher ablesen",
  "the picked straight part runs against the readings: check the picks":
    "das festgelegte gerade Stück läuft gegen die Ablesungen: Festlegungen prüfen",
  "there is no straight part at the beginning; {0}": "am Anfang gibt es kein gerades Stück; {0}",
  "the readings stand off the straight part by {0} % of primary on average":
    "die Ablesungen liegen im Mittel um {0} % der Primärsetzung neben dem geraden Stück",

  // The progress of a load that is still on.
  "the readings give no such limit yet: go on reading": "die Ablesungen geben noch keine solche Grenze: weiter ablesen",
  "there are no readings yet: enter a time and a reading":
    "es gibt noch keine Ablesungen: eine Zeit und eine Ablesung eingeben",
  "the fixed time of {0} min is over": "die feste Zeit von {0} min ist vorbei",
  "the fixed time of {0} min is not over": "die feste Zeit von {0} min ist nicht vorbei",
  "{0} times t100 is {1} min: {2}": "das {0}-Fache von t100 ist {1} min: {2}",
  "it is over": "das ist vorbei",
  "it is not over": "das ist nicht vorbei",
  "whether it is over cannot be told yet, {0}": "ob das vorbei ist, lässt sich noch nicht sagen, {0}",
  "t100 is {0} min": "t100 ist {0} min",
  "t100 is expected at {0} min": "t100 wird bei {0} min erwartet",
  "{0} ({1} or later)": "{0} ({1} oder später)",
  "{0} ({1} to {2})": "{0} ({1} bis {2})",
  "primary compression is over: {0}": "die Primärsetzung ist vorbei: {0}",
  "primary compression is not over: {0}": "die Primärsetzung ist nicht vorbei: {0}",
  "whether primary compression is over cannot be told yet: {0}; {1}":
    "ob die Primärsetzung vorbei ist, lässt sich noch nicht sagen: {0}; {1}",
  "the end of primary needs {0} readings at different times, and there is {1}: {2}":
    "das Ende der Primärkonsolidation braucht {0} Ablesungen zu verschiedenen Zeiten, und es gibt {1}: {2}",
  "the end of primary needs {0} readings at different times, and there are {1}: {2}":
    "das Ende der Primärkonsolidation braucht {0} Ablesungen zu verschiedenen Zeiten, und es gibt {1}: {2}",
  "the end of primary cannot be told: {0}": "das Ende der Primärkonsolidation lässt sich nicht sagen: {0}",
  "the curve is nowhere clearly steeper than its tail; {0}":
    "die Kurve ist nirgends deutlich steiler als ihr Kriechast; {0}",
  "the end of primary cannot be foretold before half of it is over, and the readings show about {0} %: {1}":
    "das Ende der Primärkonsolidation lässt sich nicht vorhersagen, bevor die Hälfte vorbei ist, und die Ablesungen zeigen etwa {0} %: {1}",
  "the readings depart from theory by {0} % of primary on average, so theory cannot foretell the end: look at the plot":
    "die Ablesungen weichen im Mittel um {0} % der Primärsetzung von der Theorie ab, die das Ende also nicht vorhersagen kann: Diagramm ansehen",
  "no secondary compression is seen yet": "Sekundärsetzung ist noch nicht zu sehen",
  "{0} of a log cycle of secondary compression is seen, too little for its slope":
    "von der Sekundärsetzung ist {0} einer Dekade der Zeit zu sehen, zu wenig für ihre Neigung",
  "{0} of a log cycle of secondary compression is seen":
    "von der Sekundärsetzung ist {0} einer Dekade der Zeit zu sehen",
  "the rectangular hyperbola puts t100 at {0} min": "nach der rechtwinkligen Hyperbel liegt t100 bei {0} min",
  "the rectangular hyperbola puts t100 at {0} min, outside that range: look at the plot":
    "nach der rechtwinkligen Hyperbel liegt t100 bei {0} min, außerhalb dieses Bereichs: Diagramm ansehen",

  // cv in a cell.
  "the height is {0} mm, and few specimens have less than {1} or more than {2} mm: check the height and its unit":
    "die Höhe ist {0} mm, und wenige Proben haben weniger als {1} oder mehr als {2} mm: Höhe und Einheit prüfen",
  "check whether the times are seconds: the last one is {0} min, which is {1} days":
    "prüfen, ob die Zeiten Sekunden sind: die letzte ist {0} min, das sind {1} Tage",
  "cv is {0} m2/yr, outside {1} to {2}: check the units of time and height":
    "cv ist {0} m2/a, außerhalb von {1} bis {2}: Einheiten von Zeit und Höhe prüfen",
  "the reading {0} lies off the curve: at {1} min about {2} to {3} is expected; check it":
    "die Ablesung {0} liegt neben der Kurve: bei {1} min sind etwa {2} bis {3} zu erwarten; die Ablesung prüfen",
};
