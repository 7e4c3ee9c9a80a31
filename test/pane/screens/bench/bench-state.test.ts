/** What the bench screen remembers, without a page. */
import {
  benchState,
  START,
  type BenchAct,
  type BenchState,
  type Entry,
} from "../../../../src/pane/screens/bench/bench-state";
import { say } from "../../../../src/reduction/message";

const after = (...acts: BenchAct[]): BenchState => acts.reduce(benchState, START);
const entry: Entry = { load: 2, row: 3, time: 4, reading: 812, timeBefore: 4 };
const wrote = { does: "wrote", entry, sentence: "written" } as const;

test("what was written leaves the field, and can be taken back into it", () => {
  const state = after({ does: "type", typed: "812" }, { does: "begin" }, wrote);
  expect(state).toMatchObject({ typed: "", busy: false, entries: [entry], telling: { intent: "success" } });
  expect(benchState(state, { does: "took back", entry, sentence: "cleared" })).toMatchObject({
    typed: "812",
    entries: [],
  });
});

test("a doubt goes when something else is typed, when it is written all the same, and with the load", () => {
  const doubted = after({ does: "type", typed: "218" }, { does: "doubt", why: say`check it` });
  expect(doubted.doubt).toBeDefined();
  for (const act of [{ does: "type", typed: "812" }, wrote, { does: "choose load", load: 3 }] as const)
    expect(benchState(doubted, act).doubt).toBeUndefined();
});

test("a failure leaves what was typed", () => {
  const state = after(
    { does: "type", typed: "812" },
    { does: "begin" },
    { does: "tell", telling: { intent: "error", sentence: "it is protected" } },
  );
  expect(state).toMatchObject({ typed: "812", busy: false, entries: [] });
});
