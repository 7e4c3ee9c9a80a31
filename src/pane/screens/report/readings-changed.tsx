/** Says that readings have changed since a report of the test was locked. */
import { useEffect, useMemo, useState } from "react";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { Notice } from "../../ui/notice";
import { issuesOf, readingsHash } from "./issues";

const words = text.report;

export function ReadingsChanged({ reading: { sheet, values, beside } }: { readonly reading: Reading }) {
  const issues = useMemo(() => issuesOf(sheet, beside), [sheet, beside]);
  const [hash, setHash] = useState<string>();
  const isLocked = issues.length > 0;
  useEffect(() => {
    if (!isLocked) return;
    let isCurrent = true;
    readingsHash(values).then(
      (now) => isCurrent && setHash(now),
      () => undefined,
    );
    return () => void (isCurrent = false);
  }, [values, isLocked]);
  const others = hash === undefined ? [] : issues.filter((issue) => issue.hash !== hash);
  if (others.length === 0) return null;
  return (
    <Notice intent="warning" title={words.readingsChanged}>
      {others.map(({ report, number, day }) => words.readingsChangedSince(number, report, day)).join(" ")}
    </Notice>
  );
}
