/**
 * Runs the engine's tests inside Stryker's own process: sixteen thousand changes, each with its own fresh load of
 * the modules, and nothing else between them. The test files and the assertions are those of `npm test`;
 * only collecting and running them is done here, a hundred times as fast as starting a test run for each change.
 */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, extname, join, relative, resolve } from "node:path";
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
import { transformSync } from "esbuild";
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

/** Milliseconds of work after which a change that nothing has noticed counts as not noticed: all tests that reach a file take less. */
const ENOUGH = 10_000;

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

/** One script a file of ours, compiled once: each change makes its modules anew, the test files of one change share them. */
class Modules {
  #scripts = new Map();
  #root;
  #external;
  #loaded = new Map();

  constructor(root) {
    this.#root = root;
    this.#external = createRequire(join(root, "package.json"));
  }

  /** What a file exports; `standIns` are modules by name, for the files of this call only. */
  load(path, standIns = {}) {
    const found = this.#loaded.get(path);
    if (found) return found.exports;
    const module = { exports: {} };
    this.#loaded.set(path, module);
    const require = (name) => {
      if (name in standIns) return standIns[name];
      return name.startsWith(".") ? this.load(this.#find(dirname(path), name), standIns) : this.#external(name);
    };
    this.#script(path).runInThisContext()(require, module, module.exports);
    return module.exports;
  }

  /** The next to ask for a module of this folder gets a fresh one. */
  forget(folder) {
    for (const path of this.#loaded.keys()) if (path.startsWith(folder)) this.#loaded.delete(path);
  }

  #find(folder, name) {
    const path = resolve(folder, name);
    const found = [path, `${path}.ts`, join(path, "index.ts")].find(
      (candidate) => existsSync(candidate) && statSync(candidate).isFile(),
    );
    if (!found) throw new Error(`No file ${name} beside ${relative(this.#root, folder)}`);
    return found;
  }

  #script(path) {
    const known = this.#scripts.get(path);
    if (known) return known;
    const { code } = transformSync(here(path), {
      loader: extname(path).slice(1),
      format: "cjs",
      target: "node20",
      platform: "node",
    });
    const script = new vm.Script(`(function (require, module, exports) {${code}\n})`, { filename: path });
    this.#scripts.set(path, script);
    return script;
  }
}

const here = (path) =>
  readFileSync(path, "utf8")
    .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
    .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));

/** The test files, but for those that are too slow. */
const testFiles = (root) =>
  ROOMS.flatMap((room) =>
    readdirSync(join(root, "tests", room), { recursive: true, encoding: "utf8" })
      .map((file) => `tests/${room}/${file.replaceAll("\\", "/")}`)
      .filter((file) => file.endsWith(".test.ts") && !TOO_SLOW.test(file))
      .sort(),
  );

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
    this.modules = new Modules(this.root);
    this.files = testFiles(this.root);
  }

  /** The tests of a file. */
  load(file) {
    const { tests, vitest } = declarations(file);
    // What the tests share among them may declare tests too: for each file anew.
    this.modules.forget(join(this.root, "tests"));
    this.modules.load(join(this.root, file), { vitest, "fast-check": { ...fewTries, default: fewTries } });
    return tests;
  }

  async dryRun() {
    const space = (globalThis[NAMESPACE] ??= {});
    space.activeMutant = undefined;
    const done = [];
    this.modules.forget(this.root);
    for (const file of this.files) {
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
    const reached = wanted ? new Set(testFilter.map((id) => id.slice(0, id.indexOf(" › ")))) : this.files;
    const files = nearestFirst([...reached], relative(this.root, sandboxFileName));
    const done = [];
    this.modules.forget(this.root);
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
