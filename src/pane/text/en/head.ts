export const head = {
  impossible: "Results stay blank: these inputs are impossible.",
  entry: "These entries cannot be used",
  jump: "The readings of a load jump",
  missing: "What the sheet still needs",
};
