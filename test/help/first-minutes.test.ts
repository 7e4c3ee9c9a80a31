/** What the page of the first ten minutes says about the worked demonstration is true. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { blankSheet, demoSheet } from "../../src/datasheet";
import { DEMONSTRATION } from "../../src/help/first-minutes";
import { CellError } from "../../src/functions/cells";
import { WATER_CONTENT } from "../../src/functions/specimen";
import { translated } from "../../src/pane/text/messages";
import { fileIn, LANGUAGES, type Language } from "../../src/pane/text/language";
import { wordsOf } from "../../src/specification/text/words";
import { calculate } from "../datasheet/sheet-in-engine";

test("the demonstration shows the numbers that the page names", async () => {
  const sheet = await calculate(demoSheet("SI"));
  for (const [name, text] of Object.entries(DEMONSTRATION)) {
    const decimals = text.split(".")[1]?.length ?? 0;
    expect([name, (sheet.value(name) as number).toFixed(decimals)]).toEqual([name, text]);
  }
});

/** Why a function refuses a wet mass below the dry mass, in the language of a pane. */
function refusedIn(language: Language): string {
  try {
    WATER_CONTENT(121.9, 152.4, 31.2);
  } catch (error) {
    if (error instanceof CellError) return translated(error.reason, language);
  }
  return "no refusal";
}

const page = (language: Language): string =>
  readFileSync(path.join(__dirname, "../../dist", fileIn("first-minutes.html", language)), "utf8");

describe.each(LANGUAGES)("the page in %s", (language) => {
  const html = page(language);

  test("names the sheets and the cells as a sheet in the language has them", () => {
    const { labels } = wordsOf(language);
    const names = [blankSheet("SI", { language }).name, demoSheet("SI", language).name];
    const cells = ["Started", "Ring", language === "en" ? "Specific gravity" : "Specific gravity of solids"];
    for (const name of [...names, ...cells.map((cell) => labels[cell] ?? cell)])
      expect(html).toMatch(new RegExp(`[“„]${name}[”“]`));
  });

  test("names the button as the manifest does", () => {
    const manifest = readFileSync(path.join(__dirname, "../../manifest.xml"), "utf8");
    const [, english, overrides] = /"Open.Label" DefaultValue="([^"]*)">([\s\S]*?)<\/bt:String>/.exec(manifest)!;
    const [, own] = new RegExp(`Locale="${language}-\\w+" Value="([^"]*)"`).exec(overrides) ?? [];
    expect(html).toMatch(new RegExp(`[“„]${own ?? english}[”“]`));
  });

  test("quotes the refusal of step 4 as the pane says it", () => {
    const said = refusedIn(language);
    expect(said).toMatch(language === "de" ? /^die feuchte Masse \(121,9\)/ : /^the wet mass \(121.9\)/);
    expect(html).toContain(`${language === "de" ? "„" : "“"}${said}${language === "de" ? "“" : "”"}`);
    // No sentence of the page is in another language than the page.
    expect(html.slice(html.indexOf("<main"))).not.toMatch(/ lang="/);
  });

  test("has the twelve steps", () => expect(html.match(/id="step-\d+"/g)).toHaveLength(12));
});
