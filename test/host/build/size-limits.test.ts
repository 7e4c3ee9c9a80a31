/** The build refuses a file that has grown beyond its limit, and says by how much and what to do. */
import { overLimit } from "../../../src/host/build/size-limits";

const content = Buffer.from("0123456789".repeat(100));

test("a file within its limits passes", () => {
  expect(overLimit("functions.js", content, { bytes: 1000, gzip: 100 })).toEqual([]);
});

test("a file over its limit is named with its size, its limit and the remedy", () => {
  expect(overLimit("functions.js", content, { bytes: 999, gzip: 100 })).toEqual([
    "functions.js has 1,000 bytes, more than its limit of 999: find what has grown, or raise the limit in src/host/build/size-limits.ts and say why.",
  ]);
});

test("a file over its limit by gzip is named too", () => {
  expect(overLimit("functions.js", content, { bytes: 1000, gzip: 10 })).toEqual([
    expect.stringMatching(/^functions\.js has \d\d bytes by gzip, more than its limit of 10: find what has grown/),
  ]);
});
