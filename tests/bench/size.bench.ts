/** How much a browser has to fetch. Needs dist/: run `npm run build` first. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { BenchRow } from "./row";

const dist = join(import.meta.dirname, "../../dist");
const gzipped = (...files: string[]) =>
  files
    .map((file) => gzipSync(readFileSync(join(dist, file)), { level: 9 }).length)
    .reduce((sum, size) => sum + size, 0) / 1024;

export async function bench(): Promise<BenchRow[]> {
  return [
    { name: "functions.js, gzipped", value: gzipped("functions.js"), unit: "KB", wanted: "≤ 40" },
    {
      name: "pane with its styles, gzipped, without office.js and what is loaded on demand",
      value: gzipped("taskpane.html", "taskpane.css", "taskpane.js", "excel.js"),
      unit: "KB",
      wanted: "≤ 60",
    },
  ];
}
