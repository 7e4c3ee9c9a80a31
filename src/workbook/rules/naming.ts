/** Whether cells may get a name: every port asks this before it gives one. */
import { say, verbatim } from "../../reduction/message";
import { blockAddresses } from "../picked";
import { faultOfName } from "./names";
import { WorkbookError } from "../port";

/** Refuses a name that Excel does not accept, several blocks of cells, and text that is not an address. */
export function checkNaming(name: string, address: string): void {
  const isOneBlock = address.trim() !== "" && blockAddresses(address).length === 1;
  const fault = faultOfName(name) ?? (isOneBlock ? undefined : say`choose one block of cells`);
  if (fault)
    throw new WorkbookError(say`"${verbatim(address)}" could not be named, and nothing was changed: ${fault}.`);
}
