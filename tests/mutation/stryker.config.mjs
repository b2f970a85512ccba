/**
 * Which changes of the engine no test would notice: npm run mutation. The layout search is left out: it only finds a
 * better layout, never a wrong one, and has its own checker.
 */
export default {
  testRunner: "in-one-process",
  plugins: ["./tests/mutation/runner.mjs"],
  coverageAnalysis: "perTest",
  mutate: [
    "src/length/**/*.ts",
    "src/chart/**/*.ts",
    "src/fit/**/*.ts",
    "src/fabric/**/*.ts",
    "!src/fabric/layout/**",
    "!src/**/index.ts",
  ],
  // Tables and constants are read once, at load: changing each of their words is a whole run of the tests each.
  ignoreStatic: true,
  ignorePatterns: ["dist", "screenshots", ".cache", "taskpane", "coverage", "reports"],
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { reportTests: false, allowColor: false, reportMutants: false },
  jsonReporter: { fileName: "reports/mutation.json" },
  incremental: true,
  incrementalFile: "reports/mutation-incremental.json",
  concurrency: 2,
  timeoutMS: 5000,
  tempDirName: ".stryker-tmp",
};
