/**
 * What Excel does not open because of the ZIP container, or because of the bytes of a part, before it reads any XML. Sources: ISO/IEC
 * 29500-2, annex B (mapping to ZIP: stored or deflated, not encrypted, on one disk) and 8.1.3 (XML is in UTF-8 or UTF-16);
 * zlib-ng/minizip-ng issue 894 (Excel calls a file with ZIP64 entries invalid).
 */
import type { Package } from "./package";
import type { Rule } from "./package-rules";

const LOCAL = 0x0403_4b50;
const CENTRAL = 0x0201_4b50;
const END = 0x0605_4b50;
const END_OF_ZIP64 = 0x0706_4b50;
const STORED = 0;
const DEFLATED = 8;
const ENCRYPTED = 1;
const SIZES_BEHIND = 8;
const UTF8 = 0x800;
const ZIP64_FIELD = 1;
/** Beyond this the sizes of an entry need ZIP64. */
const NO_SIZE = 0xffff_ffff;

/** What a header says of an entry; the local and the central header must say the same. */
interface Header {
  readonly name: string;
  readonly flags: number;
  readonly method: number;
  readonly size: number;
  readonly fields: readonly number[];
}

/** The kinds of the extra fields of a header. */
function fieldsIn(view: DataView, from: number, length: number): number[] {
  const found: number[] = [];
  for (let at = from; at + 4 <= from + length; at += 4 + view.getUint16(at + 2, true))
    found.push(view.getUint16(at, true));
  return found;
}

/** The header of an entry; `at` is the place of its flags, from which on both kinds of header are alike up to the lengths. */
function headerAt(view: DataView, at: number, nameAt: number): Header {
  const nameLength = view.getUint16(at + 20, true);
  const name = new Uint8Array(view.buffer, view.byteOffset + nameAt, nameLength);
  return {
    name: new TextDecoder().decode(name),
    flags: view.getUint16(at, true),
    method: view.getUint16(at + 2, true),
    size: view.getUint32(at + 16, true),
    fields: fieldsIn(view, nameAt + nameLength, view.getUint16(at + 22, true)),
  };
}

/** The faults of one entry, by its headers. */
function faultsOf(central: Header, local: Header | undefined): string[] {
  if (!local || local.name !== central.name || local.method !== central.method)
    return ["is not where the list of entries says"];
  return [
    ...([STORED, DEFLATED].includes(central.method) ? [] : [`is packed by method ${central.method}`]),
    ...(central.flags & ENCRYPTED ? ["is encrypted"] : []),
    ...(central.method === STORED && central.flags & SIZES_BEHIND ? ["is stored with its size behind it"] : []),
    ...(central.size === NO_SIZE || [...central.fields, ...local.fields].includes(ZIP64_FIELD) ? ["needs ZIP64"] : []),
    ...(/[^\x20-\x7e]/.test(central.name) && !(central.flags & UTF8) ? ["has a name in an unknown encoding"] : []),
  ];
}

function containerFaults({ bytes }: Package): string[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== END) end -= 1;
  if (end < 0) return ["the list of entries has no end"];
  const count = view.getUint16(end + 10, true);
  const faults =
    end >= 20 && view.getUint32(end - 20, true) === END_OF_ZIP64 ? ["the list of entries is of ZIP64"] : [];
  if (view.getUint16(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count)
    faults.push("the file is on several disks");
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index++) {
    if (at + 46 > end || view.getUint32(at, true) !== CENTRAL) return [...faults, "the list of entries is broken"];
    const central = headerAt(view, at + 8, at + 46);
    const localAt = view.getUint32(at + 42, true);
    const local =
      localAt + 30 <= at && view.getUint32(localAt, true) === LOCAL
        ? headerAt(view, localAt + 6, localAt + 30)
        : undefined;
    faults.push(...faultsOf(central, local).map((fault) => `${central.name} ${fault}`));
    at += 46 + [28, 30, 32].reduce((sum, place) => sum + view.getUint16(at + place, true), 0);
  }
  return faults;
}

export const CONTAINER_RULES: Readonly<Record<string, Rule>> = {
  "the container is a plain ZIP": containerFaults,
  "every XML part is in UTF-8, and says no other encoding": (file) =>
    file.paths
      .filter((path) => /\.(xml|rels|vml)$/.test(path))
      .flatMap((path) => {
        let text: string;
        try {
          text = new TextDecoder("utf-8", { fatal: true }).decode(file.entries[path]);
        } catch {
          return [`${path} is not in UTF-8`];
        }
        const [, said = "UTF-8"] = /^\s*<\?xml[^>]*\sencoding=["']([^"']*)/.exec(text) ?? [];
        return said.toUpperCase() === "UTF-8" ? [] : [`${path} says that it is in ${said}`];
      }),
};
