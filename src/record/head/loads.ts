/** What looks wrong in the readings of a load. */
import { english, type Message } from "../../reduction/message";
import * as sentences from "../../specification/sentences/of-head";
import { STRESS_LEAPS } from "../../specification/sentences/of-remarks";
import { readingsName, STRESS_OF_ROW, timesName } from "../../specification/readings";
import type { TestRecord } from "../record";
import { jumpsIn, rowAt } from "../reduced-test";
import { firstSlip, numbersOutside } from "../sheet-remarks";
import { type HeadSentence, Cells } from "./cells";

/** The first load that has what looks like a slip; none if the reason why the curve is refused names the stress of this load. */
export function ofSlip(cells: Cells, record: TestRecord, refusal: Message | undefined): HeadSentence[] {
  const found = firstSlip(record);
  if (!found) return [];
  const { number, row } = found.load;
  const isSaid = refusal && english(refusal).includes(STRESS_OF_ROW.join(String(row)));
  if (isSaid && found.slip.said === STRESS_LEAPS) return [];
  const address = {
    moment: () => cells.address("load_started", row),
    times: () => cells.address(timesName(number)),
    stress: () => cells.address("load_stress", row),
    readings: () => cells.address(readingsName(number)),
  }[found.slip.of]();
  return [{ kind: "unusual", sentence: sentences.ofLoad(number, found.slip.said), address }];
}

/** The first load whose readings jump, with its first reading after the jump. */
export function ofJump(cells: Cells, record: TestRecord): HeadSentence[] {
  const [found] = jumpsIn(record);
  if (!found) return [];
  const { load, jump } = found;
  const { number } = load.record;
  const address = cells.address(readingsName(number), rowAt(load.record, jump.time));
  return [{ kind: "jump", sentence: sentences.ofLoad(number, jump.said), address }];
}

/** The first load of which a row has a number that no time, or no reading, can be. */
export function ofReadings(cells: Cells, { loads }: TestRecord): HeadSentence[] {
  const load = loads.find((one) => numbersOutside(one).length > 0);
  const [found] = load ? numbersOutside(load) : [];
  if (!load || !found) return [];
  const cell = cells.named(found.isTime ? timesName(load.number) : readingsName(load.number), found.row);
  return [{ kind: "entry", sentence: sentences.ofLoad(load.number, found.said), address: cell.address, cells: [cell] }];
}
