/**
 * The rules of AGS4 that our files must keep, written independently of the code that writes the files, and the headings
 * of the dictionary. Sources: AGS4 standard dictionary, edition 4.1.1 (open standard), groups PROJ, ABBR, TRAN, TYPE,
 * UNIT, LOCA, SAMP, CONG, CONS, GRAG and LLPL, with units, types and status; rules 1 to 19 of AGS4 in our words.
 */

/** name, type, unit, status (K key, R required): in the dictionary's order. */
type Entry = readonly [name: string, type: string, unit?: string, status?: string];

const SAMPLE: readonly Entry[] = [
  ["LOCA_ID", "ID", "", "K"],
  ["SAMP_TOP", "2DP", "m", "K"],
  ["SAMP_REF", "X", "", "K"],
  ["SAMP_TYPE", "PA", "", "K"],
  ["SAMP_ID", "ID", "", "K"],
];
const SPECIMEN: readonly Entry[] = [...SAMPLE, ["SPEC_REF", "X", "", "K"], ["SPEC_DPTH", "2DP", "m", "K"]];

const DICTIONARY: Readonly<Record<string, { readonly parent?: string; readonly headings: readonly Entry[] }>> = {
  PROJ: {
    headings: [
      ["PROJ_ID", "ID", "", "KR"],
      ["PROJ_NAME", "X"],
      ["PROJ_LOC", "X"],
      ["PROJ_CLNT", "X"],
      ["PROJ_CONT", "X"],
      ["PROJ_ENG", "X"],
      ["PROJ_MEMO", "X"],
      ["FILE_FSET", "X"],
    ],
  },
  ABBR: {
    headings: [
      ["ABBR_HDNG", "X", "", "KR"],
      ["ABBR_CODE", "X", "", "KR"],
      ["ABBR_DESC", "X", "", "R"],
      ["ABBR_LIST", "X"],
      ["ABBR_REM", "X"],
      ["FILE_FSET", "X"],
    ],
  },
  TRAN: {
    headings: [
      ["TRAN_ISNO", "X", "", "KR"],
      ["TRAN_DATE", "DT", "yyyy-mm-dd", "R"],
      ["TRAN_PROD", "X", "", "R"],
      ["TRAN_STAT", "X", "", "R"],
      ["TRAN_DESC", "X"],
      ["TRAN_AGS", "X", "", "R"],
      ["TRAN_RECV", "X", "", "R"],
      ["TRAN_DLIM", "X"],
      ["TRAN_RCON", "X"],
      ["TRAN_REM", "X"],
      ["FILE_FSET", "X"],
    ],
  },
  TYPE: {
    headings: [
      ["TYPE_TYPE", "X", "", "KR"],
      ["TYPE_DESC", "X", "", "R"],
      ["FILE_FSET", "X"],
    ],
  },
  UNIT: {
    headings: [
      ["UNIT_UNIT", "X", "", "KR"],
      ["UNIT_DESC", "X", "", "R"],
      ["UNIT_REM", "X"],
      ["FILE_FSET", "X"],
    ],
  },
  LOCA: { parent: "PROJ", headings: [["LOCA_ID", "ID", "", "K"]] },
  SAMP: { parent: "LOCA", headings: [...SAMPLE, ["SAMP_BASE", "2DP", "m"], ["SAMP_DESC", "X"], ["FILE_FSET", "X"]] },
  CONG: {
    parent: "SAMP",
    headings: [
      ...SPECIMEN,
      ["SPEC_DESC", "X"],
      ["SPEC_PREP", "X"],
      ["CONG_TYPE", "PA"],
      ["CONG_COND", "PA"],
      ["CONG_SDIA", "2DP", "mm"],
      ["CONG_HIGT", "2DP", "mm"],
      ["CONG_MCI", "X", "%"],
      ["CONG_MCF", "X", "%"],
      ["CONG_BDEN", "2DP", "Mg/m3"],
      ["CONG_DDEN", "2DP", "Mg/m3"],
      ["CONG_PDEN", "XN", "Mg/m3"],
      ["CONG_SATR", "0DP", "%"],
      ["CONG_SPRS", "2SF", "kPa"],
      ["CONG_SATH", "1DP", "%"],
      ["CONG_IVR", "3DP"],
      ["CONG_REM", "X"],
      ["CONG_METH", "X"],
      ["CONG_LAB", "X"],
      ["CONG_CRED", "X"],
      ["TEST_STAT", "X"],
      ["FILE_FSET", "X"],
      ["SPEC_BASE", "2DP", "m"],
      ["CONG_DEV", "X"],
      ["CONG_MCIS", "X"],
      ["CONG_CORR", "YN"],
    ],
  },
  CONS: {
    parent: "CONG",
    headings: [
      ...SPECIMEN,
      ["CONS_INCN", "X", "", "K"],
      ["CONS_IVR", "3DP"],
      ["CONS_INCF", "0DP", "kPa"],
      ["CONS_INCE", "3DP"],
      ["CONS_INMV", "2SF", "m2/MN"],
      ["CONS_INSC", "2SF"],
      ["CONS_CVRT", "2SF", "m2/yr"],
      ["CONS_CVLG", "2SF", "m2/yr"],
      ["CONS_TEMP", "1DP", "DegC"],
      ["CONS_REM", "X"],
      ["FILE_FSET", "X"],
    ],
  },
  GRAG: {
    parent: "SAMP",
    headings: [
      ...SPECIMEN,
      ["SPEC_DESC", "X"],
      ["SPEC_PREP", "X"],
      ["GRAG_UC", "1SF"],
      ["GRAG_VCRE", "1DP", "%"],
      ["GRAG_GRAV", "1DP", "%"],
      ["GRAG_SAND", "1DP", "%"],
      ["GRAG_SILT", "1DP", "%"],
      ["GRAG_CLAY", "1DP", "%"],
      ["GRAG_FINE", "1DP", "%"],
      ["GRAG_REM", "X"],
    ],
  },
  LLPL: {
    parent: "SAMP",
    headings: [
      ...SPECIMEN,
      ["SPEC_DESC", "X"],
      ["SPEC_PREP", "X"],
      ["LLPL_LL", "0DP", "%"],
      ["LLPL_PL", "XN", "%"],
      ["LLPL_PI", "0DP"],
      ["LLPL_425", "0DP", "%"],
    ],
  },
};

