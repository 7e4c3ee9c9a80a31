/**
 * What a file says of its calculation: the element calcPr of the workbook (ISO/IEC 29500-1, 18.2.2). When Excel opens a file, it
 * calculates every formula again if the file's calcId is lower than its own or missing ([MS-OI29500] 2.1.565: Excel then takes 0; 18.2.2: "a
 * workbook that was created in an earlier version"), or if the file does not list a feature of Excel's calculation ([MS-XLSX] 2.4.82). Where
 * the add-in is missing, each of its functions would then show #NAME? in place of its saved value.
 */
import { listed, say, type Message } from "../../../reduction/message";
import { all, append } from "../../file/xml";

/** The settings of the calculation that a person made in Excel, by attribute. The page always calculates at once. */
export type Calculation = Readonly<Record<string, string>>;

const TRUTH = /^(?:0|1|true|false)$/;
const SETTINGS: readonly (readonly [attribute: string, values: RegExp])[] = [
  ["calcMode", /^(?:auto|autoNoTable|manual)$/],
  ["refMode", /^(?:A1|R1C1)$/],
  ["iterate", TRUTH],
  ["iterateCount", /^\d{1,5}$/],
  ["iterateDelta", /^\d+(?:\.\d+)?(?:E[+-]?\d+)?$/i],
  ["fullPrecision", TRUTH],
  ["calcOnSave", TRUTH],
  ["forceFullCalc", TRUTH],
];

/** The settings of a file's workbook. */
export function calculationOf(workbook: Document): Calculation {
  const [element] = all(workbook, "calcPr");
  const of = (attribute: string): string => element?.getAttribute(attribute) ?? "";
  return Object.fromEntries(
    SETTINGS.filter(([attribute, values]) => values.test(of(attribute))).map(([attribute]) => [
      attribute,
      of(attribute),
    ]),
  );
}

const isTrue = (setting: string | undefined): boolean => setting === "1" || setting === "true";
const isFalse = (setting: string | undefined): boolean => setting === "0" || setting === "false";

/** Whether Excel calculates otherwise than the page: circular formulas step by step, or with the figures as shown. */
const isOther = ({ iterate, fullPrecision }: Calculation): boolean => isTrue(iterate) || isFalse(fullPrecision);

/** The sentence about settings of a file by which Excel calculates otherwise than the page, or at another time. */
export function toldCalculation({ calcMode, iterate, fullPrecision }: Calculation): Message[] {
  const kinds = [
    ...(isFalse(fullPrecision) ? [say`calculates with the figures as they are shown ("precision as displayed")`] : []),
    ...(isTrue(iterate) ? [say`calculates circular formulas step by step ("iterative calculation")`] : []),
    ...(calcMode === "manual" ? [say`calculates only when a person asks for it (manual calculation)`] : []),
  ];
  return kinds.length === 0
    ? []
    : [
        say`By the settings of this file Excel ${listed(kinds)}. The sheet on this page calculates with all digits and after every entry, and shows an error in circular formulas: its values may differ from those of the file. The settings are saved again.`,
      ];
}

/**
 * The number of Excel's calculation, and the features that it lists: those of files by Excel of Microsoft 365 (read in public
 * repositories, 2022 to 2026; Microsoft publishes no list). The values of a file in which no formula needs them are the same with them.
 */
const CALC_ID = "191029";
const FEATURES = ["RD", "Single", "FV", "CNMTM", "LET_WF", "LAMBDA_WF", "ARRAYTEXT_WF"];
const OF_FEATURES = "http://schemas.microsoft.com/office/spreadsheetml/2018/calcfeatures";

/**
 * States in the workbook of a file, behind its names, that its values are worked out; or asks Excel to calculate when it opens the file, if
 * the page could not work out all of them.
 */
export function addCalculation(workbook: Document, calculation: Calculation, hasUnknown: boolean): void {
  const root = workbook.documentElement;
  if (hasUnknown || isOther(calculation)) {
    append(root, "calcPr", { ...calculation, fullCalcOnLoad: "1" });
    return;
  }
  append(root, "calcPr", { calcId: CALC_ID, ...calculation });
  const ext = append(append(root, "extLst"), "ext", { uri: "{B58B0392-4F1F-4190-BB64-5DF3571DCE5F}" });
  const list = workbook.createElementNS(OF_FEATURES, "xcalcf:calcFeatures");
  for (const name of FEATURES) {
    const feature = workbook.createElementNS(OF_FEATURES, "xcalcf:feature");
    feature.setAttribute("name", `microsoft.com:${name}`);
    list.append(feature);
  }
  ext.append(list);
}
