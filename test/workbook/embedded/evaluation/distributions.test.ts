/**
 * The distributions of statistics under Excel's names. The numbers are those of scipy 1.17.1 (scipy.stats), a library by others, which also gives the
 * printed results of Microsoft's pages of these functions (from memory: NORM.S.INV(0.9088) 1.3334, T.INV.2T(0.546449,60) 0.606533,
 * CHISQ.INV.RT(0.050001,10) 18.306973, F.INV.RT(0.01,6,4) 15.20686). Refusals are those of Microsoft's pages, from memory.
 */
import "../engine-in-node";
import { settingsFor } from "../../../../src/workbook/embedded/typing/locale";
import { Model } from "../../../../src/workbook/embedded/engine";

const NUMBERS: readonly (readonly [formula: string, value: number])[] = [
  ["ERF(-0.3)", -0.3286267594591274],
  ["ERF(0.5,1.5)", 0.44560526866226424],
  ["ERF.PRECISE(2.1)", 0.997020533343667],
  ["ERFC(-1)", 1.8427007929497148],
  ["ERFC(6)", 2.1519736712498913e-17],
  ["GAMMALN(0.2)", 1.5240638224307845],
  ["GAMMALN(171.5)", 709.1431630309283],
  ["NORM.S.DIST(1.333333,TRUE)", 0.9087887256040952],
  ["NORM.S.DIST(1.333333,FALSE)", 0.16401014756936722],
  ["NORMSDIST(-8.5)", 9.47953482220325e-18],
  ["NORM.DIST(42,40,1.5,TRUE)", 0.9087887802741321],
  ["NORM.DIST(42,40,1.5,FALSE)", 0.10934004978399577],
  ["NORMDIST(38,40,1.5,TRUE)", 0.09121121972586788],
  ["NORM.S.INV(0.9088)", 1.3334017452136098],
  ["NORM.S.INV(0.05)", -1.6448536269514729],
  ["NORMSINV(0.0000001)", -5.1993375821928165],
  ["NORM.S.INV(0.5)", 0.0],
  ["NORM.INV(0.908789,40,1.5)", 42.00000200956616],
  ["NORMINV(0.1,0.4,0.05)", 0.33592242172277],
  ["LOGNORM.DIST(4,3.5,1.2,TRUE)", 0.03908355570680047],
  ["LOGNORM.DIST(4,3.5,1.2,FALSE)", 0.01761759668181923],
  ["LOGNORM.INV(0.039084,3.5,1.2)", 4.000025218680635],
  ["LOGINV(0.9,3.5,1.2)", 154.14009222255575],
  ["CONFIDENCE(0.05,2.5,50)", 0.6929519121748389],
  ["CONFIDENCE.NORM(0.1,2.5,7.9)", 1.554240585720073],
  ["CONFIDENCE.T(0.05,1,50)", 0.28419685549572987],
  ["T.DIST(60,1,TRUE)", 0.9946953263673767],
  ["T.DIST(8,3,FALSE)", 0.0007369065209469264],
  ["T.DIST(-1.2,7,TRUE)", 0.1345859684136033],
  ["T.DIST.RT(1.959999998,60)", 0.02732246498796045],
  ["T.DIST.RT(-1,5)", 0.8183912661754386],
  ["T.DIST.2T(1.959999998,60)", 0.0546449299759209],
  ["TDIST(1.96,60,1)", 0.02732246486826465],
  ["TDIST(1.96,60,2)", 0.0546449297365293],
  ["T.INV(0.75,2)", 0.8164965809277261],
  ["T.INV(0.025,9.9)", -2.2621571627982053],
  ["T.INV.2T(0.546449,60)", 0.6065330758257549],
  ["T.INV.2T(0.05,10)", 2.2281388519862753],
  ["TINV(0.05,1)", 12.706204736174705],
  ["TINV(0.001,300)", 3.323251512974188],
  ["T.INV.2T(1,4)", 0.0],
  ["CHISQ.DIST(0.5,1,TRUE)", 0.5204998778130466],
  ["CHISQ.DIST(2,3,FALSE)", 0.2075537487102974],
  ["CHISQ.DIST(0,2,FALSE)", 0.5],
  ["CHISQ.DIST.RT(18.307,10)", 0.05000058909139812],
  ["CHIDIST(120,10)", 5.060046065842555e-21],
  ["CHISQ.INV(0.93,1)", 3.283020286759539],
  ["CHISQ.INV(0.6,2)", 1.83258146374831],
  ["CHISQ.INV(0.000001,1)", 1.5707963267957187e-12],
  ["CHISQ.INV(0,2)", 0.0],
  ["CHISQ.INV.RT(0.050001,10)", 18.30697345696106],
  ["CHIINV(0.95,40)", 26.50930319669311],
  ["CHISQ.INV.RT(1,5)", 0.0],
  ["F.DIST(15.2069,6,4,TRUE)", 0.9900000430027627],
  ["F.DIST(15.2069,6,4,FALSE)", 0.00122379170878318],
  ["F.DIST.RT(15.20686486,6,4)", 0.010000000001416586],
  ["FDIST(0.4,3,17)", 0.7547702858166663],
  ["F.INV(0.01,6,4)", 0.10930991412457852],
  ["F.INV(0.95,1,1)", 161.4476387975882],
  ["F.INV.RT(0.01,6,4)", 15.206864861157523],
  ["FINV(0.05,2,30)", 3.3158295010135213],
];

