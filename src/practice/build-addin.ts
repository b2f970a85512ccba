/** Builds dist/ when it is older than what it is made from. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { makeOnce, stampOf } from "./fresh";
import { DIST, ROOT } from "./root";

const MADE_FROM = ["src", "functions", "taskpane", "webpack.config.mjs", "manifest.xml", "package-lock.json"];
const NEEDED = ["functions.js", "functions.json", "excel.js", "taskpane.html"];

export async function buildAddin(): Promise<boolean> {
  const sources = MADE_FROM.map((name) => join(ROOT, name));
  const stamp = stampOf(sources, (path) => path === join(ROOT, "src", "practice"));
  const there = () => NEEDED.every((name) => existsSync(join(DIST, name)));
  return makeOnce("addin", stamp, there, async () => {
    // npm's own launcher is a script, which Windows starts only through a shell.
    execFileSync(process.execPath, [join(ROOT, "node_modules", "webpack", "bin", "webpack.js")], {
      cwd: ROOT,
      stdio: ["ignore", "ignore", "inherit"],
    });
  });
}
