import { inSlices, Stopped } from "../../src/workbook/in-slices";

function* work(steps: number): Generator<number, string> {
  for (let step = 1; step <= steps; step++) {
    const end = performance.now() + 2;
    while (performance.now() < end);
    yield step / steps;
  }
  return "done";
}

test("long work lets other work run between its slices, and reports its share", async () => {
  let turns = 0;
  const other = setInterval(() => turns++, 1);
  const shares: number[] = [];
  await expect(inSlices(work(100), (share) => shares.push(share), new AbortController().signal)).resolves.toBe("done");
  clearInterval(other);
  expect(shares.length).toBeGreaterThan(5);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(turns).toBeGreaterThan(5);
});

test("it ends soon after it is stopped", async () => {
  const controller = new AbortController();
  const shares: number[] = [];
  const tell = (share: number): void => {
    shares.push(share);
    if (share > 0.3) controller.abort();
  };
  await expect(inSlices(work(100), tell, controller.signal)).rejects.toBeInstanceOf(Stopped);
  expect(shares[shares.length - 1]).toBeLessThan(0.6);
});

test("stopped steps are ended where they are", async () => {
  const controller = new AbortController();
  let isEnded = false;
  function* open(): Generator<number, string> {
    try {
      return yield* work(100);
    } finally {
      isEnded = true;
    }
  }
  const going = inSlices(open(), () => controller.abort(), controller.signal);
  await expect(going).rejects.toBeInstanceOf(Stopped);
  expect(isEnded).toBe(true);
});
