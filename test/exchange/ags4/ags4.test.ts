/** Checks the AGS4 file against the rules and the dictionary, and its numbers against the record. */
import fc, { anyCharacter } from "../../properties";
import { demoSheet, type System } from "../../../src/datasheet";
import { toAgs4, toAgs4OfAll, type Transmission } from "../../../src/exchange/ags4";
import { formatNumber, line, toAscii, toFigures } from "../../../src/exchange/ags4/format";
import { readRecord, type NamedValues, type TestRecord } from "../../../src/record/record";
import { ABBREVIATIONS, faults, hasFormat, parse, type Group } from "./ags4-rules";
import { namedValues, withValues } from "../../datasheet/read-sheet";
import { english } from "../../../src/reduction/message";

const FILE: Transmission = {
  issue: "1",
  date: "2031-03-21",
  producer: "Example laboratory (invented)",
  recipient: "Example office (invented)",
  status: "Draft",
};
const ADDED = { sample_id: "X1-7" };

const written = (record: TestRecord, file: Transmission = FILE) => {
  const outcome = toAgs4(record, file);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return { ...outcome.value, leftOut: outcome.value.leftOut.map(english), remarks: outcome.remarks.map(english) };
};
const refusal = (record: TestRecord, file: Transmission = FILE): string => {
  const outcome = toAgs4(record, file);
  return outcome.ok ? "" : english(outcome.reason);
};

const base: Record<System, NamedValues> = { SI: {}, US: {} };
beforeAll(async () => {
  for (const system of ["SI", "US"] as const) base[system] = await namedValues(demoSheet(system));
});
const record = (system: System, changes: Parameters<typeof withValues>[1] = {}) =>
  readRecord(withValues(base[system], { ...ADDED, ...changes }));

describe.each<System>(["SI", "US"])("the demonstration, %s", (system) => {
  let groups: Map<string, Group>;
  let read: TestRecord;
  beforeAll(() => {
    read = record(system);
    groups = parse(written(read).text);
  });

  test("is exported as it is inserted", () => expect(refusal(readRecord(base[system]))).toBe(""));

  test("keeps every rule", () => expect(faults(groups)).toEqual([]));

  test("has the groups in order, PROJ first", () =>
    expect([...groups.keys()]).toEqual([
      "PROJ",
      "ABBR",
      "TRAN",
      "TYPE",
      "UNIT",
      "LOCA",
      "SAMP",
      "CONG",
      "CONS",
      "GRAG",
      "LLPL",
    ]));

  test("lists only types and units that are used", () => {
    const used = [...groups.values()];
    for (const { TYPE_TYPE } of groups.get("TYPE")!.rows)
      expect(used.some(({ types }) => types.includes(TYPE_TYPE))).toBe(true);
    for (const { UNIT_UNIT } of groups.get("UNIT")!.rows)
      expect(used.some(({ units }) => units.includes(UNIT_UNIT))).toBe(true);
  });

  test("uses the abbreviations of the dictionary", () => {
    for (const { ABBR_HDNG, ABBR_CODE } of groups.get("ABBR")!.rows)
      expect(ABBREVIATIONS[ABBR_HDNG]).toContain(ABBR_CODE);
  });

  test("holds the specimen, in SI units, rounded once", () => {
    const [row] = groups.get("CONG")!.rows;
    expect(row).toMatchObject({
      LOCA_ID: "BH-X1",
      SAMP_REF: "U7",
      SAMP_TYPE: "UT",
      SPEC_REF: "a",
      CONG_TYPE: "OEDOMETER",
      CONG_COND: "UNDISTURBED",
      CONG_SDIA: "63.50",
      CONG_HIGT: "25.40",
      CONG_PDEN: "2.72",
      CONG_CORR: "Y",
      CONG_IVR: read.results.void_ratio_initial!.toFixed(3),
      CONG_MCI: (100 * read.results.water_content_initial!).toFixed(1),
      CONG_BDEN: read.results.density_initial!.toFixed(2),
      TEST_STAT: "Preliminary",
    });
    // 7.30 m or 24 ft is the depth of the middle; the top is 12.7 mm higher.
    expect(row.SPEC_DPTH).toBe(system === "SI" ? "7.29" : "7.30");
    expect(Number(row.SPEC_BASE)).toBeCloseTo(Number(row.SPEC_DPTH) + 0.0254, 1);
  });

  test("holds every load, with its exact stress where the format rounds it", () => {
    const { rows } = groups.get("CONS")!;
    expect(rows).toHaveLength(16);
    rows.forEach((row, index) => {
      const { stress, results } = read.loads[index];
      expect(row.CONS_INCN).toBe(String(index + 1));
      expect(Math.abs(Number(row.CONS_INCF) - stress!)).toBeLessThanOrEqual(0.5);
      expect(row.CONS_INCE).toBe(results.void_ratio_end!.toFixed(3));
      expect(row.CONS_IVR).toBe(index ? rows[index - 1].CONS_INCE : groups.get("CONG")!.rows[0].CONG_IVR);
      expect(/Stress [\d.]+ kPa/.test(row.CONS_REM)).toBe(!Number.isInteger(stress));
      for (const [heading, value] of [
        ["CONS_CVLG", results.cv_log_time],
        ["CONS_CVRT", results.cv_root_time],
        ["CONS_INMV", results.volume_compressibility],
        ["CONS_INSC", results.c_alpha],
      ] as const)
        if (value === undefined) expect(row[heading]).toBe("");
        else expect(Math.abs(Number(row[heading]) / value - 1)).toBeLessThanOrEqual(0.05);
    });
    if (system === "SI") expect(rows[0].CONS_REM).toMatch(/^Stress 12.5 kPa; Inundated/);
  });

  test("holds deviations and orientation; the height change of wetting only if water was added under a load of its own", () => {
    const [plain] = groups.get("CONG")!.rows;
    expect(plain.CONG_SATH ?? "").toBe("");
    const [first, second] = base[system].load_stress;
    const more = record(system, {
      deviations: "Load 4 stood 30 h",
      specimen_orientation: "horizontal",
      load_mark: ["", "inundated"],
      load_stress: [first[0], first[0]],
      inundation_strain: -0.0123,
    });
    expect(second[0]).not.toBe(first[0]);
    const file = parse(written(more).text);
    expect(faults(file)).toEqual([]);
    const [row] = file.get("CONG")!.rows;
    expect(row).toMatchObject({ CONG_DEV: "Load 4 stood 30 h", CONG_SATH: "-1.2" });
    expect(row.SPEC_PREP).toMatch(/; Axis of the specimen in the ground: horizontal$/);
  });

  test("lists the values for which the file has no place", () => {
    const { leftOut } = written(read);
    for (const part of [/the 240 readings/, /preconsolidation stress/, /Cc, Cr and Cs/, /OCR/, /t50/, /^k of/, /tins/])
      expect(leftOut).toContainEqual(expect.stringMatching(part));
    expect(leftOut).not.toContainEqual(expect.stringMatching(/replaced by hand/));
  });
});

