import { likeRemarks } from "../../../src/report/sections/like-remarks";

test("the same remark stands once, in the order of the first of each", () => {
  expect(
    likeRemarks([
      [1, "ok"],
      [2, "bent"],
      [3, "ok"],
    ]),
  ).toEqual([
    [[1, 3], "ok"],
    [[2], "bent"],
  ]);
});

test.each([
  ["28 % at once", "23 % at once", "28, 23 % at once"],
  ["1.8 times, of 3", "1.7 times, of 3", "1.8; 1.7 times, of 3"],
  ["1,8-mal", "2-mal", "1,8; 2-mal"],
])("“%s” and “%s”, which differ in one number, are one remark", (one, other, both) => {
  expect(
    likeRemarks([
      [7, one],
      [9, other],
    ]),
  ).toEqual([[[7, 9], both]]);
});

test("remarks that differ in the name of a level stay apart", () => {
  expect(
    likeRemarks([
      [1, "d0 and d100 by hand"],
      [2, "d0 and d90 by hand"],
    ]),
  ).toEqual([
    [[1], "d0 and d100 by hand"],
    [[2], "d0 and d90 by hand"],
  ]);
});

test("remarks that differ in two numbers stay apart, and those of them that are the same stand together", () => {
  expect(
    likeRemarks([
      [1, "1 of 2"],
      [2, "3 of 4"],
      [3, "1 of 2"],
    ]),
  ).toEqual([
    [[1, 3], "1 of 2"],
    [[2], "3 of 4"],
  ]);
});
