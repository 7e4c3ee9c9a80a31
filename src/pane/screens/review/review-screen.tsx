/** Steps through the loads of a data sheet, so that every construction is looked at, and picked by hand where need be. */
import { Button, makeStyles, Select, Spinner, Text } from "@fluentui/react-components";
import { useCallback, useMemo, useState } from "react";
import { PICK_COLUMNS } from "../../../specification/pick-table";
import type { TimeMethod } from "../../../reduction/increment/constructions/picks";
import { convert } from "../../../reduction/units";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { loadsToReview } from "./increment";
import { ReviewLoad } from "./load-review";
import { sameRows, savedOf, tableOf, type Draft, type PicksTable } from "./pick-changes";
import { shown } from "../../text/digits";
import type { Telling } from "./save-picks";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";

const words = text.review;

const useStyles = makeStyles({
  stepper: {
    display: "grid",
    gridTemplateColumns: "auto minmax(0, 1fr) auto",
    gap: "8px",
    alignItems: "center",
    "& select": { minWidth: 0, width: "100%" },
    "& button": { minWidth: "32px" },
  },
});

/**
 * Writes cells of the table of picks, unless it holds by now something else than what was shown. Gives whether it wrote; a
 * failure of the workbook is thrown as it is.
 */
async function writeTable(
  port: WorkbookPort,
  sheet: string,
  seen: PicksTable,
  cells: NamedColumns,
): Promise<"written" | "changed meanwhile"> {
  if (!sameRows(tableOf(await port.readNames(sheet, PICK_COLUMNS)), seen)) return "changed meanwhile";
  await port.fillNames(sheet, cells);
  return "written";
}

export function ReviewScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { tests, reading, error, again } = useTest(RECORD);
  const { id, sheet, values, record } = reading ?? {};
  const [number, setNumber] = useState<number>();
  /** Changes that are not saved, by test and load. */
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  const [plot, setPlot] = useState<TimeMethod>();
  const [telling, setTelling] = useState<Telling>();
  const [busy, setBusy] = useState(false);
  const table = useMemo(() => tableOf(values ?? {}), [values]);
  const loads = useMemo(() => (record ? loadsToReview(record) : []), [record]);

  const write = useCallback(
    async (cells: NamedColumns, done: string, key?: string): Promise<void> => {
      if (busy || sheet === undefined) return;
      setBusy(true);
      setTelling(undefined);
      try {
        const isWritten = (await writeTable(port, sheet, table, cells)) === "written";
        setTelling(
          isWritten ? { intent: "success", sentence: done } : { intent: "warning", sentence: words.changedMeanwhile },
        );
        // The draft is kept until the sheet is read again, so that nothing jumps back for a moment.
        await again();
        if (isWritten && key !== undefined)
          setDrafts((all) => Object.fromEntries(Object.entries(all).filter(([one]) => one !== key)));
      } catch (failure) {
        setTelling({ intent: "error", sentence: sentenceOf(failure) });
      }
      setBusy(false);
    },
    [port, sheet, table, busy, again],
  );

  const heading = (
    <Text as="h1" size={400} weight="semibold" block className={shared.title}>
      {words.heading}
    </Text>
  );
  if (error !== undefined && !record)
    return (
      <div className={shared.column}>
        {heading}
        <Notice intent="error">{error}</Notice>
        <div>
          <Button onClick={() => void again()}>{words.again}</Button>
        </div>
      </div>
    );
  if (tests === undefined || (!record && tests.length > 0))
    return (
      <div className={shared.column}>
        {heading}
        <Spinner label={words.looking} labelPosition="after" size="tiny" />
      </div>
    );
  if (!record || sheet === undefined || loads.length === 0)
    return (
      <div className={shared.column}>
        {heading}
        <Text as="h2" size={300} weight="semibold" block className={shared.title}>
          {record ? words.noReadingsTitle : words.emptyTitle}
        </Text>
        <Text block>{record ? words.noReadings : words.empty}</Text>
      </div>
    );

  const index = Math.max(
    0,
    loads.findIndex((load) => load.number === number),
  );
  const load = loads[index];
  const keyOf = (one: number): string => `${id}\n${one}`;
  const stressUnit = record.words.stress_unit ?? "kPa";
  const nameOf = (one: number): string => {
    const stress = record.loads.find((other) => other.number === one)?.stress;
    return words.loadName(
      one,
      stress === undefined ? undefined : `${shown(convert(stress, "stress", "kPa", stressUnit), 4)} ${stressUnit}`,
    );
  };
  const marked = (one: number): string => {
    const marks = [
      Object.keys(drafts[keyOf(one)] ?? {}).length > 0 ? [words.loadMarks.unsaved] : [],
      savedOf(table.rows, one).standing.size > 0 ? [words.loadMarks.picked] : [],
    ].flat();
    return [nameOf(one), ...marks].join(" · ");
  };
  const go = (to: number): void => {
    setNumber(loads[to].number);
    setTelling(undefined);
  };

  return (
    <div className={shared.column}>
      {heading}
      {error !== undefined && <Notice intent="error">{error}</Notice>}
      <div className={styles.stepper}>
        <Button aria-label={words.previous} disabledFocusable={index === 0} onClick={() => index > 0 && go(index - 1)}>
          ‹
        </Button>
        <Select
          aria-label={words.load}
          value={String(load.number)}
          onChange={(_, { value }) => go(loads.findIndex((one) => String(one.number) === value))}
        >
          {loads.map((one) => (
            <option key={one.number} value={String(one.number)}>
              {marked(one.number)}
            </option>
          ))}
        </Select>
        <Button
          aria-label={words.next}
          disabledFocusable={index === loads.length - 1}
          onClick={() => index < loads.length - 1 && go(index + 1)}
        >
          ›
        </Button>
      </div>
      <ReviewLoad
        key={keyOf(load.number)}
        record={record}
        load={load}
        table={table}
        draft={drafts[keyOf(load.number)] ?? {}}
        onDraft={(draft) => {
          setDrafts((all) => ({ ...all, [keyOf(load.number)]: draft }));
          setTelling(undefined);
        }}
        plotChosen={plot}
        onPlot={setPlot}
        nameOf={nameOf}
        sheet={sheet}
        busy={busy}
        telling={telling}
        onWrite={(cells, done, saves) => write(cells, done, saves ? keyOf(load.number) : undefined)}
      />
    </div>
  );
}
