/**
 * The engine's evaluation with the corrections that the add-in needs.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";
import { shownBySize } from "../formats";
import { correct } from "./corrected";
import { Evaluation, type Evaluated } from "./engine-parts";
import { formulaPlaces, isMakingFile } from "./export";

/** Shows numbers with a format that follows their size; calculated and stored values do not change. */
class BySizeEvaluation extends Evaluation {
  static override getters = Evaluation.getters;

  constructor(...config: never[]) {
    super(...config);
    correct(this.evaluator);
  }

  override handle(command: { readonly type: string }): void {
    if (!(isMakingFile() && command.type === "EVALUATE_CELLS")) super.handle(command);
  }

  /** The engine exports the formulas only; the add-in writes all other cells of a file itself. */
  override exportForExcel(data: unknown): void {
    const places = formulaPlaces(this.evaluator.getters);
    this.evaluator.getEvaluatedPositions = () => places;
    super.exportForExcel(data);
    Reflect.deleteProperty(this.evaluator, "getEvaluatedPositions");
  }

  override getEvaluatedCell(position: unknown): Evaluated {
    const cell = super.getEvaluatedCell(position);
    const format = shownBySize(cell.format, cell.value);
    return format === undefined
      ? cell
      : ({
          ...cell,
          formattedValue: helpers.formatValue(cell.value as number, {
            format,
            locale: this.evaluator.getters.getLocale(),
          }),
        } as Evaluated);
  }
}

registries.coreViewsPluginRegistry.replace("evaluation", BySizeEvaluation as never);
