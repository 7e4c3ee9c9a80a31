/** The state of the summary screen, without a page. */
import { AT_REST, summarised, type SummaryAction } from "../../../../src/pane/screens/summary/summary-state";

const after = (...actions: readonly SummaryAction[]) => actions.reduce(summarised, AT_REST);

test("work in progress is shown with its share, and then replaced by its result", () => {
  const begun: SummaryAction = { do: "begin", what: "Reading…" };
  expect(after({ do: "choose", system: "US" }, begun, { do: "go on", share: 0.5 })).toEqual({
    choices: { system: "US", language: "en" },
    summary: undefined,
    data: [],
    course: { what: "Reading…", share: 0.5 },
  });
  const [one, two] = ["Summary", "Summary 2"].map((summary) => ({ summary, data: ["BH-1"] }));
  const done = { isWhole: true, sentences: ["Inserted."] };
  const ended = after({ do: "know", sheets: one! }, begun, { do: "end", done, sheets: two! });
  expect(ended).toEqual({ choices: AT_REST.choices, ...two, done });
  expect(summarised(ended, { do: "go on", share: 1 })).toBe(ended);
});

test("an error keeps the known summary, and the next work removes the sentence about it", () => {
  const sheets = { summary: "Summary", data: ["BH-1"] };
  const failed = after({ do: "know", sheets }, { do: "begin", what: "…" }, { do: "fail", sentence: "No." });
  expect(failed).toEqual({ choices: AT_REST.choices, ...sheets, failure: "No." });
  expect(summarised(failed, { do: "begin", what: "…" }).failure).toBeUndefined();
});

test("units and language are chosen apart, and stay when the work has ended", () => {
  const chosen = after({ do: "choose", language: "de" }, { do: "choose", system: "US" });
  expect(chosen.choices).toEqual({ system: "US", language: "de" });
  expect(summarised(chosen, { do: "fail", sentence: "No." }).choices).toEqual(chosen.choices);
});
