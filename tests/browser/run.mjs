/** Runs the browser tests where there is a browser, and says in one line when there is none. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { findBrowser } from "./find.mjs";

if (process.env.JUST_TESTED) {
  console.log("Skipped: the browser tests, which have just passed.");
  process.exit(0);
}
const browser = findBrowser();
if (!browser) {
  console.log(
    "Skipped: the browser tests. No Chromium was found; install one, or name it in CHROMIUM, and run npm run test:browser.",
  );
  process.exit(process.env.CI ? 1 : 0);
}
const vitest = join(import.meta.dirname, "../../node_modules/vitest/vitest.mjs");
const run = spawnSync(
  process.execPath,
  [vitest, "run", "--config", "vitest.browser.config.ts", ...process.argv.slice(2)],
  {
    stdio: "inherit",
    env: { ...process.env, CHROMIUM: browser },
  },
);
process.exit(run.status ?? 1);
