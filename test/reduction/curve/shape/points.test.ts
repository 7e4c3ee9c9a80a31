/** Rows of stress and value as the points of a test: what counts, what is left out, and which kind the values are. */
import { kindSeen, testCurve, type Kind } from "../../../../src/reduction/curve/shape/points";
import { english } from "../../../../src/reduction/message";

type Rows = readonly (readonly [stress: number | null, value: number | null])[];
const of = (rows: Rows, kind: Kind = "e", initial?: number) => {
  const found = testCurve(rows.map(([stress]) => stress), rows.map(([, value]) => value), kind, initial); // prettier-ignore
  return found.ok
    ? {
        ...found.value,
        points: found.value.points.map(({ row, stress, value }) => [row, stress, value]),
        said: found.remarks.map(english),
      }
    : `${found.fault}: ${english(found.reason)}`;
};

test("points keep the order and the rows of the test", () => {
  expect(
    of([
      [50, 1.1],
      [100, 1.05],
      [25, 1.07],
    ]),
  ).toEqual({
    // prettier-ignore
    ...{ kind: "e", initial: undefined, said: [] },
    points: [[1, 50, 1.1], [2, 100, 1.05], [3, 25, 1.07]], // prettier-ignore
  });
});

describe("a row without a stress", () => {
  test("is skipped, whether null or 0; the first one, before any load, gives the value before loading", () => {
    expect(
      of([
        [0, 1.2],
        [50, 1.1],
        [null, 9],
        [100, 1.05],
      ]),
    ).toMatchObject({
      // prettier-ignore
      ...{ initial: 1.2, points: [[2, 50, 1.1], [4, 100, 1.05]] }, // prettier-ignore
      said: ["row 3: a value without a stress, left out: log of stress has no zero"],
    });
    expect(of([[null, null], [0, 1.2], [0, 1.3], [50, 1.1]])).toMatchObject({ initial: 1.2 }); // prettier-ignore
    expect(of([[50, 1.1], [0, 1.2], [100, 1]])).toMatchObject({ initial: undefined }); // prettier-ignore
    // A load whose value is missing is a load.
    expect(of([[50, null], [0, 1.2], [100, 1]])).toMatchObject({ initial: undefined }); // prettier-ignore
  });
  test("gives a strain of zero before loading; a value that is given goes before it", () => {
    expect(of([[0, 0], [50, 0.01]], "strain")).toMatchObject({ initial: 0 }); // prettier-ignore
    expect(of([[0, 0], [50, 1.1]])).toMatchObject({ initial: undefined }); // prettier-ignore
    expect(of([[0, 1.2], [50, 1.1]], "e", 1.25)).toMatchObject({ initial: 1.25 }); // prettier-ignore
    expect(of([[0, 0.1], [50, 0.2]], "strain", 0)).toMatchObject({ initial: 0 }); // prettier-ignore
  });
});

describe("a value that is blank or zero under a load", () => {
  test("is left out, and its row named", () => {
    expect(
      of([
        [50, 1.1],
        [100, null],
        [200, 0.9],
      ]),
    ).toMatchObject({
      // prettier-ignore
      ...{ points: [[1, 50, 1.1], [3, 200, 0.9]], said: ["row 2: no void ratio against the stress, left out"] }, // prettier-ignore
    });
    expect(
      of(
        [
          [50, 0.01],
          [100, 0],
          [200, null],
        ],
        "strain",
      ),
    ).toMatchObject({
      // prettier-ignore
      ...{ points: [[1, 50, 0.01]], said: ["rows 2, 3: no strain against the stress, left out"] },
    });
  });
  test("counts as a strain of zero in the first loaded row alone", () => {
    expect(of([[0, null], [50, 0], [100, 0.02]], "strain")).toMatchObject({ points: [[2, 50, 0], [3, 100, 0.02]], said: [] }); // prettier-ignore
    expect(of([[50, 0], [100, 0.02]])).toMatchObject({ points: [[2, 100, 0.02]] }); // prettier-ignore
    expect(of([[50, 0], [100, 0], [200, 0.02]], "strain")).toMatchObject({ points: [[1, 50, 0], [3, 200, 0.02]] }); // prettier-ignore
  });
});