/** Arguments without an answer: #NUM!. */
const REFUSED = [
  "NORM.DIST(1,0,0,TRUE)",
  "NORM.S.INV(0)",
  "NORM.S.INV(1)",
  "NORM.INV(0.5,0,-1)",
  "LOGNORM.DIST(0,1,1,TRUE)",
  "LOGNORM.INV(1,1,1)",
  "CONFIDENCE(0,1,5)",
  "CONFIDENCE.NORM(0.05,1,0.9)",
  "CONFIDENCE.T(0.05,0,5)",
  "T.DIST(1,0.9,TRUE)",
  "T.DIST.RT(1,0)",
  "T.DIST.2T(-1,5)",
  "TDIST(1,5,3)",
  "T.INV(0,5)",
  "T.INV.2T(0,5)",
  "TINV(1.1,5)",
  "CHISQ.DIST(-1,2,TRUE)",
  "CHISQ.DIST.RT(1,0)",
  "CHISQ.INV(1,2)",
  "CHISQ.INV.RT(0,2)",
  "F.DIST(1,0,2,TRUE)",
  "F.DIST.RT(-1,2,2)",
  "F.INV(0,2,2)",
  "F.INV.RT(0.5,2,0)",
];

function answersOf(formulas: readonly string[]): unknown[] {
  const cells = Object.fromEntries(formulas.map((formula, i) => [`A${i + 1}`, `=${formula}`]));
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }], settings: settingsFor(".") } as object);
  return formulas.map((_, row) => model.getters.getEvaluatedCell({ sheetId: "s", col: 0, row }).value);
}

test("each number is that of scipy to ten digits", () => {
  const answers = answersOf(NUMBERS.map(([formula]) => formula));
  const other = NUMBERS.filter(([, value], i) => !(Math.abs(Number(answers[i]) - value) <= 1e-10 * Math.abs(value)));
  expect(
    other.map(
      ([formula, value]) =>
        `${formula}: ${String(answers[NUMBERS.findIndex(([one]) => one === formula)])}, not ${value}`,
    ),
  ).toEqual([]);
});

test("arguments without an answer are refused", () => {
  expect(answersOf(REFUSED)).toEqual(REFUSED.map(() => "#NUM!"));
});

test("a text is no number", () => {
  expect(answersOf(['NORM.S.INV("a")', 'T.INV.2T(0.05,"")'])).toEqual(["#ERROR", "#VALUE!"]);
});
