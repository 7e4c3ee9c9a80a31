export const head = {
  impossible: "Ergebnisse bleiben leer: diese Eingaben können nicht stimmen.",
  missing: "Was dem Blatt noch fehlt",
};
