/** Messages that all questions of the checks share: comparisons of numbers, changes of cells, limits of a firm. */
export const checks: Readonly<Record<string, string>> = {
  "common practice": "übliche Praxis",
  "{0}": "{0}",
  limit: "Grenzwert",
  "{0} is {1}, below {2}: {3}": "{0}: {1}, unter {2}: {3}",
  "{0} is {1}, above {2}: {3}": "{0}: {1}, über {2}: {3}",
  "within {0} to {1}": "zwischen {0} und {1}",
  "not above {0}": "nicht über {0}",
  "not below {0}": "nicht unter {0}",
  "{0} is {1}, {2}": "{0}: {1}, {2}",
  difference: "Unterschied",
  "of primary compression": "der Primärsetzung",
  "{0} is {1}, {2} {3}: they differ by {4}": "{0} {1}, {2} {3}: der Unterschied ist {4}",
  "{0}, more than {1}; {2}": "{0}, mehr als {1}; {2}",
  "{0}, not more than {1}": "{0}, nicht mehr als {1}",
  "{0}: {1}": "{0}: {1}",
  "also {0}": "auch {0}",
  "also loads {0}": "auch Laststufen {0}",
  "{0}; {1}": "{0}; {1}",
  "{0} or {1}": "{0} oder {1}",
  "{0} %": "{0} %",

  // Cells.
  "{0} to {1}, {2}, hold no formulas: write them (Data sheet, Sheet check)":
    "{0} bis {1}, {2}, enthalten keine Formeln: Bitte schreiben lassen (Datenblatt, Blattprüfung)",
  "{0}, {1}, has lost its formula: copy it from a neighbour in the column":
    "{0}, {1}, hat die Formel verloren: von einer Nachbarzelle der Spalte kopieren",
  "{0}, {1}, has lost its formula: take it from a newly inserted sheet":
    "{0}, {1}, hat die Formel verloren: aus einem neu eingefügten Blatt nehmen",
  "{0}, {1}, holds {2} where a formula belongs: it was overwritten and follows no input any more; copy the formula from a neighbour in the column":
    "{0}, {1}, enthält {2}, wo eine Formel hingehört: sie wurde überschrieben und folgt keiner Eingabe mehr; die Formel von einer Nachbarzelle der Spalte kopieren",
  "{0}, {1}, holds {2} where a formula belongs: it was overwritten and follows no input any more; undo, or take the formula from a newly inserted sheet":
    "{0}, {1}, enthält {2}, wo eine Formel hingehört: sie wurde überschrieben und folgt keiner Eingabe mehr; rückgängig machen oder die Formel aus einem neu eingefügten Blatt nehmen",
  "{0}, {1}, has a formula unlike the others of its column: copy it from a neighbour, or say why":
    "{0}, {1}, hat eine andere Formel als die übrigen der Spalte: von einer Nachbarzelle kopieren oder sagen, warum",
  "{0}, {1}, holds {2} where the formula of {3} puts its answer: clear it":
    "{0}, {1}, enthält {2}, wo die Formel von {3} ihr Ergebnis hinschreibt: leeren",
  "{0} holds {1} where the formula of {2} puts its answer: clear it":
    "{0} enthält {1}, wo die Formel von {2} ihr Ergebnis hinschreibt: leeren",
  "{0}, {1}, has no result: a function or a name of a formula is not known; attach missing names, and enter the formulas again (Data sheet, Sheet check)":
    "{0}, {1}, hat kein Ergebnis: eine Formel enthält eine unbekannte Funktion oder einen unbekannten Namen; fehlende Namen vergeben und die Formeln neu eingeben (Datenblatt, Blattprüfung)",
  "{0} results are missing, the first in {1}, {2}: a function or a name of a formula is not known; attach missing names, and enter the formulas again (Data sheet, Sheet check)":
    "{0} Ergebnisse fehlen, das erste in {1}, {2}: eine Formel enthält eine unbekannte Funktion oder einen unbekannten Namen; fehlende Namen vergeben und die Formeln neu eingeben (Datenblatt, Blattprüfung)",
  "{0}, {1}": "{0}, {1}",
  row: "Zeile",
  rows: "Zeilen",
  column: "Spalte",
  columns: "Spalten",
  "{0} {1} is hidden and in use: {2} holds {3}; show it before the sheet is signed":
    "{0} {1} ist ausgeblendet und wird benutzt: {2} enthält {3}; einblenden, bevor das Blatt unterschrieben wird",
  "{0} {1} to {2} are hidden and in use: {3} holds {4}; show them before the sheet is signed":
    "{0} {1} bis {2} sind ausgeblendet und werden benutzt: {3} enthält {4}; einblenden, bevor das Blatt unterschrieben wird",

  // Limits of the firm.
  "row {0} of {1}": "Zeile {0} ({1})",
  "{0} is a limit of “{1}”, which no question has: it is not used; clear it":
    "{0} ist ein Grenzwert „{1}“, den keine Frage hat: er gilt nicht; leeren",
  "{0} holds “{1}” where the limit {2} is a number: the default {3} is in force; enter a number":
    "{0} enthält „{1}“, wo der Grenzwert {2} eine Zahl ist: es gilt der vorgegebene, {3}; eine Zahl eingeben",
  why: "warum",
  who: "wer",
  "who and why": "wer und warum",
  "{0} changes “{1}” from {2} to {3}: enter {4}": "{0} ändert „{1}“ von {2} auf {3}: eingeben, {4}",
};
