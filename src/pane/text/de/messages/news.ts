/** The news of the versions of the data sheet. */
export const news: Readonly<Record<string, string>> = {
  "The remark on load 2 asks whether its stress was mistyped where it is more than 8 times that of load 1 and the next one is not above it; the remark on a load asks whether its moment was mistyped where the load above has the same. Both, and the head of the sheet, say so before there are readings.":
    "Die Bemerkung zu Laststufe 2 fragt, ob ihre Spannung vertippt ist, wo sie mehr als das 8-Fache der Laststufe 1 und die nächste nicht größer ist; die Bemerkung zu einer Laststufe fragt, ob ihr Zeitpunkt vertippt ist, wo die Laststufe darüber denselben hat. Beide und der Kopf des Blatts sagen es schon vor den Ablesungen.",
  "Where the constructions leave out the last reading of a load, its remark and the head of the sheet ask whether it was mistyped: the void ratio at the end of the load uses it.":
    "Wo die Konstruktionen die letzte Ablesung einer Laststufe weglassen, fragen deren Bemerkung und der Kopf des Blatts, ob sie vertippt ist: die Porenzahl am Ende der Laststufe beruht auf ihr.",
  "The head of the sheet asks about a zero reading that lies more than a tenth of the height from the first reading of load 1, and about a Cc that is rare outside peat; a specimen that swelled by more than 3 percent up to the in-situ stress has no class of quality.":
    "Der Kopf des Blatts fragt nach einer Nullablesung, die mehr als ein Zehntel der Höhe von der ersten Ablesung der Laststufe 1 entfernt liegt, und nach einem Cc, das außer bei Torf selten ist; ein Probekörper, der bis zur In-situ-Spannung um mehr als 3 Prozent schwoll, hat keine Güteklasse.",
  "The remark on the preconsolidation stress says so where it lies more than 5 percent outside the range that the points allow; where only the last load step is steeper, the steps before it that are nearly as steep belong to the virgin line as well.":
    "Die Bemerkung zur Vorbelastungsspannung sagt es, wenn diese mehr als 5 Prozent außerhalb des Bereichs liegt, den die Punkte zulassen; ist nur die letzte Laststufe steiler, gehören die Laststufen davor, die fast so steil sind, mit zur Erstbelastungsgeraden.",
  "The head of the sheet names a date, a number or a word of a list that cannot be, also where no result follows from it.":
    "Der Kopf des Blatts nennt ein Datum, eine Zahl oder ein Wort einer Liste, die nicht sein können, auch wo kein Ergebnis daraus folgt.",
  "A remark that names a row of readings names its time as well.":
    "Eine Bemerkung, die eine Zeile der Ablesungen nennt, nennt auch deren Zeit.",
  "The head of the sheet names the first load whose readings jump, because the dial was reset or touched.":
    "Der Kopf des Blatts nennt die erste Laststufe, deren Ablesungen springen, weil die Messuhr verstellt oder berührt wurde.",
  "Every number has an upper limit: the head of the sheet names one that is beyond it, of the readings by load and row.":
    "Jede Zahl hat eine obere Grenze: der Kopf des Blatts nennt eine, die darüber liegt, bei Ablesungen mit Laststufe und Zeile.",
  "A German sheet writes the units of time in German: m2/a, m/a, ft2/d; the English ones are read as well.":
    "Ein deutsches Blatt schreibt die Einheiten mit Zeit deutsch: m2/a, m/a, ft2/d; die englischen werden ebenfalls gelesen.",
  "Design values are given also where the constructions refuse the preconsolidation stress.":
    "Kennwerte stehen auch dort, wo die Konstruktionen die Vorbelastungsspannung ablehnen.",
  "The head of the sheet names a size, a deflection or a stress that no oedometer test has in the unit of its cell, and the void ratios stay blank; it also names one that few tests have, and the results follow from it.":
    "Der Kopf des Blatts nennt ein Maß, eine Verformung oder eine Spannung, die in der Einheit ihrer Zelle in keinem Ödometerversuch vorkommt, und die Porenzahlen bleiben leer; er nennt auch, was nur selten vorkommt, und damit wird gerechnet.",
  "The head of the sheet names a cell of the picks by hand that cannot be used, a specimen that is higher than wide, and masses and sizes that give a bulk density that no soil has.":
    "Der Kopf des Blatts nennt eine Zelle der Festlegungen, die nicht verwendbar ist, einen Probekörper, der höher als breit ist, und Massen und Maße mit einer Feuchtdichte, die kein Boden hat.",
  "The head of the sheet names the first load whose times, stress or readings look like a slip: seconds, hours or times of day for minutes, an increment for a total stress, a specimen that swells under the greatest stress.":
    "Der Kopf des Blatts nennt die erste Laststufe, deren Zeiten, Spannung oder Ablesungen nach einem Versehen aussehen: Sekunden, Stunden oder Uhrzeiten statt Minuten, ein Zuwachs statt der gesamten Spannung, ein Probekörper, der unter der größten Spannung schwillt.",
  "The longest remarks on the inputs are put together from parts, which stand above the workings at the right end of the sheet; the remarks are the same.":
    "Die längsten Bemerkungen zu den Eingaben werden aus Teilen zusammengesetzt, die am rechten Ende des Blatts über den Zwischenwerten stehen; die Bemerkungen sind dieselben.",
  "Where the dial jumped during a load, the constructions are made on the readings less the jump, and the remark says so; d0 and d100, and picks of them, are readings of the dial before the jump.":
    "Wo die Messuhr während einer Laststufe gesprungen ist, werden die Konstruktionen an den Ablesungen ohne den Sprung gemacht, und die Bemerkung sagt es; d0 und d100, auch von Hand festgelegte, sind Ablesungen der Messuhr vor dem Sprung.",
  "An unloading in which the specimen compressed gives no recompression or swelling index.":
    "Eine Entlastung, bei der der Probekörper zusammengedrückt wurde, ergibt weder einen Wiederbelastungs- noch einen Schwellbeiwert.",
  "The fit to theory also takes account of creep that begins within primary, where the readings show it; the remark on a load says so where cv by log time and cv by the fit to theory differ by more than 13 percent.":
    "Die Anpassung an die Theorie berücksichtigt auch Kriechen, das während der Primärsetzung beginnt, wo die Ablesungen es zeigen; die Bemerkung zu einer Laststufe sagt es, wenn cv nach log t und cv nach der Anpassung an die Theorie um mehr als 13 Prozent auseinanderliegen.",
  "The remark on a load says so where cv by root time and cv by the fit to theory differ by more than 13 percent.":
    "Die Bemerkung zu einer Laststufe sagt es, wenn cv nach Wurzel t und cv nach der Anpassung an die Theorie um mehr als 13 Prozent auseinanderliegen.",
  "The remarks on the loads and on the curve do not end with a semicolon.":
    "Die Bemerkungen zu den Laststufen und zur Kurve enden nicht mit einem Semikolon.",
  "The remark on a load asks whether a stress of more than 8 times that of the load before was mistyped, and so does the head of the sheet; where one of two stresses is out of order, it names the load above as well.":
    "Die Bemerkung zu einer Laststufe fragt, ob eine Spannung von mehr als dem 8-Fachen der Laststufe davor vertippt ist, und der Kopf des Blatts ebenso; wo eine von zwei Spannungen nicht in die Reihe passt, nennt sie auch die Laststufe darüber.",
  "The head of the sheet names the first load that was applied before the load above it; where a load was read beyond the next one, its remark asks whether a moment of loading lacks its time.":
    "Der Kopf des Blatts nennt die erste Laststufe, die vor der Laststufe darüber aufgebracht wurde; wo eine Laststufe über die nächste hinaus abgelesen wurde, fragt ihre Bemerkung, ob einem Zeitpunkt der Belastung die Uhrzeit fehlt.",
  "The title of the sheet is shorter, so that a screen without Arial shows all of it.":
    "Der Titel des Blatts ist kürzer, sodass ihn auch ein Bildschirm ohne Arial ganz zeigt.",
  "The remarks on the loads read what they need of the times and readings from columns of workings at the right end of the sheet; these columns are not printed.":
    "Die Bemerkungen zu den Laststufen lesen, was sie von den Zeiten und Ablesungen brauchen, aus Spalten mit Zwischenwerten am rechten Rand des Blatts; diese Spalten werden nicht gedruckt.",
  "The remark on load 1 asks whether the seating stress is smaller, where the two are equal; times of a logger that begins within 12 s no longer count as times of day.":
    "Die Bemerkung zur Laststufe 1 fragt, ob die Anfangsspannung kleiner ist, wenn beide gleich sind; Zeiten eines Loggers, der innerhalb von 12 s beginnt, gelten nicht mehr als Uhrzeiten.",
  "The remark on a load asks whether a moment of loading is half a day off, where the load was read beyond the next one; the remark on the curve does not end with ok behind another remark.":
    "Die Bemerkung zur Laststufe fragt, ob ein Zeitpunkt der Belastung einen halben Tag daneben liegt, wenn die Laststufe über die nächste hinaus abgelesen wurde; die Bemerkung zur Kurve endet hinter einer anderen nicht mit ok.",
  "On a German sheet, the sentence that refuses an entry among the readings names them in German.":
    "Auf einem deutschen Blatt nennt der Satz, der eine Eingabe unter den Ablesungen ablehnt, diese auf Deutsch.",
  "The footer of a printed page has two lines: the file and the page number, the sheet and the versions.":
    "Die Fußzeile einer gedruckten Seite hat zwei Zeilen: die Datei und die Seitenzahl, das Blatt und die Versionen.",
  "The remark on a load says that a stress is not a number greater than 0, and does not end with ok behind another remark.":
    "Die Bemerkung zu einer Laststufe sagt, dass eine Spannung keine Zahl über 0 ist, und endet nach einer anderen Bemerkung nicht mit ok.",
  "Where the dial factor is 1, the unit beside the readings is that of lengths; d0, d50, d90 and d100 of 100 and more show one decimal.":
    "Bei einem Uhrfaktor von 1 steht bei den Ablesungen die Einheit von Längen; d0, d50, d90 und d100 ab 100 haben eine Nachkommastelle.",
  "The remark on the design values says so where the chosen method gives no preconsolidation stress, and no longer takes Casagrande's.":
    "Die Bemerkung zu den Kennwerten sagt es, wenn das gewählte Verfahren keine Vorbelastungsspannung gibt, und nimmt nicht mehr die nach Casagrande.",
  "On a sheet in inches d0, d50, d90 and d100 show five decimals where the readings are inches.":
    "Auf einem Blatt in Zoll haben d0, d50, d90 und d100 fünf Dezimalen, wenn die Ablesungen Zoll sind.",
  "A German sheet asks who carried the test out and who checked it: Ausgeführt von, Geprüft von.":
    "Ein deutsches Blatt fragt, wer den Versuch ausgeführt und wer ihn geprüft hat: Ausgeführt von, Geprüft von.",
  "A German sheet calls design values Kennwerte.": "Ein deutsches Blatt nennt Bemessungswerte jetzt Kennwerte.",
  "On a German sheet the worksheet functions answer in German: remarks, reasons, classes and the table of methods; a formula asks with the German word, such as Bemerkung.":
    "Auf einem deutschen Blatt antworten die Tabellenfunktionen deutsch: Bemerkungen, Gründe, Klassen und die Tabelle der Verfahren; eine Formel fragt mit dem deutschen Wort, zum Beispiel Bemerkung.",
  "The remark on the design values stays blank where a value that they need shows an error.":
    "Die Bemerkung zu den Kennwerten bleibt leer, wo ein Wert, den diese brauchen, einen Fehler zeigt.",
  "A sheet says in which language its titles, labels, notes and the words of its lists are: English, or German if that is chosen; formulas and reading take the words of both.":
    "Ein Blatt sagt, in welcher Sprache seine Überschriften, Beschriftungen, Notizen und die Wörter seiner Listen sind: Englisch oder, wenn gewählt, Deutsch; Formeln und Einlesen nehmen die Wörter beider.",
  "The table of picks by hand has 42 rows and prints on one page, below its headings.":
    "Die Tabelle der Festlegungen von Hand hat 42 Zeilen und wird auf einer Seite unter ihren Überschriften gedruckt.",
  "A remark names a load that has readings and no stress, and a load that was taken off while the specimen compressed or rose above its initial height; where a value of the curve does not fit the others, the head of the sheet says which.":
    "Eine Bemerkung nennt eine Laststufe, die Ablesungen und keine Spannung hat, und eine Entlastung, unter der sich der Probekörper setzte oder über seine Anfangshöhe stieg; passt ein Wert der Kurve nicht zu den anderen, sagt der Kopf des Blatts, welcher.",
  "Values of the register are frozen with the day, or live formulas, as the sheet chooses.":
    "Werte aus dem Verzeichnis sind mit dem Tag festgehalten oder laufende Formeln, wie es auf dem Blatt gewählt ist.",
  "The sheet names a deflection set of the register, whose table, frame and due day come in like the other values.":
    "Das Blatt nennt einen Verformungssatz des Verzeichnisses; Tabelle, Rahmen und Fälligkeit kommen wie die anderen Werte herein.",
  "Results that follow from an input that cannot be stay blank; the line at the head of the sheet names the cell and what to enter, the first of them and how many more there are if they do not fit.":
    "Ergebnisse aus einer Eingabe, die nicht sein kann, bleiben leer; die Zeile am Kopf des Blatts nennt die Zelle und was einzugeben ist, die erste und wie viele es noch sind, wenn nicht alle hineinpassen.",
  "The contract's rule for the end of a load is chosen: a fixed time, the end of primary by either construction, or a multiple of t100.":
    "Die Regel des Vertrags für das Ende einer Laststufe wird gewählt: eine feste Zeit, das Ende der Primärkonsolidation nach einer der Konstruktionen oder ein Vielfaches von t100.",
  "cv may be adopted for ranges of stress (recompression, virgin, another), with reason, initials and day, beside what the loads give; the design values go on with it.":
    "cv lässt sich für Spannungsbereiche (Wiederbelastung, Erstbelastung, ein weiterer) mit Grund, Kürzel und Tag neben dem der Laststufen festlegen; die Kennwerte rechnen damit.",
  "Design values come from the laboratory curve or from the field curve, as chosen; where the field curve, the quality of the sample or a design value is refused, its cell stays blank and the remark gives the reason.":
    "Kennwerte kommen aus der Laborkurve oder der Feldkurve, wie gewählt; wo die Feldkurve, die Probengüte oder ein Kennwert abgelehnt wird, bleibt die Zelle leer, und die Bemerkung nennt den Grund.",
  "Void ratio or strain is chosen once on the sheet, for the plots and for the report.":
    "Porenzahl oder Stauchung wird einmal auf dem Blatt gewählt, für die Diagramme und den Bericht.",
  "A pick by hand may be of the compression curve: the stress, Cc, Cr, Cs and the field curve follow it.":
    "Eine Festlegung von Hand kann die Kompressionskurve betreffen: Spannung, Cc, Cr, Cs und Feldkurve folgen ihr.",
  "Liquid and plastic limit, fines, clay, organic content and sensitivity are numbers, from which plasticity index, liquidity index, activity and void index follow; the limits that an older sheet has as text stay readable.":
    "Fließ- und Ausrollgrenze, Feinkorn, Ton, organischer Anteil und Sensitivität sind Zahlen, aus denen Plastizitätszahl, Liquiditätszahl, Aktivitätszahl und Porenindex folgen; Grenzen, die ein älteres Blatt als Text hat, bleiben lesbar.",
  "A load is marked as a stage of wetting; strain on wetting, free swell with its rate, collapse with its class, and the swelling pressure by the method chosen stand among the results.":
    "Eine Laststufe wird als Wässern gekennzeichnet; Stauchung beim Wässern, freies Schwellen mit seiner Geschwindigkeit, Sackung mit ihrer Klasse und der Schwelldruck nach dem gewählten Verfahren stehen bei den Ergebnissen.",
  "The form follows the work: ring, sizes and masses, trimmings, apparatus, choices, loads, readings; results and remarks stand on pages to the right of it, picks by hand to the right of the readings.":
    "Das Formular folgt der Arbeit: Ring, Maße und Massen, Abschnitte, Gerät, Auswahl, Lasten, Ablesungen; Ergebnisse und Bemerkungen stehen auf Seiten rechts davon, Festlegungen von Hand rechts der Ablesungen.",
  "Methods and picks are given in words (Pacheco Silva, straight part from); the short names of older sheets are understood as before.":
    "Verfahren und Festlegungen stehen in Worten (Pacheco Silva, straight part from); die Kurznamen älterer Blätter werden weiter verstanden.",
  "A line at the head of the sheet says what is missing or cannot be, and where; while a test is running, a method that does not apply yet leaves its cells blank.":
    "Eine Zeile am Kopf des Blatts sagt, was fehlt oder nicht sein kann und wo; während eines laufenden Versuchs lässt ein Verfahren, das noch nicht anwendbar ist, seine Zellen leer.",
  "Values of a register of rings, frames, dials and balances say from which register they came, and on which day.":
    "Werte aus einem Verzeichnis von Ringen, Rahmen, Messuhren und Waagen sagen, aus welchem Verzeichnis und von welchem Tag sie sind.",
  "The method of the preconsolidation stress is chosen; values may be adopted with reason, initials and day, beside what the constructions give, and what follows goes on with them.":
    "Das Verfahren der Vorbelastungsspannung wird gewählt; Werte lassen sich mit Grund, Kürzel und Tag neben denen der Konstruktionen einsetzen, und das Weitere rechnet mit ihnen.",
  "Design values stand beside the form: at the in-situ stress and over an increase of stress.":
    "Neben dem Formular stehen Kennwerte: bei der In-situ-Spannung und über einen Spannungszuwachs.",
  "The apparatus deflection deducted at a load is that of the table less that at the seating stress, under which the zero reading was taken.":
    "Als Eigenverformung des Geräts in einer Laststufe wird die der Tabelle abgezogen, vermindert um die bei der Anfangsspannung, unter der die Nullablesung genommen wurde.",
  "cv is worked out with the height at 50 % of consolidation of its own construction, and no longer with the mean of the heights at the ends of the load.":
    "cv wird mit der Höhe bei 50 % Konsolidation der eigenen Konstruktion berechnet und nicht mehr mit dem Mittel der Höhen zu Beginn und Ende der Laststufe.",
  "cv, k and C alpha are given only for loads that consolidate: not for unloading, for wetting, or for a load under which the specimen swelled.":
    "cv, k und C alpha gibt es nur für Laststufen, die konsolidieren: nicht für Entlastung, Wässern oder eine Laststufe, unter der der Probekörper schwoll.",
  "Pacheco Silva's construction begins at the initial void ratio; the field curve says which branch its Cr came from.":
    "Die Konstruktion nach Pacheco Silva beginnt bei der Anfangsporenzahl; die Feldkurve sagt, von welchem Ast ihr Cr stammt.",
  "The constructions are aided or drawn, as the test or a load has it; readings of 0 count, as of a transducer that is zeroed for each load.":
    "Die Konstruktionen sind gestützt oder gezeichnet, wie es für den Versuch oder eine Laststufe gewählt ist; Ablesungen von 0 zählen, etwa eines Wegaufnehmers, der für jede Laststufe genullt wird.",
  "The temperature of the water and the salt of the pore water have cells; left blank, they change nothing.":
    "Die Temperatur des Wassers und das Salz des Porenwassers haben Zellen; leer ändern sie nichts.",
  "A load at the stress of the one before is a branch of its own, wetting; water added under the seating stress has a mark.":
    "Eine Laststufe mit der Spannung der vorigen ist ein eigener Ast, Wässern; Wasserzugabe unter der Anfangsspannung hat eine Kennzeichnung.",
  "A table takes picks by hand with the value before, the value after, reason, initials and time; the time curves use the last one of each load.":
    "Eine Tabelle nimmt Festlegungen von Hand auf, mit Wert vorher, Wert nachher, Grund, Kürzel und Zeit; die Zeitkurven verwenden die letzte jeder Laststufe.",
  "Each load has its own construction for d100 and cv.": "Jede Laststufe hat ihre eigene Konstruktion für d100 und cv.",
  "Sample ID, depth of the sample's top, how the specimen was cut, the ring register, the largest particle and deviations have cells.":
    "Probenkennung, Tiefe der Probenoberkante, Art des Ausschneidens, Ringverzeichnis, größtes Korn und Abweichungen haben Zellen.",
  "Remarks stand in full on a page of their own; the weighings follow the apparatus, so that the Tab key goes with the work; up to 48 loads.":
    "Bemerkungen stehen vollständig auf einer eigenen Seite; die Wägungen folgen auf das Gerät, sodass die Tabulatortaste der Arbeit folgt; bis zu 48 Laststufen.",
  "Laboratory, sample type, limits, dates of sampling and receipt, calibration dates and the lever ratio have cells.":
    "Labor, Art der Probe, Grenzen, Tage von Entnahme und Eingang, Kalibriertage und Hebelverhältnis haben Zellen.",
  "Each load has a temperature, and cv at 20 degrees Celsius.":
    "Jede Laststufe hat eine Temperatur und cv bei 20 Grad Celsius.",
  "The field curve, the quality of the sample, the chosen C alpha with its ratio to Cc, and the load of inundation stand among the results.":
    "Feldkurve, Güte der Probe, gewähltes C alpha mit seinem Verhältnis zu Cc und die Laststufe des Wässerns stehen bei den Ergebnissen.",
  "The unit of depth is chosen like the others; up to 2000 readings a load; cells that are not inputs are protected without a password.":
    "Die Einheit der Tiefe wird wie die anderen gewählt; bis zu 2000 Ablesungen je Laststufe; Zellen, die keine Eingaben sind, sind ohne Kennwort geschützt.",
};
