export const head = {
  impossible: "Results stay blank: these inputs are impossible.",
  missing: "What the sheet still needs",
};
