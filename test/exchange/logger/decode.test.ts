import { decode, type Refusal } from "../../../src/exchange/logger/decode";
import { encode } from "./generated-file";

const TEXT = "Time;Weg µm\r\n0;1,5\r\n";

test.each([
  ["utf-8", "UTF-8"],
  ["utf-8-bom", "UTF-8"],
  ["utf-16le", "UTF-16"],
  ["utf-16be", "UTF-16"],
] as const)("%s is read", (encoding, name) => {
  expect(decode(encode(TEXT, encoding))).toEqual({
    ok: true,
    value: { lines: ["Time;Weg µm", "0;1,5"], encoding: name, endsWhole: true },
  });
});

test.each(["utf-16le", "utf-16be"] as const)("%s is read without a byte order mark", (encoding) => {
  const decoded = decode(encode(TEXT, encoding).slice(2));
  expect(decoded).toMatchObject({ ok: true, value: { encoding: "UTF-16", lines: ["Time;Weg µm", "0;1,5"] } });
});

test.each(["utf-16le", "utf-16be"] as const)("%s is read with a byte order mark if no byte is zero", (encoding) =>
  expect(decode(encode("Времяосадка", encoding))).toMatchObject({ ok: true, value: { lines: ["Времяосадка"] } }),
);

test("bytes that are not Unicode are read as Windows-1252", () => {
  const bytes = Uint8Array.from(TEXT, (letter) => letter.charCodeAt(0));
  const decoded = decode(bytes);
  expect(decoded).toMatchObject({ ok: true, value: { encoding: "Windows-1252", lines: ["Time;Weg µm", "0;1,5"] } });
});

test.each<[string, Uint8Array, Refusal]>([
  ["an empty file", new Uint8Array(), "empty"],
  ["a workbook", Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0), "archive"],
  ["bytes that are no text", Uint8Array.from({ length: 500 }, (_, i) => (i * 7) % 256), "not text"],
])("%s is refused", (_, bytes, refused) => expect(decode(bytes)).toEqual({ ok: false, refused }));

test("a text whose last line has no line break is not complete", () => {
  expect(decode(encode("a\nb", "utf-8"))).toMatchObject({ value: { lines: ["a", "b"], endsWhole: false } });
  expect(decode(encode("a\nb\r", "utf-8"))).toMatchObject({ value: { lines: ["a", "b"], endsWhole: true } });
});
