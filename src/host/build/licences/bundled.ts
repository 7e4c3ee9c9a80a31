/** Finds the packages in each bundle, from the modules that webpack put into it. */
import path from "node:path";
import type { Compilation, Module } from "webpack";
import { packageOf, type Use } from "./components";

/** The file of a module, or the files of the modules that were joined into it. */
function filesOf(module: Module): string[] {
  // webpack's type Module has neither the parts of a joined module nor the file of a plain module.
  const { modules, resource } = module as Module & { modules?: Module[]; resource?: string };
  if (modules) return modules.flatMap(filesOf);
  return resource ? [resource.split("?", 1)[0] ?? ""] : [];
}

/** One use for each package and bundle; webpack's own start-up code is in every bundle. */
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
