/** Shows the plots of a data sheet: one of its curves, or the time curves of all its loads. */
import { Button, Field, Radio, RadioGroup, Select, Text } from "@fluentui/react-components";
import { useEffect, useMemo, useRef, useState } from "react";
import { headOf } from "../../../record/head-of-sheet";
import { loadsRead } from "../../../record/load-curve";
import type { TestRecord } from "../../../record/record";
import { stressInWords } from "../load-stress";
import { METHOD_NAMES } from "../../../reduction/curve/method-words";
import type { WorkbookPort } from "../../../workbook/port";
import { Figure } from "../../ui/figure";
import { Notice } from "../../ui/notice";
import { HeadNotice } from "../head-notice";
import { chartOfSheet } from "./native-chart";
import {
  drawSheet,
  kindOf,
  loadDrawn,
  picksOf,
  pointsOf,
  SHEET_CHOICES,
  stageDrawn,
  stagesOf,
  type SheetChoices,
} from "./sheet-drawing";
import { PlotFiles } from "./save-plot";
import { InsertChart } from "./insert-chart";
import { SmallPlots } from "./small-plots";
import { useStyles } from "./plot-styles";
import { choosing } from "../../ui/choosing";
import { Choice, optionsOf } from "../../ui/parts";
import { useDraft } from "../../live/use-test";
import type { Reading } from "../../live/workbook-store";
import { sentence } from "../../text/sentence";
import { contentText } from "../../text/number";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.plot;
const PLOTS = ["compression", "field", "intrinsic", "time", "cv", "cAlpha", "swell", "all"] as const;

export interface SheetPlotsProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
}

export function SheetPlots({ port, reading }: SheetPlotsProps) {
  const styles = useStyles();
  const { id, sheet, record } = reading;
  const [choices, setChoices] = useDraft<SheetChoices>(id, "plots", SHEET_CHOICES);
  // When a person opens a small plot, the keyboard focus moves to the plot of that load.
  const [isOpened, setOpened] = useState(false);
  const choose = (change: Partial<SheetChoices>): void => setChoices((before) => ({ ...before, ...change }));
  const { plot } = choices;
  const drawn = useMemo(() => (plot === "all" ? undefined : drawSheet(record, choices)), [record, choices, plot]);
  const spec = drawn?.ok ? drawn.value : undefined;
  const isHeld = headOf(reading).some(({ kind }) => !["jump", "entry", "unusual"].includes(kind));

  return (
    <>
      <RadioGroup
        aria-label={words.against}
        className={styles.switches}
        value={plot}
        onChange={choosing<SheetChoices["plot"]>((one) => {
          setOpened(false);
          choose({ plot: one });
        })}
      >
        {PLOTS.map((one) => (
          <Radio key={one} value={one} label={words.sheetPlots[one]} />
        ))}
      </RadioGroup>
      {plot === "time" && <LoadSteps record={record} choices={choices} choose={choose} takesFocus={isOpened} />}
      <Choices record={record} choices={choices} choose={choose} />

      {plot === "all" && (
        <SmallPlots
          record={record}
          axis={choices.axis}
          onOpen={(load) => {
            setOpened(true);
            choose({ plot: "time", load });
          }}
        />
      )}
      {drawn && !drawn.ok && (
        <>
          <Notice intent="info" title={words.nothingTitle}>
            {!isHeld && sentence(inWords(drawn.reason))}
          </Notice>
          <HeadNotice reading={reading} saysMissing />
        </>
      )}
      {spec && (
        <>
          {spec.refusal !== undefined && (
            <Notice intent="warning" title={words.refusedTitle}>
              {sentence(inWords(spec.refusal))}
            </Notice>
          )}
          <Figure spec={spec} />
          {spec.remarks.length > 0 && (
            <section aria-label={words.remarks}>
              <ul className={styles.list}>
                {spec.remarks.map(inWords).map((remark) => (
                  <li key={remark}>
                    <Text>{sentence(remark)}</Text>
                  </li>
                ))}
              </ul>
            </section>
          )}
          {plot === "time" && <KeptPicks record={record} choices={choices} />}
        </>
      )}
      {(spec || (plot === "all" && loadsRead(record).length > 0)) && (
        <InsertChart
          key={JSON.stringify(choices)}
          port={port}
          areMany={plot === "all"}
          chart={async () => chartOfSheet(reading, record, choices, spec)}
        />
      )}
      {spec && <PlotFiles spec={spec} words={[sheet, spec.title]} saves={port.savesFiles} />}
    </>
  );
}

