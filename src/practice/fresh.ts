/** Things that are made once and made again only when what they are made from has changed. */
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { createHash } from "node:crypto";
import { join, relative } from "node:path";
import { CACHE, ROOT } from "./root";

/** A short text that changes when one of the files, or a file in one of the folders, does. */
export function stampOf(paths: readonly string[], skip: (path: string) => boolean = () => false): string {
  const hash = createHash("sha256");
  const visit = (path: string) => {
    if (!existsSync(path) || skip(path)) return;
    const found = statSync(path);
    if (found.isDirectory()) for (const name of readdirSync(path).sort()) visit(join(path, name));
    else hash.update(`${relative(ROOT, path)} ${found.mtimeMs} ${found.size}\n`);
  };
  for (const path of paths) visit(path);
  return hash.digest("hex");
}

/** Runs `make` unless it has run before with the same stamp and `there` still holds. Answers whether it ran. */
export async function makeOnce(name: string, stamp: string, there: () => boolean, make: () => Promise<void>) {
  const note = join(CACHE, `${name}.stamp`);
  if (there() && existsSync(note) && readFileSync(note, "utf8") === stamp) return false;
  mkdirSync(CACHE, { recursive: true });
  await make();
  writeFileSync(note, stamp);
  return true;
}
