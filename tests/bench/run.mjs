/**
 * `npm run bench`: every figure that README or DEVELOPERS.md quotes, in one table, with what is quoted beside it. A bench
 * is not a test: times are ratios within one run, counts and percentages are exact. `npm run bench layout chart` runs only
 * those files; `npm run bench keep [reports]` keeps the figures of the runs that are too long for a bench.
 */
import { mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const here = import.meta.dirname;
const out = join(here, "../../node_modules/.cache/bench");

/** A TypeScript file of this folder, loaded. */
async function load(file) {
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
  return import(pathToFileURL(outfile).href);
}

/** The table of figures in DEVELOPERS.md: what is measured, and the figure. */
function quotedFigures() {
  const text = readFileSync(join(here, "../../DEVELOPERS.md"), "utf8");
  const table = text.slice(text.indexOf("| what | measured | wanted |")).split("\n\n")[0].split("\n").slice(2);
  return new Map(
    table.map((line) =>
      line
        .split("|")
        .slice(1, 3)
        .map((cell) => cell.trim()),
    ),
  );
}

function shown(value) {
  if (typeof value !== "number") return String(value);
  return String(Number(value.toFixed(Math.abs(value) < 10 ? 3 : 1)));
}

mkdirSync(out, { recursive: true });
const wanted = process.argv.slice(2);
if (wanted[0] === "keep") {
  const { keep } = await load("keep.ts");
  await keep(wanted.slice(1));
  process.exit(0);
}

const files = readdirSync(here)
  .filter((file) => file.endsWith(".bench.ts"))
  .filter((file) => wanted.length === 0 || wanted.includes(file.replace(".bench.ts", "")));
const rows = [];
for (const file of files) {
  const { bench } = await load(file);
  console.log(`… ${file.replace(".bench.ts", "")}`);
  for (const row of await bench()) rows.push(row);
}

const quoted = quotedFigures();
const lines = rows.map(({ name, value, unit = "", wanted: limit = "", from = "this run" }) => [
  name,
  `${shown(value)} ${unit}`.trim(),
  quoted.get(name) ?? "",
  limit,
  from,
]);
if (wanted.length === 0)
  for (const [name, figure] of quoted)
    if (!rows.some((row) => row.name === name)) lines.push([name, "NO ROW MEASURES THIS", figure, "", ""]);

const all = [["what", "measured", "quoted", "wanted", "from"], ...lines];
const widths = all[0].map((_, column) => Math.max(...all.map((row) => row[column].length)));
for (const row of all)
  console.log(
    row
      .map((cell, column) => (column === 1 ? cell.padStart(widths[column]) : cell.padEnd(widths[column])))
      .join("  ")
      .trimEnd(),
  );
process.exit(0);
