/**
 * What the two runs that are too long for a bench found, `npm run mutation` and `npm run coverage`. results.json keeps it,
 * file by file, for a clone that has no reports of its own; `npm run bench keep` writes it.
 */
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { BenchRow } from "./row";

export const ROOT = join(import.meta.dirname, "../..");
export const KEPT = join(ROOT, "tests/bench/results.json");
export const REPORTS = {
  changes: join(ROOT, "reports/mutation.json"),
  branches: join(ROOT, "coverage/coverage-summary.json"),
};

/** When a run ended, in UTC, and which commit it ran on; "" when its files were those of no commit. */
export interface Run {
  readonly ended: string;
  readonly commit: string;
}
/** What became of the changes of one file. */
export interface Counts {
  readonly killed: number;
  readonly timeout: number;
  readonly survived: number;
  readonly noCoverage: number;
}
export type Changes = Run & Counts;
export interface Share {
  readonly covered: number;
  readonly total: number;
}
export interface Results {
  /** By file. */
  readonly changes: Readonly<Record<string, Changes>>;
  readonly branches: Run & { readonly rooms: Readonly<Record<string, Share>> };
}
/** results.json: the files of each run together. */
export interface KeptFile {
  readonly changes: readonly (Run & { readonly files: Readonly<Record<string, Counts>> })[];
  readonly branches: Results["branches"];
}

/** Stryker's report, as far as it is read. */
export interface MutationReport {
  readonly files: Readonly<
    Record<string, { readonly source: string; readonly mutants: readonly { readonly status: string }[] }>
  >;
}
/** The summary that `npm run coverage` writes: a line for each file, by its full path. */
export type CoverageSummary = Readonly<Record<string, { readonly branches: Share }>>;

/** The parts that DEVELOPERS.md quotes; every changed file is in one of them. */
export const PARTS: readonly (readonly [string, RegExp])[] = [
  ["length", /^src\/length\//],
  ["fit", /^src\/fit\//],
  ["fabric", /^src\/fabric\//],
  ["chart from cells", /^src\/chart\/(?!reading\/)/],
  ["pasted charts, files a-fa", /^src\/chart\/reading\/(?:[a-e]|fa)/],
  ["pasted charts, files fi-h", /^src\/chart\/reading\/(?:f[b-z]|[gh])/],
  ["pasted charts, files i-r", /^src\/chart\/reading\/[i-r]/],
  ["pasted charts, files s-w", /^src\/chart\/reading\/[s-z]/],
];
const ROOMS = ["length", "chart", "fit", "fabric", "project", "sheet"];

export function readKept(): Results {
  const { changes, branches } = JSON.parse(readFileSync(KEPT, "utf8")) as KeptFile;
  const files = changes.flatMap(({ files, ...run }) =>
    Object.entries(files).map(([path, counts]) => [path, { ...counts, ...run }] as const),
  );
  return { changes: Object.fromEntries(files), branches };
}
export const endOf = (file: string): string => statSync(file).mtime.toISOString().slice(0, 16);

/** The counts of each file of a report; ignored and uncompiled changes don't count. */
export function changesIn(report: MutationReport, run: Run): Record<string, Changes> {
  return Object.fromEntries(
    Object.entries(report.files).map(([path, { mutants }]) => {
      const count = (status: string) => mutants.filter((mutant) => mutant.status === status).length;
      const [killed, timeout] = [count("Killed"), count("Timeout")];
      return [path, { killed, timeout, survived: count("Survived"), noCoverage: count("NoCoverage"), ...run }];
    }),
  );
}

export function branchesIn(summary: CoverageSummary): Record<string, Share> {
  const rooms = ROOMS.map((room): [string, Share] => {
    const files = Object.keys(summary).filter((path) => new RegExp(String.raw`\bsrc[/\\]${room}[/\\]`).test(path));
    return [room, sum(files.map((path) => summary[path]!.branches))];
  });
  return Object.fromEntries(rooms.filter(([, { total }]) => total > 0));
}

/** The kept results, with whatever a later run on this machine says instead. */
export function latest(): Results {
  const kept = readKept();
  const later = <T>(file: string, read: (json: T, run: Run) => Results): Results | undefined =>
    existsSync(file)
      ? read(JSON.parse(readFileSync(file, "utf8")) as T, { ended: endOf(file), commit: HERE })
      : undefined;
  const changed = later<MutationReport>(REPORTS.changes, (report, run) => ({
    ...kept,
    changes: { ...kept.changes, ...newer(changesIn(report, run), kept.changes) },
  }));
  const reached = later<CoverageSummary>(REPORTS.branches, (summary, run) =>
    run.ended > kept.branches.ended ? { ...kept, branches: { ...run, rooms: branchesIn(summary) } } : kept,
  );
  return { changes: (changed ?? kept).changes, branches: (reached ?? kept).branches };
}
const HERE = "on this machine";

/** The files of a run that no later one has been kept of. */
export function newer(found: Record<string, Changes>, kept: Results["changes"]): Record<string, Changes> {
  return Object.fromEntries(Object.entries(found).filter(([path, { ended }]) => ended > (kept[path]?.ended ?? "")));
}

/** One row a part and a room, as DEVELOPERS.md quotes them. */
export function rowsOf({ changes, branches }: Results): BenchRow[] {
  const parts = PARTS.map(([part, files]): [string, Changes[]] => [
    part,
    Object.keys(changes)
      .filter((path) => files.test(path))
      .map((path) => changes[path]!),
  ]);
  const all = Object.values(changes);
  const noticed = [...parts, ["all of them", all] as const].map(([part, files]) => ({
    name: `changes that tests notice: ${part}`,
    ...percent(sum(files.map(shareOf))),
    wanted: "≥ 80",
    from: origin(files),
  }));
  const count = { name: "changes that the run makes", value: grouped(sum(all.map(shareOf)).total), from: origin(all) };
  const reached = Object.entries(branches.rooms).map(([room, share]) => ({
    name: `branches that tests reach: ${room}`,
    ...percent(share),
    wanted: "≥ 95",
    from: origin([branches]),
  }));
  const none = { name: "branches that tests reach", value: "npm run coverage", wanted: "≥ 95", from: "none kept" };
  return [...noticed, count, ...(reached.length > 0 ? reached : [none])];
}

const shareOf = ({ killed, timeout, survived, noCoverage }: Changes): Share => ({
  covered: killed + timeout,
  total: killed + timeout + survived + noCoverage,
});
const sum = (shares: readonly Share[]): Share =>
  shares.reduce((a, b) => ({ covered: a.covered + b.covered, total: a.total + b.total }), { covered: 0, total: 0 });
const percent = ({ covered, total }: Share) => ({ value: ((100 * covered) / total).toFixed(1), unit: "%" });
const grouped = (count: number) => count.toLocaleString("en-US");

/** "kept, 2026-11-25, f3286e8"; several runs are the first and the last. */
function origin(runs: readonly Run[]): string {
  const days = [...new Set(runs.map(({ ended }) => ended.slice(0, 10)))].sort();
  const commits = [...new Set(runs.map(({ commit }) => commit))];
  if (commits.length === 1 && commits[0] === HERE) return `run here, ${days.join(" to ")}`;
  const where = commits.length === 1 ? commits[0] || "no commit" : `${commits.length} commits`;
  return `kept, ${days.length > 2 ? `${days[0]} to ${days.at(-1)}` : days.join(" to ")}, ${where}`;
}
