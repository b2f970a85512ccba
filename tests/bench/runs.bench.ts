/** What the longer runs found last, `npm run mutation` and `npm run coverage`; each takes too long to be done again here. */
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { BenchRow } from "./row";

const ROOMS = ["length", "chart", "fit", "fabric", "project", "sheet", "words"];
const root = join(import.meta.dirname, "../..");

interface Mutation {
  readonly files: Readonly<Record<string, { readonly mutants: readonly { readonly status: string }[] }>>;
}
interface Share {
  readonly total: number;
  readonly covered: number;
}
type Coverage = Readonly<Record<string, { readonly branches: Share }>>;

export async function bench(): Promise<BenchRow[]> {
  return [...changesNoticed(), ...branchesReached()];
}

function changesNoticed(): BenchRow[] {
  const file = join(root, "reports/mutation.json");
  const name = "changes that tests notice";
  if (!existsSync(file)) return [{ name, value: "npm run mutation" }];
  const { files } = JSON.parse(readFileSync(file, "utf8")) as Mutation;
  return byRoom(Object.keys(files), (path) => {
    const statuses = files[path]!.mutants.map(({ status }) => status);
    const covered = statuses.filter((status) => status === "Killed" || status === "Timeout").length;
    const lasted = statuses.filter((status) => status === "Survived" || status === "NoCoverage").length;
    return { total: covered + lasted, covered };
  }).map(([room, share]) => ({ name: `${name}, ${room} (run of ${day(file)})`, ...percent(share), wanted: "≥ 80" }));
}

function branchesReached(): BenchRow[] {
  const file = join(root, "coverage/coverage-summary.json");
  const name = "branches that tests reach";
  if (!existsSync(file)) return [{ name, value: "npm run coverage" }];
  const files = JSON.parse(readFileSync(file, "utf8")) as Coverage;
  return byRoom(Object.keys(files), (path) => files[path]!.branches).map(([room, share]) => ({
    name: `${name}, ${room} (run of ${day(file)})`,
    ...percent(share),
    wanted: "≥ 95",
  }));
}

/** Added up for each room that has any, and for all of them. */
function byRoom(paths: readonly string[], shareOf: (path: string) => Share): [string, Share][] {
  const sum = (of: readonly string[]): Share =>
    of.map(shareOf).reduce((a, b) => ({ total: a.total + b.total, covered: a.covered + b.covered }), NONE);
  const inRoom = (room: string) => paths.filter((path) => new RegExp(String.raw`\bsrc[/\\]${room}\b`).test(path));
  const rooms = ROOMS.map((room): [string, Share] => [room, sum(inRoom(room))]);
  return [...rooms, ["all", sum(ROOMS.flatMap(inRoom))] as [string, Share]].filter(([, { total }]) => total > 0);
}

const NONE: Share = { total: 0, covered: 0 };
const percent = ({ covered, total }: Share) => ({ value: (100 * covered) / total, unit: "%" });
const day = (file: string) => statSync(file).mtime.toISOString().slice(0, 10);