describe("rows that cannot be", () => {
  test("a stress below zero, and a strain of 1 and more, are refused with their row", () => {
    expect(of([[50, 1], [-100, 0.9]])).toBe("input: row 2: the stress is -100, below zero: correct or clear it"); // prettier-ignore
    expect(
      of(
        [
          [50, 0.5],
          [100, 1],
        ],
        "strain",
      ),
    ).toBe(
      // prettier-ignore
      'input: row 2: a strain of 1 cannot be: strains are ratios, 0.12 for 12 percent; give kind "e" for void ratios',
    );
    expect(of([[50, 0.5], [100, 0.999]], "strain")).toMatchObject({ said: [] }); // prettier-ignore
    expect(of([[50, 2], [100, 1]])).toMatchObject({ said: [] }); // prettier-ignore
  });
  test("a void ratio below zero is remarked, and a strain below zero is a swell", () => {
    expect(
      of([
        [50, 0.1],
        [100, -0.1],
        [200, -0.2],
      ]),
    ).toMatchObject({
      // prettier-ignore
      said: ["rows 2, 3: a void ratio below zero cannot be: check the dry mass and the specific gravity"],
    });
    expect(of([[50, -0.01], [100, 0.02]], "strain")).toMatchObject({ said: [] }); // prettier-ignore
  });
  test("no row with both a stress and a value is refused", () => {
    const none = "input: there is no row with both a stress and a value: enter them, or choose the two columns that hold them"; // prettier-ignore
    expect([of([]), of([[0, 1.2]]), of([[50, null]])]).toEqual([none, none, none]);
    expect(of([[50, 1.1]])).toMatchObject({ points: [[1, 50, 1.1]] });
  });
});

describe("the kind that values seem to be", () => {
  const kind = (rows: Rows) => kindSeen(rows.map(([stress]) => stress), rows.map(([, value]) => value)); // prettier-ignore
  test("goes by the least and the most loaded row, in any order of rows", () => {
    expect(kind([[50, 1.2], [200, 0.9], [100, 1.1]])).toBe("e"); // prettier-ignore
    expect(kind([[100, 0.03], [50, 0.01], [200, 0.06], [50, 0.05]])).toBe("strain"); // prettier-ignore
    // Swelling between them changes nothing.
    expect(kind([[25, 1], [50, 1.1], [400, 0.8]])).toBe("e"); // prettier-ignore
    expect(kind([[25, 0.02], [50, -0.01], [400, 0.08], [25, 0.9]])).toBe("strain"); // prettier-ignore
  });
  test("takes the strain of zero in the first row only where no other two rows can be compared", () => {
    expect(kind([[50, 0], [100, 0.02]])).toBe("strain"); // prettier-ignore
    expect(kind([[25, 0], [50, 1.2], [100, 1.1]])).toBe("e"); // prettier-ignore
  });
  test("is void ratio where the rows do not show it", () => {
    expect([
      kind([]),
      kind([[50, 1]]),
      kind([
        [0, 0.1],
        [null, 0.2],
      ]),
      kind([
        [50, 0.5],
        [100, 0.5],
      ]),
    ]).toEqual(
      // prettier-ignore
      ["e", "e", "e", "e"],
    );
    expect(kind([[0, 5], [50, 1.1], [100, 1.2]])).toBe("strain"); // prettier-ignore
  });
});

test("a curve of more than 1,000 points is refused with the remedy: its reading would take minutes", () => {
  const rows = Array.from({ length: 150_000 }, (_, at) => [at + 1, 1 - at * 1e-6] as const);
  expect(of(rows.slice(0, 1_000))).toMatchObject({ said: [] });
  expect(of(rows.filter((_, at) => at % 150 === 0))).toMatchObject({ said: [] });
  expect(of(rows.slice(0, 1_001))).toMatch(/or one row in 2$/);
  expect(of(rows)).toBe(
    "input: 150000 points, and at most 1000 are read: choose the rows of one test, or one row in 150",
  );
});
