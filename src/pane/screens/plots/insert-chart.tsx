/** Makes a native chart on a sheet of its own, and reports it. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Outcome } from "../../../reduction/outcome";
import type { SheetPlan, WorkbookPort } from "../../../workbook/port";
import { newSheet, type NewSheet } from "../../live/new-sheet";
import { Notice } from "../../ui/notice";
import { useStyles } from "./plot-styles";
import { sentence, sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.plot;

export interface InsertChartProps {
  readonly port: WorkbookPort;
  readonly chart: () => Promise<Outcome<SheetPlan>>;
  /** True if the button makes charts of several loads. */
  readonly areMany?: boolean;
}

type Done = { readonly made: NewSheet } | { readonly failed: string };

export function InsertChart({ port, chart, areMany = false }: InsertChartProps) {
  const styles = useStyles();
  const [isBusy, setBusy] = useState(false);
  const [done, setDone] = useState<Done>();
  const insert = async (): Promise<void> => {
    setBusy(true);
    setDone(undefined);
    try {
      const plan = await chart();
      if (!plan.ok) setDone({ failed: sentence(inWords(plan.reason)) });
      else
        setDone({
          made: await newSheet(port, plan.value, (sheet) => words.inserted(sheet, plan.value.charts?.length ?? 1)),
        });
    } catch (error) {
      setDone({ failed: sentenceOf(error) });
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <div className={styles.row}>
        <Button onClick={insert} disabledFocusable={isBusy}>
          {isBusy ? words.inserting : areMany ? words.insertMany : words.insert}
        </Button>
      </div>
      {done && "made" in done && <Notice intent={done.made.intent}>{done.made.sentence}</Notice>}
      {done && "failed" in done && (
        <Notice intent="error" title={words.notInserted}>
          {done.failed}
        </Notice>
      )}
    </>
  );
}
