export const sheet = {
  heading: "Datenblatt für einen Versuch",
  promise:
    "Es wird immer ein neues Blatt unter einem freien Namen angelegt. Kein vorhandenes Blatt, keine Zelle wird berührt.",
  units: "Einheiten",
  SI: "SI: mm, g, kPa",
  US: "US-Einheiten: in, g, tsf",
  language: "Sprache des Blatts",
  languageHint:
    "Überschriften, Beschriftungen, Notizen und die Wörter der Listen; auch die Tabellenfunktionen antworten in dieser Sprache.",
  languages: { en: "Englisch", de: "Deutsch" },
  loads: "Laststufen des leeren Blatts",
  loadsHint: (most: number) => `Be-, Ent- und Wiederbelastung zusammen; höchstens ${most}`,
  loadsWrong: (most: number) => `Eine ganze Zahl von 1 bis ${most} eingeben`,
  blank: "Leeres Blatt einfügen",
  blankHint: "Probekörper, Laststufen und Ablesungen zum Ausfüllen; die Ergebnisse folgen als lebende Formeln.",
  demo: "Durchgerechnetes Beispiel einfügen",
  demoHint: "Ein erfundener Versuch, ausgewertet von der Masse des Rings bis zur Vorbelastungsspannung.",
  series: "Reihe gewässerter Probekörper einfügen",
  seriesHint:
    "Probekörper, die unter verschiedenen Spannungen gewässert wurden: Stauchung Zeile für Zeile, und der Schwelldruck, wo sie null ist.",
  busy: "Das Blatt wird angelegt…",
  done: (name: string) => `Das Blatt „${name}“ wurde angelegt.`,
};
