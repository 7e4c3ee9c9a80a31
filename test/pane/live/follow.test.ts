import { follow, type Heard } from "../../../src/pane/live/follow";
import type { Change } from "../../../src/workbook/port";
import { FakePort } from "../fake-port";
import { turns } from "../../turns";

/** A following whose reads end when the test says so: what each read was asked for, and the answers that were taken. */
function following() {
  const port = new FakePort();
  const reads: { heard: Heard[]; end: (answer: string) => void; fail: () => void }[] = [];
  const found: string[] = [];
  const failed: string[] = [];
  const leave = follow<string>(port, {
    to: ["values", "sheets"],
    pause: 0,
    read: (heard) =>
      new Promise((resolve, reject) =>
        reads.push({ heard: [...heard].sort(), end: resolve, fail: () => reject(new Error("busy")) }),
      ),
    found: (value) => found.push(value),
    failed: (sentence) => failed.push(sentence),
  });
  const change = async (what: Change): Promise<void> => {
    port.tell(what);
    await turns(3);
  };
  return { reads, found, failed, leave, change };
}

/** Follows, and lets the first read, which is asked for everything, end. */
async function begun() {
  const one = following();
  await turns(1);
  one.reads[0]!.end("at first");
  await turns(1);
  return one;
}

test("a read is asked for what has changed since the last answer", async () => {
  const { reads, found, change, leave } = await begun();
  await change("values");
  reads[1]!.end("second");
  await turns(1);
  await change("sheets");
  expect(reads.map(({ heard }) => heard)).toEqual([["sheets", "values"], ["values"], ["sheets"]]);
  expect(found).toEqual(["at first", "second"]);
  leave();
});

test("a change in the middle of a read is asked for by the next one, also where the read ends first", async () => {
  const { reads, found, change, leave } = await begun();
  await change("values");
  // The workbook changes again while it is being read, and the read ends before the pause after the change is over.
  void change("sheets");
  reads[1]!.end("second");
  await turns(4);
  expect(reads[2]!.heard).toEqual(["sheets"]);
  expect(found).toEqual(["at first", "second"]);
  leave();
});

test("a read that is overtaken has no answer: the next one is asked for its changes too", async () => {
  const { reads, found, change, leave } = await begun();
  await change("values");
  await change("sheets");
  expect(reads[2]!.heard).toEqual(["sheets", "values"]);
  reads[1]!.end("overtaken");
  reads[2]!.end("both");
  await turns(1);
  expect(found).toEqual(["at first", "both"]);
  leave();
});

test("a read that failed is repeated with the next", async () => {
  const { reads, found, failed, change, leave } = await begun();
  await change("values");
  reads[1]!.fail();
  await change("sheets");
  expect(failed).toHaveLength(1);
  expect(reads[2]!.heard).toEqual(["sheets", "values"]);
  reads[2]!.end("both");
  await turns(1);
  expect(found).toEqual(["at first", "both"]);
  leave();
});
