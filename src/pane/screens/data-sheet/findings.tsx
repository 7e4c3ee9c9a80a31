/** What was found of a sheet, by its weight. */
import { Text } from "@fluentui/react-components";
import type { Finding } from "../../../datasheet";
import { text } from "../../text";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import type { LookedAt } from "./sheet-check-state";

const words = text.check;

function FindingList({ heading, findings }: { heading: string; findings: readonly Finding[] }) {
  const styles = useStyles();
  if (findings.length === 0) return null;
  return (
    <section aria-label={heading}>
      <Text as="h3" weight="semibold" block className={styles.title}>
        {heading}
      </Text>
      <ul className={styles.faults} tabIndex={0} role="list" aria-label={heading}>
        {findings.map(({ sentence }) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

export function Findings({ looked: { sheet, check } }: { looked: LookedAt }) {
  const styles = useStyles();
  const of = (weight: Finding["weight"]) => check.findings.filter((finding) => finding.weight === weight);
  const [stop, consider, news] = [of("stop"), of("look"), of("news")];
  return (
    <Step title={words.of(sheet)}>
      {check.isDataSheet && (
        <Text block className={styles.quiet}>
          {words.version(check.version)}
        </Text>
      )}
      {stop.length + consider.length === 0 && <Notice intent="success">{words.whole}</Notice>}
      <FindingList heading={words.stop(stop.length)} findings={stop} />
      <FindingList heading={words.consider(consider.length)} findings={consider} />
      <FindingList heading={words.news} findings={news} />
      {news.length > 0 && (
        <Text block className={styles.quiet}>
          {words.newsHint}
        </Text>
      )}
    </Step>
  );
}
