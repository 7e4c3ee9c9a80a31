/** Keeps the choices for the plot of a selected range: the plot, its columns, units, height, drainage, method. */
import { useEffect, useState } from "react";
import { nth } from "../../../reduction/numeric/lists";
import { typedNumber } from "../../ui/typed-number";
import {
  DEFAULT_CHOICES,
  guessLines,
  guessPlot,
  guessUnits,
  isTimeCurve,
  type Choices,
  type PlotKind,
} from "./range-drawing";
import type { Range } from "./selected-range";

export interface RangeChoices {
  readonly choices: Choices;
  readonly choose: (change: Partial<Choices>) => void;
  readonly choosePlot: (plot: PlotKind) => void;
  /** The indices of the lines of the range that are plotted: times or stresses, then readings or values. */
  readonly lines: readonly [first: number, second: number];
  readonly chooseLines: (lines: readonly [first: number, second: number]) => void;
  /** The height as it was typed, and the number in it; `isWrong` if that is not a height. */
  readonly height: { readonly typed: string; readonly number: number | undefined; readonly isWrong: boolean };
  readonly typeHeight: (typed: string) => void;
}

/** Headings of the range that name their data decide; otherwise the earlier choice of the person stays. */
export function useRangeChoices(range: Range): RangeChoices {
  const [choices, setChoices] = useState<Choices>(DEFAULT_CHOICES);
  const [typed, typeHeight] = useState("");
  const [columns, chooseLines] = useState<readonly [number, number]>([0, 1]);
  const choose = (change: Partial<Choices>): void => setChoices((before) => ({ ...before, ...change }));

  const headings = range.lines.map(({ heading }) => heading).join("\n");
  useEffect(() => {
    const plot = guessPlot(range, choices.plot);
    const guessed = guessLines(range, plot);
    const [first, second] = [nth(range.lines, guessed[0]), nth(range.lines, guessed[1])];
    chooseLines(guessed);
    choose({ plot, ...guessUnits(first.heading, second.heading) });
    // A new guess is made only for another range or other headings, not when the person chooses a plot.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [range.sheet, range.address, headings]);
  const choosePlot = (plot: PlotKind): void => {
    choose({ plot });
    if (isTimeCurve(plot) !== isTimeCurve(choices.plot) || !isTimeCurve(plot)) chooseLines(guessLines(range, plot));
  };

  const last = range.lines.length - 1;
  const number = typedNumber(typed);
  return {
    choices,
    choose,
    choosePlot,
    lines: [Math.min(columns[0], last), Math.min(columns[1], last)],
    chooseLines,
    height: { typed, number, isWrong: number !== undefined && !(number > 0) },
    typeHeight,
  };
}
