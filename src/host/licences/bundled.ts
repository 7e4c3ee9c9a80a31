/** Which packages each bundle holds something of, by what webpack put into it. */
import path from "node:path";
import type { Compilation, Module } from "webpack";
import { packageOf, type Use } from "./components";

/** A module, or each of those that were joined into it. */
function filesOf(module: Module): string[] {
  // webpack's types know neither the parts of a joined module nor the file of a plain one by the name of Module.
  const { modules, resource } = module as Module & { modules?: Module[]; resource?: string };
  if (modules) return modules.flatMap(filesOf);
  return resource ? [resource.split("?", 1)[0] ?? ""] : [];
}

/** A use for each package and file; webpack's own start-up code is in every bundle. */
export function bundledIn({ chunks, chunkGraph }: Compilation): Use[] {
  const webpack = path.dirname(require.resolve("webpack/package.json"));
  return [...chunks].flatMap((chunk) =>
    [...chunk.files]
      .filter((file) => file.endsWith(".js"))
      .flatMap((file) => [
        { folder: webpack, file },
        ...[...chunkGraph.getChunkModulesIterable(chunk)]
          .flatMap(filesOf)
          .map(packageOf)
          .filter((folder) => folder !== undefined)
          .map((folder) => ({ folder, file })),
      ]),
  );
}
