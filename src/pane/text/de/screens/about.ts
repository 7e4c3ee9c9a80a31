export const about = {
  heading: "Über Clayledger",
  version: (version: string) => `Version ${version}`,
  purpose:
    "Wertet eindimensionale Kompressionsversuche (Ödometer, stufenweise Belastung) an Böden in der Arbeitsmappe aus.",
  helpHeading: "Hilfe",
  helpFunctions: "Hilfe: jede Tabellenfunktion, mit Beispielen",
  helpFirst: "Die ersten zehn Minuten in Excel",
  languageHeading: "Sprache",
  language: "Sprache dieses Bereichs",
  languageOfHost: "wie die Umgebung",
  languageHint:
    "Wirkt nach dem Neuladen dieses Bereichs; was hier begonnen und noch nicht geschrieben ist, geht dabei verloren. Datenblatt und Bericht haben ihre eigene Sprache, die gewählt wird, wo sie entstehen; eine Tabellenfunktion antwortet in der Sprache des Wortes, das nach dem Text fragt.",
  languageUse: "Sprache wechseln und neu laden",
  privacyHeading: "Datenschutz",
  privacy:
    "Nichts wird irgendwohin gesendet: keine Ablesung, keine Zahl und kein Name, und nichts wird gezählt. Die Seite im Browser behält eine Kopie von Änderungen, die nicht gespeichert sind, im Speicher des Browsers auf diesem Rechner, bis gespeichert oder die Kopie vergessen wird. In Excel wird keine Kopie behalten.",
  cautionsHeading: "Hinweise",
  cautions: [
    "Dieses Werkzeug hilft bei der Auswertung eines Versuchs. Es ersetzt nicht das Urteil der Ingenieurin oder des Ingenieurs, die für das Ergebnis einstehen.",
    "Es gelten die Norm und Ausgabe, die der Vertrag nennt, sowie örtliche Vorschriften und das Berufsrecht. Der Text einer Norm ist hier nicht wiedergegeben.",
    "Eine Konstruktion ist eine Deutung. Mehr als eine Antwort lässt sich vertreten: Diagramm und Bemerkung ansehen, bevor eine Zahl verwendet wird.",
    "Die Theorie setzt einen gesättigten Probekörper, kleine Stauchungen, ein unveränderliches cv und Entwässerung in einer Richtung voraus. cv gilt nicht für ungesättigten Boden, und ein kleiner Probekörper muss den Baugrund nicht vertreten.",
    "Eine Störung der Probe senkt die Vorbelastungsspannung und den Kompressionsbeiwert.",
    "Eine Bemerkung kann nach beiden Seiten falsch sein: „ok“ beweist keine Güte.",
    "Nicht für Versuche mit konstanter Stauchungsrate oder in der hydraulischen Zelle.",
    "Ablesungen werden nie verändert. Die Urschriften aufbewahren.",
  ],
  licencesHeading: "Lizenzen",
  own: "Clayledger ist quelloffen unter der MIT-Lizenz.",
  parts: [
    "React und Fluent UI: MIT",
    "Observable Plot und D3: ISC",
    "Papa Parse: MIT",
    "Das Blatt der Seite im Browser ist o-spreadsheet (LGPL-3.0-or-later) mit Owl (LGPL-3.0-only), unverändert und austauschbar; Bootstrap (MIT), Font Awesome (OFL-1.1, MIT)",
  ],
  notices: "Alle Teile, mit ihren Lizenzen und Vermerken",
};
