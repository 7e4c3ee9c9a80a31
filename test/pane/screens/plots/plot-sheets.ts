/** The inputs of the invented test as a firm's sheet without any result: values by name. */
import { demoTest } from "../../../../src/datasheet/demo-test";
import { HAND_TIMES, loadSuffix } from "../../../../src/specification/readings";
import type { CellValue } from "../../../../src/workbook/port";

export function inputsOfDemo(): Record<string, CellValue[]> {
  const { readings, cells, columns } = demoTest("SI");
  const named: Record<string, CellValue[]> = { length_unit: ["mm"], stress_unit: ["kPa"], cv_unit: ["m2/yr"] };
  for (const [name, value] of Object.entries(cells)) named[name] = [value as CellValue];
  for (const [name, values] of Object.entries(columns)) named[name] = [...(values as CellValue[])];
  readings.forEach((values, index) => {
    named[`times_${loadSuffix(index + 1)}`] = [...HAND_TIMES];
    named[`readings_${loadSuffix(index + 1)}`] = [...(values as CellValue[])];
  });
  return named;
}