test("an assumed specific gravity gets the mark #, and so does one that nobody says was measured", () => {
  const mark = (basis: string) =>
    parse(written(record("SI", { specific_gravity_basis: basis, specific_gravity: 2.7 })).text).get("CONG")!.rows[0]
      .CONG_PDEN;
  expect([mark("measured"), mark("assumed"), mark("")]).toEqual(["2.70", "#2.70", "#2.70"]);
});

test("a sheet without an apparatus table, without results, remoulded: missing values are left out", () => {
  const { loads } = record("SI");
  const blank = (rows: number) => Array(rows).fill("");
  const groups = parse(
    written(
      record("SI", {
        condition: "remoulded",
        apparatus_stress: blank(12),
        c_alpha: blank(24),
        load_temperature: loads.map((_, i) => 20 + i / 10),
        water_content_final: "",
      }),
    ).text,
  );
  expect(faults(groups)).toEqual([]);
  expect(groups.get("CONG")!.rows[0]).toMatchObject({ CONG_COND: "REMOULDED", CONG_CORR: "N" });
  expect(groups.get("CONG")!.headings).not.toContain("CONG_MCF");
  expect(groups.get("CONS")!.headings).not.toContain("CONS_INSC");
  expect(groups.get("CONS")!.rows[3].CONS_TEMP).toBe("20.3");
});

test("a compacted specimen declares the abbreviation that the dictionary lacks", () => {
  const groups = parse(written(record("SI", { condition: "compacted" })).text);
  expect(faults(groups)).toEqual([]);
  expect(groups.get("ABBR")!.rows).toContainEqual(
    expect.objectContaining({
      ABBR_CODE: "COMPACTED",
      ABBR_DESC: expect.stringContaining("not in the standard"),
      ABBR_LIST: "",
    }),
  );
});

test("letters beyond ASCII, quotes and line breaks do not break the file; a remark lists respelt text", () => {
  const soil = 'Tough "fissured" brown CLAY, 20° dip\r\nσ seams, Ærøskøbing café 漢';
  const { text, remarks } = written(record("SI", { soil_description: soil }));
  const groups = parse(text);
  expect(faults(groups)).toEqual([]);
  expect(groups.get("CONG")!.rows[0].SPEC_DESC).toBe(
    'Tough "fissured" brown CLAY, 20 deg dip sigma seams, AEroskobing cafe ?',
  );
  expect(remarks).toEqual([expect.stringMatching(/SPEC_DESC were spelt with other letters/)]);
});

