/** The classification of the soil: what was typed, and what follows from it. A sheet that has none gets no such part. */
import { say } from "../../reduction/message";
import { FORMATS, type Shown } from "../page/cells";
import type { Block } from "../page/page";
import type { DataCells } from "../page/source";
import { panels, section } from "./fields";

const TYPED = ["liquid_limit", "plastic_limit", "fines_content", "clay_content", "organic_content", "sensitivity"];

export function classification(cells: DataCells): Block[] {
  if (TYPED.every((name) => cells.isBlank(name))) return [];
  const t = cells.words;
  const measured = (...shown: readonly Shown[]): Shown[] =>
    shown.filter(({ name }) => name !== undefined && !cells.isBlank(name));
  const { ratio, water } = FORMATS;
  return section(
    t(say`Classification of the soil`),
    panels(
      cells,
      measured(
        { label: t(say`Liquid limit`), name: "liquid_limit", format: water },
        { label: t(say`Plastic limit`), name: "plastic_limit", format: water },
        { label: t(say`Fines`), name: "fines_content", format: water },
        { label: t(say`Clay`), name: "clay_content", format: water },
        { label: t(say`Organic content`), name: "organic_content", format: water },
        { label: t(say`Sensitivity`), name: "sensitivity", format: "0.0##" },
      ),
      measured(
        { label: t(say`Plasticity index`), name: "plasticity_index", format: water },
        { label: t(say`Liquidity index`), name: "liquidity_index", format: FORMATS.gravity },
        { label: t(say`Activity`), name: "activity", format: FORMATS.gravity },
        { label: t(say`Void index at e0`), name: "void_index", format: FORMATS.gravity },
        { label: t(say`e*100, by correlation`), name: "intrinsic_void_ratio", format: ratio },
        { label: t(say`C*c, by correlation`), name: "intrinsic_index", format: ratio },
      ),
    ),
  );
}
