/** Messages about loads as masses and the load cell. */
export const masses: Readonly<Record<string, string>> = {
  "load {0} has no stress above zero: enter the stress on the disk":
    "Laststufe {0} hat keine Spannung über null: die Spannung auf der Scheibe eintragen",
  "a deflection set needs two loads of increasing stress at least, each with a reading":
    "ein Verformungssatz braucht mindestens zwei Laststufen steigender Spannung, jede mit einer Ablesung",
  "under {0} the apparatus is longer than under the seating stress: check whether readings rise or fall on compression, and the zero reading":
    "unter {0} ist das Gerät länger als unter der Anfangsspannung: prüfen, ob Ablesungen bei Stauchung steigen oder fallen, auch die Nullablesung prüfen",
  "{0} loads under {1}: their deflections are averaged": "{0} Laststufen unter {1}: ihre Verformungen werden gemittelt",
  "the mass on the hanger is {0}, below zero: correct it": "die Masse auf dem Gehänge ist {0}, unter null: berichtigen",
  "the calibration factor": "der Kalibrierfaktor",
  "the output ({0}) is not above its zero ({1}): no load is on the cell, or its sign is turned":
    "die Anzeige ({0}) liegt nicht über ihrem Nullwert ({1}): auf der Messdose ist keine Last, oder das Vorzeichen ist verkehrt",
  "a mass of {0} kg cannot hang: enter masses greater than zero":
    "eine Masse von {0} kg kann nicht hängen: Massen über null eingeben",
  "{0} masses are more than a frame has: enter {1} at most": "{0} Massen hat kein Rahmen: höchstens {1} eingeben",
};
