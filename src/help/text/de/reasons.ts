/** Ablehnungen von Zellen, nach den englischen Sätzen der Funktionen; die übrigen stehen bei den Meldungen des Bereichs. */
export const reasons: Readonly<Record<string, string>> = {
  "the tolerance is {0}: enter it as a ratio, {1} for {2} %":
    "die Toleranz ist {0}: als Verhältnis eingeben, {1} für {2} %",
  "the height of solids is missing: void_ratio needs the height, the height of solids":
    "die Höhe der Festmasse fehlt: void_ratio braucht die Höhe und die Höhe der Festmasse",
  "the named values must be a range of names in the first column and values to their right":
    "die benannten Werte müssen ein Bereich sein, mit Namen in der ersten Spalte und Werten rechts davon",
  'the method is "{0}": use one of {1}': "das Verfahren ist „{0}“: eines von diesen verwenden: {1}",
  "a slope between two stresses needs both: give the other stress too, or neither":
    "eine Neigung zwischen zwei Spannungen braucht beide: auch die andere angeben, oder keine",
  'the cv unit is "{0}": use one of {1}': "die Einheit von cv ist „{0}“: eine von diesen verwenden: {1}",
  'the force unit is "{0}": use one of {1}': "die Krafteinheit ist „{0}“: eine von diesen verwenden: {1}",
  'the density unit is "{0}": use one of {1}': "die Dichteeinheit ist „{0}“: eine von diesen verwenden: {1}",
  'the drainage is "{0}": use one of {1}': "die Entwässerung ist „{0}“: eine von diesen verwenden: {1}",
  'the pick is "{0}": use one of {1}': "die Festlegung ist „{0}“: eine von diesen verwenden: {1}",
  "the log-of-time method does not apply: {0}; go on reading, or pick d0 and d100 by hand":
    "das Verfahren nach log t ist nicht anwendbar: {0}; weiter ablesen, oder d0 und d100 von Hand festlegen",
  "the readings stop at about {0} of primary compression: not finished enough for this method":
    "die Ablesungen enden bei etwa {0} der Primärsetzung: für dieses Verfahren nicht weit genug",
  "the ring and wet soil before ({0}) is less than the ring and dry soil ({1}): check the two weighings, they may be swapped":
    "Ring und feuchter Boden vorher ({0}) sind weniger als Ring und trockener Boden ({1}): beide Wägungen prüfen, vielleicht sind sie vertauscht",
  "the compression index": "der Kompressionsbeiwert",
  "the time factor": "der Zeitfaktor",
  "the times have {0} cells and the readings have {1}: choose two ranges of the same length":
    "die Zeiten haben {0} Zellen und die Ablesungen {1}: zwei Bereiche gleicher Länge wählen",
  'the initial height holds the text "{0}", which is not a number here: re-enter as a number, with this workbook\'s decimal sign and no spaces':
    "die Anfangshöhe enthält den Text „{0}“, der hier keine Zahl ist: neu als Zahl eingeben, mit dem Dezimalzeichen dieser Arbeitsmappe und ohne Leerzeichen",
  'the water content holds the text "{0}": re-enter as a number alone, without the unit':
    "der Wassergehalt enthält den Text „{0}“: neu eingeben, nur die Zahl, ohne Einheit",
  "the readings must be one column or one row: the range has {0} rows and {1} columns":
    "die Ablesungen müssen eine Spalte oder eine Zeile sein: der Bereich hat {0} Zeilen und {1} Spalten",
  "the picks have {0} loads, {1} names and {2} values: choose the same rows of each":
    "die Festlegungen haben {0} Laststufen, {1} Namen und {2} Werte: von jedem dieselben Zeilen wählen",
  'the rule "multiple" needs the multiple of t100 after which the load may end: enter it as multiple':
    "die Regel „multiple“ braucht das Vielfache von t100, nach dem die Laststufe enden darf: als Vielfaches eingeben",
  "there are {0} load numbers and {1} remarks: choose the same rows of each":
    "es gibt {0} Nummern von Laststufen und {1} Bemerkungen: von beiden dieselben Zeilen wählen",
};