interface ChoicesProps {
  readonly record: TestRecord;
  readonly choices: SheetChoices;
  readonly choose: (change: Partial<SheetChoices>) => void;
}

function Choices({ record, choices, choose }: ChoicesProps) {
  const styles = useStyles();
  const { plot, value = kindOf(record), at = pointsOf(record), method, axis, stressScale } = choices;
  if (plot === "cv") return null;
  const stage = stageDrawn(record, choices);
  if (plot === "swell" && !stage) return null;
  return (
    <div className={styles.fields}>
      {plot === "compression" && (
        <>
          <Choice
            label={words.curveIn}
            options={[
              ["e", words.plots.e],
              ["strain", words.plots.strain],
            ]}
            value={value}
            onChoose={(chosen) => choose({ value: chosen })}
          />
          <Choice
            label={words.pointsAt}
            options={optionsOf(words.points)}
            value={at}
            onChoose={(chosen) => choose({ at: chosen })}
          />
          <Choice
            label={words.method}
            options={METHOD_NAMES.map((name) => [name, words.methods[name]])}
            value={method}
            onChoose={(chosen) => choose({ method: chosen })}
          />
        </>
      )}
      {(plot === "time" || plot === "all") && (
        <Choice
          label={words.timeAxis}
          options={[
            ["log", words.plots.log],
            ["root", words.plots.root],
          ]}
          value={axis}
          onChoose={(chosen) => choose({ axis: chosen })}
        />
      )}
      {plot === "swell" && stage && (
        <Choice
          label={words.stage}
          options={stagesOf(record).map((load) => [
            String(load.number),
            words.loadName(load.number, stressInWords(record, load)),
          ])}
          value={String(stage.number)}
          onChoose={(chosen) => choose({ stage: Number(chosen) })}
        />
      )}
      {plot === "cAlpha" && (
        <Choice
          label={words.stressAxis}
          options={optionsOf(words.stressScales)}
          value={stressScale}
          onChoose={(chosen) => choose({ stressScale: chosen })}
        />
      )}
    </div>
  );
}

/** The buttons and the list that lead to another load. */
function LoadSteps({ record, choices, choose, takesFocus }: ChoicesProps & { readonly takesFocus: boolean }) {
  const styles = useStyles();
  const ref = useRef<HTMLSelectElement>(null);
  useEffect(() => {
    if (takesFocus) ref.current?.focus();
  }, [takesFocus]);
  const loads = loadsRead(record);
  const shown = loadDrawn(record, choices);
  if (!shown) return null;
  const index = loads.indexOf(shown);
  const step = (by: number): void => {
    const next = loads[index + by];
    if (next) choose({ load: next.number });
  };
  return (
    <div className={styles.steps}>
      <Field label={words.load}>
        <Select ref={ref} value={String(shown.number)} onChange={(_, { value }) => choose({ load: Number(value) })}>
          {loads.map((load) => (
            <option key={load.number} value={String(load.number)}>
              {words.loadName(load.number, stressInWords(record, load))}
            </option>
          ))}
        </Select>
      </Field>
      <div className={styles.row}>
        <Button onClick={() => step(-1)} disabledFocusable={index === 0}>
          {words.previous}
        </Button>
        <Button onClick={() => step(1)} disabledFocusable={index === loads.length - 1}>
          {words.next}
        </Button>
      </div>
    </div>
  );
}

/** The picks by hand of the load, with the person and the reason. */
function KeptPicks({ record, choices }: Omit<ChoicesProps, "choose">) {
  const styles = useStyles();
  const load = loadDrawn(record, choices);
  const picks = load ? picksOf(record, load.number) : [];
  if (picks.length === 0) return null;
  return (
    <section aria-label={words.picks} className={styles.column}>
      <Text weight="semibold">{words.picks}</Text>
      <ul className={styles.list}>
        {picks.map(([name, { after, reason, by }]) => (
          <li key={name}>
            <Text>{words.pick(text.review.picks[name], contentText(after ?? ""), reason, by)}</Text>
          </li>
        ))}
      </ul>
    </section>
  );
}