/** Abbreviations of the dictionary that our files may use. */
export const ABBREVIATIONS: Readonly<Record<string, readonly string[]>> = {
  SAMP_TYPE: "AMAL B BLK C CBR COMP CONCB CONCC D ES EW G L LB M MOS P SPTLS TW U UT W".split(" "),
  CONG_COND: ["UNDISTURBED", "REMOULDED"],
  CONG_TYPE: ["SWELL", "SWELLPRESS", "SETTLESAT", "OEDOMETER", "HYDRAULIC CELL", "EXPANDABILITY"],
};

export interface Group {
  readonly headings: readonly string[];
  readonly units: readonly string[];
  readonly types: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
}

/** The fields of a line: each in quotes, a quote within doubled, commas between them. */
function fields(text: string): string[] {
  if (!/^"(?:[^"]|"")*"(?:,"(?:[^"]|"")*")*$/.test(text)) throw new Error(`rules 5 and 6: ${text}`);
  return [...text.matchAll(/"((?:[^"]|"")*)"(?:,|$)/g)].map(([, field]) => field.replaceAll('""', '"'));
}

/** Reads a file group by group; throws if it is not AGS4. */
export function parse(file: string): Map<string, Group> {
  if (/[^\x20-\x7e\r\n]/.test(file)) throw new Error("rule 1: not ASCII");
  if (/[^\r]\n|\r[^\n]/.test(file) || !file.endsWith("\r\n")) throw new Error("rule 2a: lines end with CR LF");
  const groups = new Map<string, Group>();
  for (const block of file.trimEnd().split("\r\n\r\n")) {
    const [group, heading, unit, type, ...data] = block.split("\r\n").map(fields);
    const kinds = [group, heading, unit, type].map(([first]) => first).join(" ");
    if (kinds !== "GROUP HEADING UNIT TYPE") throw new Error(`rule 2b and 3: ${kinds}`);
    const name = group[1];
    if (groups.has(name)) throw new Error(`rule 2: ${name} twice`);
    const [, ...headings] = heading;
    for (const row of [unit, type, ...data])
      if (row.length !== heading.length) throw new Error(`rule 4: ${name} has a row of ${row.length} fields`);
    if (data.length === 0 || data.some(([first]) => first !== "DATA"))
      throw new Error(`rule 2: ${name} has no DATA rows`);
    groups.set(name, {
      headings,
      units: unit.slice(1),
      types: type.slice(1),
      rows: data.map(([, ...row]) => Object.fromEntries(row.map((field, i) => [headings[i], field]))),
    });
  }
  return groups;
}

const FORMATS: Readonly<Record<string, (text: string) => boolean>> = {
  DT: (text) => /^\d{4}-\d{2}-\d{2}$/.test(text),
  YN: (text) => /^[YN]$/.test(text),
  X: () => true,
  XN: () => true,
  ID: () => true,
  PA: () => true,
};

