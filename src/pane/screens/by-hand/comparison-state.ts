/** The comparison of a test in the making: which results, what was typed beside them, who signs. */
import { useMemo, useState } from "react";
import {
  COMPARISON_NAMES,
  comparisonRow,
  comparisonSheet,
  quantities,
  type Pair,
  type Quantity,
} from "../../../book/comparison";
import { languageNamed } from "../../../specification/text/language";
import { timeStamp } from "../../../workbook/time-stamp";
import { useDraft } from "../../live/use-test";
import { text } from "../../text";
import { contentText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { appendRows } from "../checks/workbook-answers";
import type { ScreenProps, Telling } from "./results-chosen";
import { isTypedValue, pairOf, type Typed } from "./typed-values";

const words = text.byHand;

/** A line that was added: a result, what was typed beside it, and both values where both are numbers. */
export interface Line {
  readonly quantity: Quantity;
  readonly typed: Typed;
  readonly pair: Pair | undefined;
}

export function useComparison({ port, reading: { id, sheet, values, record } }: ScreenProps) {
  const all = useMemo(() => quantities(record, values), [record, values]);
  const [typedLines, setLines] = useDraft<readonly Typed[]>(id, "by hand", []);
  const [by, setBy] = useDraft(id, "by hand, by", "");
  const [telling, setTelling] = useState<Telling>();
  const [busy, setBusy] = useState(false);

  const language = languageNamed(record.sheetLanguage);
  const lines = typedLines.flatMap((typed): Line[] => {
    const quantity = all.find(({ key }) => key === typed.key);
    return quantity ? [{ quantity, typed, pair: pairOf(quantity, typed) }] : [];
  });
  const carryOut = async (work: () => Promise<Telling>): Promise<void> => {
    if (busy) return;
    setBusy(true);
    try {
      setTelling(await work());
    } catch (error) {
      setTelling({ intent: "error", sentence: sentenceOf(error) });
    }
    setBusy(false);
  };
  return {
    all,
    lines,
    /** The results that have no line yet. */
    left: all.filter(({ key }) => !typedLines.some((one) => one.key === key)),
    by,
    setBy,
    telling,
    busy,
    add: (key: string): void => setLines((before) => [...before, { key, byHand: "" }]),
    remove: (key: string): void => setLines((before) => before.filter((one) => one.key !== key)),
    change: (key: string, part: Partial<Typed>): void => {
      setLines((before) => before.map((one) => (one.key === key ? { ...one, ...part } : one)));
      setTelling(undefined);
    },
    /** Takes the numbers of the selected cells as the values by hand, line after line; a text that is a number keeps its zeros. */
    take: () =>
      carryOut(async () => {
        const { values: cells, address } = await port.selection();
        const numbers = cells.flat().filter((cell) => typeof cell === "number" || isTypedValue(String(cell)));
        if (numbers.length === 0) return { intent: "warning", sentence: words.tookNone };
        const count = Math.min(numbers.length, lines.length);
        const taken = new Map(
          lines.slice(0, count).map(({ quantity }, index) => [quantity.key, contentText(numbers[index] ?? "")]),
        );
        setLines((before) => before.map((one) => ({ ...one, byHand: taken.get(one.key) ?? one.byHand })));
        return { intent: "success", sentence: words.took(count, address) };
      }),
    /** Writes the pairs of values to the sheet of comparisons. */
    sign: () =>
      carryOut(async () => {
        const pairs = lines.flatMap(({ pair }) => pair ?? []);
        if (pairs.length === 0) return { intent: "warning", sentence: words.needValues };
        if (!by.trim()) return { intent: "warning", sentence: words.needBy };
        const when = timeStamp(new Date());
        const written = pairs.map((pair) => comparisonRow(sheet, pair, by.trim(), when, language));
        const place = await appendRows(port, COMPARISON_NAMES, () => comparisonSheet(language), written);
        return { intent: "success", sentence: words.signed(pairs.length, sheet, place) };
      }),
  };
}
