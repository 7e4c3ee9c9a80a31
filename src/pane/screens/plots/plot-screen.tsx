/** Plots of a data sheet, or of the selected range. */
import { Button, mergeClasses, Radio, RadioGroup, Spinner, Text } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { RangeSource } from "./range-plot";
import { SheetPlots } from "./sheet-plot";
import { useStyles } from "./plot-styles";
import { SheetChooser } from "../../ui/sheet-chooser";
import { text } from "../../text";
import { useRecord } from "../../live/use-record";

type Source = "sheet" | "range";

const words = text.plot;

export function PlotScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const [source, setSource] = useState<Source>();
  const { sheets, sheet, values, record, error, choose, again } = useRecord(port, source === "range");
  // At first the data sheet, where there is one.
  useEffect(() => {
    if (sheets) setSource((before) => before ?? (sheets.length > 0 ? "sheet" : "range"));
  }, [sheets]);
  return (
    <div className={styles.column}>
      <Text as="h1" size={400} weight="semibold" block className={styles.title}>
        {words.heading}
      </Text>
      <RadioGroup
        aria-label={words.source}
        className={mergeClasses(styles.switches, styles.source)}
        value={source ?? ""}
        onChange={(_, { value }) => setSource(value as Source)}
      >
        {(["sheet", "range"] as const).map((one) => (
          <Radio key={one} value={one} label={words.sources[one]} />
        ))}
      </RadioGroup>
      {source === "range" ? (
        <RangeSource port={port} />
      ) : (
        <>
          {error !== undefined && (
            <>
              <Notice intent="error">{error}</Notice>
              <div>
                <Button onClick={again}>{words.again}</Button>
              </div>
            </>
          )}
          <SheetChooser sheets={sheets} chosen={sheet} onChoose={choose} />
          {record && sheet !== undefined && values ? (
            <SheetPlots key={sheet} port={port} sheet={sheet} values={values} record={record} />
          ) : sheets?.length === 0 ? (
            <Notice intent="info" title={words.noSheetTitle}>
              {words.noSheet}
            </Notice>
          ) : (
            error === undefined && <Spinner label={words.readingSheet} labelPosition="after" size="tiny" />
          )}
        </>
      )}
    </div>
  );
}
