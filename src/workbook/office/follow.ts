/** Excel's events as changes of the port. */
import type { Change, Unsubscribe } from "../port";
import { say } from "../../reduction/message";
import { run } from "./batch";

/** Events within this many milliseconds count as one entry. */
const MOMENT = 50;

type Handler = OfficeExtension.EventHandlerResult<any>;
type Hear = () => Promise<void>;

/** Registers an event that an older Excel may not have; such an Excel does not report the change. */
function ifThere(version: string, register: () => Handler): Handler[] {
  if (!Office.context.requirements.isSetSupported("ExcelApi", version)) return [];
  try {
    return [register()];
  } catch {
    // The library has its own list of the features of this Excel.
    return [];
  }
}

/** Registers handlers that each report one thing; a thing reported several times within a moment is passed on once. */
function listen<T>(
  tell: (what: T) => void,
  register: (workbook: Excel.Workbook, hear: (what: T) => Hear) => Handler[],
): Promise<Unsubscribe> {
  const heard = new Set<T>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tellAll = (): void => {
    const all = [...heard];
    heard.clear();
    timer = undefined;
    all.forEach((what) => tell(what));
  };
  const hear = (what: T) => async (): Promise<void> => {
    heard.add(what);
    timer ??= setTimeout(tellAll, MOMENT);
  };
  return run(say`follow what changes`, async (context) => {
    const handlers = register(context.workbook, hear);
    await context.sync();
    return () => {
      clearTimeout(timer);
      const stop = async (same: Excel.RequestContext): Promise<void> => {
        handlers.forEach((handler) => handler.remove());
        await same.sync();
      };
      Excel.run(context, stop).catch(() => undefined);
    };
  });
}

/**
 * Excel before 1.17 does not report that a sheet was renamed or moved, and before 1.11 not that rows were hidden. While another workbook is in
 * front, Excel for Mac refuses the names of a sheet (office-js issue 6365): when this one comes to the front again, what could not be read is
 * read.
 */
export const followChanges = (listener: (change: Change) => void): Promise<Unsubscribe> =>
  listen(listener, (workbook, hear) => {
    const { worksheets } = workbook;
    return [
      worksheets.onChanged.add(hear("values")),
      worksheets.onCalculated.add(hear("values")),
      ...ifThere("1.11", () => worksheets.onRowHiddenChanged.add(hear("values"))),
      worksheets.onActivated.add(hear("front")),
      worksheets.onAdded.add(hear("sheets")),
      worksheets.onDeleted.add(hear("sheets")),
      ...ifThere("1.17", () => worksheets.onNameChanged.add(hear("sheets"))),
      ...ifThere("1.17", () => worksheets.onMoved.add(hear("sheets"))),
      ...ifThere("1.13", () => workbook.onActivated.add(hear("front"))),
    ];
  });

export const followSelection = (listener: () => void): Promise<Unsubscribe> =>
  listen(listener, (workbook, hear) => [
    workbook.onSelectionChanged.add(hear(undefined)),
    workbook.worksheets.onActivated.add(hear(undefined)),
  ]);
