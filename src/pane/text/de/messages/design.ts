/** Messages about numbers for design, settlement, swelling and wetting. */
export const design: Readonly<Record<string, string>> = {
  // Values at a stress, and the parameters of design.
  "{0} ({1}) lies beyond {2}, from {3} to {4}: give a stress between, and check that both are in one unit":
    "{0} ({1}) liegt außerhalb: {2}, von {3} bis {4}; eine Spannung dazwischen angeben und prüfen, dass beide dieselbe Einheit haben",
  'the test has no unloading: leave the branch out, or give "loading"':
    "der Versuch hat keine Entlastung: den Ast weglassen oder „loading“ angeben",
  "the loading curve": "die Belastungskurve",
  "the unloading curve": "die Entlastungskurve",
  "the field curve": "die Feldkurve",
  "the loads that have a cv": "die Laststufen, die ein cv haben",
  "the reload": "die Wiederbelastung",
  "row {0}: cv is {1}, below zero: correct or clear it": "Zeile {0}: cv ist {1}, unter null: berichtigen oder leeren",
  "no load of first loading has a cv: choose the columns of stress and of cv, or type the cv adopted":
    "keine Laststufe der Erstbelastung hat ein cv: die Spalten der Spannung und des cv wählen oder das angenommene cv eingeben",
  "the cv {0} is adopted from {1} to {2}: the lower stress comes first, correct it":
    "das cv {0} ist von {1} bis {2} festgelegt: die kleinere Spannung steht zuerst, berichtigen",
  "adopted for {0} to {1}": "festgelegt für {0} bis {1}",
  "between the loads, on log stress": "zwischen den Laststufen, über log Spannung",
  "the range is {0} to {1}: the lower stress comes first, correct it":
    "der Bereich ist {0} bis {1}: die kleinere Spannung steht zuerst, berichtigen",
  "no load that has a cv ends above {0} and not above {1}: give stresses around a load, in the unit of the loads":
    "keine Laststufe mit einem cv endet über {0} und nicht über {1}: Spannungen um eine Laststufe angeben, in der Einheit der Laststufen",
  "no load lies within the range: the load that ends in it begins below it":
    "keine Laststufe liegt ganz im Bereich: die in ihm endet, beginnt darunter",
  "this needs the initial void ratio too: give it": "das braucht auch die Anfangsporenzahl: angeben",
  "the in-situ stress is blank or zero: enter a number greater than zero":
    "die In-situ-Spannung ist leer oder null: eine Zahl größer als null eingeben",
  "the in-situ stress": "die In-situ-Spannung",
  "the in-situ stress plus the increase": "die In-situ-Spannung samt Zunahme",
  "the virgin line is flat: it has no modulus number":
    "die Erstbelastungsgerade ist waagerecht: sie hat keinen Steifebeiwert",
  "no in-situ stress: e_in_situ, e_final, mv and M are not given":
    "keine In-situ-Spannung: e in situ, e nach Zuwachs, mv und M werden nicht angegeben",
  "there is no preconsolidation stress": "es gibt keine Vorbelastungsspannung",
  "the preconsolidation stress is not known, nor which part of {0} to {1} is virgin: adopt or give one":
    "die Vorbelastungsspannung ist nicht bekannt, also auch nicht, welcher Teil von {0} bis {1} Erstbelastung ist: eine übernehmen oder angeben",
  "the increase passes the preconsolidation stress ({0}): mv and M mix recompression and virgin compression":
    "die Zunahme überschreitet die Vorbelastungsspannung ({0}): mv und M mischen Wieder- und Erstbelastung",
  "the increase stays below the preconsolidation stress ({0}): RR applies, CR and the modulus number do not":
    "die Zunahme bleibt unter der Vorbelastungsspannung ({0}): RR gilt, CR und der Steifebeiwert nicht",
  "on the reload mv is {0} times that of first loading, which disturbance may have softened":
    "bei der Wiederbelastung ist mv das {0}-Fache von dem der Erstbelastung, die eine Störung weicher gemacht haben kann",

  // Intrinsic properties.
  "the liquid limit": "die Fließgrenze",
  "the liquid limit is {0}: enter it as a ratio, {1} for {2} %":
    "die Fließgrenze ist {0}: als Verhältnis eingeben, {1} für {2} %",
  "the void ratio at the liquid limit is {0}: the correlation begins at {1}, and gives no compression index here; check the liquid limit, a ratio":
    "die Porenzahl an der Fließgrenze ist {0}: die Korrelation beginnt bei {1} und gibt hier keinen Kompressionsbeiwert; die Fließgrenze prüfen, ein Verhältnis",
  "the void ratio at the liquid limit is {0}: the correlation was made between {1} and {2}, beyond which e*100 and C*c must be measured on reconstituted soil":
    "die Porenzahl an der Fließgrenze ist {0}: die Korrelation gilt zwischen {1} und {2}; außerhalb müssen e*100 und C*c an aufbereitetem Boden bestimmt werden",
  "the stress {0} kPa lies beyond the intrinsic line, which is drawn from {1} to {2} kPa":
    "die Spannung {0} kPa liegt außerhalb der intrinsischen Linie, die von {1} bis {2} kPa gezeichnet ist",

  // Settlement of a layer.
  "one layer in one dimension, stresses at its middle, primary consolidation only: immediate settlement, secondary compression and three-dimensional effects are not in it; split a thick layer":
    "eine Schicht, eindimensional, Spannungen in ihrer Mitte, nur Primärsetzung: Sofortsetzung, Kriechsetzung und räumliche Wirkung sind nicht enthalten; eine dicke Schicht teilen",
  "the thickness": "die Dicke",
  "the increase": "die Zunahme",
  "the preconsolidation stress": "die Vorbelastungsspannung",
  "the compression ratio": "das Kompressionsverhältnis",
  "the recompression ratio": "das Wiederbelastungsverhältnis",
  "the increase is {0}: this is the settlement under a load; heave on unloading is another calculation":
    "die Zunahme ist {0}: hier geht es um die Setzung unter einer Last; die Hebung beim Entlasten ist eine andere Rechnung",
  "{0} is {1}: enter strain per log cycle as a ratio, 0.2 for 20 %; from an index, divide by 1 + e0":
    "{0} ist {1}: die Stauchung je Dekade als Verhältnis eingeben, 0,2 für 20 %; einen Beiwert durch 1 + e0 teilen",
  "the recompression ratio ({0}) is above the compression ratio ({1}): the two may be swapped":
    "das Wiederbelastungsverhältnis ({0}) ist größer als das Kompressionsverhältnis ({1}): vielleicht sind sie vertauscht",
  "the layer would settle by its whole thickness: the stresses may be in two units, or strain per log cycle does not hold so far":
    "die Schicht würde sich um ihre ganze Dicke setzen: die Spannungen haben vielleicht zwei Einheiten, oder die Stauchung je Dekade gilt nicht so weit",
  "a compression ratio above {0} is rare outside peat: check that the index was divided by 1 + e0":
    "ein Kompressionsverhältnis über {0} ist außer bei Torf selten: prüfen, dass der Beiwert durch 1 + e0 geteilt wurde",
  "the increase does not pass the preconsolidation stress: use settlement_recompression below it, settlement_virgin above":
    "die Zunahme überschreitet die Vorbelastungsspannung nicht: darunter settlement_recompression nehmen, darüber settlement_virgin",

  // Swelling pressure.
  "swell is negative here, compression positive: change the signs if they were typed the other way":
    "Schwellen ist hier negativ, Stauchung positiv: die Vorzeichen ändern, wenn sie andersherum eingegeben wurden",
  "row {0}: the strain is {1}: enter strains as ratios, -0.05 for a swell of 5 %":
    "Zeile {0}: die Stauchung ist {1}: Stauchungen als Verhältnisse eingeben, -0,05 für ein Schwellen von 5 %",
  "no row has a stress: choose the columns of stress and of strain":
    "keine Zeile hat eine Spannung: die Spalten der Spannung und der Stauchung wählen",
  "row {0}: no strain, or exactly zero, left out; if zero was measured, the swelling pressure is its stress ({1})":
    "Zeile {0}: keine Stauchung oder genau null, bleibt weg; wurde null gemessen, ist der Schwelldruck ihre Spannung ({1})",
  "rows {0}: one stress, their strains are averaged": "Zeilen {0}: eine Spannung, ihre Stauchungen sind gemittelt",
  "this method needs specimens wetted under two stresses at least, with their strains":
    "dieses Verfahren braucht Probekörper, die unter mindestens zwei Spannungen gewässert wurden, mit ihren Stauchungen",
  "row {0} compressed under the least stress and row {1} swelled under the greatest: {2}":
    "Zeile {0} setzte sich unter der kleinsten Spannung, und Zeile {1} schwoll unter der größten: {2}",
  "every specimen swelled, even the one under {0}: wet one under a greater stress":
    "jeder Probekörper schwoll, auch der unter {0}: einen unter größerer Spannung wässern",
  "the specimen under the least stress ({0}) did not swell: wet one under a smaller stress, or there is no swelling pressure; {1}":
    "der Probekörper unter der kleinsten Spannung ({0}) schwoll nicht: einen unter kleinerer Spannung wässern, oder es gibt keinen Schwelldruck; {1}",
  "the specimens do not agree: row {0} swelled under the greatest stress, others compressed under less":
    "die Probekörper stimmen nicht überein: Zeile {0} schwoll unter der größten Spannung, andere setzten sich unter kleinerer",
  "the specimens between {0} and {1} do not agree: swell does not fall as the stress rises":
    "die Probekörper zwischen {0} und {1} stimmen nicht überein: das Schwellen nimmt mit steigender Spannung nicht ab",
  "swell and compression alternate from {0} to {1}: the pressure is where a straight line through these specimens is zero":
    "Schwellen und Setzung wechseln von {0} bis {1}: der Druck ist, wo eine Gerade durch diese Probekörper null ist",
  "no row shows a swell, a strain below zero: {0}": "keine Zeile zeigt ein Schwellen, eine Stauchung unter null: {0}",
  "row {0} is below its first height under a greater stress than row {1}, above it: {2}":
    "Zeile {0} liegt unter größerer Spannung als Zeile {1} unter der ersten Höhe, jene darüber: {2}",
  "the specimen is still above its first height under {0}: load it further":
    "der Probekörper ist unter {0} noch über seiner ersten Höhe: weiter belasten",
  "row {0}: the strain grows as the load is taken off: {1}": "Zeile {0}: die Stauchung wächst beim Entlasten: {1}",
  'row {0}: the specimen swelled by {1} %, so its volume was not held: try "{2}"':
    "Zeile {0}: der Probekörper schwoll um {1} %, sein Volumen wurde also nicht gehalten: „{2}“ versuchen",
  "row {0}: the specimen is not at its first height when the load is raised: count strains from the height before wetting":
    "Zeile {0}: der Probekörper hat beim Erhöhen der Last nicht seine erste Höhe: Stauchungen von der Höhe vor dem Wässern an zählen",
  "row {0}: the specimen had swelled a little (strain {1}): the pressure reads low":
    "Zeile {0}: der Probekörper war etwas geschwollen (Stauchung {1}): der Druck liest sich zu niedrig",
  "only one load held the volume: the readings give no lower limit of the pressure":
    "nur eine Last hielt das Volumen: die Ablesungen geben keine untere Grenze des Drucks",

  // Wetting.
  "{0} ({1}) is more than {2} times {3} ({4}): check both, and that they are in one unit":
    "{0} ({1}) ist mehr als das {2}-Fache ({3}: {4}): beide prüfen, auch auf dieselbe Einheit",
  "the height before wetting": "die Höhe vor dem Wässern",
  "the height after wetting": "die Höhe nach dem Wässern",
  "the reference height": "die Bezugshöhe",
  "the specimen swelled on wetting: it did not collapse":
    "der Probekörper schwoll beim Wässern: er sackte nicht zusammen",
  "the height before wetting is above the initial height: check both if nothing swelled before":
    "die Höhe vor dem Wässern ist größer als die Anfangshöhe: beide prüfen, wenn vorher nichts schwoll",
  "the index, and its class, are of a wetting under 200 kPa, not {0} {1}":
    "der Index und seine Klasse gelten für ein Wässern unter 200 kPa, nicht unter {0} {1}",
};
