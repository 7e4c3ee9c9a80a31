/** The fields that identify the test: the job, the sample, the specimen, the dates and the people. */
import { date, input, panels, text } from "../form-fields";

export const IDENTIFICATION = panels(
  [text("project", "Project"), text("job_number", "Job no."), text("report_number", "Report no.")],
  [
    text("laboratory", "Lab."),
    text("boring", "Boring"),
    text("sample", "Sample", "The client's own reference, letter for letter: a changed one cannot be matched later."),
  ],
  [
    text("sample_type", "Type", "Tube, block, piston; as the client's own list has it."),
    text("specimen", "Specimen"),
    input("depth", "Depth", "depth", "Depth of the middle of the specimen below ground level."),
  ],
  [
    text("sample_id", "Sample ID", "The number under which the sample is kept and handed over with its data."),
    input("sample_top", "Top", "depth", "Depth of the top of the sample below ground level."),
    text("specimen_orientation", "Orientation", "How the specimen's axis stood in the ground.", [
      "vertical",
      "horizontal",
      "other: see remarks",
    ]),
  ],
  [
    { ...text("soil_description", "Soil"), lines: 2 },
    text("group_symbol", "Group", "Group symbol in the system that the contract names, such as CH."),
    text("condition", "Condition", "State of the specimen before the test.", ["intact", "remoulded", "compacted"]),
  ],
  [
    { ...text("preparation", "Prepared", "Trimming, time from extrusion, anything patched or lost."), lines: 2 },
    text("standard", "Standard", "The standard and edition that the contract names."),
    text("test_method", "Load duration", "How long each load stays: a fixed time, or until primary has ended.", [
      "24 h loads",
      "to end of primary",
      "other: see remarks",
    ]),
  ],
  [date("sample_date", "Sampled"), date("date_received", "Received"), date("date_started", "Started")],
  [text("tested_by", "Tested by"), date("date_tested", "Date"), date("date_ended", "Ended")],
  [text("checked_by", "Checked by"), date("date_checked", "Date")],
);
