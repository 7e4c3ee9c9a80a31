import "../engine-in-node";
import { toEngineFormat, toExcelFormat } from "../../../../src/workbook/embedded/look/formats";

describe("number formats", () => {
  test.each(["0.000", "0.0%", "#,##0", "yyyy-mm-dd", "@", '0.0" mm"', "0.00;(0.00)"])(
    "%s is the same in both",
    (format) => {
      expect(toEngineFormat(format)).toBe(format);
      expect(toExcelFormat(format)).toBe(format);
    },
  );

  test.each([
    ["0.00E+00", "0.00e"],
    ["0.0E+00", "0.0e"],
    ["[h]:mm:ss", "hhhh:mm:ss"],
    ["hh:mm:ss AM/PM", "hh:mm:ss a"],
  ])("%s is %s in the engine, and back", (excel, engine) => {
    expect(toEngineFormat(excel)).toBe(engine);
    expect(toExcelFormat(engine)).toBe(excel);
  });

  test("a date with the name of the month is not taken for a power of ten", () => {
    expect(toExcelFormat("d mmm yyyy")).toBe("d mmm yyyy");
  });

  test.each([
    ["General", ""],
    ["0.00;[Red]-0.00", "0.00;-0.00"],
    ["0.00_)", "0.00"],
    ["# ?/?", ""],
    ["mm:ss.0", ""],
  ])("%s, which the engine lacks, becomes %j", (excel, engine) => expect(toEngineFormat(excel)).toBe(engine));
});
