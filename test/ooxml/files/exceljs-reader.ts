/** Reads an .xlsx file with exceljs. */
import ExcelJS from "exceljs";
import { dayNumber, nameText, ruleText, type Cell, type Contents, type SheetContents, type Value } from "./contents";

function shown(value: unknown): Value | undefined {
  if (value == null || value === "") return undefined;
  if (value instanceof Date) return dayNumber(value);
  if (typeof value !== "object") return value as Value;
  if ("error" in value) return String(value.error);
  if ("richText" in value) return (value.richText as { text: string }[]).map(({ text }) => text).join("");
  if ("text" in value) return shown(value.text);
  throw new Error(`a value of another kind: ${JSON.stringify(value)}`);
}

function cellOf(cell: ExcelJS.Cell): Cell | undefined {
  const { value } = cell;
  const hasFormula = value !== null && typeof value === "object" && ("formula" in value || "sharedFormula" in value);
  const found = shown(hasFormula ? (value as ExcelJS.CellFormulaValue).result : value);
  if (!hasFormula) return found === undefined ? undefined : { value: found };
  return { ...(found !== undefined && { value: found }), formula: cell.formula };
}

const boundText = (bound: unknown): string => (bound instanceof Date ? String(dayNumber(bound)) : String(bound));

function textOfRule({ type, operator = "between", formulae }: ExcelJS.DataValidation): string {
  const bounds = formulae.map(boundText).map((one) => (type === "list" ? one.replace(/^"(.*)"$/s, "$1") : one));
  return ruleText(type, operator, bounds);
}

export async function readByExceljs(bytes: Uint8Array): Promise<Contents> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(bytes).buffer as ArrayBuffer);
  const sheets = workbook.worksheets.map((sheet): [string, SheetContents] => {
    const cells = new Map<string, Cell>();
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        // Of merged cells only the first holds a value; exceljs repeats it in the others.
        const found = cell.isMerged && cell.master.address !== cell.address ? undefined : cellOf(cell);
        if (found) cells.set(cell.address, found);
      }),
    );
    // The types have rules by cell only.
    const { model } = (sheet as unknown as { dataValidations: { model: Record<string, ExcelJS.DataValidation> } })
      .dataValidations;
    // All cells of a rule have the same object.
    const texts = new Map<ExcelJS.DataValidation, string>();
    const rules = Object.entries(model).map(([at, rule]): [string, string] => {
      const text = texts.get(rule) ?? textOfRule(rule);
      texts.set(rule, text);
      return [at, text];
    });
    return [sheet.name, { cells, merges: [...(sheet.model.merges as string[])].sort(), rules: new Map(rules) }];
  });
  const names = workbook.definedNames.model.flatMap(({ name, ranges }) => ranges.map((range) => nameText(name, range)));
  return { sheets: new Map(sheets), names: names.sort() };
}
