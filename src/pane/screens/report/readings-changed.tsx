/** Says that readings have changed since a report of the test was locked. */
import { useEffect, useMemo, useState } from "react";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { Notice } from "../../ui/notice";
import { issuesOf, readingsHash, type IssueOf } from "./issues";

const words = text.report;

/** The issues whose readings are not those of the sheet, oldest first, and the last issue if it is one of them. */
function useIssues({ sheet, values, beside }: Reading): { readonly others: IssueOf[]; readonly last?: IssueOf } {
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
  const last = issues.at(-1);
  return { others, ...(last && others.includes(last) && { last }) };
}

/** The last issue of a report of the test, if readings were changed since. */
export const useChangedIssue = (reading: Reading): IssueOf | undefined => useIssues(reading).last;

export function ReadingsChanged({ reading }: { readonly reading: Reading }) {
  const { others } = useIssues(reading);
  if (others.length === 0) return null;
  return (
    <Notice intent="warning" title={words.readingsChanged}>
      {others.map(({ report, number, day }) => words.readingsChangedSince(number, report, day)).join(" ")}
    </Notice>
  );
}
