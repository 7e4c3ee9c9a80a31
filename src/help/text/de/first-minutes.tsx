/** Die ersten zehn Minuten: was der Leser tut, sehen muss und sonst meldet. */
import { check } from "../../../pane/text/de/screens/check";
import { pane } from "../../../pane/text/de/pane";
import { plot } from "../../../pane/text/de/screens/plot";
import { results } from "../../../pane/text/de/screens/results";
import { sheet } from "../../../pane/text/de/screens/sheet";
import { bold, code } from "../parts";
import type { Facts, FirstMinutesWords, Step } from "../words";

/** The add-in is there. */
const paneSteps = ({ screens }: Facts): readonly Step[] => [
  {
    title: "Das Menüband",
    action: <>Eine leere Arbeitsmappe öffnen und die Registerkarte Start ansehen.</>,
    seen: <>Am rechten Ende steht eine Gruppe „Clayledger“ mit der Schaltfläche „Clayledger öffnen“.</>,
    otherwise: (
      <>
        Excel hat das Add-In nicht geladen. Bitte melden, wie Excel das Manifest bekommen hat (freigegebener Ordner,
        Ordner wef, Hochladen, Administrator) und was unter Start, Add-Ins steht.
      </>
    ),
  },
  {
    title: "Der Aufgabenbereich",
    action: <>„Clayledger öffnen“ drücken.</>,
    seen: (
      <>
        In wenigen Sekunden öffnet sich ein Aufgabenbereich. Er hat {screens} Ansichten, von {bold(pane.tabs.next)} bis{" "}
        {bold(pane.tabs.about)} (englisch, wo Excel englisch ist).
      </>
    ),
    otherwise: (
      <>
        Ein leerer Bereich heißt meist, dass dem Zertifikat nicht vertraut wird oder der Browser nicht in das eigene
        Netz darf. <a href="taskpane.html">taskpane.html</a> auf demselben Rechner in einem Browser öffnen: Die Seite
        muss sich ohne Warnung öffnen. Bitte die Warnung melden.
      </>
    ),
  },
];

/** The functions answer in cells, and refuse with a reason. */
const answerSteps = ({ waterContent, schedule, swapped }: Facts): readonly Step[] => [
  {
    title: "Eine Funktion",
    action: <>{code(waterContent.formula)} in eine Zelle schreiben.</>,
    seen: (
      <>
        Beim Schreiben bietet Excel die Funktionen an, die mit {code("CLAY.")} beginnen, mit deutscher Beschreibung, wo
        Excel deutsch ist. Die Zelle zeigt {bold(waterContent.gives)} (mehr oder weniger Stellen, je nach Breite der
        Zelle).
      </>
    ),
    otherwise: (
      <>
        {code("#NAME?")}: Die Funktionen sind nicht angemeldet; Excel schließen, wieder öffnen und noch einmal
        versuchen. {code("#BUSY!")}, das bleibt: Die Datei der Funktionen ist nicht zu erreichen. Bitte melden, welches
        von beiden. Die Beschreibung ist englisch, obwohl Excel deutsch ist: die Sprache der Oberfläche melden.
      </>
    ),
  },
  {
    title: "Eine Funktion mit mehreren Zellen",
    action: <>{code(schedule.formula)} in eine Zelle schreiben, unter der neun leere Zellen sind.</>,
    seen: (
      <>
        {schedule.count} Zellen füllen sich, von {bold(schedule.first)} bis {bold(schedule.last)}, jede das Doppelte der
        darüber.
      </>
    ),
    otherwise: <>Nur eine Zelle: Dieses Excel hat keine dynamischen Arrays. Bitte seine Version melden.</>,
  },
  {
    title: "Eine Ablehnung",
    action: <>{code(swapped.formula)} in eine Zelle schreiben und auf das Zeichen daneben zeigen.</>,
    seen: (
      <>
        Die Zelle zeigt {code(swapped.error)}, und das Zeichen sagt: „{swapped.reason}“ (englisch, wo der
        Aufgabenbereich englisch ist).
      </>
    ),
    otherwise: <>Bitte melden, was das Zeichen sagt.</>,
  },
];

