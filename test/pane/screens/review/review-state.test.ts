/** The state of the review screen, without a page. */
import {
  draftKey,
  reviewState,
  START,
  type ReviewAct,
  type ReviewState,
} from "../../../../src/pane/screens/review/review-state";

const after = (...acts: ReviewAct[]): ReviewState => acts.reduce(reviewState, START);
const told = { intent: "success", sentence: "saved" } as const;
const KEY = draftKey("a", 3);
const CHANGED = { does: "change", key: KEY, draft: { d100: 812 } } as const;

test("a draft stays with its test and load while another load is shown", () => {
  const state = after(CHANGED, { does: "go", thing: 4 }, { does: "go", thing: 3 });
  expect(state).toMatchObject({ thing: 3, drafts: { [KEY]: { d100: 812 } } });
  expect(draftKey("b", 3)).not.toBe(KEY);
});

test("a change, and a step to another load, clear the message on the last writing", () => {
  const saved = after({ does: "write" }, { does: "tell", telling: told }, { does: "read again" });
  expect(saved.telling).toBe(told);
  expect(reviewState(saved, CHANGED).telling).toBeUndefined();
  expect(reviewState(saved, { does: "go", thing: 2 }).telling).toBeUndefined();
  expect(reviewState(saved, { does: "draw", plot: "root time" })).toMatchObject({ telling: told, plot: "root time" });
});

test("the draft that was saved is dropped only when the sheet has been read again", () => {
  const told = after(CHANGED, { does: "write" }, { does: "tell", telling: { intent: "success", sentence: "saved" } });
  expect(told).toMatchObject({ busy: true, drafts: { [KEY]: { d100: 812 } } });
  expect(reviewState(told, { does: "read again", saved: KEY })).toMatchObject({ busy: false, drafts: {} });
});

test("a writing that failed, or that found another table, keeps the draft", () => {
  const failed = after(CHANGED, { does: "write" }, { does: "fail", sentence: "it is protected" });
  expect(failed).toMatchObject({ busy: false, telling: { intent: "error" }, drafts: { [KEY]: { d100: 812 } } });
  const meanwhile = after(CHANGED, { does: "write" }, { does: "read again" });
  expect(meanwhile.drafts).toEqual({ [KEY]: { d100: 812 } });
});

test("the compression curve has a draft of its own, and the method drawn stays while loads are shown", () => {
  const curve = { does: "change", key: draftKey("a", "curve"), draft: { virgin_from: 400 } } as const;
  const state = after(CHANGED, { does: "go", thing: "curve" }, curve, { does: "draw method", method: "work" });
  expect(state).toMatchObject({ thing: "curve", method: "work" });
  expect(Object.values(state.drafts)).toEqual([{ d100: 812 }, { virgin_from: 400 }]);
  expect(reviewState(state, { does: "go", thing: 3 })).toMatchObject({ thing: 3, method: "work" });
  expect(reviewState(state, { does: "read again", saved: curve.key }).drafts).toEqual({ [KEY]: { d100: 812 } });
});
