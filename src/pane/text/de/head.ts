export const head = {
  impossible: "Ergebnisse bleiben leer: diese Eingaben sind unmöglich.",
  jump: "Die Ablesungen einer Laststufe springen",
  missing: "Was dem Blatt noch fehlt",
};
