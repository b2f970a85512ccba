/** What a build for somebody's host changes, by the same code that the build runs. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { manifestFaults } from "./manifest";

interface Build {
  addinUrl(wanted: string | undefined): string;
  manifestFor(manifest: string, base: string): string;
  supportLink(wanted: string | undefined): string;
}
const root = join(import.meta.dirname, "../..");
const files = new Set([
  ...["taskpane.html", "functions.js", "functions.json", "index.html", "support.html"],
  ...[16, 32, 64, 80].map((size) => `assets/icon-${size}.png`),
]);
let build: Build;
beforeAll(async () => {
  build = (await import(pathToFileURL(join(root, "webpack.config.mjs")).href)) as Build;
}, 60_000);

describe("ADDIN_URL", () => {
  test("left out is this machine's address", () => expect(build.addinUrl(undefined)).toBe("https://localhost:3000"));
  test.each([
    ["https://example.org", "https://example.org"],
    ["https://example.org/", "https://example.org"],
    ["https://example.org/sewing", "https://example.org/sewing"],
    ["https://example.org/tools/sewing/", "https://example.org/tools/sewing"],
    ["https://example.org:8443/a%20b", "https://example.org:8443/a%20b"],
  ])("%s is %s", (wanted, address) => expect(build.addinUrl(wanted)).toBe(address));
  test.each([
    ["http://example.org", /must start with https/],
    ["https://localhost:3000", /public address/],
    ["https://add.localhost", /public address/],
    ["https://127.0.0.1", /public address/],
    ["https://[::1]:3000", /public address/],
    ["https://0.0.0.0", /public address/],
    ["https://example.org/?a=1", /without \? or #/],
    ["https://example.org/#top", /without \? or #/],
    ["example.org", /Invalid URL/],
  ])("%s is refused", (wanted, why) => expect(() => build.addinUrl(wanted)).toThrow(why));
});

describe("a hosted manifest", () => {
  const source = readFileSync(join(root, "manifest.xml"), "utf8");
  test.each(["https://example.org", "https://example.org/tools/sewing"])("has no fault at %s", (address) => {
    const manifest = build.manifestFor(source, build.addinUrl(address));
    expect(manifestFaults(manifest, { files, development: false })).toEqual([]);
    expect(manifest).toContain(`"${address}/taskpane.html"`);
    expect(manifest).not.toMatch(/localhost/);
  });
  test("keeps an address with & and $ readable", () => {
    const manifest = build.manifestFor(source, build.addinUrl("https://example.org/a&b$&c"));
    expect(manifest).toContain('"https://example.org/a&amp;b$&amp;c/taskpane.html"');
  });
  test("has the version of package.json whatever the source says", () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
    const older = source.replace(/<Version>.*<\/Version>/, "<Version>0.1.0.0</Version>");
    expect(build.manifestFor(older, "https://example.org")).toContain(`<Version>${version}.0</Version>`);
  });
});

describe("SUPPORT_URL", () => {
  test("left out leaves the words", () =>
    expect(build.supportLink(undefined)).toBe("where the project keeps its issues"));
  test("becomes a link", () => {
    expect(build.supportLink("https://example.org/issues")).toMatch(/^<a href="https:\/\/example\.org\/issues">/);
    expect(build.supportLink("mailto:help@example.org?subject=A&body=B")).toContain("subject=A&amp;body=B");
    expect(build.supportLink('https://example.org/"><script>')).toContain(
      'href="https://example.org/%22%3E%3Cscript%3E"',
    );
    expect(build.supportLink('mailto:a@example.org?subject="><script>')).not.toMatch(/"><s/);
  });
  test.each(["javascript:alert(1)", "http://example.org"])("%s is refused", (wanted) =>
    expect(() => build.supportLink(wanted)).toThrow(/must start with https/),
  );
});
