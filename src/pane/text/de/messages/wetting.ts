/** Messages about the stage of wetting: remarks, questions, plots, report. */
export const wetting: Readonly<Record<string, string>> = {
  // Remarks and questions.
  "marked as wetting, but the stress is not that of the load before: enter the stress that was kept":
    "als Wässern markiert, aber die Spannung ist nicht die der Laststufe davor: die gehaltene Spannung eintragen",
  "no load is marked as wetting ({0})": "keine Laststufe ist als Wässern markiert ({0})",
  "Is the stress kept in the stage of wetting?": "Bleibt die Spannung in der Stufe des Wässerns gleich?",
  "it needs the stress of load {0} and the one before it ({1}, {2})":
    "es fehlt die Spannung der Laststufe {0} oder die davor ({1}, {2})",
  "the stress in the stage of wetting (load {0})": "die Spannung in der Stufe des Wässerns (Laststufe {0})",
  "the stress before it": "die Spannung davor",
  'enter the stress that was kept, or take the mark "{0}" off':
    "die gehaltene Spannung eintragen, oder die Markierung „{0}“ entfernen",
  "Does the specimen move on wetting the way that is said of it?":
    "Bewegt sich der Probekörper beim Wässern so, wie es angegeben ist?",
  "strain on wetting": "Stauchung beim Wässern",
  "no movement": "keine Bewegung",
  "{0}: check the sign of the readings and whether they rise on compression ({1})":
    "{0}: das Vorzeichen der Ablesungen prüfen, und ob sie bei Stauchung steigen ({1})",
  "the readings say that the specimen compressed on wetting, the remarks that it swelled":
    "nach den Ablesungen setzte sich der Probekörper beim Wässern, nach den Bemerkungen schwoll er",
  "the readings say that the specimen swelled on wetting, the remarks that it collapsed":
    "nach den Ablesungen schwoll der Probekörper beim Wässern, nach den Bemerkungen sackte er",
  "the specimen compressed on wetting under less than its swelling pressure":
    "der Probekörper setzte sich beim Wässern unter weniger als seinem Schwelldruck",
  "the specimen swelled on wetting under more than its swelling pressure":
    "der Probekörper schwoll beim Wässern unter mehr als seinem Schwelldruck",
  "the specimen swelled on wetting, and nothing says otherwise":
    "der Probekörper schwoll beim Wässern, und nichts widerspricht dem",
  "the specimen did not swell on wetting, and nothing says otherwise":
    "der Probekörper schwoll beim Wässern nicht, und nichts widerspricht dem",
  // AGS4.
  "the collapse potential, the collapse index and its class":
    "das Sackungspotential, den Sackungsindex und dessen Klasse",
  "the method of the swelling pressure": "das Verfahren für den Schwelldruck",
  // Plots.
  "the stage of wetting has no reading after time zero: enter its readings against time":
    "die Stufe des Wässerns hat keine Ablesung nach der Zeit null: ihre Ablesungen mit den Zeiten eintragen",
  "no stage of wetting has been read ({0})": "keine Stufe des Wässerns ist abgelesen ({0})",
  "Strain on wetting (%), swell negative": "Stauchung beim Wässern (%), Schwellen negativ",
  "Wetting under {0}": "Wässern unter {0}",
  "{0}, load {1}": "{0}, Laststufe {1}",
  "load {0} is no stage of wetting ({1})": "Laststufe {0} ist keine Stufe des Wässerns ({1})",
  "load {0} is no stage of wetting that has been read ({1})":
    "Laststufe {0} ist keine abgelesene Stufe des Wässerns ({1})",
  Wetting: "Wässern",
  "wetting against time": "Wässern über der Zeit",
  "rate at the end": "Rate am Ende",
  "Rate at the end: swell of {0} % per log cycle of time.": "Rate am Ende: Schwellen um {0} % je Dekade der Zeit.",
  "Rate at the end: compression of {0} % per log cycle of time.":
    "Rate am Ende: Stauchung um {0} % je Dekade der Zeit.",
  // Report.
  "Wetted under": "Gewässert unter",
  "Strain on wetting": "Stauchung beim Wässern",
  "Strain on wetting, load {0}": "Stauchung beim Wässern, Laststufe {0}",
  "  on the": "  bezogen auf",
  "initial height": "Anfangshöhe",
  "Free swell": "Freies Schwellen",
  "Rate per log cycle": "Rate je Dekade",
  "Collapse potential": "Sackungspotential",
  "Collapse index, 200 kPa": "Sackungsindex, 200 kPa",
  "  its class (D5333)": "  dessen Klasse (D5333)",
  none: "keine",
  slight: "gering",
  moderate: "mäßig",
  "moderately severe": "mäßig stark",
  severe: "stark",
  "Swelling pressure by": "Schwelldruck durch",
  "  pressure": "  Druck",
  "load back": "Rückbelastung",
  "constant volume": "konstantes Volumen",
  "zero strain": "Stauchung null",
};
