/**
 * The packages by others in dist, with their licences: found from the contents of the bundles, and written to a file
 * for readers.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** A package, and the files of dist that contain parts of it. */
export interface Component {
  readonly name: string;
  readonly version: string;
  /** SPDX expression. */
  readonly licence: string;
  readonly files: readonly string[];
  /** Texts of licences and notices, word for word. */
  readonly texts: readonly string[];
}

/** The folder of a package, and a file of dist that contains parts of it. */
export interface Use {
  readonly folder: string;
  readonly file: string;
}

/** Licences that the contents of our bundles may have, with a notice beside the file. */
const BUNDLED = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"];
/** Licences of files that are served separately, unmodified and replaceable. */
const SERVED = [...BUNDLED, "LGPL-3.0-only", "LGPL-3.0-or-later", "(OFL-1.1 AND MIT)"];

const MIT = (copyright: string): string => `MIT License

${copyright}

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the
"Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish,
distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to
the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF
MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR
ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH
THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.
`;

const ISC = (copyright: string): string => `The ISC License

${copyright}

Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the
above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY
DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION,
ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.
`;

/**
 * Texts for packages that name their licence but do not include its text. The copyright of Font Awesome is from the
 * name table of the font, those of saxes from the file LICENSE of its repository.
 */
const TEXTS: Readonly<Record<string, () => string[]>> = {
  "@fluentui/react-icons": () => [MIT("Copyright (c) Microsoft Corporation")],
  "font-awesome": () => [
    `Copyright Dave Gandy 2016. All rights reserved.\n\n${readFileSync(path.join(__dirname, "OFL-1.1.txt"), "utf8")}`,
    MIT("Copyright Dave Gandy 2016 (style sheet)"),
  ],
  saxes: () => [
    ISC("Copyright (c) Contributors"),
    ISC("Copyright (c) Isaac Z. Schlueter and Contributors (sax, from which saxes was forked)"),
    MIT("Copyright Mathias Bynens <https://mathiasbynens.be/> (String.fromCodePoint)"),
  ],
};

/** Packages that are copied into a published file of another package, by the name of the latter. */
export const INSIDE: Readonly<Record<string, readonly string[]>> = {
  "chart.js": ["@kurkle/color"],
  "d3-array": ["internmap"],
};

/** The folder of the package that a file belongs to; undefined for our own files. */
export function packageOf(file: string): string | undefined {
  const within = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)/.exec(file);
  return within?.[1];
}

const LEGAL = /^(?:licen[cs]e|copying|notice)(?:[.-]|$)/i;

/**
 * Reads the package in a folder. Throws, with the remedy, if a text is missing or the licence asks for more than a
 * notice.
 */
function read(folder: string, files: readonly string[]): Component {
  const {
    name,
    version,
    license: licence,
  }: Record<string, string> = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
  if (name === undefined || version === undefined || typeof licence !== "string")
    throw new Error(
      `The package in ${folder} does not name itself, its version and its licence: leave it out of the bundles.`,
    );
  const allowed = files.every((file) => file.startsWith("vendor/")) ? SERVED : BUNDLED;
  if (!allowed.includes(licence))
    throw new Error(
      `${name} is under ${licence}, and ${files.join(", ")} would hold it: see whether that may be, and add the licence in src/host/build/licences.`,
    );
  const found = readdirSync(folder)
    .filter((file) => LEGAL.test(file))
    .sort()
    .map((file) => readFileSync(path.join(folder, file), "utf8"));
  const texts = found.length > 0 ? found : TEXTS[name]?.();
  if (texts === undefined)
    throw new Error(`${name} comes without the text of its licence (${licence}): add it in src/host/build/licences.`);
  return { name, version, licence, files, texts };
}

const insideOf = (folder: string): string[] => {
  const { name }: { name?: string } = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
  return (INSIDE[name ?? ""] ?? []).map((other) => {
    const own = path.join(folder, "node_modules", other);
    return existsSync(own)
      ? own
      : path.join(folder.slice(0, folder.lastIndexOf("node_modules")), "node_modules", other);
  });
};

/** Each version of each package once, by name, with the files that contain it. */
export function componentsOf(uses: readonly Use[]): Component[] {
  const files = new Map<string, Set<string>>();
  for (const { folder, file } of uses)
    for (const held of [folder, ...insideOf(folder)]) files.set(held, (files.get(held) ?? new Set()).add(file));
  return [...files]
    .map(([folder, held]) => read(folder, [...held].sort()))
    .sort((a, b) => (a.name === b.name ? a.version.localeCompare(b.version) : a.name < b.name ? -1 : 1));
}

const LINE = `${"=".repeat(100)}\n`;

/** The list without the texts, one line for each package. */
export const listOf = (written: string): string => written.slice(0, written.indexOf(LINE));

/** The list of components, then each text once, under the names of all components that share it. */
export function licencesText(own: string, components: readonly Component[]): string {
  const width = Math.max(...components.map(({ name, version }) => `${name} ${version}`.length));
  const list = components.map(
    ({ name, version, licence, files }) =>
      `${`${name} ${version}`.padEnd(width)}  ${licence.padEnd(18)}  ${files.join(", ")}`,
  );
  const texts = new Map<string, string[]>();
  for (const { name, version, texts: all } of components)
    for (const text of all) {
      const plain = text.replace(/\r\n?/g, "\n").trim();
      texts.set(plain, [...(texts.get(plain) ?? []), `${name} ${version}`]);
    }
  return [
    "Licences of all that these files hold: Clayledger itself, MIT; the work of others, by package, licence and file.\n",
    "Office.js, which the pane loads in Excel, comes from Microsoft and is not among these files.\n\n",
    `${list.join("\n")}\n\n`,
    ...[
      ["Clayledger", own.trim()] as const,
      ...[...texts].map(([text, names]) => [names.join(", "), text] as const),
    ].map(([names, text]) => `${LINE}${names}\n\n${text}\n\n`),
  ].join("");
}
