/**
 * `npm run bench`: every figure that README or DEVELOPERS.md quotes, in one table. A bench is not a test: times are ratios
 * within one run, counts and percentages are exact. `npm run bench layout chart` runs only those files.
 */
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const here = import.meta.dirname;
const out = join(here, "../../node_modules/.cache/bench");
mkdirSync(out, { recursive: true });
const wanted = process.argv.slice(2);
const files = readdirSync(here)
  .filter((file) => file.endsWith(".bench.ts"))
  .filter((file) => wanted.length === 0 || wanted.includes(file.replace(".bench.ts", "")));

const rows = [];
for (const file of files) {
  const outfile = join(out, file.replace(/\.ts$/, ".mjs"));
  await build({
    entryPoints: [join(here, file)],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    logLevel: "warning",
    define: { "import.meta.dirname": JSON.stringify(here) },
  });
  const { bench } = await import(pathToFileURL(outfile).href);
  console.log(`… ${file.replace(".bench.ts", "")}`);
  for (const row of await bench()) rows.push(row);
}

const text = rows.map(({ name, value, unit = "", wanted: limit = "" }) => [
  name,
  typeof value === "number" ? String(Number(value.toFixed(Math.abs(value) < 10 ? 3 : 1))) : String(value),
  unit,
  limit,
]);
const all = [["what", "measured", "", "wanted"], ...text];
const widths = [0, 1, 2, 3].map((column) => Math.max(...all.map((row) => row[column].length)));
for (const row of all)
  console.log(
    row
      .map((cell, column) => (column === 1 ? cell.padStart(widths[column]) : cell.padEnd(widths[column])))
      .join("  ")
      .trimEnd(),
  );
process.exit(0);
