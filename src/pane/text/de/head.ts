export const head = {
  impossible: "Ergebnisse bleiben leer: diese Eingaben sind unmöglich.",
  entry: "Diese Einträge sind nicht verwendbar",
  jump: "Die Ablesungen einer Laststufe springen",
  missing: "Was dem Blatt noch fehlt",
};
