/** `npm run test:long`: the chart reader on 100,000 random pastes instead of the suite's 2,000. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";

const vitest = join(import.meta.dirname, "../../node_modules/vitest/vitest.mjs");
const run = spawnSync(process.execPath, [vitest, "run", "tests/chart/read-charts-safety.test.ts"], {
  stdio: "inherit",
  env: { ...process.env, PASTES: process.env.PASTES ?? "100000" },
});
process.exit(run.status ?? 1);
