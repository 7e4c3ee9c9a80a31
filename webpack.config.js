const fs = require("fs");
const path = require("path");
const { BannerPlugin, Compilation, WebpackError, sources } = require("webpack");
const CopyPlugin = require("copy-webpack-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const { generateCustomFunctionsMetadata } = require("custom-functions-metadata");
const { INNER_NAMES } = require("./src/functions/inner-names");
const { readFunctions } = require("./src/help/jsdoc");
const { LANGUAGE_FOLDERS, describedIn, languagesIn, textsIn } = require("./src/help/languages");

const at = (...parts) => path.resolve(__dirname, ...parts);
const DEVELOPMENT_URL = "https://localhost:3000/";

/**
 * Files by others that the page of the embedded sheet loads, by their place in dist/vendor; served as published (LGPL).
 */
const VENDOR = {
  "o-spreadsheet/o_spreadsheet.min.iife.js": "@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js",
  "o-spreadsheet/o_spreadsheet.xml": "@odoo/o-spreadsheet/dist/o_spreadsheet.xml",
  "o-spreadsheet/o_spreadsheet.css": "@odoo/o-spreadsheet/dist/o_spreadsheet.css",
  "o-spreadsheet/LICENSE": "@odoo/o-spreadsheet/LICENSE",
  "owl/owl.iife.min.js": "@odoo/owl/dist/owl.iife.min.js",
  "owl/LICENSE": "@odoo/owl/LICENSE",
  "chart/chart.umd.min.js": "chart.js/dist/chart.umd.min.js",
  "chart/chart.js.LICENSE.txt": "chart.js/LICENSE.md",
  "chart/chartjs-adapter-luxon.umd.min.js": "chartjs-adapter-luxon/dist/chartjs-adapter-luxon.umd.min.js",
  "chart/chartjs-adapter-luxon.LICENSE.txt": "chartjs-adapter-luxon/LICENSE.md",
  "chart/luxon.min.js": "luxon/build/global/luxon.min.js",
  "chart/luxon.LICENSE.txt": "luxon/LICENSE.md",
  "bootstrap/bootstrap.min.css": "bootstrap/dist/css/bootstrap.min.css",
  "bootstrap/LICENSE": "bootstrap/LICENSE",
  "font-awesome/css/font-awesome.min.css": "font-awesome/css/font-awesome.min.css",
  // The style sheet also names older formats of the font; a browser asks for the first one that it can read, which is
  // this one.
  "font-awesome/fonts/fontawesome-webfont.woff2": "font-awesome/fonts/fontawesome-webfont.woff2",
};

/**
 * Makes functions.json from the JSDoc of every file in src/functions that declares a custom function, and
 * functions-de.json and so on from it with the texts of each language; the help pages are at `baseUrl`.
 */
class FunctionsMetadata {
  constructor(baseUrl) {
    this.baseUrl = baseUrl;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FunctionsMetadata", (compilation) => {
      compilation.hooks.processAssets.tapPromise(
        { name: "FunctionsMetadata", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL },
        async () => {
          const folder = at("src/functions");
          const files = fs
            .readdirSync(folder)
            .map((file) => path.join(folder, file))
            .filter((file) => file.endsWith(".ts") && fs.readFileSync(file, "utf8").includes("@customfunction"));
          files.forEach((file) => compilation.fileDependencies.add(file));
          const { metadataJson, errors } = await generateCustomFunctionsMetadata(files);
          errors.forEach((error) => compilation.errors.push(new WebpackError(`functions.json: ${error}`)));
          if (errors.length) return;
          const metadata = JSON.parse(metadataJson);
          // Excel's function wizard would show a line break of the source.
          for (const described of metadata.functions.flatMap((fn) => [fn, ...fn.parameters]))
            described.description = described.description?.replace(/\s+/g, " ");
          const help = readFunctions(folder);
          this.emit(compilation, "", metadata);
          for (const language of languagesIn(LANGUAGE_FOLDERS)) {
            const functions = describedIn(textsIn(LANGUAGE_FOLDERS, language), help, metadata.functions);
            this.emit(compilation, `-${language}`, { ...metadata, functions });
          }
        },
      );
    });
  }

  /** Writes functions.json, or with the ending "-de" functions-de.json; each function leads to the help of its language. */
  emit(compilation, ending, metadata) {
    const functions = metadata.functions.map((one) => ({
      ...one,
      helpUrl: `${this.baseUrl}help${ending}.html#${one.id.toLowerCase()}`,
    }));
    const content = JSON.stringify({ ...metadata, functions }, null, 2);
    compilation.emitAsset(`functions${ending}.json`, new sources.RawSource(content));
  }
}

