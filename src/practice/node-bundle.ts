/** Runs the built functions.js in Node, in a context that holds nothing but the global it needs. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import { type Bundle, customFunctionsGlobal } from "./univer/bundle";
import type { Metadata } from "./univer/functions";

/** functions.js and functions.json of a folder such as dist/. */
export function readBundle(folder: string): { readonly metadata: Metadata; readonly bundle: Bundle } {
  const file = join(folder, "functions.js");
  const { found, CustomFunctions } = customFunctionsGlobal();
  vm.runInNewContext(readFileSync(file, "utf8"), { CustomFunctions }, { filename: file });
  const metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as Metadata;
  return { metadata, bundle: found };
}
