/**
 * Compares results with values calculated by hand and saves the signed comparison on a sheet of its own; it also shows
 * how each number is calculated.
 */
import type { WorkbookPort } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";
import { text } from "../../text";
import { HeadNotice } from "../head-notice";
import { RecordFrame } from "../record-frame";
import { Compare } from "./compare";
import { Working } from "./working";

const words = text.byHand;

export function ByHandScreen({ port }: { port: WorkbookPort }) {
  const followed = useTest(RECORD);
  const { reading } = followed;
  return (
    <RecordFrame words={words} followed={followed}>
      {reading && (
        <>
          <HeadNotice reading={reading} />
          <Compare key={`compare ${reading.id}`} port={port} reading={reading} />
          <Working key={`working ${reading.id}`} port={port} reading={reading} />
        </>
      )}
    </RecordFrame>
  );
}
