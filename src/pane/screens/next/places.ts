/** Finds the cells and the labels of the missing items on the sheet. */
import { boxesByName, rowOfLoad } from "../../../checks/integrity";
import type { Lacking } from "../../../checks/lacking";
import { labelOnSheet } from "../../live/sheet-language";
import { readingsName } from "../../../specification/readings";
import { filledIn } from "../../../specification/required";
import { addressInList, lengthOf } from "../../../workbook/lists";
import type { NamedValues } from "../../../record/record";
import type { SheetName } from "../../../workbook/port";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { OF_CURVE } from "../../../reduction/curve/picks";
import { beginsAt, type Lack, type Stage } from "./stages";

const words = text.next;

/** Returns the address of a cell by its name; for a column, by the row counted from 0, or by the load. */
export type PlaceOf = (name: string, at?: { readonly row: number } | { readonly load: number }) => string | undefined;

export function placesOf(names: readonly SheetName[], values: NamedValues): PlaceOf {
  const boxes = boxesByName(names);
  return (name, at = { row: 0 }) => {
    const box = boxes.get(name);
    if (!box) return undefined;
    const row = "load" in at ? rowOfLoad(values, at.load) : at.row;
    return addressInList(box, Math.min(row, lengthOf(box) - 1));
  };
}

/** A missing item as the screen shows it: its label, and its cell. */
export interface Item {
  readonly label: string;
  readonly address?: string;
}

export function itemOfCells({ names, loads = [] }: Lacking, placeOf: PlaceOf): Item {
  const [name] = names;
  const [load] = loads;
  const typed = filledIn(name, (cell) => placeOf(cell) !== undefined);
  const label = words.oneOf(names.map(labelOnSheet));
  return {
    label: loads.length > 0 ? words.ofLoads(label, loads) : label,
    address: (typed && placeOf(typed)) ?? placeOf(name, load === undefined ? undefined : { load }),
  };
}

/** The label and the cell of a lack; undefined for a lack that has a line of its own. */
export function itemOf(lack: Lack, placeOf: PlaceOf): Item | undefined {
  switch (lack.what) {
    case "cell":
      return itemOfCells(lack, placeOf);
    case "no loads":
      return { label: words.noLoads, address: placeOf("load_stress") };
    case "no readings":
      return { label: words.noReadings(lack.load), address: placeOf(readingsName(lack.load)) };
    case "cell at fault":
      return {
        label: inWords(lack.sentence),
        address: placeOf(lack.name, lack.row === undefined ? undefined : { row: lack.row - 1 }),
      };
    case "head of sheet":
      return { label: inWords(lack.sentence), address: lack.address };
    case "pick unsigned":
      return {
        label: words.unsignedPick(
          lack.row,
          lack.load === undefined ? "" : lack.load === OF_CURVE ? words.ofCurve : words.ofLoad(lack.load),
        ),
        address: placeOf("pick_reason", { row: lack.row - 1 }),
      };
    case "question":
      return { label: `${lack.id} ${inWords(lack.question)}` };
    case "no construction":
      return { label: words.noConstruction(lack.load, words.methods[lack.method], inWords(lack.reason)) };
    case "formulas changed": {
      const { count, sentence, address } = lack;
      return { label: count === 1 ? inWords(sentence) : words.formulasChanged(count, inWords(sentence)), address };
    }
    case "readings changed":
      return { label: words.readingsChanged(lack.number, lack.report, lack.day) };
    case "results follow":
    case "no report":
      return undefined;
  }
}

/** The line of a lack that is not an item of the list; undefined for the other lacks. */
export const lineOf = (lack: Lack): string | undefined =>
  lack.what === "results follow" ? words.follow(lack.count) : lack.what === "no report" ? words.noReport : undefined;

/** The address of the first cell of the sheet that a stage waits for. */
export function firstCell({ name, state, lacks }: Stage, placeOf: PlaceOf): string | undefined {
  const begin = state === "not begun" ? beginsAt(name) : undefined;
  if (begin !== undefined) return placeOf(begin);
  return lacks.map((lack) => itemOf(lack, placeOf)?.address).find((address) => address !== undefined);
}
