/**
 * Requirement sets: those of this Excel, those that manifest.xml declares, and those that were asked for before use.
 */
import { DECLARED, isAtLeast } from "./manifest";
import { Refusal } from "./refusal";
import type { Platform } from "./objects/being";
import type { Requirement } from "./typings/table";

/** Sets that every Excel of today has; the stand-in sets the version of ExcelApi. */
const COMMON: Readonly<Record<string, string>> = {
  SharedRuntime: "1.2",
  CustomFunctionsRuntime: "1.4",
  CustomFunctions: "1.4",
  DelayForCellEdit: "1.1",
  DialogApi: "1.2",
  RibbonApi: "1.2",
  KeyboardShortcuts: "1.1",
};

export class Requirements {
  private readonly asked: Record<string, string> = {};

  constructor(
    /** "1.17" */
    readonly excelApi: string,
    readonly platform: Platform,
    private readonly declared: Readonly<Record<string, string>> = DECLARED,
  ) {}

  has(set: string, version = "1.1"): boolean {
    if (set === "ExcelApi") return isAtLeast(this.excelApi, version);
    if (set === "ExcelApiOnline") return this.platform === "web" && version === "1.1";
    if (set === "ExcelApiDesktop")
      return this.platform !== "web" && version === "1.1" && isAtLeast(this.excelApi, "1.17");
    return set in COMMON && isAtLeast(COMMON[set], version);
  }

  /** Answers whether the set is supported; if it is, it may be used from now on. */
  ask(set: string, version = "1.1"): boolean {
    const isThere = this.has(set, version);
    if (isThere && !isAtLeast(this.asked[set] ?? "0.0", version)) this.asked[set] = version;
    return isThere;
  }

  /** Refuses what this Excel lacks; returns a sentence if nobody has asked for the set before. */
  use({ set, version }: Requirement, what: string): string | undefined {
    if (!this.has(set, version))
      throw new Refusal("ApiNotFound", `The API '${what}' could not be found: it needs ${set} ${version}.`);
    const isSure = isAtLeast(this.declared[set] ?? "0.0", version) || isAtLeast(this.asked[set] ?? "0.0", version);
    return isSure
      ? undefined
      : `${what} needs ${set} ${version}, which manifest.xml does not declare and nobody asked for`;
  }
}