/** The functions name an error of another cell, and have their help. */
const errorAndHelpSteps = ({ ofAnError, help }: Facts): readonly Step[] => [
  {
    title: "Ein Fehler in einer anderen Zelle",
    action: (
      <>
        {code("=1/0")} in H1 und {code(ofAnError.formula)} in H2 schreiben.
      </>
    ),
    seen: (
      <>
        H2 zeigt {code(ofAnError.error)}, und sein Zeichen nennt die Trockenmasse und {code("#DIV/0!")}.
      </>
    ),
    otherwise: (
      <>
        H2 zeigt {code("#DIV/0!")}, oder sein Zeichen sagt nichts von der Trockenmasse: Dieses Excel gibt einem Add-In
        keine Fehler weiter. Die Zahlen sind davon nicht betroffen. Bitte die Version melden.
      </>
    ),
  },
  {
    title: "Hilfe",
    action: (
      <>
        Die Zelle von Schritt 3 auswählen, fx neben der Bearbeitungsleiste drücken, dann „Hilfe für diese Funktion“. Im
        Aufgabenbereich die Ansicht {bold(pane.tabs.about)} öffnen und der „Hilfe“ folgen.
      </>
    ),
    seen: (
      <>
        Das Fenster von fx erklärt jedes Argument, auf Deutsch, wo Excel deutsch ist. Der erste Verweis öffnet{" "}
        <a href={`${help}#water_content`}>die Hilfe zu WATER_CONTENT</a>, der zweite die ganze Seite.
      </>
    ),
    otherwise: <>Bitte melden, welcher Verweis wohin führte.</>,
  },
];

/** A blank sheet is made, and takes what may be typed. */
const BLANK_SHEET_STEPS: readonly Step[] = [
  {
    title: "Ein leeres Datenblatt",
    action: (
      <>
        Im Aufgabenbereich, Ansicht {bold(pane.tabs.sheet)}, bei „{sheet.language}“ {bold(sheet.languages.de)} wählen
        und „{sheet.blank}“ drücken.
      </>
    ),
    seen: (
      <>
        Ein neues Blatt „Kompressionsversuch“ steht vorn; der Aufgabenbereich sagt „{sheet.done("Kompressionsversuch")}
        “. Keine seiner Zellen zeigt einen Fehler. Es lässt sich drucken, wie es ist: die Druckvorschau ansehen.
      </>
    ),
    otherwise: <>Der Aufgabenbereich sagt in einem Satz, warum nicht. Bitte den ganzen Satz melden.</>,
  },
  {
    title: "Was eingetragen werden darf",
    action: (
      <>
        Auf diesem Blatt das Datum von heute bei „Beginn“ eintragen, dann in die Zelle von „Ring“ den Text {code("abc")}
        , dann {code("74,36")}.
      </>
    ),
    seen: (
      <>
        Das Datum wird angenommen. Den Text lehnt eine Meldung ab, die sagt, welche Zahl verlangt ist. Die Zahl wird
        angenommen.
      </>
    ),
    otherwise: <>Bitte die Zelle, das Eingetragene und die Meldung melden.</>,
  },
];

