/** The state of the summary screen, without a page. */
import { AT_REST, summarised, type SummaryAction } from "../../../../src/pane/screens/summary/summary-state";

const after = (...actions: readonly SummaryAction[]) => actions.reduce(summarised, AT_REST);

test("work in progress is shown with its share, and then replaced by its result", () => {
  const begun: SummaryAction = { do: "begin", what: "Reading…" };
  expect(after({ do: "choose", system: "US" }, begun, { do: "go on", share: 0.5 })).toEqual({
    system: "US",
    summary: undefined,
    data: [],
    course: { what: "Reading…", share: 0.5 },
  });
  const [one, two] = ["Summary", "Summary 2"].map((summary) => ({ summary, data: ["BH-1"] }));
  const done = { isWhole: true, sentences: ["Inserted."] };
  const ended = after({ do: "know", sheets: one! }, begun, { do: "end", done, sheets: two! });
  expect(ended).toEqual({ system: "SI", ...two, done });
  expect(summarised(ended, { do: "go on", share: 1 })).toBe(ended);
});

test("an error keeps the known summary, and the next work removes the sentence about it", () => {
  const sheets = { summary: "Summary", data: ["BH-1"] };
  const failed = after({ do: "know", sheets }, { do: "begin", what: "…" }, { do: "fail", sentence: "No." });
  expect(failed).toEqual({ system: "SI", ...sheets, failure: "No." });
  expect(summarised(failed, { do: "begin", what: "…" }).failure).toBeUndefined();
});

test("units are chosen, and stay when the work has ended", () => {
  const chosen = after({ do: "choose", system: "US" });
  expect(chosen.system).toBe("US");
  expect(summarised(chosen, { do: "fail", sentence: "No." }).system).toBe("US");
});