/** Whether a field has the format of its type (rule 8). */
export function hasFormat(text: string, type: string): boolean {
  if (text === "") return true;
  const [, digits, kind] = /^(\d)(DP|SF)$/.exec(type) ?? [];
  const n = Number(digits);
  if (kind === "DP") return new RegExp(`^-?\\d+${n ? `\\.\\d{${n}}` : ""}$`).test(text);
  if (kind === "SF") {
    if (!/^-?\d+(\.\d+)?$/.test(text)) return false;
    if (Number(text) === 0) return text === (0).toFixed(n - 1);
    const figures = text.replace(/^-/, "").replace(".", "").replace(/^0+/, "");
    // Zeros at the end of a whole number only hold its places.
    return text.includes(".") ? figures.length === n : figures.replace(/0+$/, "").length <= n && figures.length >= n;
  }
  return FORMATS[type]?.(text) ?? false;
}

/** All breaches of the rules, in words; empty if there are none. */
export function faults(groups: ReadonlyMap<string, Group>): string[] {
  const found: string[] = [];
  const ask = (right: boolean, rule: string) => void (right || found.push(rule));
  for (const needed of ["PROJ", "TRAN", "TYPE", "UNIT"]) ask(groups.has(needed), `rules 13 to 17: no ${needed}`);
  ask(groups.get("PROJ")?.rows.length === 1, "rule 13: one row of PROJ");
  ask(groups.get("TRAN")?.rows.length === 1, "rule 14: one row of TRAN");
  const list = (group: string, heading: string) => (groups.get(group)?.rows ?? []).map((row) => row[heading]);
  const types = list("TYPE", "TYPE_TYPE");
  const units = list("UNIT", "UNIT_UNIT");
  const abbreviations = (groups.get("ABBR")?.rows ?? []).map((row) => `${row.ABBR_HDNG} ${row.ABBR_CODE}`);

  for (const [name, group] of groups) {
    const entry = DICTIONARY[name];
    ask(/^[A-Z]{4}$/.test(name), `rule 19: group ${name}`);
    if (!entry) {
      found.push(`rule 9 and 18: ${name} is not in the dictionary`);
      continue;
    }
    const order = entry.headings.map(([heading]) => heading);
    const places = group.headings.map((heading) => order.indexOf(heading));
    ask(!places.includes(-1), `rule 9: ${name} has a heading of its own`);
    ask(
      places.every((place, i) => i === 0 || place > places[i - 1]),
      `rule 7: ${name} is out of order`,
    );
    group.headings.forEach((heading, i) => {
      const [, type, unit = ""] = entry.headings[places[i]];
      ask(/^[A-Z]{4}_[A-Z0-9]{1,4}$/.test(heading), `rule 19a: ${heading}`);
      ask(group.types[i] === type, `rule 8: ${heading} is ${group.types[i]}, not ${type}`);
      ask(group.units[i] === unit, `rule 8: ${heading} is in ${group.units[i]}, not ${unit}`);
      ask(types.includes(type), `rule 17: ${type} is not in TYPE`);
      ask(unit === "" || units.includes(unit), `rule 15: ${unit} is not in UNIT`);
      for (const row of group.rows) {
        ask(hasFormat(row[heading], type), `rule 8: ${heading} "${row[heading]}" is not ${type}`);
        if (type === "PA" && row[heading])
          ask(
            abbreviations.includes(`${heading} ${row[heading]}`),
            `rule 16: ${heading} ${row[heading]} is not in ABBR`,
          );
      }
    });
    const keys = entry.headings.filter(([, , , status]) => status?.includes("K")).map(([heading]) => heading);
    for (const key of keys) ask(group.headings.includes(key), `rule 10a: ${name} has no ${key}`);
    const combined = group.rows.map((row) => keys.map((key) => row[key]).join("|"));
    ask(new Set(combined).size === combined.length, `rule 10a: ${name} repeats a key`);
    for (const [heading, , , status] of entry.headings)
      if (status?.includes("R"))
        ask(
          group.rows.every((row) => row[heading]),
          `rule 10b: ${heading} is blank`,
        );
    const parent = entry.parent && entry.parent !== "PROJ" ? groups.get(entry.parent) : undefined;
    if (entry.parent && entry.parent !== "PROJ") {
      const shared = DICTIONARY[entry.parent].headings
        .filter(([, , , s]) => s?.includes("K"))
        .map(([heading]) => heading);
      const known = (parent?.rows ?? []).map((row) => shared.map((key) => row[key]).join("|"));
      for (const row of group.rows)
        ask(
          known.includes(shared.map((key) => row[key]).join("|")),
          `rule 10c: ${name} has no parent in ${entry.parent}`,
        );
    }
  }
  return found;
}
