/** The state of the sheet check, without a page. */
import { say } from "../../../../src/reduction/message";
import {
  checked,
  loadTyped,
  missingNames,
  NOTHING_LOOKED_AT,
  shownGroups,
  type CheckAction,
  type LookedAt,
} from "../../../../src/pane/screens/data-sheet/sheet-check-state";

const LOOKED: LookedAt = {
  sheet: "Ring",
  language: "en",
  seen: { names: [], values: {} },
  isProtected: true,
  formulas: [],
  layout: {
    groups: [
      {
        title: "Masses and sizes",
        present: 3,
        missing: [
          { name: "ring_mass", label: "Ring", isResult: false, needs: [] },
          { name: "dry_mass", label: "Dry mass of soil", isResult: true, needs: ["ring_mass"] },
        ],
      },
      {
        title: "Results",
        present: 4,
        missing: [{ name: "final_height", label: "Final height", isResult: true, needs: [] }],
      },
    ],
    ...{ first: [], unwritten: [], held: [], waiting: [] },
  },
  check: {
    isDataSheet: true,
    unbound: 0,
    findings: [
      { weight: "stop", sentence: say`Mass of the ring (ring_mass) is missing.`, attach: ["ring_mass"] },
      { weight: "look", sentence: say`Row 4 has no load number.` },
    ],
  },
};

const after = (...actions: readonly CheckAction[]) => actions.reduce(checked, NOTHING_LOOKED_AT);

test("the pane says what it is doing, then the result", () => {
  expect(after({ do: "begin", sentence: "Looking…" })).toMatchObject({
    isBusy: true,
    telling: { intent: "info", sentence: "Looking…" },
  });
  const done = after({ do: "begin", sentence: "Looking…" }, { do: "end", looked: LOOKED });
  expect(done).toMatchObject({ isBusy: false, looked: LOOKED });
  expect(done.telling).toBeUndefined();
  expect([...missingNames(done)]).toEqual(["ring_mass", "dry_mass", "final_height"]);
});

test("a failure keeps the earlier findings", () => {
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

test("a search keeps the names and groups that match by label or by name", () => {
  const searched = (find: string) =>
    shownGroups(after({ do: "end", looked: LOOKED }, { do: "find", text: find })).map(({ title, names, all }) => [
      title,
      names.map(({ name }) => name),
      all,
    ]);
  expect(searched("")).toEqual([
    ["Masses and sizes", ["ring_mass", "dry_mass"], 5],
    ["Results", ["final_height"], 5],
  ]);
  expect(searched(" DRY ")).toEqual([["Masses and sizes", ["dry_mass"], 5]]);
  expect(searched("ring_")).toEqual([["Masses and sizes", ["ring_mass"], 5]]);
  expect(searched("nothing like it")).toEqual([]);
});

test.each([
  ["1", 1],
  ["12", 12],
  ["", undefined],
  ["0", undefined],
  ["1.5", undefined],
  ["x", undefined],
])("the typed first load %p gives %p", (typed, load) => {
  expect(loadTyped(after({ do: "from load", text: typed }))).toBe(load);
});

test("an offer to overwrite cells ends when other work begins or another name is chosen", () => {
  const offer = { sheet: "Ring", seen: { names: [], values: {} }, cells: [{ row: 1, col: 1, formula: "={wet}" }] };
  const offered = after({ do: "end", looked: LOOKED, offer });
  expect(offered.offer).toBe(offer);
  expect(checked(offered, { do: "begin", sentence: "…" }).offer).toBeUndefined();
  expect(checked(offered, { do: "choose", name: "diameter" }).offer).toBeUndefined();
});
