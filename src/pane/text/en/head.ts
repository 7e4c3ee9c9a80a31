export const head = {
  impossible: "Results stay blank: these inputs cannot be.",
  missing: "What the sheet still needs",
};
