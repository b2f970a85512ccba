/** Where things are, for the programs that run in Node. */
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's folder, seen from this file or from its bundled copy. */
export const ROOT = above(dirname(fileURLToPath(import.meta.url)));
/** The built add-in. */
export const DIST = join(ROOT, "dist");
/** What is made once and kept for the next start. */
export const CACHE = join(ROOT, "node_modules", ".cache", "practice");

function above(folder: string): string {
  if (existsSync(join(folder, "package.json")) && existsSync(join(folder, "src", "practice"))) return folder;
  const parent = dirname(folder);
  if (parent === folder) throw new Error("The project's package.json is not above this file");
  return above(parent);
}
