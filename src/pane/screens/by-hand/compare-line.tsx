/** One line of the comparison: the result, the value by hand, the tolerance, and whether they agree. */
import { Button, Text } from "@fluentui/react-components";
import { compare, type Compared } from "../../../book/agreement";
import type { Pair, Quantity } from "../../../book/comparison";
import { labelOnSheet, languageOfLabels } from "../../live/sheet-language";
import { text } from "../../text";
import { numberText } from "../../text/number";
import { NumberField } from "../../ui/number-field";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { useStyles } from "./by-hand-styles";
import { isInPercent, named, percentOf, said, usualTolerance, type Typed } from "./typed-values";

const words = text.byHand;

interface CompareLineProps {
  readonly quantity: Quantity;
  readonly typed: Typed;
  readonly pair: Pair | undefined;
  readonly change: (part: Partial<Typed>) => void;
  readonly remove: () => void;
}

export function CompareLine({ quantity, typed, pair, change, remove }: CompareLineProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { drawn } = quantity;
  const found = pair && compare(quantity.value, pair.byHand, pair.tolerance);
  const byDrawing = pair && drawn !== undefined ? compare(drawn, pair.byHand, pair.tolerance) : undefined;
  const refused = typed.byHand.trim() !== "" && !pair;
  return (
    <li className={styles.line}>
      <Text weight="semibold">
        <span lang={languageOfLabels()}>{labelOnSheet(quantity.name)}</span>
        {quantity.load !== undefined && `, ${words.load(quantity.load)}`}
      </Text>
      <Text className={shared.quiet}>
        {drawn !== undefined && `${words.drawn(said(drawn, quantity))}; `}
        {words.onSheet(said(quantity.value, quantity))}
      </Text>
      <div className={styles.pair}>
        <NumberField
          label={words.value(named(quantity))}
          hint={[usualTolerance(quantity), isInPercent(quantity) && words.orPercent].filter(Boolean).join("; ")}
          value={typed.byHand}
          fault={refused ? words.notNumber : undefined}
          contentAfter={quantity.unit ? <span className={styles.unit}>{quantity.unit}</span> : undefined}
          onType={(byHand) => change({ byHand })}
        />
        <NumberField
          label={words.tolerance}
          aria-label={`${words.tolerance} (${named(quantity)})`}
          value={typed.percent ?? percentOf((pair ?? quantity).tolerance)}
          onType={(percent) => change({ percent })}
        />
      </div>
      {byDrawing && <Found of={words.withDrawn} found={byDrawing} quantity={quantity} />}
      {found && <Found of={byDrawing && words.withSheet} found={found} quantity={quantity} />}
      <div>
        <Button size="small" appearance="subtle" aria-label={words.removeOf(named(quantity))} onClick={remove}>
          {words.remove}
        </Button>
      </div>
    </li>
  );
}

interface FoundProps {
  /** The value that the value by hand was compared with, if there is more than one. */
  readonly of: string | undefined;
  readonly found: Compared;
  readonly quantity: Quantity;
}

function Found({ of, found, quantity }: FoundProps) {
  const styles = useStyles();
  return (
    <Text>
      {of !== undefined && `${of} `}
      <span className={styles.result}>{found.agrees ? words.agrees : words.differs}</span>
      {`: ${words.difference(said(found.difference, quantity), numberText(found.relative, "0.0%"))}`}
    </Text>
  );
}
