/**
 * The contract of `WorkbookPort`: what every port does, in every host. It runs on the adapters and on the fake of the
 * pane's tests, so that the fake behaves like the adapters.
 */
import type { Host } from "./contract-bench";
import { cellsContract } from "./contract-cells";
import { changesContract } from "./contract-changes";
import { sheetsContract } from "./contract-sheets";
import { upkeepContract } from "./contract-upkeep";
import { writingContract } from "./contract-writing";

export function contract(host: Host): void {
  describe(`the contract of the port, ${host.called}`, () => {
    sheetsContract(host);
    cellsContract(host);
    writingContract(host);
    upkeepContract(host);
    changesContract(host);
  });
}
