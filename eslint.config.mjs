import tseslint from "typescript-eslint";

/** Arrows run one way: pane, host -> workbook, datasheet, plots, checks, functions -> reduction -> numeric. */
const forbid = (files, ...folders) => ({
  files: [files],
  rules: {
    "no-restricted-imports": [
      "error",
      {
        patterns: folders.map((folder) => ({
          group: [`**/${folder}/**`],
          message: `${files} must not import ${folder}`,
        })),
      },
    ],
  },
});

export default tseslint.config(
  { ignores: ["dist", "node_modules", "artifacts", "coverage"] },
  ...tseslint.configs.recommended,
  { rules: { "@typescript-eslint/no-explicit-any": "off" } },
  { files: ["src/**"], rules: { "no-console": "error", eqeqeq: ["error", "always", { null: "ignore" }] } },
  { files: ["webpack.config.js"], rules: { "@typescript-eslint/no-require-imports": "off" } },
  { files: ["src/host/serve.mjs"], rules: { "no-console": "off" } },
  {
    // A cast hides from the type checker a word that Excel does not know. Where no type can say it, the rule is lifted for the
    // line, and the comment says why.
    files: ["src/workbook/office/**"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "TSAsExpression:not([typeAnnotation.typeName.name='const']), TSTypeAssertion",
          message: "say it by a type of Excel's own (a typed record), not by a cast",
        },
      ],
    },
  },
  forbid("src/reduction/**", "functions", "checks", "datasheet", "plots", "workbook", "pane", "host"),
  forbid("src/functions/**", "datasheet", "plots", "workbook", "pane", "host"),
  forbid("src/plots/**", "functions", "datasheet", "workbook", "pane", "host"),
  forbid("src/datasheet/**", "plots", "report", "pane", "host"),
  forbid("src/workbook/**", "plots", "report", "pane", "host"),
  forbid("src/report/**", "pane", "host"),
  forbid("src/help/**", "workbook", "report", "host"),
);
