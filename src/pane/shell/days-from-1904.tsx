/** Says that the workbook counts its days from 1904, so that nobody takes the dates of the pane for those of the sheet. */
import { useEffect, useState } from "react";
import type { WorkbookPort } from "../../workbook/port";
import { text } from "../text";
import { Notice } from "../ui/notice";

const words = text.daysFrom1904;

export function DaysFrom1904({ port }: { readonly port: WorkbookPort }) {
  const [isFrom1904, setIsFrom1904] = useState(false);
  useEffect(() => {
    // A host that does not answer is taken for one that counts from 1900, as nearly all workbooks do.
    port.countsFrom1904().then(setIsFrom1904, () => undefined);
  }, [port]);
  return isFrom1904 ? (
    <Notice intent="warning" title={words.title}>
      {words.off}
    </Notice>
  ) : null;
}
