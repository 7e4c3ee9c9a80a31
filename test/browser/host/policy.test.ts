/**
 * What each page may load and run: every request and every refusal while a person uses everything, and what the
 * policies refuse.
 */
import { existsSync } from "node:fs";
import path from "node:path";
import type { Frame } from "playwright-core";
import { eventually, fileOf, paneFrame, showSheet, typeInCell, watchPolicy, withBrowser, type HostPage } from "../page";

/** Files that `npm start` loads, whatever a person does on it; the help pages when they are opened. */
const LOADED = [
  "",
  "first-minutes.html",
  "first-workbook.json",
  "functions.js",
  "functions.json",
  "help.html",
  "host.js",
  "pane.html",
  "pane.js",
  "second-evaluation.js",
  "vendor/bootstrap/bootstrap.min.css",
  "vendor/chart/chart.umd.min.js",
  "vendor/chart/chartjs-adapter-luxon.umd.min.js",
  "vendor/chart/luxon.min.js",
  "vendor/font-awesome/css/font-awesome.min.css",
  "vendor/font-awesome/fonts/fontawesome-webfont.woff2",
  "vendor/o-spreadsheet/o_spreadsheet.css",
  "vendor/o-spreadsheet/o_spreadsheet.min.iife.js",
  "vendor/o-spreadsheet/o_spreadsheet.xml",
  "vendor/owl/owl.iife.min.js",
];

/** Runs each attack in the page, and lists the ones that succeed. */
const attacked = (frame: Frame): Promise<string[]> =>
  frame.evaluate(async () => {
    const page = globalThis as any;
    const { document } = page;
    const done: string[] = [];
    const attempt = (called: string, attack: () => unknown) => {
      try {
        if (attack()) done.push(called);
      } catch {
        // The policy refused it, as it should.
      }
    };
    // Waits until after this call: while a call of the test runs, the browser allows it to make code from text.
    await new Promise((resolve) => page.setTimeout(resolve));
    attempt("eval", () => page.eval("1"));
    attempt("a function from text", () => new page.Function("return 1")());
    page.setTimeout("ran = 'a timer from text'");
    const script = document.createElement("script");
    script.textContent = "ran = 'a script in the page'";
    document.head.append(script);
    const markup = document.createElement("div");
    markup.innerHTML = `<img src="nothing" onerror="ran = 'a handler in markup'"><style>body { outline: 3px solid }</style>`;
    document.body.append(markup);
    const style = document.createElement("style");
    style.textContent = "body { outline: 3px solid }";
    document.head.append(style);
    const asked = await page.fetch("https://elsewhere.example/").then(
      () => true,
      () => false,
    );
    if (asked) done.push("a request to elsewhere");
    const link = document.createElement("a");
    link.href = "javascript:ran = 'a link with a script'";
    link.click();
    await new Promise((resolve) => page.setTimeout(resolve, 300));
    if (page.ran) done.push(page.ran);
    if (page.getComputedStyle(document.body).outlineStyle === "solid") done.push("a style sheet with text");
    return done;
  });

