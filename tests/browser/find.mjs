/** Where a Chromium browser is on this machine: named in CHROMIUM, on the path, or where installers put one. */
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
const usual = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Its path, or undefined where there is none. */
export function findBrowser(env = process.env) {
  const onPath = (env.PATH ?? "").split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [env.CHROMIUM, ...onPath, ...usual].find((path) => path && existsSync(path));
}
