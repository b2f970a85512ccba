/** Runs one of the programs in this folder: Node can't read TypeScript, so it is bundled first, which takes a moment. */
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const cache = join(here, "..", "..", "node_modules", ".cache", "practice");

export async function launch(name) {
  const outfile = join(cache, `${name}.mjs`);
  await build({
    entryPoints: [join(here, `${name}.ts`)],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    logLevel: "error",
  });
  return import(pathToFileURL(outfile).href);
}
