/** Shows the findings about a sheet, sorted by weight, and the formulas that can be repaired. */
import { Button, Text } from "@fluentui/react-components";
import type { CellFinding } from "../../../checks/integrity";
import type { Finding } from "../../../datasheet";
import type { PlacedFormula } from "../../../specification/placed-formulas";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { FaultList, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import type { LookedAt } from "./sheet-check-state";

const words = text.check;

function FindingList({ heading, findings }: { heading: string; findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <FaultList heading={heading} level="h3">
      {findings.map((finding) => {
        const said = inWords(finding.sentence);
        return <li key={said}>{said}</li>;
      })}
    </FaultList>
  );
}

export type OnMend = (cells: readonly PlacedFormula[]) => void;

function FormulaList({
  formulas,
  isBusy,
  onMend,
}: {
  formulas: readonly CellFinding[];
  isBusy: boolean;
  onMend: OnMend;
}) {
  if (formulas.length === 0) return null;
  return (
    <FaultList heading={words.faulty(formulas.length)} level="h3">
      {formulas.map(({ address, sentence: message, mend }) => (
        <li key={address}>
          {`${sentence(inWords(message))}. `}
          {mend && (
            <Button
              size="small"
              disabledFocusable={isBusy}
              aria-label={words.mendAt(address)}
              onClick={() => onMend(mend)}
            >
              {words.mend}
            </Button>
          )}
        </li>
      ))}
    </FaultList>
  );
}

export interface FindingsProps {
  readonly looked: LookedAt;
  readonly isBusy: boolean;
  readonly onMend: OnMend;
}

export function Findings({ looked: { sheet, check, formulas }, isBusy, onMend }: FindingsProps) {
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
      {stop.length + consider.length + formulas.length === 0 && <Notice intent="success">{words.whole}</Notice>}
      <FindingList heading={words.stop(stop.length)} findings={stop} />
      <FormulaList formulas={formulas} isBusy={isBusy} onMend={onMend} />
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
