import { stepsFor } from "../../src/host/excel-steps";

const MANIFEST = "/somewhere/dist/manifest.xml";

test.each<[NodeJS.Platform, RegExp]>([
  ["win32", /Trusted Add-in Catalogs/],
  ["darwin", /Documents\/wef/],
  [
    "linux",
    /Excel on the web.*\n.*Upload My Add-in: choose \/somewhere\/dist\/manifest.xml\n.*local network: choose "Allow"/,
  ],
  ["freebsd", /Excel on the web/],
])("the steps for %s are numbered, name the manifest, and end at the pane", (platform, step) => {
  const text = stepsFor(platform, MANIFEST);
  expect(text).toMatch(step);
  expect(text).toContain(MANIFEST);
  const lines = text.split("\n");
  expect(lines.map((line) => parseInt(line))).toEqual(lines.map((_, index) => index + 1));
  expect(lines[lines.length - 1]).toMatch(/Open ledger/);
});
