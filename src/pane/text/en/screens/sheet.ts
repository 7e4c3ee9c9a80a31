export const sheet = {
  heading: "Data sheet for one test",
  promise: "A new sheet is always made, under a free name. No existing sheet or cell is touched.",
  units: "Units",
  SI: "SI: mm, g, kPa",
  US: "US customary: in, g, tsf",
  language: "Language of the sheet",
  languageHint:
    "Its titles, labels, notes and the words of its lists; the worksheet functions answer in this language too.",
  languages: { en: "English", de: "German" },
  loads: "Loads of the blank sheet",
  loadsHint: (most: number) => `Loading, unloading and reloading steps together; ${most} at most`,
  loadsWrong: (most: number) => `Enter a whole number from 1 to ${most}`,
  blank: "Insert blank sheet",
  blankHint: "Specimen, loads and readings to fill in; results follow as live formulas.",
  demo: "Insert worked demonstration",
  demoHint: "An invented test, reduced from the ring mass to the preconsolidation stress.",
  series: "Insert wetting series",
  seriesHint:
    "Specimens wetted under different stresses: strain row by row, and the swelling pressure where it is zero.",
  busy: "Making the sheet…",
  done: (name: string) => `The sheet “${name}” was made.`,
};