test("on a form without cells for them, the refusal names what is missing and the names to attach, and blank cells apart from them", () => {
  const values = Object.entries(withValues(base.SI, { ...ADDED, boring: "" }));
  const onForm = Object.fromEntries(values.filter(([name]) => !["job_number", "specimen"].includes(name)));
  expect(refusal(readRecord(onForm))).toBe(
    "the AGS4 file needs Boring (boring): fill in these cells; the AGS4 file needs Job no. (job_number), Specimen (specimen), and the sheet has no cells named job_number, specimen: attach these names to cells (Data sheet, Sheet check), and fill them in",
  );
});

test("missing keys are refused, and the refusal names the cells to fill in", () => {
  expect(refusal(record("SI", { sample_type: "" }), { ...FILE, sampleType: "UT" })).toBe("");
  expect(refusal(record("SI", { sample_top: "", sample_type: "" }))).toMatch(
    /needs .*\(sample_type\), .*\(sample_top\): fill in these cells$/,
  );
  for (const name of ["job_number", "boring", "sample", "specimen", "depth", "initial_height"])
    expect(refusal(record("SI", { [name]: "" }))).toContain(`(${name})`);
  expect(refusal(readRecord({}))).toMatch(/job_number.*boring.*load_stress/);
  expect(refusal(record("SI", { sample_type: "tube" }))).toMatch(/"tube": use an AGS4 abbreviation, one of B, BLK/);
  expect(refusal(record("SI", { sample_type: "tube" }), { ...FILE, sampleType: "tw" })).toBe("");
  expect(refusal(record("SI"), { ...FILE, recipient: " " })).toBe(
    "the AGS4 file needs the recipient of the file: fill in these fields of the pane",
  );
  expect(refusal(record("SI"), { ...FILE, date: "21/3/2031" })).toMatch(/yyyy-mm-dd/);
});

describe("formats", () => {
  test("significant figures", () => {
    const two = (value: number) => toFigures(value, 2);
    expect([0.05, 0.0504, 4.1, 123, 1250, 99.6, 0.0996, 1e-7, 12, 0, -0.123].map(two)).toEqual(
      "0.050 0.050 4.1 120 1300 100 0.10 0.00000010 12 0.0 -0.12".split(" "),
    );
  });

  test("decimal places: no exponent, no minus zero", () => {
    expect([formatNumber(12.5, "0DP"), formatNumber(-0.0001, "2DP"), formatNumber(1e-9, "3DP")]).toEqual([
      "13",
      "0.00",
      "0.000",
    ]);
  });

  const anyNumber = fc
    .double({ min: -1e6, max: 1e6, noNaN: true })
    .filter((value) => value === 0 || Math.abs(value) > 1e-9);
  test.each(["0DP", "1DP", "2DP", "3DP", "2SF"])("%s: every number has its format and is rounded to it", (type) => {
    fc.assert(
      fc.property(anyNumber, (value) => {
        const text = formatNumber(value, type);
        expect([text, hasFormat(text, type)]).toEqual([text, true]);
        const n = Number(type[0]);
        const half = type.endsWith("DP")
          ? 0.5 * 10 ** -n
          : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) + 1 - n);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(half * (1 + 1e-9));
      }),
    );
  });

  test("any text becomes one line of ASCII that is read back unchanged", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: anyCharacter }), { minLength: 1 }), (texts) => {
        const ascii = texts.map(toAscii);
        for (const text of ascii) expect(text).toMatch(/^[ -~]*$/);
        const file = `${line(["GROUP", "TEST"])}\r\n${line(["HEADING", ...ascii.map((_, i) => `H${i}`)])}\r\n${line(["UNIT", ...ascii])}\r\n${line(["TYPE", ...ascii])}\r\n${line(["DATA", ...ascii])}\r\n`;
        expect(Object.values(parse(file).get("TEST")!.rows[0])).toEqual(ascii);
      }),
    );
  });
});

describe("the checker of these tests", () => {
  test("notices breaches of the rules", () => {
    const good = written(record("SI")).text;
    const spoilt = (from: string | RegExp, to: string) => faults(parse(good.replace(from, to))).join("; ");
    expect(spoilt('"63.50"', '"63.5"')).toMatch(/rule 8: CONG_SDIA "63.5" is not 2DP/);
    expect(spoilt('"CONG_SDIA","CONG_HIGT"', '"CONG_HIGT","CONG_SDIA"')).toMatch(/rule 7: CONG is out of order/);
    expect(spoilt('"DATA","m2/MN","square metres per megaNewton"\r\n', "")).toMatch(/rule 15: m2\/MN/);
    expect(spoilt('"DATA","2SF",', '"DATA","9SF",')).toMatch(/rule 17: 2SF/);
    expect(spoilt('"DATA","SAMP_TYPE","UT"', '"DATA","SAMP_TYPE","U"')).toMatch(/rule 16: SAMP_TYPE UT/);
    expect(spoilt(/("DATA","BH-X1",.*"a","7.29",)"2"/, '$1"1"')).toMatch(/rule 10a: CONS repeats a key/);
    expect(spoilt('"DATA","BH-X1"\r\n', '"DATA","BH-X2"\r\n')).toMatch(/rule 10c: SAMP has no parent/);
    expect(spoilt('"Example office (invented)"', '""')).toMatch(/rule 10b: TRAN_RECV/);
    expect(() => parse(good.replace("BH-X1", "BH\u00e9"))).toThrow("rule 1");
    expect(() => parse(good.replace("\r\n", "\n"))).toThrow("rule 2a");
    expect(() => parse(good.replace('"BH-X1"', "BH-X1"))).toThrow("rules 5 and 6");
  });
});

