/**
 * Was Formeln der eingebetteten Tabelle melden, nach den englischen Sätzen ihrer Entwickler; ohne die Funktionen für
 * Finanzen und Datenbanken, die ein Labor nicht braucht.
 */
export const errors: Readonly<Record<string, string>> = {
  // Der Aufbau einer Formel
  "Missing closing parenthesis": "Eine schließende Klammer fehlt",
  "Missing opening parenthesis": "Eine öffnende Klammer fehlt",
  "Missing closing brace": "Eine schließende geschweifte Klammer fehlt",
  "Wrong function call": "Die Funktion ist falsch geschrieben",
  "Unexpected token: %s": "Unerwartetes Zeichen: %s",
  "Invalid function name %s. Function names can exclusively contain alphanumerical values separated by dots (.) or underscore (_)":
    "Ungültiger Name einer Funktion: %s. Er hat nur Buchstaben und Ziffern, dazwischen Punkte (.) oder Unterstriche (_)",
  "Invalid number of arguments for the %(functionName)s function. Expected %(minArgRequired)s minimum, but got %(nbrArgSupplied)s instead.":
    "Die Funktion %(functionName)s braucht mindestens %(minArgRequired)s Argumente und hat %(nbrArgSupplied)s.",
  "Invalid number of arguments for the %(functionName)s function. Expected %(maxArgPossible)s maximum, but got %(nbrArgSupplied)s instead.":
    "Die Funktion %(functionName)s nimmt höchstens %(maxArgPossible)s Argumente und hat %(nbrArgSupplied)s.",
  "Invalid number of arguments for the %(functionName)s function. Repeatable arguments should be supplied in groups of %(nbrArgRepeating)s, with up to %(nbrArgOptional)s optional. Got %(nbrValueRemaining)s too many.":
    "Die Funktion %(functionName)s hat %(nbrValueRemaining)s Argumente zu viel: Wiederholbare kommen in Gruppen zu %(nbrArgRepeating)s, und %(nbrArgOptional)s dürfen fehlen.",
  "Wrong number of arguments. Expected an even number of arguments.": "Die Zahl der Argumente muss gerade sein.",
  "Value for parameter %s is missing in [[FUNCTION_NAME]].": "In [[FUNCTION_NAME]] fehlt der Wert für %s.",

  // Argumente, die nicht passen
  "Did not find value '%s' in [[FUNCTION_NAME]] evaluation.": "[[FUNCTION_NAME]] hat den Wert „%s“ nicht gefunden.",
  "The function [[FUNCTION_NAME]] expects a number value, but '%s' is a string, and cannot be coerced to a number.":
    "Die Funktion [[FUNCTION_NAME]] braucht eine Zahl, und „%s“ ist ein Text, der keine Zahl ist.",
  "The function [[FUNCTION_NAME]] expects a boolean value, but '%s' is a text, and cannot be coerced to a boolean.":
    "Die Funktion [[FUNCTION_NAME]] braucht TRUE oder FALSE, und „%s“ ist ein anderer Text.",
  "The function [[FUNCTION_NAME]] expects a reference to a cell or range.":
    "Die Funktion [[FUNCTION_NAME]] braucht den Bezug auf eine Zelle oder einen Bereich.",
  "Function %s expects the parameter '%s' to be reference to a cell or range.":
    "Die Funktion %s braucht für „%s“ den Bezug auf eine Zelle oder einen Bereich.",
  "In this context, the function [[FUNCTION_NAME]] needs to have a cell or range in parameter.":
    "Die Funktion [[FUNCTION_NAME]] braucht hier eine Zelle oder einen Bereich.",
  "The function [[FUNCTION_NAME]] expects a number value between %s and %s inclusive, but receives %s.":
    "Die Funktion [[FUNCTION_NAME]] braucht eine Zahl von %s bis %s und hat %s.",
  "The function [[FUNCTION_NAME]] expects a number value to be greater than or equal to 1, but receives %s.":
    "Die Funktion [[FUNCTION_NAME]] braucht eine Zahl nicht kleiner als 1 und hat %s.",
  "The function [[FUNCTION_NAME]] has an argument with value '%s'. It should be one of: %s.":
    "Die Funktion [[FUNCTION_NAME]] hat das Argument „%s“. Zulässig sind: %s.",
  "Function [[FUNCTION_NAME]] expects number values for %s, but got an empty value.":
    "Die Funktion [[FUNCTION_NAME]] braucht Zahlen für %s, und eine Zelle ist leer.",
  "Function [[FUNCTION_NAME]] expects number values for %s, but got a string.":
    "Die Funktion [[FUNCTION_NAME]] braucht Zahlen für %s, und eine Zelle enthält einen Text.",
  "Function [[FUNCTION_NAME]] expects number values for %s, but got a boolean.":
    "Die Funktion [[FUNCTION_NAME]] braucht Zahlen für %s, und eine Zelle enthält TRUE oder FALSE.",
  "[[FUNCTION_NAME]] expects number values.": "[[FUNCTION_NAME]] braucht Zahlen.",
  "[[FUNCTION_NAME]] has no valid input data.": "[[FUNCTION_NAME]] hat keine Werte, mit denen es rechnen kann.",
  "[[FUNCTION_NAME]] expects the provided values of %(argName)s to be a non-empty matrix.":
    "[[FUNCTION_NAME]] braucht für %(argName)s eine Matrix, die nicht leer ist.",
  "Array arguments to [[FUNCTION_NAME]] are of different size.":
    "Die Bereiche von [[FUNCTION_NAME]] sind verschieden groß.",
  "[[FUNCTION_NAME]] has mismatched dimensions for argument %s (%s vs %s).":
    "Der Bereich %s von [[FUNCTION_NAME]] hat eine andere Größe als ein anderer (%s und %s).",
  "[[FUNCTION_NAME]] has mismatched argument count %s vs %s.":
    "Die Bereiche von [[FUNCTION_NAME]] haben verschieden viele Werte: %s und %s.",
  "[[FUNCTION_NAME]] has mismatched range sizes.": "Die Bereiche von [[FUNCTION_NAME]] sind verschieden groß.",
  "[[FUNCTION_NAME]] expects the weight to be positive or equal to 0.":
    "[[FUNCTION_NAME]] braucht Gewichte, die nicht negativ sind.",
  "Function [[FUNCTION_NAME]] expects criteria_range and criterion to be in pairs.":
    "In [[FUNCTION_NAME]] gehört zu jedem Bereich eine Bedingung.",
  "Function [[FUNCTION_NAME]] expects criteria_range to have the same dimension":
    "In [[FUNCTION_NAME]] müssen die Bereiche der Bedingungen gleich groß sein",
  "Function [[FUNCTION_NAME]] parameter 2 value is out of range.":
    "Der zweite Wert von [[FUNCTION_NAME]] ist zu groß oder zu klein.",
  "Function [[FUNCTION_NAME]] parameter 2 value (%s) is out of range.":
    "Der zweite Wert von [[FUNCTION_NAME]] (%s) ist zu groß oder zu klein.",
  "Function [[FUNCTION_NAME]] A regression of order less than 1 cannot be possible.":
    "[[FUNCTION_NAME]]: Der Grad der Ausgleichskurve ist mindestens 1.",
  "Function [[FUNCTION_NAME]] caused a divide by zero error.": "[[FUNCTION_NAME]] teilt durch null.",
  "Evaluation of function [[FUNCTION_NAME]] caused a divide by zero error.": "[[FUNCTION_NAME]] teilt durch null.",
  "Function [[FUNCTION_NAME]] didn't find any result.": "[[FUNCTION_NAME]] hat nichts gefunden.",
  "Value not found in the given data.": "Der Wert steht nicht in den Daten.",

  // Rechnen
  "The divisor must be different from 0.": "Der Teiler darf nicht 0 sein.",
  "The divisor must be different from zero.": "Der Teiler darf nicht null sein.",
  "The value (%s) must be strictly positive.": "Der Wert (%s) muss größer als null sein.",
  "The value (%s) must be positive or null.": "Der Wert (%s) darf nicht negativ sein.",
  "The value (%s) must be greater than or equal to 1.": "Der Wert (%s) darf nicht kleiner als 1 sein.",
  "The value (%s) must be between -1 and 1 inclusive.": "Der Wert (%s) muss zwischen -1 und 1 liegen.",
  "The value (%s) must be between -1 and 1 exclusive.":
    "Der Wert (%s) muss zwischen -1 und 1 liegen, ohne diese beiden.",
  "The value (%s) cannot be between -1 and 1 inclusive.": "Der Wert (%s) darf nicht zwischen -1 und 1 liegen.",
  "The base (%s) must be strictly positive.": "Die Basis (%s) muss größer als null sein.",
  "The base must be different from 1.": "Die Basis darf nicht 1 sein.",
  "The base (%s) must be between 2 and 36 inclusive.": "Die Basis (%s) muss von 2 bis 36 reichen.",
  "The value (%s) must be a valid base %s representation.": "Der Wert (%s) ist keine Zahl zur Basis %s.",
  "The exponent (%s) must be an integer when the base is negative.":
    "Bei negativer Basis muss der Exponent (%s) eine ganze Zahl sein.",
  "The factor (%s) must be positive when the value (%s) is positive.":
    "Der Faktor (%s) muss positiv sein, wenn der Wert (%s) positiv ist.",
  "The function code (%s) must be between 1 to 11 or 101 to 111.":
    "Die Nummer der Funktion (%s) ist 1 bis 11 oder 101 bis 111.",
  "The high (%s) must be greater than or equal to the low (%s).":
    "Der größte Wert (%s) darf nicht kleiner sein als der kleinste (%s).",
  "The maximum (%s) must be greater than or equal to the minimum (%s).":
    "Der größte Wert (%s) darf nicht kleiner sein als der kleinste (%s).",
  "The maximum (%s) and minimum (%s) must be integers when whole_number is TRUE.":
    "Für ganze Zahlen müssen der größte Wert (%s) und der kleinste (%s) ganz sein.",
  "The number of columns (%s) must be positive.": "Die Zahl der Spalten (%s) muss positiv sein.",
  "The number of rows (%s) must be positive.": "Die Zahl der Zeilen (%s) muss positiv sein.",
  "The number of rows must be positive.": "Die Zahl der Zeilen muss positiv sein.",
  "The number of columns must be positive.": "Die Zahl der Spalten muss positiv sein.",

  // Matrizen
  "Matrix is not invertible": "Die Matrix hat keine Inverse",
  "The matrix is not invertible.": "Die Matrix hat keine Inverse.",
  "The argument square_matrix must have the same number of columns and rows.":
    "Die Matrix muss so viele Spalten wie Zeilen haben.",
  "The argument dimension must be positive": "Die Größe muss positiv sein",
  "The first and second arguments of [[FUNCTION_NAME]] must be non-empty matrices.":
    "[[FUNCTION_NAME]] braucht zwei Matrizen, die nicht leer sind.",
  "All the ranges must have the same dimensions.": "Alle Bereiche müssen gleich groß sein.",
  "The arguments array_x and array_y must have the same dimensions.": "Beide Bereiche müssen gleich groß sein.",
  "The arguments array_x and array_y must contain at least one pair of numbers.":
    "Die Bereiche müssen mindestens ein Paar von Zahlen enthalten.",
  "All ranges in [[FUNCTION_NAME]] must have the same number of columns (got %s).":
    "Alle Bereiche von [[FUNCTION_NAME]] müssen gleich viele Spalten haben (hier: %s).",
  "The rows argument (%s) must be strictly positive.": "Die Zahl der Zeilen (%s) muss größer als null sein.",
  "The columns argument (%s) must be strictly positive.": "Die Zahl der Spalten (%s) muss größer als null sein.",
  "The columns arguments must be between -%s and %s (got %s), excluding 0.":
    "Die Nummern der Spalten reichen von -%s bis %s (hier: %s) und sind nicht 0.",
  "The rows arguments must be between -%s and %s (got %s), excluding 0.":
    "Die Nummern der Zeilen reichen von -%s bis %s (hier: %s) und sind nicht 0.",
  "The rows arguments (%s) must be greater or equal than the number of rows of the array.":
    "Die Zahl der Zeilen (%s) darf nicht kleiner sein als die der Matrix.",
  "The columns arguments (%s) must be greater or equal than the number of columns of the array.":
    "Die Zahl der Spalten (%s) darf nicht kleiner sein als die der Matrix.",
  "Argument ignore must be between 0 and 3": "Das Argument „ignore“ ist 0, 1, 2 oder 3",
  "Format must be 0 or 1": "Das Format ist 0 oder 1",
  "No results for the given arguments of TOCOL.": "TOCOL gibt mit diesen Argumenten nichts.",
  "No results for the given arguments of TOROW.": "TOROW gibt mit diesen Argumenten nichts.",
  "Argument range must be a single row or column.": "Der Bereich muss eine Zeile oder eine Spalte sein.",
  "The number of rows can not be zero.": "Die Zahl der Zeilen darf nicht null sein.",
  "The number of rows or column to exclude must be smaller than the number of elements in the array.":
    "Es lassen sich nicht so viele Zeilen oder Spalten weglassen, wie die Matrix hat.",

  // Nachschlagen
  "No match.": "Nichts passt.",
  "No match found in FILTER evaluation": "FILTER hat nichts gefunden",
  "No unique values found": "Kein Wert kommt nur einmal vor",
  "FILTER has mismatched sizes on the range and conditions.":
    "Bereich und Bedingungen von FILTER sind verschieden groß.",
  "The arguments condition must be a single column or row.": "Eine Bedingung muss eine Spalte oder eine Zeile sein.",
  "The arguments conditions must have the same dimensions.": "Alle Bedingungen müssen gleich groß sein.",
  "Wrong size for %s. Expected a range of size 1x%s. Got %sx%s.":
    "%s hat die falsche Größe: nötig ist 1 x %s, vorhanden %s x %s.",
  "Wrong value of 'n'. Expected a positive number. Got %s.": "„n“ muss positiv sein und ist %s.",
  "Wrong value of 'display_ties_mode'. Expected a positive number between 0 and 3. Got %s.":
    "„display_ties_mode“ ist 0, 1, 2 oder 3, hier %s.",
  "The range is out of bounds.": "Der Bereich ist zu klein.",
  "Index out of range.": "Die Nummer liegt außerhalb des Bereichs.",
  "[[FUNCTION_NAME]] evaluates to an out of bounds range.": "[[FUNCTION_NAME]] führt aus dem Bereich hinaus.",
  "[[FUNCTION_NAME]] evaluates to an out of range row value %s.":
    "[[FUNCTION_NAME]] führt zu Zeile %s, die es nicht gibt.",
  "[[FUNCTION_NAME]] evaluates to an out of range column value %s.":
    "[[FUNCTION_NAME]] führt zu Spalte %s, die es nicht gibt.",
  "OFFSET evaluates to an out of bounds range.": "OFFSET führt aus dem Blatt hinaus.",
  "Height value is %(_height)s. It should be greater than or equal to 1.":
    "Die Höhe ist %(_height)s und muss mindestens 1 sein.",
  "Width value is %(_width)s. It should be greater than or equal to 1.":
    "Die Breite ist %(_width)s und muss mindestens 1 sein.",
  "Reference should be defined.": "Ein Bezug fehlt.",
  "The reference is invalid.": "Der Bezug ist ungültig.",
  "R1C1 notation is not supported.": "Die Schreibweise Z1S1 gibt es hier nicht.",
  "The range must be a single row or a single column.": "Der Bereich muss eine Zeile oder eine Spalte sein.",
  "The result_range must be a single row or a single column.":
    "Der Ergebnisbereich muss eine Zeile oder eine Spalte sein.",
  "lookup_range should be either a single row or single column.":
    "Der Suchbereich muss eine Zeile oder eine Spalte sein.",
  "return_range should have the same dimensions as lookup_range.":
    "Der Ergebnisbereich muss so groß sein wie der Suchbereich.",
  "search_mode should be a value in [-1, 1, -2, 2].": "Die Suchrichtung ist -1, 1, -2 oder 2.",
  "match_mode should be a value in [-1, 0, 1, 2].": "Die Art des Vergleichs ist -1, 0, 1 oder 2.",
  "The search and match mode combination is not supported for XLOOKUP evaluation.":
    "XLOOKUP kann diese Suchrichtung nicht mit dieser Art des Vergleichs.",
  "Index for CHOOSE is invalid. Valid values are between 1 and %(choices)s inclusive.":
    "Die Nummer für CHOOSE reicht von 1 bis %(choices)s.",
  "Choice is undefined.": "Was gewählt werden soll, fehlt.",
  "The info_type should be one of %s.": "Die Art der Auskunft ist eine von diesen: %s.",
  "The cell does not contain a formula.": "Die Zelle enthält keine Formel.",
  "Only single-cell references are allowed to get the spilled range.":
    "Vor „#“ steht der Bezug auf eine einzelne Zelle.",
  "Invalid units of measure ('%s')": "Unbekannte Einheit („%s“)",
  "Incompatible units of measure ('%s' vs '%s')": "Die Einheiten passen nicht zusammen („%s“ und „%s“)",

  // Tage und Uhrzeiten
  "The year (%s) must be between 0 and 9999 inclusive.": "Das Jahr (%s) muss von 0 bis 9999 reichen.",
  "The function [[FUNCTION_NAME]] result must be greater than or equal 01/01/1900.":
    "[[FUNCTION_NAME]] gibt einen Tag vor dem 1.1.1900.",
  "The function [[FUNCTION_NAME]] result cannot be negative": "[[FUNCTION_NAME]] darf nicht negativ sein",
  "start_date (%s) should be on or before end_date (%s).": "Der Anfang (%s) darf nicht nach dem Ende (%s) liegen.",
  "The date_string (%s) cannot be parsed to date/time.": "„%s“ ist kein Datum.",
  "The time_string (%s) cannot be parsed to date/time.": "„%s“ ist keine Uhrzeit.",
  "The start_date (%s) must be positive or null.": "Der Anfang (%s) darf nicht negativ sein.",
  "The end_date (%s) must be positive or null.": "Das Ende (%s) darf nicht negativ sein.",
  "The type (%s) must be between 1 and 3 or between 11 and 17.": "Die Zählweise (%s) ist 1 bis 3 oder 11 bis 17.",
  "The type (%s) is out of range.": "Die Zählweise (%s) gibt es nicht.",
  "The weekend must be a number or a string.": "Das Wochenende muss eine Zahl oder ein Text sein.",
  'When weekend is a string (%s) it must be composed of "0" or "1".':
    "Als Text besteht das Wochenende (%s) aus „0“ und „1“.",
  "The weekend (%s) must be a string or a number in the range 1-7 or 11-17.":
    "Das Wochenende (%s) ist ein Text oder eine Zahl von 1 bis 7 oder 11 bis 17.",
  "The weekend must be different from '1111111'.": "Nicht jeder Tag darf zum Wochenende gehören („1111111“).",

  // Texte
  "The text_to_search must be non-empty.": "Der Text, in dem gesucht wird, ist leer.",
  "The starting_at (%s) must be greater than or equal to 1.": "Der Anfang (%s) muss mindestens 1 sein.",
  "The starting_at argument (%s) must be positive greater than one.": "Der Anfang (%s) muss mindestens 1 sein.",
  "The extract_length argument (%s) must be positive or null.": "Die Länge (%s) darf nicht negativ sein.",
  "The number_of_characters (%s) must be positive or null.": "Die Zahl der Zeichen (%s) darf nicht negativ sein.",
  "The position (%s) must be greater than or equal to 1.": "Die Stelle (%s) muss mindestens 1 sein.",
  "In [[FUNCTION_NAME]] evaluation, cannot find '%s' within '%s'.": "[[FUNCTION_NAME]] findet „%s“ nicht in „%s“.",
  "The table_number (%s) is out of range.": "Die Nummer des Zeichens (%s) gibt es nicht.",
  "Invalid regular expression": "Der reguläre Ausdruck ist ungültig",
  "The case_sensitivity (%s) must be 0 or 1.": "Das Argument für Groß- und Kleinschreibung (%s) ist 0 oder 1.",
  "The return_mode (%s) must be 0, 1 or 2.": "Die Art der Antwort (%s) ist 0, 1 oder 2.",
  "No matches found.": "Nichts gefunden.",
  "No capturing groups found.": "Der Ausdruck hat keine Gruppen.",
  "The delimiter (%s) must be not be empty.": "Das Trennzeichen (%s) darf nicht leer sein.",
  "The delimiters cannot be empty values.": "Ein Trennzeichen darf nicht leer sein.",
  "At least one delimiter must be provided.": "Mindestens ein Trennzeichen angeben.",
  "No text to split.": "Kein Text zum Teilen.",
  "The occurrenceNumber (%s) must be positive or null.": "Die Nummer des Treffers (%s) darf nicht negativ sein.",
  "The instance_num (%s) must not be zero.": "Die Nummer des Treffers (%s) darf nicht null sein.",
  "match_mode should be a value of 0 or 1.": "Die Art des Vergleichs ist 0 oder 1.",
  "match_mode should have a value of 0 or 1.": "Die Art des Vergleichs ist 0 oder 1.",
  "match_end should have a value of 0 or 1.": "Das Argument für das Textende ist 0 oder 1.",
};
