import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

interface Package {
  readonly version?: string;
  readonly integrity?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}
const read = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, "../..", file), "utf8")) as unknown;
const { packages } = read("package-lock.json") as { packages: Record<string, Package> };
const { dependencies, devDependencies } = read("package.json") as Record<string, Record<string, string>>;
const installed = Object.entries(packages).filter(([path]) => path !== "");

describe("package-lock.json", () => {
  test("holds every package that package.json names, at that very version", () => {
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
      expect([name, packages[`node_modules/${name}`]?.version]).toEqual([name, version]);
  });
  test("pins the content of every package", () => {
    const loose = installed.filter(([, { integrity }]) => !/^sha512-/.test(integrity ?? "")).map(([path]) => path);
    expect(loose).toEqual([]);
  });
  // Their scripts print a request for money, choose a faster binary and look at version numbers: all three work without.
  test("has no install script but three that nothing here needs", () => {
    const withScript = installed.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path);
    expect(withScript.sort()).toEqual(["node_modules/core-js-pure", "node_modules/esbuild", "node_modules/protobufjs"]);
  });
});

describe("package.json", () => {
  test("has one run-time dependency, the reader of HTML", () =>
    expect(Object.keys(dependencies!)).toEqual(["htmlparser2"]));
});
