/**
 * Runs the engine's tests inside Stryker's own process: sixteen thousand changes, each with its own fresh load of the
 * test files that reach it, and nothing else between them. The test files and the assertions are those of `npm test`;
 * only collecting and running them is done here, a hundred times as fast as starting a test run for each change.
 */
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, relative, resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { pathToFileURL } from "node:url";
import vm from "node:vm";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";
import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";
import * as chai from "chai";
import { build } from "esbuild";
import fc from "fast-check";

/** What the copies of the sources find their switch under. */
const NAMESPACE = "__stryker__";
const ROOMS = ["length", "chart", "cases", "fit", "fabric", "figures"];
/** Laws and hostile pastes with thousands of inputs each are far too slow to run once for each change. */
const TOO_SLOW = /^tests\/(?:chart\/read-charts-safety|fabric\/cutting-|fabric\/layout\/)/;

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
const { expect } = chai;

/** A change is noticed by the first tries of a law or not at all; how it fails best is nobody's question here. */
const fewTries = {
  ...fc,
  assert: (law, wanted) =>
    fc.assert(law, { ...wanted, numRuns: Math.min(wanted?.numRuns ?? 5, 5), endOnFailure: true, seed: 1 }),
};

/** Milliseconds of work after which a change that nothing has noticed counts as not noticed. */
const ENOUGH = 3000;

/** describe, test and expect as the test files import them; what they declare is kept in `tests`, in order. */
function declarations(file) {
  const tests = [];
  const names = [file];
  const before = [];
  const title = (text, row, index) => {
    const values = Array.isArray(row) ? [...row] : [row];
    return text
      .replaceAll("%%", "%")
      .replace(/%[sdifjoO#]/g, (sign) => (sign === "%#" ? String(index) : (JSON.stringify(values.shift()) ?? "")))
      .replace(
        /\$([\w.]+)/g,
        (whole, path) => JSON.stringify(path.split(".").reduce((at, key) => at?.[key], row)) ?? whole,
      );
  };
  const each = (declare) => (rows) => (text, run) =>
    rows.forEach((row, index) =>
      declare(`${title(text, row, index)} [${index}]`, () => (Array.isArray(row) ? run(...row) : run(row))),
    );
  const test = (name, optionsOrRun, run) => {
    const body = typeof optionsOrRun === "function" ? optionsOrRun : run;
    const prepare = [...before];
    tests.push({ id: [...names, name].join(" › "), name: [...names.slice(1), name].join(" "), prepare, body });
  };
  test.each = each(test);
  const describe = (name, run) => {
    names.push(String(name.name ?? name));
    const outer = before.length;
    run();
    before.length = outer;
    names.pop();
  };
  describe.each = each(describe);
  const beforeAll = (run) => before.push({ run, done: false });
  return { tests, vitest: { describe, test, it: test, expect, beforeAll } };
}

/** One script a test file, with everything of ours it imports inside. */
async function scripts(root) {
  const files = ROOMS.flatMap((room) =>
    readdirSync(join(root, "tests", room), { recursive: true, encoding: "utf8" })
      .map((file) => `tests/${room}/${file.replaceAll("\\", "/")}`)
      .filter((file) => file.endsWith(".test.ts") && !TOO_SLOW.test(file))
      .sort(),
  );
  const { outputFiles } = await build({
    entryPoints: files.map((file) => join(root, file)),
    outdir: join(root, ".bundled"),
    outbase: root,
    write: false,
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    packages: "external",
    logLevel: "error",
    plugins: [{ name: "here", setup: (plugin) => plugin.onLoad({ filter: /tests[\\/].*\.ts$/ }, here) }],
  });
  const ofFile = new Map(outputFiles.map(({ path, text }) => [path, text]));
  return new Map(
    files.map((file) => {
      const text = ofFile.get(join(root, ".bundled", file.replace(/\.ts$/, ".js")));
      return [file, new vm.Script(`(function (require, module, exports) {${text}\n})`, { filename: file })];
    }),
  );
}

const here = ({ path }) => ({
  contents: readFileSync(path, "utf8")
    .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
    .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)),
  loader: "ts",
});

