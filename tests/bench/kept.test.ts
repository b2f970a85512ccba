/** What DEVELOPERS.md quotes is what was kept, and what the bench has a row for. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { changesIn, newer, PARTS, readKept, ROOT, rowsOf } from "./kept";

const developers = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8");
const table = developers.slice(developers.indexOf("| what | measured | wanted |")).split("\n\n")[0]!;
const quoted = new Map(
  table
    .split("\n")
    .slice(2)
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .map(([, name, figure]) => [name!, figure!]),
);
const kept = readKept();
const rows = rowsOf(kept);

describe("the figures in DEVELOPERS.md", () => {
  test.each(rows)("have what was kept of $name", ({ name, value, unit = "" }) => {
    expect(quoted.get(name)).toBe(`${value} ${unit}`.trim());
  });

  test("each have a row in the bench, of the same name", () => {
    const sources = readdirSync(import.meta.dirname)
      .filter((file) => /^(?!kept).*\.ts$/.test(file))
      .map((file) => readFileSync(join(import.meta.dirname, file), "utf8"))
      .join("\n");
    const known = new Set(rows.map(({ name }) => name));
    expect(quoted.size).toBeGreaterThan(rows.length + 20);
    expect([...quoted.keys()].filter((name) => !known.has(name) && !sources.includes(`"${name}"`))).toEqual([]);
  });
});

describe("results.json", () => {
  test("has every file in exactly one part, and no part without a file", () => {
    const paths = Object.keys(kept.changes);
    for (const path of paths) expect(PARTS.filter(([, files]) => files.test(path)).length, path).toBe(1);
    for (const [part, files] of PARTS)
      expect(
        paths.some((path) => files.test(path)),
        part,
      ).toBe(true);
  });

  const branches = Object.keys(kept.branches.rooms).length > 0 ? [kept.branches] : [];
  test("says when and on which commit each run was", () => {
    for (const { ended, commit } of [...Object.values(kept.changes), ...branches]) {
      expect(ended).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/);
      expect(commit).toMatch(/^[\da-f]{7,}$/);
    }
  });
});

describe("changesIn", () => {
  const mutants = ["Killed", "Killed", "Timeout", "Survived", "NoCoverage", "Ignored", "CompileError"];
  const report = { files: { "src/fit/a.ts": { source: "", mutants: mutants.map((status) => ({ status })) } } };
  const found = changesIn(report, { ended: "2026-01-02T10:00", commit: "abcdef0" });

  test("counts what was noticed and what lasted, and nothing that was not run", () => {
    expect(found["src/fit/a.ts"]).toMatchObject({ killed: 2, timeout: 1, survived: 1, noCoverage: 1 });
  });

  test("stands for a file only where no later run was kept", () => {
    const at = (ended: string) => ({ "src/fit/a.ts": { ...found["src/fit/a.ts"]!, ended } });
    expect(newer(found, at("2026-01-02T10:01"))).toEqual({});
    expect(newer(found, at("2026-01-02T09:59"))).toEqual(found);
    expect(newer(found, {})).toEqual(found);
  });
});