describe("limits and grading", () => {
  const rowOf = (name: string, changes: Parameters<typeof withValues>[1]) =>
    parse(written(record("SI", changes)).text).get(name)?.rows[0];

  test("stand in LLPL and GRAG, in percent", () => {
    expect(rowOf("LLPL", {})).toMatchObject({ SPEC_REF: "a", LLPL_LL: "62", LLPL_PL: "28", LLPL_PI: "34" });
    expect(rowOf("GRAG", {})).toMatchObject({ GRAG_CLAY: "48.0", GRAG_FINE: "97.0" });
  });

  test("give no group where nothing was typed", () => {
    const none = { liquid_limit: "", plastic_limit: "", clay_content: "", fines_content: "" };
    expect([rowOf("LLPL", none), rowOf("GRAG", none)]).toEqual([undefined, undefined]);
  });

  test("limits as text, fines finer than 0.075 mm and what has no heading are listed as left out", () => {
    expect(written(record("SI", { atterberg_limits: "LL 62, PL 28" })).leftOut).toContain(
      "the limits that stand as text (LLPL has numbers only)",
    );
    const { text, leftOut } = written(record("US"));
    expect(parse(text).get("GRAG")!.headings).not.toContain("GRAG_FINE");
    expect(leftOut).toEqual(
      expect.arrayContaining([
        "the fines (GRAG_FINE is finer than 0.063 mm)",
        "group symbol, organic content and sensitivity",
        "liquidity index, activity and void index",
      ]),
    );
  });
});

describe("one file for several tests", () => {
  const other = (changes: Parameters<typeof withValues>[1]) => record("SI", changes);
  const all = (tests: Parameters<typeof toAgs4OfAll>[0]) => {
    const made = toAgs4OfAll(tests, FILE);
    if (!made.ok) throw new Error(english(made.reason));
    return { ...made.value, failed: made.value.failed.map(({ called, reason }) => [called, english(reason)]) };
  };

  test("has each location and sample once, each specimen with its loads, and keeps every rule", () => {
    const {
      text,
      written: in1,
      failed,
    } = all([
      { called: "Test 1", record: other({}) },
      { called: "Test 2", record: other({ specimen: "b" }) },
      { called: "Test 3", record: other({ boring: "BH-X2" }) },
    ]);
    const groups = parse(text);
    expect(faults(groups)).toEqual([]);
    expect([in1, failed]).toEqual([["Test 1", "Test 2", "Test 3"], []]);
    const count = (name: string) => groups.get(name)!.rows.length;
    expect(["PROJ", "TRAN", "LOCA", "SAMP", "CONG", "CONS", "LLPL"].map(count)).toEqual([1, 1, 2, 2, 3, 48, 3]);
  });

  test("leaves out, with the reason, what lacks a field, is of another job, or is of the same specimen", () => {
    const { written: in1, failed } = all([
      { called: "Test 1", record: other({}) },
      { called: "Test 2", record: other({ boring: "" }) },
      { called: "Test 3", record: other({ job_number: "J-9" }) },
      { called: "Test 4", record: other({}) },
    ]);
    expect(in1).toEqual(["Test 1"]);
    expect(failed).toEqual([
      ["Test 2", expect.stringMatching(/needs Boring \(boring\)/)],
      ["Test 3", expect.stringMatching(/"J-9".*Test 1.*an AGS4 file has one project/)],
      ["Test 4", expect.stringMatching(/same specimen as Test 1/)],
    ]);
  });

  test("is refused if no test can be written", () => {
    const made = toAgs4OfAll([{ called: "Test 1", record: other({ boring: "" }) }], FILE);
    expect(made.ok ? "" : english(made.reason)).toMatch(/no test can be written.*Boring/);
  });
});

test("German letters are spelt as German spells them in ASCII, accents are left out", () =>
  expect(["Ödometer Süd", "Straße, Größe, Ährenfeld", "Élan à la côte"].map(toAscii)).toEqual([
    "Oedometer Sued",
    "Strasse, Groesse, Aehrenfeld",
    "Elan a la cote",
  ]));
