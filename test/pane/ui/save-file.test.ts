import { deflateSync } from "node:zlib";
import { fileName, pixelsOf, withResolution } from "../../../src/pane/ui/save-file";

test("the name of a file keeps its words and loses characters that no file system accepts", () => {
  expect(fileName(["Test 3/B", "load 2", "", "log of time"], "svg")).toBe("Test 3-B, load 2, log of time.svg");
});

test("300 dots per inch: 160 mm are 1890 pixels, an inch is 300", () => {
  expect(pixelsOf(160)).toBe(1890);
  expect(pixelsOf(25.4)).toBe(300);
});

test("the resolution is put after the header as the PNG specification has it; the rest stays", () => {
  // A PNG of one pixel; the checksum of IEND is known (AE 42 60 82).
  const head = Buffer.from("89504e470d0a1a0a0000000d49484452000000010000000108000000003a7e9b55", "hex");
  const data = deflateSync(Buffer.from([0, 0]));
  const rest = Buffer.concat([data, Buffer.from("0000000049454e44ae426082", "hex")]);
  const made = Buffer.from(withResolution(Buffer.concat([head, rest]), 300));
  expect(made.subarray(0, 33)).toEqual(head);
  expect(made.subarray(54)).toEqual(rest);
  // 300 dots per inch are 11811 per metre: 0x2E23. Checksum 78 A5 3F 76 as image programs write it for this chunk (from
  // memory).
  expect(made.subarray(33, 54).toString("hex")).toBe("000000097048597300002e2300002e230178a53f76");
});
