/** Each rule of the container is broken once on purpose, byte by byte, and complains. */
import { strToU8, zipSync } from "fflate";
import { soundEntries, type Entries } from "./broken";
import { CONTAINER_RULES } from "./container-rules";
import { Package } from "./package";

let sound: Entries;
beforeAll(async () => void (sound = await soundEntries()));

const RULE_OF_ZIP = "the container is a plain ZIP";
const RULE_OF_TEXT = "every XML part is in UTF-8, and says no other encoding";
const complaints = (rule: string, bytes: Uint8Array): string => CONTAINER_RULES[rule](new Package(bytes)).join("\n");

/** The complaints about a file whose container was changed after it was packed; `Package` itself may not read it any more. */
function complaintsOfBytes(change: (view: DataView, list: number, end: number) => void): string {
  const bytes = zipSync(sound);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.length - 22;
  change(view, view.getUint32(end + 16, true), end);
  return CONTAINER_RULES[RULE_OF_ZIP]({ bytes } as Package).join("\n");
}

test("the sound file has no complaint, and every rule is broken here", () => {
  expect(Object.keys(CONTAINER_RULES)).toEqual([RULE_OF_ZIP, RULE_OF_TEXT]);
  for (const rule of Object.keys(CONTAINER_RULES)) expect(complaints(rule, zipSync(sound))).toBe("");
});

test.each<[string, (view: DataView, list: number, end: number) => void, RegExp]>([
  ["an encrypted entry", (view, list) => view.setUint16(list + 8, 1, true), /is encrypted/],
  [
    "another method",
    (view, list) => [list + 10, view.getUint32(list + 42, true) + 8].forEach((at) => view.setUint16(at, 12, true)),
    /packed by method 12/,
  ],
  ["a size for ZIP64", (view, list) => view.setUint32(list + 24, 0xffff_ffff, true), /needs ZIP64/],
  ["an entry in another place", (view, list) => view.setUint32(list + 42, 5, true), /is not where the list/],
  ["a list in another place", (view, _, end) => view.setUint32(end + 16, 5, true), /list of entries is broken/],
  ["a second disk", (view, _, end) => view.setUint16(end + 4, 1, true), /on several disks/],
  ["no end", (view, _, end) => view.setUint32(end, 0, true), /has no end/],
])("%s", (_, change, said) => {
  expect(complaintsOfBytes(change)).toMatch(said);
});

test("a stored entry with its size behind it, a field of ZIP64, and a list of ZIP64", () => {
  const packed = zipSync(sound, { level: 0, extra: { 1: new Uint8Array(16) } });
  expect(complaints(RULE_OF_ZIP, packed)).toMatch(/needs ZIP64/);
  const said = complaintsOfBytes((view, list, end) => {
    view.setUint16(list + 8, 8, true);
    for (const at of [list + 10, view.getUint32(list + 42, true) + 8]) view.setUint16(at, 0, true);
    view.setUint32(end - 20, 0x0706_4b50, true);
  });
  expect(said).toMatch(/list of entries is of ZIP64/);
  expect(said).toMatch(/is stored with its size behind it/);
});

test("a name in an unknown encoding", () => {
  const bytes = zipSync({ ...sound, "xl/Übersicht.xml": strToU8("<a/>") });
  expect(complaints(RULE_OF_ZIP, bytes)).toBe("");
  for (let at = 0; at < bytes.length - 10; at++)
    if (bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === 1 && bytes[at + 3] === 2) bytes[at + 9] &= ~8;
  expect(complaints(RULE_OF_ZIP, bytes)).toMatch(/bersicht\.xml has a name in an unknown encoding/);
});

test.each([
  [Uint8Array.of(0x3c, 0x61, 0x3e, 0xe4, 0x3c, 0x2f, 0x61, 0x3e), /more\.xml is not in UTF-8/],
  [strToU8('<?xml version="1.0" encoding="ISO-8859-1"?><a/>'), /says that it is in ISO-8859-1/],
])("bytes of a part, %#", (bytes, said) => {
  expect(complaints(RULE_OF_TEXT, zipSync({ ...sound, "xl/more.xml": bytes }))).toMatch(said);
});
