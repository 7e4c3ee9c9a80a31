/** Workbooks of the embedded sheet with sheets of plans, as the page of `npm start` has the demonstration. */
import "./engine-in-node";
import { EmbeddedPort, newWorkbook } from "../../../src/workbook/embedded";
import { Model, plainData } from "../../../src/workbook/embedded/engine";
import type { SheetPlan } from "../../../src/workbook/port";
import { oncePerRun } from "../../run-folder";
import { haveRealFunctions } from "./real-functions";

export interface Opened {
  readonly port: EmbeddedPort;
  /** The name of the first of the sheets. */
  readonly sheet: string;
}

/**
 * A new workbook of a blank sheet and the sheets of the plans, the last in front, without a step to undo. The sheets are
 * inserted once per run of the tests; each call makes a workbook of its own from their data, in half the time.
 */
export async function opened(...plans: readonly SheetPlan[]): Promise<Opened> {
  await haveRealFunctions();
  const { data, names, sheets } = await oncePerRun("opened", plans, async () => {
    const port = new EmbeddedPort(newWorkbook());
    const sheets: string[] = [];
    for (const plan of plans) sheets.push(await port.insertSheet(plan));
    const { model, localNames } = port.workbook;
    const names = [...localNames].map(([id, local]) => [id, [...local]] as const);
    return { data: JSON.stringify(plainData(model)), names, sheets };
  });
  const model = new Model(JSON.parse(data));
  const { getters } = model;
  model.dispatch("ACTIVATE_SHEET", {
    sheetIdFrom: getters.getActiveSheetId(),
    sheetIdTo: getters.getSheetIdByName(sheets[sheets.length - 1])!,
  });
  const localNames = new Map(names.map(([id, local]) => [id, new Map(local)]));
  return { port: new EmbeddedPort({ model, localNames }), sheet: sheets[0] };
}
