/** The pages as they are built (npm run build). */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileIn, LANGUAGES } from "../../src/pane/text/language";

const dist = path.join(__dirname, "../../dist");

const inEveryLanguage = (page: string): string[] => LANGUAGES.map((language) => fileIn(page, language));

test.each([
  "index.html",
  "pane.html",
  "taskpane.html",
  ...inEveryLanguage("help.html"),
  ...inEveryLanguage("first-minutes.html"),
])("every file that %s loads or links to is built", (page) => {
  const html = readFileSync(path.join(dist, page), "utf8");
  const files = [...html.matchAll(/\s(?:href|src)="?([^"\s>#]+)/g)]
    .map(([, address]) => address)
    .filter((address) => !/^(?:data:|https:)/.test(address));
  expect(files.filter((file) => !existsSync(path.join(dist, file)))).toEqual([]);
});

test.each(["help.html", "first-minutes.html"])("%s in each language leads to itself in every other one", (page) => {
  for (const shown of LANGUAGES) {
    const html = readFileSync(path.join(dist, fileIn(page, shown)), "utf8");
    expect(html).toContain(`<html lang="${shown}">`);
    const links = [...html.matchAll(/<a href="([^"]*)" lang="(\w+)"/g)].map(([, file, language]) => [file, language]);
    const others = LANGUAGES.filter((language) => language !== shown);
    expect(links).toEqual(others.map((language) => [fileIn(page, language), language]));
  }
});
