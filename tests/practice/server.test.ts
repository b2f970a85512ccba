import { request } from "node:http";
import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type RunningServer, serve } from "../../src/practice/server";

let server: RunningServer;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "practice-"));
  for (const name of ["page", "addin", "addin-secret"]) mkdirSync(join(folder, name));
  writeFileSync(join(folder, "page", "index.html"), "<p>page</p>");
  writeFileSync(join(folder, "addin-secret", "key.txt"), "secret");
  writeFileSync(join(folder, "key.txt"), "secret");
  writeFileSync(join(folder, "workbook.json"), "{}");
  const office = "<script src=https://appsforoffice.microsoft.com/lib/1/hosted/office.js></script>";
  writeFileSync(join(folder, "addin", "taskpane.html"), `<head>${office}</head>`);
  server = await serve(
    { page: join(folder, "page"), addin: join(folder, "addin"), workbook: join(folder, "workbook.json") },
    0,
  );
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly headers: Record<string, unknown>;
  readonly text: string;
}
/** The path goes out as it stands: fetch would tidy it up first. */
const get = (path: string, headers: Record<string, string> = {}, method = "GET") =>
  new Promise<Answer>((resolve, reject) => {
    const { hostname, port } = new URL(server.url);
    const sent = request({ hostname, port, path, method, headers }, (response) => {
      let text = "";
      response.on("data", (part) => (text += String(part)));
      response.on("end", () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
    });
    sent.on("error", reject).end();
  });

describe("serve", () => {
  test("answers the page, the add-in, the workbook and office.js", async () => {
    expect((await get("/")).text).toBe("<p>page</p>");
    expect((await get("/workbook.json")).text).toBe("{}");
    const office = await get("/lib/1/hosted/office.js?v=1");
    expect(office.status).toBe(200);
    expect(office.headers["content-type"]).toContain("javascript");
  });

  test("lets the pane load office.js from here, after the script that makes the window look like Excel's", async () => {
    const { text } = await get("/addin/taskpane.html");
    expect(text).toBe(
      '<head><script src="/page/pane.js"></script><script src="/lib/1/hosted/office.js"></script></head>',
    );
  });

  test("serves nothing outside its folders", async () => {
    const tricks = [
      "/key.txt",
      "/addin/../key.txt",
      "/addin/%2e%2e/key.txt",
      "/addin/..%2fkey.txt",
      "/addin/..%5ckey.txt",
      "/addin/%2e%2e%2fkey.txt",
      "/addin-secret/key.txt",
      "/addin/../addin-secret/key.txt",
      "//key.txt",
      "/addin/%00",
      "/addin/%E0%A4%A",
      "/addin/",
      "/page/.hidden",
      `/addin/${encodeURIComponent(join(folder, "key.txt"))}`,
    ];
    for (const path of tricks) {
      const { status, text } = await get(path);
      expect([path, status, text]).toEqual([path, 404, ""]);
    }
  });

  test("forbids everything from outside, and evaluation", async () => {
    for (const path of ["/", "/addin/taskpane.html", "/missing"]) {
      const policy = String((await get(path)).headers["content-security-policy"]);
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toMatch(/unsafe|https?:|\*/);
    }
  });

  test("answers only reading, and only under its own name", async () => {
    expect((await get("/", {}, "POST")).status).toBe(405);
    expect((await get("/", { host: "somewhere.example" })).status).toBe(403);
    expect((await get("/", {}, "HEAD")).status).toBe(200);
  });

  test("listens on this machine's own address only", async () => {
    const { port } = new URL(server.url);
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ family, internal }) => family === "IPv4" && !internal);
    for (const { address } of others) {
      await expect(fetch(`http://${address}:${port}/`, { signal: AbortSignal.timeout(1000) })).rejects.toThrow();
    }
    expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  });

  test("takes the next port when one is taken", async () => {
    const { port } = new URL(server.url);
    const second = await serve({ page: folder, addin: folder, workbook: join(folder, "workbook.json") }, Number(port));
    expect(Number(new URL(second.url).port)).toBeGreaterThan(Number(port));
    await second.close();
  });
});
