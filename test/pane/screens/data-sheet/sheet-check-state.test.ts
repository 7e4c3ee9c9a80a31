/** The state of the sheet check, without a page. */
import {
  checked,
  missingNames,
  NOTHING_LOOKED_AT,
  type CheckAction,
  type LookedAt,
} from "../../../../src/pane/screens/data-sheet/sheet-check-state";

const LOOKED: LookedAt = {
  sheet: "Ring",
  isProtected: true,
  check: {
    isDataSheet: true,
    unbound: 0,
    findings: [
      { weight: "stop", sentence: "Ring (ring_mass) is missing.", attach: ["ring_mass"] },
      { weight: "look", sentence: "Row 4 has no load number." },
    ],
  },
};

const after = (...actions: readonly CheckAction[]) => actions.reduce(checked, NOTHING_LOOKED_AT);

test("what is under way is told, and what came of it takes its place", () => {
  expect(after({ do: "begin", sentence: "Looking…" })).toMatchObject({
    isBusy: true,
    telling: { intent: "info", sentence: "Looking…" },
  });
  const done = after({ do: "begin", sentence: "Looking…" }, { do: "end", looked: LOOKED });
  expect(done).toMatchObject({ isBusy: false, looked: LOOKED });
  expect(done.telling).toBeUndefined();
  expect([...missingNames(done)]).toEqual(["ring_mass"]);
});

test("a failure leaves what was found before", () => {
  const failed = after({ do: "end", looked: LOOKED }, { do: "begin", sentence: "…" }, { do: "fail", sentence: "No." });
  expect(failed).toMatchObject({ isBusy: false, looked: LOOKED, telling: { intent: "error", sentence: "No." } });
});

test.each<[string, CheckAction]>([
  ["another name is chosen", { do: "choose", name: "diameter" }],
  ["something else is begun", { do: "begin", sentence: "…" }],
])("the offer to move a name ends when %s", (_, action) => {
  const offered = after({ do: "choose", name: "ring_mass" }, { do: "fail", sentence: "No.", taken: "ring_mass" });
  expect(offered.taken).toBe("ring_mass");
  expect(checked(offered, action).taken).toBeUndefined();
});
