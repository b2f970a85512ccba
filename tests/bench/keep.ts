/**
 * `npm run bench keep [reports]`: writes results.json from Stryker's JSON reports, of the whole run or of parts, and from
 * the coverage summary. A file's counts are those of the last report it is in; files that are gone go.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { format } from "prettier";
import {
  branchesIn,
  changesIn,
  type Counts,
  type CoverageSummary,
  endOf,
  KEPT,
  type KeptFile,
  type MutationReport,
  readKept,
  REPORTS,
  type Results,
  ROOT,
  rowsOf,
} from "./kept";

const NOTHING: Results = { changes: {}, branches: { ended: "", commit: "", rooms: {} } };

export async function keep(paths: readonly string[]): Promise<void> {
  const reports = paths.length > 0 ? paths : Object.values(REPORTS).filter((file) => existsSync(file));
  if (reports.length === 0) throw new Error("No report: run npm run mutation or npm run coverage, or name a file.");
  let { changes, branches } = existsSync(KEPT) ? readKept() : NOTHING;
  for (const file of [...reports].sort((a, b) => endOf(a).localeCompare(endOf(b)))) {
    const json = JSON.parse(readFileSync(file, "utf8")) as MutationReport | CoverageSummary;
    const ended = endOf(file);
    if (isMutation(json)) changes = { ...changes, ...changesIn(json, { ended, commit: commitOf(json, ended) }) };
    else branches = { ended, commit: commitsBefore(ended, 1)[0] ?? "", rooms: branchesIn(json) };
  }
  const there = Object.entries(changes).filter(([path]) => existsSync(join(ROOT, path)));
  const results: Results = { changes: Object.fromEntries(there), branches };
  writeFileSync(KEPT, await format(JSON.stringify(byRun(results)), { parser: "json", printWidth: 120 }));
  console.log("DEVELOPERS.md has to quote:");
  for (const { name, value, unit } of rowsOf(results)) console.log(`| ${name} | ${value}${unit ? ` ${unit}` : ""} |`);
}

/** The last run first, its files by name. */
function byRun({ changes, branches }: Results): KeptFile {
  const runs = new Map<string, [string, Counts][]>();
  for (const path of Object.keys(changes).sort()) {
    const { ended, commit, ...counts } = changes[path]!;
    const run = `${ended} ${commit}`;
    runs.set(run, [...(runs.get(run) ?? []), [path, counts]]);
  }
  const inOrder = [...runs].sort(([a], [b]) => (a < b ? 1 : -1));
  return {
    changes: inOrder.map(([run, files]) => {
      const [ended, commit] = run.split(" ") as [string, string];
      return { ended, commit, files: Object.fromEntries(files) };
    }),
    branches,
  };
}

const isMutation = (json: MutationReport | CoverageSummary): json is MutationReport =>
  Array.isArray((Object.values(json["files"] ?? {})[0] as { mutants?: unknown } | undefined)?.mutants);

const git = (...words: string[]) =>
  execFileSync("git", words, { cwd: ROOT, encoding: "utf8" }).split("\n").filter(Boolean);
const commitsBefore = (ended: string, most: number) =>
  git("log", "--format=%h", `--before=${ended}:59Z`, `--max-count=${most}`);

/** The last commit before the end of the run in which every file is as the run had it; "" when there is none. */
function commitOf({ files }: MutationReport, ended: string): string {
  const wanted = Object.entries(files).map(([path, { source }]) => {
    const bytes = Buffer.from(source);
    return `${createHash("sha1").update(`blob ${bytes.length}\0`).update(bytes).digest("hex")}\t${path}`;
  });
  return (
    commitsBefore(ended, 100).find((commit) => {
      const tree = new Set(git("ls-tree", "-r", commit, "src").map((line) => line.split(" ")[2]!));
      return wanted.every((file) => tree.has(file));
    }) ?? ""
  );
}
