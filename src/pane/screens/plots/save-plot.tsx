/** Saves a plot for a report as SVG or PNG, or copies it. */
import { inWords } from "../../text/messages";
import { Button, Field, Select, Text } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { paperPlot, svgFile } from "../../../plots/paper";
import type { PlotSpec } from "../../../plots/spec";
import { Notice } from "../../ui/notice";
import { copyPicture, copyText, DOTS_PER_INCH, download, fileName, pixelsOf, pngOf, svgBlob } from "../../ui/save-file";
import { useStyles } from "./plot-styles";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { TextToCopy } from "../../ui/text-to-copy";

const words = text.plot;

/**
 * Widths in mm that fit on a page: one column, two thirds of a page, and the text width of A4. Common practice, no
 * source.
 */
const WIDTHS_MM = [85, 120, 160] as const;

export interface PlotFilesProps {
  readonly spec: PlotSpec;
  /** The parts of the file name: sheet, plot. */
  readonly words: readonly string[];
  /** True if the host lets the pane save a file. */
  readonly saves: boolean;
}

export function PlotFiles({ spec, words: called, saves }: PlotFilesProps) {
  const styles = useStyles();
  const [widthMm, setWidth] = useState<number>(WIDTHS_MM[2]);
  const [said, setSaid] = useState<string>();
  const [failed, setFailed] = useState<string>();
  const [byHand, setByHand] = useState<string>();
  const name = called.join();
  // The message about another plot is removed.
  useEffect(() => {
    setSaid(undefined);
    setFailed(undefined);
    setByHand(undefined);
  }, [name]);
  const file = (): string => svgFile(paperPlot(spec, { widthMm, heading: called.join(", "), inWords }));

  const attempt = (act: () => Promise<string> | string, otherwise?: () => string) => async (): Promise<void> => {
    setSaid(undefined);
    setFailed(undefined);
    setByHand(undefined);
    try {
      setSaid(await act());
    } catch (error) {
      setFailed(otherwise ? otherwise() : sentenceOf(error));
    }
  };
  const saveSvg = attempt(() => {
    const saved = fileName(called, "svg");
    download(svgBlob(file()), saved);
    return words.saved(saved);
  });
  const savePng = attempt(async () => {
    const saved = fileName(called, "png");
    download(await pngOf(file(), widthMm), saved);
    return words.saved(saved);
  });
  const copySvg = attempt(
    async () => {
      await copyText(file());
      return words.copied;
    },
    () => {
      setByHand(file());
      return words.copyByHand;
    },
  );
  const copyPng = attempt(
    async () => {
      await copyPicture(pngOf(file(), widthMm));
      return words.copied;
    },
    () => (saves ? words.noPictureCopy : words.noPictureAtAll),
  );

  return (
    <section aria-label={words.filesHeading} className={styles.files}>
      <Field label={words.width} hint={words.pixels(pixelsOf(widthMm), DOTS_PER_INCH)} className={styles.narrow}>
        <Select value={String(widthMm)} onChange={(_, { value }) => setWidth(Number(value))}>
          {WIDTHS_MM.map((width) => (
            <option key={width} value={String(width)}>
              {words.widths[width]}
            </option>
          ))}
        </Select>
      </Field>
      <div className={styles.row}>
        {saves && <Button onClick={saveSvg}>{words.saveSvg}</Button>}
        {saves && <Button onClick={savePng}>{words.savePng}</Button>}
        <Button onClick={copyPng}>{words.copyPng}</Button>
        <Button onClick={copySvg}>{words.copySvg}</Button>
      </div>
      <Text size={200} className={styles.quiet}>
        {saves ? words.filesHint : words.filesHintNoSaving}
      </Text>
      {said !== undefined && <Notice intent="info">{said}</Notice>}
      {failed !== undefined && <Notice intent="warning">{failed}</Notice>}
      {byHand !== undefined && <TextToCopy label={words.svgText} content={byHand} />}
    </section>
  );
}