withBrowser("the policy of each page", (openPage, newContext) => {
  let host: HostPage;
  beforeAll(async () => {
    host = await openPage("", { locale: "en-GB" });
  });

  test("using everything loads only known files of our own, and no policy refuses anything", async () => {
    const { page, complaints, requests } = host;
    const pane = page.frameLocator("#pane");
    const tab = async (name: string) => {
      await pane.getByRole("tab", { name }).click();
      await pane.getByRole("tabpanel").getByRole("heading").first().waitFor();
      await pane.getByRole("progressbar").waitFor({ state: "detached" });
    };
    const saved = (button: string) =>
      Promise.all([page.waitForEvent("download"), pane.getByRole("button", { name: button }).click()]);

    await tab("What next");
    await tab("Data sheet");
    await pane.getByRole("button", { name: "Insert blank sheet" }).click();
    // The new sheet comes to the front when it is whole.
    await pane.getByText("was made").waitFor();
    await showSheet(page, "Demonstration");
    await tab("Readings");
    await tab("Plots");
    await saved("Save SVG");
    await saved("Save PNG");
    await tab("Review");
    await pane.getByRole("img").first().waitFor();
    await tab("Results");
    await tab("Checks");
    await pane.getByLabel("Show questions").selectOption("all");
    await tab("By hand");
    await pane.getByLabel("Quantity").waitFor();
    await tab("Report");
    await pane.getByRole("textbox", { name: "Prepared by" }).fill("AB");
    await tab("About");
    for (const link of [/^Help: every/, /^The first ten minutes/]) {
      const [help] = await Promise.all([
        page.context().waitForEvent("page"),
        pane.getByRole("link", { name: link }).click(),
      ]);
      await help.waitForLoadState();
      await help.close();
    }

    await showSheet(page, "Sheet1");
    await typeInCell(page, "A1", "1");
    await page.locator(".o-topbar-menu", { hasText: "Insert" }).click();
    await page.locator(".o-menu-item", { hasText: /^\s*Chart/ }).click();
    await page.locator(".o-figure canvas").waitFor();
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    await page.locator("#file").setInputFiles(await fileOf(file));
    await page.locator("#message", { hasText: "is open" }).waitFor();

    const own = process.env.CLAYLEDGER_PAGE!;
    const loaded = requests
      .filter((address) => !/^(?:data|blob):/.test(address))
      .map((address) => (address.startsWith(own) ? address.slice(own.length).split(/[?#]/, 1)[0] : address));
    expect([...new Set(loaded)].sort()).toEqual(LOADED);
    expect(complaints).toEqual([]);
  });

  test("the pane makes no code and no style from text, and sends no request elsewhere", async () => {
    const { page, complaints } = host;
    expect(await attacked(paneFrame(page))).toEqual([]);
    for (const directive of ["script-src", "script-src-elem", "script-src-attr", "style-src-elem", "connect-src"])
      await eventually(async () => complaints.join("\n").includes(`policy of /pane.html: ${directive} refused`));
  });

  test("the page of the sheet makes functions from text, which the sheet needs, and nothing more", async () => {
    expect((await attacked(host.page.mainFrame())).sort()).toEqual([
      "a function from text",
      "a style sheet with text",
      "a timer from text",
      "eval",
    ]);
  });

  /** Microsoft's library from npm, at the address from which Excel's pane loads it. */
  const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/";
  const LIBRARY = path.join(__dirname, "../../../node_modules/@microsoft/office-js/dist");

  // Office.js in Office 2013 and earlier would frame a page that reports its use to Microsoft, and style that frame.
  const REPORTING = [
    "/taskpane.html: frame-src refused https://telemetryservice.firstpartyapps.oaspapps.com",
    "/taskpane.html: style-src-attr refused inline",
  ];
  test.each<[string, string, string[], string[]]>([
    ["web", "Excel$Web$16.00$en-US", ["en-us/office_strings.js", "excel-web-16.00.js"], []],
    ["on Windows", "Excel$Win32$16.01$en-US", ["en-us/office_strings.js", "excel-win32-16.01.js"], []],
    ["on the Mac", "Excel$Mac$16.00$en-US", ["en-us/office_strings.js", "excel-mac-16.00.js"], []],
    ["that is not told", "", ["o15apptofilemappingtable.js"], REPORTING],
  ])(
    "the pane of Excel %s loads Office.js from Microsoft, runs it and the functions, and nothing else",
    async (_, host, scripts, refused) => {
      const own = process.env.CLAYLEDGER_PAGE!;
      const context = await newContext();
      const [loaded, violations]: [string[], string[]] = [[], []];
      await watchPolicy(context, (violation) => violations.push(violation));
      await context.route(
        (url) => !url.href.startsWith(own),
        (route) => {
          const address = route.request().url();
          loaded.push(address);
          const file = path.join(LIBRARY, address.slice(OFFICE.length));
          return address.startsWith(OFFICE) && existsSync(file) ? route.fulfill({ path: file }) : route.abort();
        },
      );
      const page = await context.newPage();
      context.on("request", (request) => {
        if (request.url().startsWith(own)) loaded.push(request.url().slice(own.length).split("?", 1)[0]);
      });
      await page.goto(`${own}taskpane.html${host && `?_host_Info=${encodeURIComponent(host)}`}`);
      const expected = [
        ...["functions.js", "pane.js", "taskpane.html"],
        ...["office.js", ...scripts].map((file) => OFFICE + file),
      ];
      await eventually(async () => expected.every((file) => loaded.includes(file)));
      await page.waitForLoadState("networkidle");
      const content = await page.evaluate(() => {
        const { CustomFunctions } = globalThis as any;
        return CustomFunctions._association.mappings.WATER_CONTENT(12, 10, 0);
      });
      expect(content).toBeCloseTo(0.2, 12);
      expect(loaded.sort()).toEqual(expected.sort());
      while (violations.length < refused.length) await page.waitForTimeout(100);
      expect([...new Set(violations)].sort()).toEqual(refused);
      expect(await attacked(page.mainFrame())).toEqual([]);
      await context.close();
    },
  );
});
