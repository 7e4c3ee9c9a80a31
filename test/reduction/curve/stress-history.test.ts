import { overconsolidationRatio, remarksOnRatio } from "../../../src/reduction/curve/stress-history";
import { english } from "../../../src/reduction/message";

const remarks = (ratio: number): string => remarksOnRatio(ratio).map(english).join("; ");

test("OCR is the preconsolidation stress over the in-situ stress, with the remark on its size", () => {
  const found = overconsolidationRatio(80, 100);
  expect(found).toMatchObject({ ok: true, value: 0.8, remarks: remarksOnRatio(0.8) });
});

test("below 0.9 and above 20 there is a remark, at and between them none", () => {
  expect(remarks(0.89)).toMatch(/^OCR below 0.9: disturbance, ground still consolidating, or a wrong in-situ stress/);
  expect([0.9, 1, 20].map(remarks)).toEqual(["", "", ""]);
  expect(remarks(20.1)).toMatch(/^OCR above 20: check the in-situ stress/);
});
