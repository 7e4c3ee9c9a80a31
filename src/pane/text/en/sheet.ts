export const sheet = {
  heading: "Data sheet for one test",
  promise: "A new sheet is always made, under a free name. No existing sheet or cell is touched.",
  units: "Units",
  SI: "SI: mm, g, kPa",
  US: "US customary: in, g, tsf",
  blank: "Insert blank sheet",
  blankHint: "Specimen, loads and readings to fill in; results follow as live formulas.",
  demo: "Insert worked demonstration",
  demoHint: "An invented test, reduced from the ring mass to the preconsolidation stress.",
  busy: "Making the sheet…",
  done: (name: string) => `The sheet “${name}” was made.`,
};
