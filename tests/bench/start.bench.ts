/** The second `npm start`: everything is made, so it only looks whether that still holds. */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import type { BenchRow } from "./row";

const ROOT = join(import.meta.dirname, "../..");

/** Seconds until the practice page answers. */
async function start(): Promise<number> {
  const began = performance.now();
  const child = spawn(process.execPath, ["src/practice/start.mjs"], {
    cwd: ROOT,
    env: { ...process.env, PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  try {
    const page = await fetch(await address(child));
    if (!page.ok || !(await page.text()).includes("<html")) throw new Error(`the page answers ${page.status}`);
    return (performance.now() - began) / 1000;
  } finally {
    const ended = once(child, "exit");
    child.kill();
    await ended;
  }
}

async function address(child: ChildProcess): Promise<string> {
  let said = "";
  for await (const part of child.stdout!) {
    said += String(part);
    const found = /http:\/\/\S+/.exec(said);
    if (found) return found[0];
  }
  throw new Error(`npm start ended without an address: ${said}`);
}

export async function bench(): Promise<BenchRow[]> {
  await start();
  return [{ name: "the second npm start, until the page answers", value: await start(), unit: "s", wanted: "≤ 5" }];
}
