/** Shows the plots of a data sheet, or of the selected range. */
import { Button, mergeClasses, Radio, RadioGroup, Spinner } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { choosing } from "../../ui/choosing";
import { ScreenTitle } from "../../ui/parts";
import { Notice } from "../../ui/notice";
import { RangeSource } from "./range-plot";
import { SheetPlots } from "./sheet-plot";
import { useStyles } from "./plot-styles";
import { text } from "../../text";
import { useCurrentTest, useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";

type Source = "sheet" | "range";

const words = text.plot;

/** The source of the plot. Until the person chooses, it is the data sheet if there is one. */
function useSource(): [Source | undefined, (source: Source) => void] {
  const { tests } = useCurrentTest();
  const [chosen, setChosen] = useState<Source>();
  const [first, setFirst] = useState<Source>();
  useEffect(() => {
    if (tests) setFirst((before) => before ?? (tests.length > 0 ? "sheet" : "range"));
  }, [tests]);
  return [chosen ?? first, setChosen];
}

export function PlotScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const [source, setSource] = useSource();
  return (
    <div className={styles.column}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      <RadioGroup
        aria-label={words.source}
        className={mergeClasses(styles.switches, styles.source)}
        value={source ?? ""}
        onChange={choosing<Source>(setSource)}
      >
        {(["sheet", "range"] as const).map((one) => (
          <Radio key={one} value={one} label={words.sources[one]} />
        ))}
      </RadioGroup>
      {source === "range" ? <RangeSource port={port} /> : <SheetSource port={port} />}
    </div>
  );
}

function SheetSource({ port }: { port: WorkbookPort }) {
  const { tests, reading, error, again } = useTest(RECORD);
  return (
    <>
      {error !== undefined && (
        <>
          <Notice intent="error">{error}</Notice>
          <div>
            <Button onClick={() => void again()}>{words.again}</Button>
          </div>
        </>
      )}
      {reading ? (
        <SheetPlots key={reading.id} port={port} reading={reading} />
      ) : tests?.length === 0 ? (
        <Notice intent="info" title={words.noSheetTitle}>
          {words.noSheet}
        </Notice>
      ) : (
        error === undefined && <Spinner label={words.readingSheet} labelPosition="after" size="tiny" />
      )}
    </>
  );
}
