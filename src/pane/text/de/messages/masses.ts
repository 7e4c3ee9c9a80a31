/** Messages about loads as masses and the load cell. */
export const masses: Readonly<Record<string, string>> = {
  "the mass on the hanger is {0}, below zero: correct it": "die Masse auf dem Gehänge ist {0}, unter null: berichtigen",
  "the calibration factor": "der Kalibrierfaktor",
  "the output ({0}) is not above its zero ({1}): no load is on the cell, or its sign is turned":
    "die Anzeige ({0}) liegt nicht über ihrem Nullwert ({1}): auf der Messdose ist keine Last, oder das Vorzeichen ist verkehrt",
  "a mass of {0} kg cannot hang: enter masses greater than zero":
    "eine Masse von {0} kg kann nicht hängen: Massen über null eingeben",
  "{0} masses are more than a frame has: enter {1} at most": "{0} Massen hat kein Rahmen: höchstens {1} eingeben",
};