/** Tells the reader of a bundle where the licences of its contents are. */
const notice = () =>
  new BannerPlugin({
    banner: "Clayledger, MIT. Licences and notices of all that is in this file: licences.txt, beside it.",
    test: /\.js$/,
    exclude: /^vendor\//,
    stage: Compilation.PROCESS_ASSETS_STAGE_REPORT,
  });

/** `npm run typecheck` checks the types; the bundler does not. */
const SWC = {
  jsc: {
    target: "es2022",
    parser: { syntax: "typescript", tsx: true },
    transform: { react: { runtime: "automatic" } },
  },
};

const shared = (mode, compress, mangle = true) => ({
  mode,
  optimization: {
    // A part that is loaded later is one file, with its own name.
    splitChunks: false,
    minimizer: [
      new MinimizerPlugin({
        minify: MinimizerPlugin.swcMinify,
        minimizerOptions: { compress, mangle, format: { comments: false } },
        // The build writes the notices of all packages to one file.
        extractComments: false,
      }),
    ],
  },
  devtool: mode === "development" ? "source-map" : false,
  performance: { hints: false },
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  module: {
    rules: [
      { test: /\.tsx?$/, loader: "swc-loader", options: SWC, exclude: /node_modules/ },
      { test: /\.css$/, use: ["style-loader", "css-loader"] },
    ],
  },
  stats: "errors-warnings",
});

/** The bundles of dist, for "production" or "development". */
module.exports = (mode) => {
  const output = { path: at("dist"), filename: "[name].js" };
  const baseUrl = (process.env.CLAYLEDGER_URL || DEVELOPMENT_URL).replace(/\/?$/, "/");

  // The fewest bytes by gzip, of the ways tried on this file: Terser makes 1.4 kB more by gzip, esbuild 11 kB more, and
  // passes beyond the fourth change nothing. `unsafe_arrows` writes functions as arrows, and `unsafe_methods` those of an
  // object as methods, which no `new` may call: no function of src is called so, because the type checker refuses `new` for
  // all but classes.
  const usual = shared(
    mode,
    { passes: 4, evaluate: false, unsafe_arrows: true, unsafe_methods: true },
    { props: { regex: `^(${INNER_NAMES.join("|")})$` } },
  );
  /** The worksheet functions: one file that runs without a page. */
  const functions = {
    ...usual,
    module: {
      rules: [
        { test: at("src/record/cell-rows.ts"), loader: at("src/host/build/values-only.mjs") },
        ...usual.module.rules,
        // A module from which the functions use nothing is left out.
        { include: at("src"), sideEffects: false },
      ],
    },
    name: "functions",
    target: ["webworker", "es2022"],
    entry: { functions: at("src/functions/index.ts") },
    output,
    plugins: [new FunctionsMetadata(baseUrl), notice()],
  };

  const page = (filename, template, chunks) =>
    new HtmlPlugin({ filename, template: at(template), chunks, inject: "body", scriptLoading: "blocking" });

  /** The pane (for Excel: taskpane.html; beside the embedded sheet: pane.html) and the page of `npm start`. */
  const pages = {
    // Each function stays where it stands in the source. Otherwise the minimizer writes one that is called in one place into its caller,
    // and what it leaves with the engine (`told-once.ts`) holds what the caller knew: the first workbook, as long as the page was open.
    // It needs both settings.
    ...shared(mode, { passes: 2, inline: 0, reduce_vars: false }),
    name: "pages",
    target: ["web", "es2022"],
    entry: { pane: at("src/pane/shell/index.tsx"), host: at("src/host/index.ts") },
    output,
    // The two files of the embedded sheet stay beside our code and can be replaced.
    externals: { "@odoo/owl": "owl", "@odoo/o-spreadsheet": "o_spreadsheet" },
    plugins: [
      notice(),
      page("taskpane.html", "src/pane/shell/taskpane.html", ["pane"]),
      page("pane.html", "src/pane/shell/pane.html", ["pane"]),
      page("index.html", "src/host/index.html", ["host"]),
      new CopyPlugin({
        patterns: [
          {
            from: at("manifest.xml"),
            to: "manifest.xml",
            transform: (content) => content.toString().replaceAll(DEVELOPMENT_URL, baseUrl),
          },
          { from: at("src/pane/assets"), to: "assets" },
          ...Object.entries(VENDOR).map(([file, source]) => ({
            from: at("node_modules", source),
            to: `vendor/${file}`,
            toType: "file",
            // Byte for byte: the minimizer must not change files by others.
            info: { minimized: true },
          })),
        ],
      }),
    ],
  };

  return [functions, pages];
};

module.exports.VENDOR = VENDOR;
