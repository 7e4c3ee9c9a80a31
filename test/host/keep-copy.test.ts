/** When the page keeps a copy of a workbook with changes that are in no file, and when it forgets the copy. */
import { copyKeeper } from "../../src/host/keep-copy";

const SECOND = 1000;

/** A workbook that is changed and saved by the test, with the copies that are kept of it, on a clock of its own. */
class Bench {
  time = 0;
  step = 0;
  saved = 0;
  readonly told: string[] = [];
  readonly failures: unknown[] = [];
  /** How long making a copy takes, in ms. */
  cost = 100;
  failing: Error | undefined;
  /** A change in the middle of the next copy. */
  isChangedMeanwhile = false;
  readonly tick = copyKeeper({
    step: () => this.step,
    isSaved: () => this.saved === this.step,
    keep: async () => {
      this.time += this.cost;
      if (this.failing) throw this.failing;
      if (this.isChangedMeanwhile) {
        this.isChangedMeanwhile = false;
        this.step++;
        return false;
      }
      this.told.push(`kept ${this.step}`);
      return true;
    },
    forget: async () => void this.told.push("forgotten"),
    failed: (error) => void this.failures.push(error),
    now: () => this.time,
  });

  async pass(seconds: number): Promise<void> {
    for (let second = 0; second < seconds; second++) {
      this.time += SECOND;
      await this.tick();
    }
  }

  async change(): Promise<void> {
    this.step++;
    await this.pass(1);
  }
}

let bench: Bench;
beforeEach(() => void (bench = new Bench()));

test("nothing is kept of a workbook without changes", async () => {
  await bench.pass(120);
  expect(bench.told).toEqual([]);
});

test("a copy is kept five seconds after the last change, once", async () => {
  await bench.change();
  await bench.change();
  await bench.pass(4);
  expect(bench.told).toEqual([]);
  await bench.pass(300);
  expect(bench.told).toEqual(["kept 2"]);
});

test("from one copy to the next pass 30 seconds", async () => {
  await bench.change();
  await bench.pass(6);
  await bench.change();
  await bench.pass(20);
  expect(bench.told).toEqual(["kept 1"]);
  await bench.pass(10);
  expect(bench.told).toEqual(["kept 1", "kept 2"]);
});

test("copies take a twentieth of the time at most", async () => {
  bench.cost = 6 * SECOND;
  await bench.change();
  await bench.pass(6);
  await bench.change();
  await bench.pass(110);
  expect(bench.told).toEqual(["kept 1"]);
  await bench.pass(11);
  expect(bench.told).toEqual(["kept 1", "kept 2"]);
});

test("copies that are given up, or fail, take no more of the time than others", async () => {
  bench.cost = 6 * SECOND;
  bench.isChangedMeanwhile = true;
  await bench.change();
  await bench.pass(115);
  expect(bench.told).toEqual([]);
  await bench.pass(20);
  expect(bench.told).toEqual(["kept 2"]);
  bench.failing = new Error("no room");
  await bench.change();
  await bench.pass(120);
  bench.failing = undefined;
  await bench.pass(100);
  expect(bench.told).toEqual(["kept 2"]);
  await bench.pass(30);
  expect(bench.told).toEqual(["kept 2", "kept 3"]);
});

test("a page that is hidden keeps its copy at once", async () => {
  bench.step++;
  await bench.tick(true);
  expect(bench.told).toEqual(["kept 1"]);
});

test("the copy is forgotten when the workbook is saved, and a later change is kept again", async () => {
  await bench.change();
  await bench.pass(6);
  bench.saved = bench.step;
  await bench.pass(3);
  expect(bench.told).toEqual(["kept 1", "forgotten"]);
  await bench.change();
  await bench.pass(30);
  expect(bench.told).toEqual(["kept 1", "forgotten", "kept 2"]);
});

test("a change in the middle of a copy leaves the copy before, and the change is kept soon", async () => {
  await bench.change();
  bench.isChangedMeanwhile = true;
  await bench.pass(15);
  expect(bench.told).toEqual(["kept 2"]);
});

test("a failure is told once, and tried again", async () => {
  bench.failing = new Error("no room");
  await bench.change();
  await bench.pass(100);
  expect(bench.failures).toEqual([bench.failing]);
  bench.failing = undefined;
  await bench.pass(31);
  expect(bench.told).toEqual(["kept 1"]);
});
