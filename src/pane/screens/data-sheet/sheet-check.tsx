/**
 * Checks whether the active sheet is a complete data sheet, and helps to repair it: names, formulas, protection, a
 * firm's own file.
 */
import { Button, Text } from "@fluentui/react-components";
import { useMemo, useReducer } from "react";
import { isStopped, type Course } from "../../../workbook/in-slices";
import type { WorkbookPort } from "../../../workbook/port";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { FileButton } from "../../ui/file-button";
import { Going } from "../../ui/going";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { useCourse } from "../../live/use-course";
import { Findings } from "./findings";
import { attachName, attachReadings, layOutWorkings, mendCells, placesOf, writeMissing } from "./firm-cells";
import { FormulasStep } from "./formulas-step";
import { LayoutStep } from "./layout-step";
import { MissingNames } from "./missing-names";
import { NameStep } from "./name-step";
import { checked, loadTyped, missingNames, NOTHING_LOOKED_AT, shownGroups } from "./sheet-check-state";
import { enterFormulasAgain, insertOwnFile, lookAtSheet, NameTaken, protectSheet, type Done } from "./sheet-upkeep";

const words = text.check;

type Work = (course: Course) => Promise<Done>;

/** What the check has found, and `carryOut`, which does one task at a time, reports its result, and checks the sheet again. */
function useSheetCheck(port: WorkbookPort) {
  const [state, act] = useReducer(checked, NOTHING_LOOKED_AT);
  const course = useCourse();
  const carryOut = async (work: Work, sentence = words.looking, stopped?: string): Promise<void> => {
    if (state.isBusy) return;
    act({ do: "begin", sentence });
    try {
      const { sheet, ...told } = await work(course.begin());
      act({ do: "end", looked: await lookAtSheet(port, sheet), ...told });
    } catch (error) {
      const sentence = stopped !== undefined && isStopped(error) ? stopped : sentenceOf(error);
      act({ do: "fail", sentence, taken: error instanceof NameTaken ? state.name : undefined });
    }
    course.end();
  };
  return { state, act, course, carryOut };
}

function OwnFileStep({ isBusy, onFile }: { isBusy: boolean; onFile: (file: File) => void }) {
  const styles = useStyles();
  return (
    <Step title={words.own}>
      <Text block id="own-hint" className={styles.quiet}>
        {words.ownHint}
      </Text>
      <FileButton label={words.insert} accept=".xlsx,.xltx" isBusy={isBusy} describedBy="own-hint" onFile={onFile} />
    </Step>
  );
}

export function SheetCheckPart({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const { state, act, course, carryOut } = useSheetCheck(port);
  const { isBusy, looked, telling, name, taken, offer } = state;
  const missing = useMemo(() => missingNames({ looked }), [looked]);

  return (
    <section aria-labelledby="sheet-check" className={styles.column}>
      <Text as="h2" id="sheet-check" size={400} weight="semibold" block className={styles.title}>
        {words.heading}
      </Text>
      <Text block>{words.purpose}</Text>
      <div>
        <Button
          disabledFocusable={isBusy}
          onClick={() => void carryOut(async () => ({ sheet: await port.activeSheet() }))}
        >
          {words.look}
        </Button>
      </div>
      {telling && isBusy && <Going what={telling.sentence} {...course} />}
      {telling && !isBusy && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
      {looked && (
        <Findings
          looked={looked}
          isBusy={isBusy}
          onMend={(cells) => void carryOut(() => mendCells(port, { ...looked, cells }))}
        />
      )}
      <OwnFileStep
        isBusy={isBusy}
        onFile={(file) => void carryOut((going) => insertOwnFile(port, file, going), words.inserting)}
      />
      {looked && (
        <MissingNames
          find={state.find}
          first={looked.layout.first}
          groups={shownGroups(state)}
          chosen={name}
          onFind={(find) => act({ do: "find", text: find })}
          onChoose={(chosen) => act({ do: "choose", name: chosen })}
        />
      )}
      <NameStep
        name={name}
        missing={missing}
        taken={taken}
        offered={offer && placesOf(offer.cells)}
        isBusy={isBusy}
        onChoose={(chosen) => act({ do: "choose", name: chosen })}
        onAttach={(replace) => void carryOut(() => attachName(port, name, replace))}
        onReplace={() => offer && void carryOut(() => mendCells(port, offer))}
      />
      {looked && (
        <LayoutStep
          isBusy={isBusy}
          unwritten={looked.layout.unwritten.length}
          fromLoad={state.fromLoad}
          isLoadWrong={loadTyped(state) === undefined}
          onFromLoad={(typed) => act({ do: "from load", text: typed })}
          onReadings={(lie, isShared) => void carryOut(() => attachReadings(port, loadTyped(state), lie, isShared))}
          onWrite={() => void carryOut(() => writeMissing(port))}
          onLayOut={() => void carryOut(() => layOutWorkings(port))}
        />
      )}
      <FormulasStep
        isBusy={isBusy}
        isProtected={looked?.isProtected}
        onReenter={() =>
          void carryOut((going) => enterFormulasAgain(port, going), words.reentering, words.stoppedReentering)
        }
        onProtect={(on) => void carryOut(() => protectSheet(port, on))}
      />
    </section>
  );
}
