/** Inserts a data sheet, blank or the demonstration, or the sheet of a series of wetted specimens. */
import { Button, Field, Input, makeStyles, Radio, RadioGroup, Text, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { LOADS, MOST_LOADS } from "../../../specification/readings";
import type { SheetLanguage } from "../../../specification/text/language";
import type { SheetPlan, WorkbookPort } from "../../../workbook/port";
import { SheetLanguageField, useSheetLanguage } from "../sheet-language-field";
import { newSheet, type NewSheet } from "../../live/new-sheet";
import { choosing } from "../../ui/choosing";
import { ScreenTitle } from "../../ui/parts";
import { Going } from "../../ui/going";
import { Notice } from "../../ui/notice";
import { useCourse } from "../../live/use-course";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";

export type System = "SI" | "US";

/** The sheets that a person can insert. */
export interface Sheets {
  readonly blankSheet: (
    system: System,
    options: { readonly loads: number; readonly language: SheetLanguage },
  ) => SheetPlan;
  readonly demoSheet: (system: System, language: SheetLanguage) => SheetPlan;
  /** The sheet for a series of specimens wetted under different stresses. */
  readonly wettingSeries: (system: System, language: SheetLanguage) => SheetPlan;
}

const useStyles = makeStyles({
  column: { display: "flex", flexDirection: "column", gap: "16px" },
  action: { display: "flex", flexDirection: "column", gap: "4px", alignItems: "flex-start" },
  hint: { color: tokens.colorNeutralForeground2 },
});

type State = { at: "rest" } | { at: "busy" } | { at: "done"; made: NewSheet } | { at: "error"; sentence: string };

export function SheetScreen({ port, sheets }: { port: WorkbookPort; sheets: Sheets }) {
  const styles = useStyles();
  const [system, setSystem] = useState<System>("SI");
  const language = useSheetLanguage();
  const [typedLoads, setTypedLoads] = useState(String(LOADS));
  const loads = Number(typedLoads);
  const loadsWrong = !Number.isInteger(loads) || loads < 1 || loads > MOST_LOADS;
  const [state, setState] = useState<State>({ at: "rest" });
  const busy = state.at === "busy";
  const work = useCourse();

  const insert = async (plan: () => SheetPlan): Promise<void> => {
    if (busy) return;
    setState({ at: "busy" });
    try {
      setState({ at: "done", made: await newSheet(port, plan(), text.sheet.done, work.begin()) });
    } catch (error) {
      setState({ at: "error", sentence: sentenceOf(error) });
    }
    work.end();
  };

  const action = (name: string, hint: string, id: string, primary: boolean, ready: boolean, plan: () => SheetPlan) => (
    <div className={styles.action}>
      <Button
        appearance={primary ? "primary" : "secondary"}
        disabledFocusable={busy || !ready}
        aria-describedby={id}
        onClick={() => ready && insert(plan)}
      >
        {name}
      </Button>
      <Text id={id} size={200} className={styles.hint}>
        {hint}
      </Text>
    </div>
  );

  return (
    <div className={styles.column}>
      <ScreenTitle>{text.sheet.heading}</ScreenTitle>
      <Text block>{text.sheet.promise}</Text>
      <Field label={text.sheet.units}>
        <RadioGroup value={system} onChange={choosing<System>(setSystem)}>
          <Radio value="SI" label={text.sheet.SI} />
          <Radio value="US" label={text.sheet.US} />
        </RadioGroup>
      </Field>
      <SheetLanguageField />
      <Field
        label={text.sheet.loads}
        hint={text.sheet.loadsHint(MOST_LOADS)}
        validationState={loadsWrong ? "error" : "none"}
        validationMessage={loadsWrong ? text.sheet.loadsWrong(MOST_LOADS) : undefined}
      >
        <Input
          inputMode="numeric"
          value={typedLoads}
          onChange={(_, { value }) => setTypedLoads(value.trim())}
          input={{ size: 4 }}
        />
      </Field>
      {action(text.sheet.blank, text.sheet.blankHint, "blank-hint", true, !loadsWrong, () =>
        sheets.blankSheet(system, { loads, language }),
      )}
      {action(text.sheet.demo, text.sheet.demoHint, "demo-hint", false, true, () => sheets.demoSheet(system, language))}
      {action(text.sheet.series, text.sheet.seriesHint, "series-hint", false, true, () =>
        sheets.wettingSeries(system, language),
      )}
      {busy && <Going what={text.sheet.busy} {...work} />}
      {state.at === "done" && <Notice intent={state.made.intent}>{state.made.sentence}</Notice>}
      {state.at === "error" && <Notice intent="error">{state.sentence}</Notice>}
    </div>
  );
}
