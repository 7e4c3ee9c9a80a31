export const head = {
  impossible: "Ergebnisse bleiben leer: diese Eingaben sind unmöglich.",
  missing: "Was dem Blatt noch fehlt",
};