/** The demonstration calculates, has its chart, and is kept. */
const demonstrationSteps = ({ demonstration }: Facts): readonly Step[] => [
  {
    title: "Das durchgerechnete Beispiel",
    action: (
      <>
        „{sheet.demo}“ drücken, dann die Ansicht {bold(pane.tabs.results)} öffnen.
      </>
    ),
    seen: (
      <>
        Ein neues Blatt „Beispiel“ ist nach etwa zehn Sekunden gefüllt und berechnet; keine seiner Zellen zeigt dann{" "}
        {code("#NAME?")} oder {code("#BUSY!")}. Die Ansicht zeigt, in SI-Einheiten:{" "}
        {results.names.preconsolidation_stress} {bold(demonstration.preconsolidation_stress)} kPa,{" "}
        {results.names.compression_index} {bold(demonstration.compression_index)}, {results.names.void_ratio_initial}{" "}
        {bold(demonstration.void_ratio_initial)}.
      </>
    ),
    otherwise: (
      <>
        Bitte die Zellen melden, die einen Fehler zeigen, und wie lange es gedauert hat. Weichen Zahlen in den hier
        genannten Stellen ab, bitte sie melden: Das wäre der schwerste Fehler von allen.
      </>
    ),
  },
  {
    title: "Ein Diagramm, das seinen Zellen folgt",
    action: (
      <>
        Ansicht {bold(pane.tabs.plot)}, {plot.sheetPlots.compression}, „{plot.insert}“. Dann auf dem Beispiel
        „Korndichte Gs“ auf {code("2,70")} ändern und mit Rückgängig zurück auf {code("2,72")}.
      </>
    ),
    seen: (
      <>
        Der Aufgabenbereich zeichnet die Kurve mit der Konstruktion nach Casagrande. Ein neues Blatt hat ein Diagramm
        von Excel selbst; es bewegt sich mit der Zahl und kommt zurück.
      </>
    ),
    otherwise: <>Bitte den Satz des Aufgabenbereichs melden oder ein Bild des Diagramms schicken.</>,
  },
  {
    title: "Speichern und wieder öffnen",
    action: (
      <>
        Die Arbeitsmappe speichern, Excel schließen, die Arbeitsmappe wieder öffnen und ganz berechnen: Strg+Alt+F9
        unter Windows; sonst Formeln, Neu berechnen oder Arbeitsmappe berechnen.
      </>
    ),
    seen: <>Alle Zahlen stehen vorher und nachher da. Keine Zelle zeigt {code("#NAME?")}.</>,
    otherwise: (
      <>
        Wo Zellen {code("#NAME?")} zeigen: den Aufgabenbereich öffnen, Ansicht {bold(pane.tabs.sheet)}, und „
        {check.reenter}“ drücken. Bitte melden, ob das geholfen hat.
      </>
    ),
  },
];

export const firstMinutes: FirstMinutesWords = {
  title: "Clayledger: die ersten zehn Minuten in Excel",
  heading: "Die ersten zehn Minuten in Excel",
  version: (version) => `Clayledger, Version ${version}`,
  about:
    "Clayledger wird gegen das Objektmodell und die Dateiformate von Excel geprüft, nicht in Excel selbst. Diese zwölf Schritte zeigen, ob das eigene Excel damit übereinstimmt. Jeder sagt, was zu sehen sein muss; ist etwas anderes zu sehen, bitte melden.",
  help: (link) => (
    <>
      Alle Funktionen sind in der <a href={link}>Hilfe</a> beschrieben. Die Formeln haben hier Semikolon und
      Dezimalkomma, wie in Excel mit deutschen Einstellungen; mit Dezimalpunkt (Schweiz) statt des Kommas einen Punkt
      schreiben.
    </>
  ),
  seen: "Zu sehen:",
  otherwise: "Wenn nicht:",
  steps: (facts) => [
    ...paneSteps(facts),
    ...answerSteps(facts),
    ...errorAndHelpSteps(facts),
    ...BLANK_SHEET_STEPS,
    ...demonstrationSteps(facts),
  ],
  report: {
    heading: "Was eine Meldung braucht",
    about:
      "Die Nummer des Schritts und was stattdessen zu sehen war; die Version von Excel (Datei, Konto, Info zu Excel; auf dem Mac: Excel, Über Excel; im Web: der Browser und seine Version); Windows, Mac oder Web; die Sprache von Excel; die Version von Clayledger, die oben auf dieser Seite steht. Die Meldung geht an den, von dem das Add-In kam. Keine Arbeitsmappe eines Auftraggebers schicken: Das Beispiel zeigt dasselbe.",
  },
};
