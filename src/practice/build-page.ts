/** Bundles the practice page. The embedded spreadsheet makes it large, so it is kept until something changes. */
import { existsSync, mkdirSync, cpSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { makeOnce, stampOf } from "./fresh";
import { CACHE, ROOT } from "./root";

const SOURCE = join(ROOT, "src", "practice");
/** The bundled page. */
export const PAGE = join(CACHE, "page");

export async function buildPage(): Promise<boolean> {
  const stamp = stampOf([SOURCE, join(ROOT, "package-lock.json")]);
  return makeOnce("page", stamp, () => existsSync(join(PAGE, "main.js")), bundle);
}

async function bundle(): Promise<void> {
  await build({
    entryPoints: [join(SOURCE, "page", "main.ts")],
    outdir: PAGE,
    bundle: true,
    format: "esm",
    target: "es2022",
    minify: true,
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff2": "file", ".woff": "file", ".ttf": "file", ".svg": "file" },
    logLevel: "error",
  });
  mkdirSync(PAGE, { recursive: true });
  for (const file of ["index.html", "page.css", "pane.js"]) {
    cpSync(join(SOURCE, "page", file), join(PAGE, file));
  }
}