/** The tests of the module itself first, then pasted charts, then its room: they are the likeliest to notice. */
function nearestFirst(files, changed) {
  const own = changed.replace(/^src/, "tests").replace(/\.ts$/, ".test.ts");
  const room = own.split("/").slice(0, 2).join("/");
  const charts = room === "tests/chart" ? "tests/cases/" : own;
  const rank = (file) => (file === own ? 0 : file.startsWith(charts) ? 1 : file.startsWith(`${room}/`) ? 2 : 3);
  return files.sort((a, b) => rank(a) - rank(b));
}

class InOneProcess {
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.root = resolve(".");
    this.require = createRequire(join(this.root, "package.json"));
    this.scripts = await scripts(this.root);
  }

  /** The tests of a file, its modules fresh. */
  load(file) {
    const { tests, vitest } = declarations(file);
    const standIns = { vitest, "fast-check": { ...fewTries, default: fewTries } };
    const require = (name) => standIns[name] ?? this.require(name);
    const module = { exports: {} };
    this.scripts.get(file).runInThisContext()(require, module, module.exports);
    return tests;
  }

  async dryRun() {
    const space = (globalThis[NAMESPACE] ??= {});
    space.activeMutant = undefined;
    const done = [];
    for (const file of this.scripts.keys()) {
      space.currentTestId = undefined;
      for (const test of this.load(file)) done.push(await this.run(test, () => (space.currentTestId = test.id)));
    }
    space.currentTestId = undefined;
    return { status: DryRunStatus.Complete, tests: done, mutantCoverage: space.mutantCoverage };
  }

  async mutantRun({ activeMutant, sandboxFileName, testFilter, hitLimit, disableBail }) {
    const space = (globalThis[NAMESPACE] ??= {});
    Object.assign(space, { currentTestId: undefined, hitCount: 0, hitLimit, activeMutant: activeMutant.id });
    const wanted = testFilter && new Set(testFilter);
    const reached = wanted ? new Set(testFilter.map((id) => id.slice(0, id.indexOf(" › ")))) : this.scripts.keys();
    const files = nearestFirst([...reached], relative(this.root, sandboxFileName));
    const done = [];
    const start = process.cpuUsage();
    try {
      run: for (const file of files) {
        for (const test of this.load(file)) {
          if (wanted && !wanted.has(test.id)) continue;
          done.push(await this.run(test));
          if (done.at(-1).status === TestStatus.Failed && !disableBail) break run;
          if (process.cpuUsage(start).user / 1000 > ENOUGH) break run;
        }
      }
    } catch (reason) {
      // A change that keeps a test file from loading is as loud as a failing test.
      const failureMessage = String(reason);
      done.push({ id: "load", name: "load", status: TestStatus.Failed, timeSpentMs: 0, failureMessage });
    }
    const timedOut = determineHitLimitReached(space.hitCount, hitLimit);
    space.activeMutant = undefined;
    return toMutantRunResult(timedOut ?? { status: DryRunStatus.Complete, tests: done });
  }

  async run({ id, name, prepare, body }, starting) {
    const start = performance.now();
    const result = { id, name, fileName: join(this.root, id.slice(0, id.indexOf(" › "))) };
    try {
      for (const step of prepare.filter(({ done }) => !done)) {
        await step.run();
        step.done = true;
      }
      starting?.();
      await body();
      return { ...result, status: TestStatus.Success, timeSpentMs: performance.now() - start };
    } catch (reason) {
      const failureMessage = String(reason?.message ?? reason).slice(0, 500);
      return { ...result, status: TestStatus.Failed, failureMessage, timeSpentMs: performance.now() - start };
    }
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "in-one-process", InOneProcess)];
