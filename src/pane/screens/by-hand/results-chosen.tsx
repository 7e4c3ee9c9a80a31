/** Chooses whose results are shown: those of the test as a whole, or of one load. */
import { Field, Select } from "@fluentui/react-components";
import type { WorkbookPort } from "../../../workbook/port";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";

const words = text.byHand;

export interface ScreenProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
}

/** What the screen says of the last thing that was done. */
export type Telling = { readonly intent: "success" | "error" | "warning"; readonly sentence: string };

/** The loads that the lines are of, each once, in their order. */
export const loadsOf = (lines: readonly { readonly load?: number }[]): number[] => [
  ...new Set(lines.flatMap(({ load }) => (load === undefined ? [] : [load]))),
];

/** Whether a line is of the load that is chosen; "" is the test as a whole. */
export const isOf =
  (load: string) =>
  (line: { readonly load?: number }): boolean =>
    String(line.load ?? "") === load;

interface ResultsOfProps {
  /** The number of a load; "" for the test as a whole. */
  readonly load: string;
  readonly loads: readonly number[];
  readonly onChoose: (load: string) => void;
}

export const ResultsOf = ({ load, loads, onChoose }: ResultsOfProps) => (
  <Field label={words.of}>
    <Select value={load} onChange={(_, { value }) => onChoose(value)}>
      <option value="">{words.test}</option>
      {loads.map((number) => (
        <option key={number} value={String(number)}>
          {words.load(number)}
        </option>
      ))}
    </Select>
  </Field>
);
