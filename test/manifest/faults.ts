/**
 * Faults in a manifest that Excel would refuse and the schema does not find. Each check returns its complaints, in
 * words.
 */
import fs from "fs";
import path from "path";

export const ROOT = path.resolve(__dirname, "../..");
export const BASE = "https://localhost:3000/";

const all = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map(([, found]) => found);

/** Every resid has a resource, every resource is used, and no id occurs twice. */
export function danglingIds(manifest: string): string[] {
  const used = new Set(all(manifest, /\sresid="([^"]*)"/g));
  const given = all(manifest, /<bt:(?:Image|Url|String) id="([^"]*)"/g);
  return [
    ...[...used].filter((id) => !given.includes(id)).map((id) => `resid ${id} has no resource`),
    ...given.filter((id) => !used.has(id)).map((id) => `resource ${id} is not used`),
    ...given.filter((id, index) => given.indexOf(id) !== index).map((id) => `resource ${id} is given twice`),
  ];
}

const urls = (manifest: string): string[] => all(manifest, /(?:DefaultValue|\bValue)="([a-z]+:[^"]*)"/g);

export const insecureUrls = (manifest: string): string[] => urls(manifest).filter((url) => !url.startsWith("https://"));

/** Own files that are neither built (dist) nor, for pictures, in src/pane/assets. */
export const missingFiles = (manifest: string): string[] =>
  urls(manifest)
    .filter((url) => url.startsWith(BASE))
    .map((url) => url.slice(BASE.length))
    .filter((file) => ![`dist/${file}`, `src/pane/${file}`].some((place) => fs.existsSync(path.join(ROOT, place))));

/** Pictures whose real size is not the stated one; the width and height of a PNG are its bytes 16 to 23. */
export function wrongSizes(manifest: string): string[] {
  const sized = [...manifest.matchAll(/<bt:Image size="(\d+)" resid="([^"]*)"/g)].map(([, size, id]) => {
    const [url] = all(manifest, new RegExp(`<bt:Image id="${id}" DefaultValue="([^"]*)"`, "g"));
    return [Number(size), url] as const;
  });
  const fixed = [
    [32, ...all(manifest, /<IconUrl DefaultValue="([^"]*)"/g)],
    [64, ...all(manifest, /<HighResolutionIconUrl DefaultValue="([^"]*)"/g)],
  ] as [number, string][];
  return [...sized, ...fixed].flatMap(([size, url]) => {
    const png = fs.readFileSync(path.join(ROOT, "src/pane", url.slice(BASE.length)));
    const actual = [png.readUInt32BE(16), png.readUInt32BE(20)];
    return actual[0] === size && actual[1] === size ? [] : [`${url} is ${actual.join(" x ")}, not ${size}`];
  });
}

/** The sizes without which Excel shows no picture on the ribbon. */
export const missingSizes = (manifest: string): string[] =>
  all(manifest, /<Icon>([\s\S]*?)<\/Icon>/g).flatMap((icon) =>
    ["16", "32", "80"].filter((size) => !icon.includes(`size="${size}"`)),
  );

/**
 * Office discards a manifest of a version below 1.0 without a word; Microsoft's validator, which asks a service, calls it
 * "Manifest Version Too Low: The manifest has unsupported version number less than 1.0". Excel on the web refuses a
 * version that has not four numbers (OfficeDev/Office-Addin-Scripts issue 207).
 */
export function wrongVersion(manifest: string): string[] {
  const [version = ""] = all(manifest, /<Version>([^<]*)</g);
  const numbers = version.split(".").map(Number);
  return [
    ...(numbers.length === 4 && numbers.every((one) => Number.isInteger(one) && one >= 0 && one <= 65_535)
      ? []
      : [`the version ${version} has not four numbers`]),
    ...(numbers[0] >= 1 ? [] : [`the version ${version} is below 1.0`]),
  ];
}

/** Ids of groups, buttons and panes that occur twice, and a tab that Office does not have (Microsoft, "OfficeTab"). */
export function wrongCommands(manifest: string): string[] {
  const ids = all(manifest, /<(?:Group|Control|CustomTab)\b[^>]*\sid="([^"]*)"/g);
  const tabs = all(manifest, /<OfficeTab id="([^"]*)"/g);
  const excel = ["TabHome", "TabInsert", "TabPageLayoutExcel", "TabFormulas", "TabData", "TabReview", "TabView"];
  return [
    ...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `two parts have the id ${id}`),
    ...ids.filter((id) => id.length > 125).map((id) => `the id ${id} has more than 125 characters`),
    ...tabs.filter((tab) => !excel.includes(tab)).map((tab) => `Excel has no tab ${tab}`),
  ];
}

export const valueOf = (manifest: string, id: string): string | undefined =>
  all(manifest, new RegExp(`id="${id}" DefaultValue="([^"]*)"`, "g"))[0];

/** Settings and resources that are the same in every language: names, and files that hold no text in a language. */
const SAME = ["DisplayName", "Functions.Namespace", "Group.Label", "Taskpane.Url", "Functions.Script.Url"];

/** What a region that the manifest overrides anything for lacks, or overrides although it is the same everywhere. */
export function missingOverrides(manifest: string): string[] {
  const regions = [...new Set(all(manifest, /Override Locale="([^"]*)"/g))];
  const named = [
    ...manifest.matchAll(/<(DisplayName|Description|SupportUrl) DefaultValue="[^"]*"(?:>([\s\S]*?)<\/\1>| \/>)/g),
    ...manifest.matchAll(
      /<bt:(?:Url|String) id="([^"]*)" DefaultValue="[^"]*"(?:>([\s\S]*?)<\/bt:(?:Url|String)>| \/>)/g,
    ),
  ].map(([, name, overrides]) => [name, overrides ?? ""] as const);
  return named.flatMap(([name, overrides]) => {
    const given = all(overrides, /Override Locale="([^"]*)"/g);
    const wanted = SAME.includes(name) ? [] : regions;
    return [
      ...wanted.filter((region) => !given.includes(region)).map((region) => `${name} has no text for ${region}`),
      ...given
        .filter((region, index) => !wanted.includes(region) || given.indexOf(region) < index)
        .map((region) => `${name} has a text for ${region} too many`),
    ];
  });
}

/** A shared runtime works only if the runtime, the page of the functions and the pane are one resource. */
export function splitRuntime(manifest: string): string[] {
  const [runtime] = all(manifest, /<Runtime resid="([^"]*)" lifetime="long"/g);
  const [page] = all(manifest, /<Page>\s*<SourceLocation resid="([^"]*)"/g);
  const [pane] = all(manifest, /<TaskpaneId>[^<]*<\/TaskpaneId>\s*<SourceLocation resid="([^"]*)"/g);
  const [start] = all(manifest, /<SourceLocation DefaultValue="([^"]*)"/g);
  return [
    ...[page, pane].filter((id) => id !== runtime || !id).map((id) => `${id} is not the long-lived runtime ${runtime}`),
    ...(start === valueOf(manifest, runtime) ? [] : [`${start} is not the runtime's page`]),
  ];
}
