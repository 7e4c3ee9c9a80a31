import { chosen, NO_CHOICES, offerOf, type LayoutAction } from "../../../../src/pane/screens/readings/layout-choices";
import type { Layout } from "../../../../src/exchange/logger/layout";

const LINES = ["Time (min);Stress (kPa);Reading (mm)", "0;25;1,10", "1;25;1,15", "4;25;1,22"];
/** The offer for LINES after these actions, one after another. */
function after(...actions: LayoutAction[]) {
  let choices = NO_CHOICES;
  for (const action of actions) choices = chosen(choices, action, offerOf(LINES, choices).draft);
  return { choices, ...offerOf(LINES, choices) };
}

test("the layout that the file shows is offered", () =>
  expect(after().draft).toMatchObject({
    delimiter: ";",
    decimal: ",",
    firstLine: 2,
    timeForm: "min",
    readingUnit: "mm",
  }));

test("without a load column nothing is asked about it; a column chosen later needs its kind and unit", () => {
  const none = after({ do: "column", key: "load", col: null });
  expect(none.draft).toMatchObject({ load: null, loadKind: "stress", loadUnit: "" });
  const again = after({ do: "column", key: "load", col: null }, { do: "column", key: "load", col: 1 });
  expect(again.result).toEqual({ missing: ["loadKind", "loadUnit"] });
});

test.each([
  ["firstLine", "3", 3],
  ["firstLine", "0", undefined],
  ["firstLine", "5", undefined],
  ["firstLine", "2.5", undefined],
  ["lever", "10", 10],
  ["lever", "-1", undefined],
  ["noReading", "-9999; 9.9E+37", [-9999, 9.9e37]],
  ["noReading", "none", undefined],
] as const)("%s typed as %s", (key, text, value) => {
  const { draft, choices } = after({ do: "type", key, text, lines: LINES.length });
  expect(draft[key]).toEqual(value);
  expect(choices.typed[key]).toBe(text);
});

test("another delimiter clears all other choices", () =>
  expect(
    after(
      { do: "set", change: { sense: "fall" } },
      { do: "type", key: "lever", text: "10", lines: 4 },
      { do: "delimiter", delimiter: "," },
    ).choices.touched,
  ).toEqual({ delimiter: "," }));

test("the choices of an earlier file are used again, except where readings begin and columns that this file lacks", () => {
  const layout = { ...(after().result as { layout: Layout }).layout, firstLine: 9, load: 7, sense: "fall" as const };
  const recall = (remembered: { apparatus: string; layout: Layout } | undefined): LayoutAction => ({
    do: "recall",
    remembered,
    lines: LINES,
  });
  const { draft, choices } = after(recall({ apparatus: "Frame 3", layout }));
  expect(draft).toMatchObject({ firstLine: 2, load: undefined, sense: "fall" });
  expect(choices.apparatus).toBe("Frame 3");
  expect(after(recall({ apparatus: "Frame 3", layout }), recall(undefined)).choices).toEqual(NO_CHOICES);
});
