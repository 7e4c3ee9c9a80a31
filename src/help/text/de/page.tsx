/** Die Sätze der Hilfe. */
import { bold, code } from "../parts";
import type { PageWords } from "../words";

/** The names of the pictures. */
const PICTURES: Readonly<Record<string, string>> = {
  "log time": "log t",
  "log time, drawn": "log t, wie gezeichnet",
  "root time": "Wurzel t",
  "root time, drawn": "Wurzel t, wie gezeichnet",
  casagrande: "Casagrande",
  work: "Arbeit",
  bilog: "bilog",
  intersection: "Schnittpunkt",
  pacheco_silva: "Pacheco Silva",
  janbu: "Janbu",
};

export const page: PageWords = {
  title: "Clayledger: Tabellenfunktionen",
  version: (version) => `Version ${version}`,
  firstMinutes: (link) => (
    <>
      <a href={link}>Die ersten zehn Minuten in Excel</a>: zwölf Schritte, die zeigen, ob alles funktioniert.
    </>
  ),
  functions: "Funktionen",
  cautions: "Hinweise",
  rules: {
    heading: "Regeln für alle Funktionen",
    list: [
      "Eine Reihe ist eine Spalte oder eine Zeile von Zellen. Zwei Reihen gehören Zelle für Zelle zusammen und sind gleich lang.",
      "Zeiten sind Minuten. Wassergehalte, Stauchungen und Sättigungszahlen sind Verhältnisse: 0,352 für 35,2 %. Ablesungen und Höhen haben dieselbe Längeneinheit.",
      "Eine leere Zelle in einer Reihe wird ausgelassen. Die Zeilen dürfen in beliebiger Reihenfolge stehen: Sie werden nach der Zeit geordnet, gleiche Zeiten werden gemittelt, und die Bemerkung sagt es.",
      <>
        Hat eine Funktion mehrere Größen, verlangt {code("Größe")} eine davon in einer Zelle. Fehlt sie, erscheint die
        ganze Tabelle: Bezeichnung, Wert, Einheit, und in der letzten Zeile die Bemerkung.
      </>,
      "Die Bemerkung ist „ok“, oder sie sagt, was anzusehen ist. Eine Bemerkung kann nach beiden Seiten falsch sein: „ok“ beweist keine Güte.",
      "Die Namen der Funktionen und die Wörter in Anführungszeichen sind in jeder Sprache englisch. Die Wörter der Listen eines deutschen Datenblatts nehmen die Funktionen auch deutsch, etwa „einseitig“ für „single“ und „Wurzel t“ für „root time“.",
      "Ein Text in einer Zelle ist in der Sprache des Wortes, das nach ihm fragt: „remark“ gibt die Bemerkung englisch, „Bemerkung“ deutsch; ebenso „Klasse“, „Urteil“, „Boden“, „Herkunft“, „Hauptbeitrag“, „Worte“ für „words“, „Fehler“ für „error“, „alle“ und „offen“. Eine ganze Tabelle ist englisch; steht „Deutsch“ an der Stelle der Größe, ist sie deutsch, und jede ihrer Bezeichnungen verlangt dann ihre Größe. Die Meldung eines Fehlers ist in der Sprache des Aufgabenbereichs.",
      "Der Versuch ist der Ödometerversuch mit stufenweiser Belastung (Drucksetzungsversuch, Kompressionsversuch) nach ISO 17892-5, in Deutschland DIN EN ISO 17892-5, oder ASTM D2435; welche Norm und Ausgabe gilt, sagt der Vertrag.",
    ],
  },
  errors: {
    heading: "Was jede Funktion ablehnt",
    list: [
      <>
        {bold("#WERT!")} (englisch #VALUE!): eine Eingabe, die nicht verwendbar ist, etwa ein Text, ein Datum, der
        Fehler einer anderen Zelle, eine Masse von null oder zwei Reihen von ungleicher Länge.
      </>,
      <>
        {bold("#NV")} (englisch #N/A): Die Eingabe ist in Ordnung, aber das Verfahren ist auf diese Kurve nicht
        anwendbar.
      </>,
    ],
    end: "Beide haben eine Meldung mit der Zeile und der Abhilfe: Zum Lesen auf das Zeichen neben der Zelle zeigen.",
  },
  sheet: {
    heading: "Das Beispielblatt",
    about:
      "Alle Beispiele auf dieser Seite rechnen mit diesen Zellen, und die Funktionen selbst haben die Ergebnisse berechnet, als diese Seite entstand. Um ein Beispiel auszuprobieren, die Tabelle kopieren, in A1 eines leeren Blatts einfügen und die Formel kopieren. Der Versuch ist erfunden. Zahlen haben hier ein Komma, und zwischen Argumenten steht ein Semikolon, wie in Excel mit deutschen Einstellungen; mit Schweizer Einstellungen, und in jedem Excel mit Dezimalpunkt, ist statt des Kommas ein Punkt zu schreiben.",
    columns: {
      "Time (min)": "Zeit (min)",
      "Reading (mm)": "Ablesung (mm)",
      "Stress (kPa)": "Spannung (kPa)",
      "Void ratio": "Porenzahl",
      "Calibration stress (kPa)": "Kalibrierspannung (kPa)",
      "Deflection (mm)": "Eigenverformung (mm)",
      Pick: "Festlegung",
      Value: "Wert",
      Load: "Laststufe",
      "Pick of load": "Festlegung der Laststufe",
      "Value of pick": "Wert der Festlegung",
      "Load number": "Nummer der Laststufe",
      "Remark on load": "Bemerkung zur Laststufe",
      Name: "Name",
      "Value of name": "Wert des Namens",
      "Load of cv (kPa)": "Laststufe des cv (kPa)",
      "cv (m2/yr)": "cv (m2/yr)",
      "Wetted under (kPa)": "Gewässert unter (kPa)",
      "Strain on wetting": "Stauchung beim Wässern",
      "Loaded back to (kPa)": "Wieder belastet bis (kPa)",
      "Strain after swelling": "Stauchung nach dem Schwellen",
    },
  },
  range: "ein Bereich",
  optional: "darf fehlen",
  gives: (what) => `Ergibt: ${what}`,
  examples: (count) => (count === 1 ? "Beispiel" : "Beispiele"),
  refuses: "Lehnt ab, zum Beispiel",
  source: "Quelle",
  moreRows: (count) => (count === 1 ? "und 1 weitere Zeile" : `und ${count} weitere Zeilen`),
  given: (formula) => `Was ${formula} ergibt`,
  drawnUnder: (link) => <>Die Konstruktion ist bei {link} gezeichnet.</>,
  picture: (name) => `Die Konstruktion auf dem Beispielblatt: ${PICTURES[name] ?? name}`,
};
