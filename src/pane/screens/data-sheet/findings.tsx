/** Shows the findings about a sheet, sorted by weight, and the formulas that can be repaired. */
import { Button, Text } from "@fluentui/react-components";
import type { CellFinding } from "../../../checks/integrity";
import type { Finding } from "../../../datasheet";
import type { PlacedFormula } from "../../../specification/placed-formulas";
import type { SheetLanguage } from "../../../specification/text/language";
import { inWordsOfSheet } from "../../live/sheet-language";
import { text } from "../../text";
import { sentence } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { FaultList, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import type { LookedAt } from "./sheet-check-state";

const words = text.check;

interface FindingListProps {
  readonly heading: string;
  readonly language: SheetLanguage;
  readonly findings: readonly Finding[];
}

function FindingList({ heading, language, findings }: FindingListProps) {
  if (findings.length === 0) return null;
  return (
    <FaultList heading={heading} level="h3">
      {findings.map((finding) => {
        const said = inWordsOfSheet(language)(finding.sentence);
        return <li key={said}>{said}</li>;
      })}
    </FaultList>
  );
}

export type OnMend = (cells: readonly PlacedFormula[]) => void;

interface FormulaListProps {
  readonly formulas: readonly CellFinding[];
  readonly language: SheetLanguage;
  readonly isBusy: boolean;
  readonly onMend: OnMend;
}

function FormulaList({ formulas, language, isBusy, onMend }: FormulaListProps) {
  if (formulas.length === 0) return null;
  return (
    <FaultList heading={words.faulty(formulas.length)} level="h3">
      {formulas.map(({ address, sentence: message, mend }) => (
        <li key={address}>
          {`${sentence(inWordsOfSheet(language)(message))}. `}
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

export function Findings({ looked: { sheet, language, check, formulas }, isBusy, onMend }: FindingsProps) {
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
      <FindingList heading={words.stop(stop.length)} language={language} findings={stop} />
      <FormulaList formulas={formulas} language={language} isBusy={isBusy} onMend={onMend} />
      <FindingList heading={words.consider(consider.length)} language={language} findings={consider} />
      <FindingList heading={words.news} language={language} findings={news} />
      {news.length > 0 && (
        <Text block className={styles.quiet}>
          {words.newsHint}
        </Text>
      )}
    </Step>
  );
}
