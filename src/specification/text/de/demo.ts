/** What a person would have typed into the German demonstration, by the names of the cells. */
export const demo: Readonly<Record<string, string>> = {
  notice:
    "Erfunden: kein wirklicher Ort, keine Person, kein Büro. Die Ablesungen sind aus einem bekannten Boden berechnet.",
  project: "Beispieldamm (erfunden)",
  soil_description: "Weicher grauer schluffiger TON",
  group_symbol: "TA",
  preparation: "Eingeschnitten, Achse lotrecht",
  standard: "Keine (Beispiel)",
  calibration_date: "erfunden",
  test_remarks: "Nach der sechsten Laststufe ent- und wiederbelastet; am Ende in drei Stufen entlastet.",
};
