import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { manifestFaults } from "./manifest";

const root = join(import.meta.dirname, "../..");
const manifest = readFileSync(join(root, "manifest.xml"), "utf8");
/** What a build puts beside the manifest; the list from dist itself is checked by dist.test.ts. */
const files = new Set([
  "taskpane.html",
  "functions.js",
  "functions.json",
  "index.html",
  "support.html",
  ...[16, 32, 64, 80].map((size) => `assets/icon-${size}.png`),
]);
const faults = (xml: string, development = true) => manifestFaults(xml, { files, development });

describe("manifest.xml", () => {
  test("has no fault", () => expect(faults(manifest)).toEqual([]));
  test("carries the version of package.json", () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
    expect(/<Version>(.*)<\/Version>/.exec(manifest)?.[1]).toBe(`${version}.0`);
  });
  test("names only icons and pages that are in the repository", () => {
    const drawn = readdirSync(join(root, "taskpane/assets"));
    for (const size of [16, 32, 64, 80]) expect(drawn).toContain(`icon-${size}.png`);
    for (const page of ["index.html", "support.html", "privacy.html"])
      expect(existsSync(join(root, "taskpane/pages", page))).toBe(true);
  });
});

describe("manifestFaults", () => {
  test.each([
    [
      "an address without https",
      manifest.replace("https://localhost:3000/taskpane.html", "http://localhost:3000/taskpane.html"),
      /not https/,
    ],
    [
      "a resid that nobody defines",
      manifest.replace('resid="Group.Label"', 'resid="Group.Labl"'),
      /used and not defined/,
    ],
    [
      "two pages",
      manifest.replace('<Runtime resid="Pane.Url"', '<Runtime resid="LearnMore.Url"'),
      /one page for pane and functions/,
    ],
    ["a namespace with a digit", manifest.replace('DefaultValue="SEW"', 'DefaultValue="SEW2"'), /letters only/],
    ["a long tip", manifest.replace("Opens the pane that", "Opens the pane that ".repeat(20)), /longer than 250/],
    ["a missing file", manifest.replaceAll("icon-80.png", "icon-81.png"), /not in dist/],
    ["a missing icon size", manifest.replaceAll('size="80"', 'size="64"'), /No icon of 80/],
    ["a version of three numbers", manifest.replace("1.0.0.0", "1.0.0"), /four numbers/],
    [
      "another host",
      manifest.replace("https://localhost:3000/index.html", "https://example.org/index.html"),
      /another host/,
    ],
  ])("sees %s", (_what, xml, message) => expect(faults(xml).join("\n")).toMatch(message));
  test("sees this machine's address in a manifest for the public", () =>
    expect(faults(manifest, false).join("\n")).toMatch(/on this machine/));
});
