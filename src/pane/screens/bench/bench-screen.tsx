/**
 * The bench screen shows the load that is on the specimen, its schedule of readings, one field for the next reading,
 * and what the readings show so far.
 */
import { Text } from "@fluentui/react-components";
import { useMemo, useReducer } from "react";
import { stressInWords } from "../load-stress";
import { cellBeside, loadsThatShareTimes } from "../../../record/places";
import { lengthOfReadings } from "../../../record/reading-unit";
import { loadInFrame, loadsToRead, standingLoad, type StandingLoad } from "../../../record/standing-load";
import { DAY_MINUTES, localDayNumber } from "../../../workbook/day-number";
import type { WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { Notice } from "../../ui/notice";
import { Choice, Step } from "../../ui/parts";
import { RecordFrame } from "../record-frame";
import { AdviceList } from "./advice-list";
import { benchState, START, type BenchState } from "./bench-state";
import { lastingText, momentText, timeText } from "./clock-words";
import { LoadCell } from "./load-cell";
import { LoadStart } from "./load-start";
import { NextMass } from "./next-mass";
import { PrintedReadings } from "./printed-readings";
import { ReadingEntry, type Offered } from "./reading-entry";
import { dueReadings, elapsed, isClockBehind, isOffSchedule, rowForNow, type Due } from "./schedule";
import { ScheduleTable } from "./schedule-table";
import { SoFar } from "./so-far";
import { useBenchWriting } from "./use-bench-writing";
import { useNow } from "./use-now";

const words = text.bench;

/** The row and the time for a reading taken now; undefined if no row is left. */
function offeredNow(load: StandingLoad, now: number, { byClock, row: chosen }: BenchState): Offered | undefined {
  const clock = elapsed(load, now);
  const row = rowForNow(load, now, chosen);
  if (row) {
    // A reading for a row that the person chose was taken at the time of that row, and is only entered later. A clock
    // that has gone back tells no time.
    const isOff =
      row.row !== chosen &&
      !isClockBehind(load, now) &&
      clock !== undefined &&
      clock > 0 &&
      isOffSchedule(row.time, clock);
    return { row: row.row, scheduled: row.time, clock, byClock: clock !== undefined && (byClock ?? isOff) };
  }
  const isOpen = load.freeRow !== undefined && clock !== undefined && !isClockBehind(load, now);
  return isOpen ? { row: load.freeRow, clock, byClock: true } : undefined;
}

interface NextReadingProps {
  readonly load: StandingLoad;
  readonly due: readonly Due[];
  readonly now: number;
}

function NextReading({ load, due, now }: NextReadingProps) {
  const next = due.find(({ state }) => state === "next");
  if (!next) return <Text block>{load.freeRow === undefined ? words.full : words.allRead}</Text>;
  const { time, at } = next;
  if (at === undefined)
    return (
      <Text block>
        {words.next}: {timeText(time)}
      </Text>
    );
  const minutes = (at - now) * DAY_MINUTES;
  return (
    <Text block>
      {words.next}: {words.nextAt(timeText(time), momentText(at, now))},{" "}
      {minutes >= 0 ? words.dueIn(lastingText(minutes)) : words.dueSince(lastingText(-minutes))}
    </Text>
  );
}

interface LoadInFrameProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
  readonly again: () => Promise<void>;
}

function LoadInFrame({ port, reading, again }: LoadInFrameProps) {
  const { record, values, sheet } = reading;
  const [state, dispatch] = useReducer(benchState, START);
  const now = localDayNumber(useNow());
  const loads = loadsToRead(record);
  const number = state.load ?? loadInFrame(record);
  const load = loads.find((one) => one.number === number);
  const standing = number === undefined ? undefined : standingLoad(record, values, number);
  const offered = standing && offeredNow(standing, now, state);
  const sharing = useMemo(() => loadsThatShareTimes(reading.names), [reading.names]);
  const sharesTimes = number !== undefined && sharing.includes(number);
  const work = { port, sheet, record, load, standing, sharesTimes, state, dispatch, again };
  const { write, takeBack, start } = useBenchWriting(work);
  if (!load || !standing) return <Notice intent="info">{words.noLoads}</Notice>;
  const due = dueReadings(standing, now);
  const moment = cellBeside(reading.names, "load_started", standing.row);
  return (
    <>
      <Choice
        label={words.load}
        options={loads.map(
          (one) => [String(one.number), words.loadOption(one.number, stressInWords(record, one))] as const,
        )}
        value={String(number)}
        onChoose={(chosen) => dispatch({ does: "choose load", load: Number(chosen) })}
      />
      <LoadStart
        key={standing.number}
        load={standing}
        cell={moment}
        now={now}
        busy={state.busy}
        onStart={(started) => void start(standing.row, started)}
      />
      <Step title={words.next}>
        {isClockBehind(standing, now) && <Notice intent="warning">{words.clockBehind(moment)}</Notice>}
        <NextReading load={standing} due={due} now={now} />
        {offered && (
          <ReadingEntry
            state={state}
            offered={offered}
            length={lengthOfReadings(record)}
            onType={(typed) => dispatch({ does: "type", typed })}
            onByClock={(byClock) => dispatch({ does: "time by clock", byClock })}
            onWrite={() => void write(offered)}
            onTakeBack={() => void takeBack()}
          />
        )}
      </Step>
      <SoFar
        record={record}
        load={load}
        standing={standing}
        state={state}
        now={now}
        onRule={(rule, multiple) => dispatch({ does: "choose rule", rule, multiple })}
      />
      <AdviceList record={record} />
      <NextMass key={`mass ${standing.number}`} port={port} test={reading.id} record={record} load={load} />
      <LoadCell key={`cell ${standing.number}`} test={reading.id} record={record} load={load} />
      <Step title={words.schedule}>
        <ScheduleTable due={due} now={now} onChoose={(row) => dispatch({ does: "choose row", row })} />
      </Step>
      <PrintedReadings port={port} reading={reading} load={load.number} />
    </>
  );
}

export function BenchScreen({ port }: { readonly port: WorkbookPort }) {
  const followed = useTest(RECORD);
  const { reading, again } = followed;
  return (
    <RecordFrame words={words} followed={followed}>
      {reading && <LoadInFrame key={reading.id} port={port} reading={reading} again={again} />}
    </RecordFrame>
  );
}
