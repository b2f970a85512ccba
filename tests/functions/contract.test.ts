import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { beforeAll, describe, expect, test } from "vitest";

/**
 * What is published and never changes: ids, argument order, which arguments may be left out. New arguments are only
 * added at the end, and optional. An optional argument stands in brackets.
 */
const published: Readonly<Record<string, string>> = {
  LENGTH: "text [unit] [unitIfNone]",
  TOYARDS: "metres [step]",
  TOMETRES: "yards [step]",
  FRACTION: "number [denominator]",
  BUYLENGTH: "length step",
  SIZECOLUMN: "chart size [pattern]",
  SIZEMATCH: "chart place measure [rule] [pattern]",
  SIZEBYPLACE: "chart body [person] [pattern]",
  CUTSIZE: "chart body garment [finished] [person] [pattern] [settings]",
  CUTNOTE: "chart body garment [finished] [person] [pattern] [settings]",
  BLEND: "chart body garment [finished] [person] [pattern] [settings]",
  BUSTADJUST: "chart bust highbust [draftedDifference] [chartRow] [threshold] [pattern]",
  ENVELOPE: "groups sizes",
  EASE: "finished body",
  FITTERM: "ease garment place [unit] [settings]",
  EASEBAND: "garment place term [unit] [settings]",
  EASEPLAN: "chart body garment finished [person] [pattern] [settings]",
  STRETCH: "rest stretched",
  KNITCHECK: "stretch required",
  YARDAGE: "table view width size [part] [nap] [estimate] [pattern]",
  FABRICWIDTH: "length from to [step] [unit]",
  EXTRAYARDAGE: "length unit [shrinkage] [repeat] [repeatUnit] [lengths] [added]",
  LAYOUTLENGTH: "pieces width unit [layout] [repeat] [gap]",
  LAYOUTPLAN: "pieces width unit [layout] [repeat] [gap]",
  SALEPRICE: "price [percentOff] [salePrice]",
  HASDETAILS: "details wanted [all]",
  TAGS: "maker number",
  SHOPLIST: "projects [stash]",
  CHARTINDEX: "name table",
};

interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}
interface Entry {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly Parameter[];
}

const folder = join(import.meta.dirname, "../../functions");
let entries: readonly Entry[] = [];
let exported: string[] = [];

beforeAll(async () => {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(folder, file))
    .filter((file) => /^ \* @customfunction /m.test(readFileSync(file, "utf8")));
  const result = await generateCustomFunctionsMetadata(files, true);
  expect(result.errors).toEqual([]);
  entries = (JSON.parse(result.metadataJson) as { functions: Entry[] }).functions;
  exported = files.flatMap((file) =>
    [...readFileSync(file, "utf8").matchAll(/^export function (\w+)/gm)].map((match) => match[1]!),
  );
});

describe("functions.json", () => {
  test("has the published ids and arguments, in their order", () => {
    const found = entries.map(({ id, parameters }) => [
      id,
      parameters.map((item) => (item.optional ? `[${item.name}]` : item.name)).join(" "),
    ]);
    expect(Object.fromEntries(found)).toEqual(published);
  });
  test("shows each function under its id", () => {
    for (const entry of entries) expect(entry.name).toBe(entry.id);
  });
  test("lists every exported function and no other", () => {
    expect(exported.map((name) => name.toUpperCase()).sort()).toEqual(entries.map((entry) => entry.id).sort());
  });
  test("has a sentence for each function and argument", () => {
    for (const { id, description, parameters } of entries)
      for (const text of [description, ...parameters.map((item) => item.description)])
        expect(text, id).toMatch(/^[A-Z"].{10,}\.$/s);
  });
  test("has ids that a cell takes: three letters or more, and no cell address", () => {
    for (const { id } of entries) {
      expect(id).toMatch(/^[A-Z]{3,}$/);
      expect(`SEW.${id}`.length).toBeLessThanOrEqual(64);
    }
  });
  test("repeats only the last argument of CHARTINDEX", () => {
    const repeating = entries.flatMap(({ id, parameters }) =>
      parameters.filter((item) => item.repeating).map((item) => `${id} ${item.name}`),
    );
    expect(repeating.filter((item) => !item.startsWith("CHARTINDEX "))).toEqual([]);
    expect(repeating.length).toBeGreaterThan(0);
  });
});
