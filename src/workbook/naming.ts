/** Whether cells may be given a name: what every port asks before it gives one. */
import { blockAddresses } from "./picked";
import { faultOfName } from "./names";
import { WorkbookError } from "./port";

/** Refuses what Excel takes for no name of cells, several blocks, and no address at all. */
export function checkNaming(name: string, address: string): void {
  const isOneBlock = address.trim() !== "" && blockAddresses(address).length === 1;
  const fault = faultOfName(name) ?? (isOneBlock ? undefined : "choose one block of cells");
  if (fault) throw new WorkbookError(`"${address}" could not be named, and nothing was changed: ${fault}.`);
}
