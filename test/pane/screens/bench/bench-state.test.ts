/** The state of the bench screen, without a page. */
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

test("a written reading leaves the field, and undoing it puts it back", () => {
  const state = after({ does: "type", typed: "812" }, { does: "begin" }, wrote);
  expect(state).toMatchObject({ typed: "", busy: false, entries: [entry], telling: { intent: "success" } });
  expect(benchState(state, { does: "took back", entry, sentence: "cleared" })).toMatchObject({
    typed: "812",
    entries: [],
  });
});

test("a doubt disappears when another reading is typed, when the reading is written nevertheless, and when the load changes", () => {
  const doubted = after({ does: "type", typed: "218" }, { does: "doubt", why: say`check it` });
  expect(doubted.doubt).toBeDefined();
  for (const act of [{ does: "type", typed: "812" }, wrote, { does: "choose load", load: 3 }] as const)
    expect(benchState(doubted, act).doubt).toBeUndefined();
});

test("after an error the typed reading stays", () => {
  const state = after(
    { does: "type", typed: "812" },
    { does: "begin" },
    { does: "tell", telling: { intent: "error", sentence: "it is protected" } },
  );
  expect(state).toMatchObject({ typed: "812", busy: false, entries: [] });
});
