import { ofSample, rangeOf } from "./drawn";
import { estimate, summary, survivors, type Mutant } from "./summary";

const mutant = (status: string, line = 1, statusReason?: string): Mutant => ({
  status,
  statusReason,
  mutatorName: "StringLiteral",
  replacement: '""',
  location: { start: { line, column: 3 }, end: { line, column: 8 } },
});

test("the margin is that of Wilson's interval, narrows as more are tried, and is 0 when all are", () => {
  // 81 of 263: Newcombe, R.G. (1998), Statistics in Medicine 17, 857-872, Table I: 0.2553 to 0.3662 (from memory).
  expect(estimate(81, 263, 1e9).margin).toBeCloseTo((0.3662 - 0.2553) / 2, 4);
  expect(estimate(81, 263, 300).margin).toBeLessThan(estimate(81, 263, 1000).margin);
  expect(estimate(81, 263, 263).margin).toBe(0);
});

test("a change that no test sees or runs is listed; one made on loading, or outside the sample, is not counted", () => {
  const file = [mutant("Killed"), mutant("Timeout"), mutant("Survived", 7), mutant("NoCoverage", 9)];
  const more = [mutant("Ignored", 1, "Static mutant"), mutant("Ignored"), mutant("CompileError")];
  const files = { "src/a.ts": [...file, ...more] };
  expect(survivors(files)).toEqual([
    'src/a.ts:7:3: StringLiteral ""',
    'src/a.ts:9:3: StringLiteral "" (no test runs it)',
  ]);
  expect(summary(files)).toContain("| src/a.ts | 4 | 2 | 1 | 2 | 50.0 | 1 |");
  expect(summary(files).at(-1)).toBe("50.0 % of 4 changes seen");
});

test("what Stryker reports, in lines and columns from 1, is cut to the sample, in lines and columns from 0", () => {
  const files = { "src/a.ts": [mutant("Killed", 7), mutant("Survived", 8)], "src/b.ts": [mutant("Killed", 7)] };
  const change = {
    ...{ fileName: "src/a.ts", mutatorName: "StringLiteral", replacement: '""' },
    location: { start: { line: 7, column: 2 }, end: { line: 7, column: 7 } },
  };
  expect(ofSample(files, [change])).toEqual({ "src/a.ts": [mutant("Survived", 8)] });
  expect(rangeOf(change)).toBe("src/a.ts:8:2-8:7");
});
