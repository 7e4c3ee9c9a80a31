/** Carries out what the person does on the bench screen, one change at a time, and reports the result. */
import { useCallback, type Dispatch } from "react";
import { incrementOfLoad } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { lengthOfReadings } from "../../../record/reading-unit";
import { readAlready, type StandingLoad } from "../../../record/standing-load";
import { offCurve } from "../../../reduction/increment/off-curve";
import { rulesOf } from "../../../specification/versions";
import type { WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { readingText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { typedNumber } from "../../ui/typed-number";
import type { BenchAct, BenchState, Entry } from "./bench-state";
import { timeText } from "./clock-words";
import { takeBack, writeReading, writeStart, type Written } from "./enter-reading";
import { timeOf, type Offered } from "./reading-entry";

const words = text.bench;

const CHANGED: BenchAct = { does: "tell", telling: { intent: "warning", sentence: words.changedMeanwhile } };

/** Rounds a time to four digits, like the times of the schedule. */
const written = (minutes: number): number => Number(minutes.toPrecision(4));

/** The reading that was typed, or the sentence that says why it cannot be written. */
function readingIn(typed: string, record: TestRecord): number | string {
  const reading = typedNumber(typed);
  if (reading === undefined || Number.isNaN(reading)) return words.notNumber(typed, lengthOfReadings(record));
  return reading === 0 && !rulesOf(record).zerosCount ? words.zero : reading;
}

export interface BenchWriting {
  readonly port: WorkbookPort;
  readonly sheet: string;
  readonly record: TestRecord;
  readonly load: LoadRecord | undefined;
  readonly standing: StandingLoad | undefined;
  /** Whether other loads have their times in the same cells. */
  readonly sharesTimes: boolean;
  readonly state: BenchState;
  readonly dispatch: Dispatch<BenchAct>;
  /** Reads the sheet again. */
  readonly again: () => Promise<void>;
}

export function useBenchWriting(writing: BenchWriting) {
  const { port, sheet, record, load, standing, sharesTimes, state, dispatch, again } = writing;
  const change = useCallback(
    async (work: () => Promise<Written>, done: BenchAct): Promise<void> => {
      dispatch({ does: "begin" });
      try {
        const came = await work();
        dispatch(came === "written" ? done : CHANGED);
        await again();
      } catch (failure) {
        dispatch({ does: "tell", telling: { intent: "error", sentence: sentenceOf(failure) } });
      }
    },
    [dispatch, again],
  );

  const write = async (offered: Offered): Promise<void> => {
    const time = timeOf(offered);
    if (state.busy || !load || !standing || time === undefined) return;
    const reading = readingIn(state.typed, record);
    if (typeof reading === "string") return dispatch({ does: "tell", telling: { intent: "error", sentence: reading } });
    const at = offered.byClock ? written(time) : time;
    if (sharesTimes && at !== offered.scheduled)
      return dispatch({ does: "tell", telling: { intent: "error", sentence: words.timesShared(load.number) } });
    const doubt = readAlready(standing, at) ?? offCurve(incrementOfLoad(record, load), time, reading);
    if (doubt && !state.doubt) return dispatch({ does: "doubt", why: doubt });
    const entry: Entry = {
      load: load.number,
      row: offered.row,
      time: at,
      reading,
      timeBefore: offered.scheduled ?? "",
    };
    const sentence = words.wrote(sheet, load.number, timeText(entry.time), readingText(reading));
    await change(() => writeReading(port, sheet, entry), { does: "wrote", entry, sentence });
  };

  const undo = async (): Promise<void> => {
    const entry = state.entries[0];
    if (state.busy || !entry) return;
    const sentence = words.tookBack(sheet, entry.load, timeText(entry.time));
    await change(() => takeBack(port, sheet, entry), { does: "took back", entry, sentence });
  };

  const start = async (row: number, started: number): Promise<void> => {
    dispatch({ does: "begin" });
    try {
      const came = await writeStart(port, sheet, row, started);
      await again();
      dispatch(came === "written" ? { does: "started" } : CHANGED);
    } catch (failure) {
      dispatch({ does: "tell", telling: { intent: "error", sentence: sentenceOf(failure) } });
    }
  };

  return { write, takeBack: undo, start };
}
