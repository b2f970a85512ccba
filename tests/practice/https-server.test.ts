import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { httpsServer } from "../../src/practice/https-server";

const folder = mkdtempSync(join(tmpdir(), "served-"));
let server: ReturnType<typeof httpsServer> | undefined;
let canMakeCertificates = true;

beforeAll(async () => {
  mkdirSync(join(folder, "dist"));
  writeFileSync(join(folder, "dist", "index.html"), "<p>home</p>");
  writeFileSync(join(folder, "dist", "functions.json"), "{}");
  writeFileSync(join(folder, "secret.txt"), "not served");
  const [key, cert] = [join(folder, "key.pem"), join(folder, "cert.pem")];
  try {
    execFileSync(
      "openssl",
      [
        "req",
        "-x509",
        "-newkey",
        "rsa:2048",
        "-nodes",
        "-keyout",
        key,
        "-out",
        cert,
        "-days",
        "2",
        "-subj",
        "/CN=localhost",
      ],
      { stdio: "ignore" },
    );
  } catch {
    canMakeCertificates = false;
    return;
  }
  server = httpsServer(join(folder, "dist"), { key: readFileSync(key), cert: readFileSync(cert) });
  await new Promise<void>((done) => server!.listen(0, "127.0.0.1", done));
});
afterAll(() => void server?.close());

const get = (path: string, method = "GET") =>
  new Promise<{ status: number; type: string; text: string }>((resolve, reject) => {
    const { port } = server!.address() as AddressInfo;
    request({ host: "127.0.0.1", port, path, method, rejectUnauthorized: false }, (answer) => {
      let text = "";
      answer.on("data", (chunk: Buffer) => (text += chunk.toString()));
      answer.on("end", () => resolve({ status: answer.statusCode!, type: answer.headers["content-type"] ?? "", text }));
    })
      .on("error", reject)
      .end();
  });

describe("httpsServer", () => {
  test("serves the files of its folder with their types", async ({ skip }) => {
    if (!canMakeCertificates) skip("openssl is not on this machine");
    expect(await get("/")).toMatchObject({ status: 200, text: "<p>home</p>" });
    expect((await get("/functions.json?123")).type).toMatch(/^application\/json/);
  });
  test.each(["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/nothing", "/%zz", "/%00"])(
    "does not answer %s",
    async (path) => {
      if (canMakeCertificates) expect((await get(path)).status).toBe(404);
    },
  );
  test("only reads", async () => {
    if (canMakeCertificates) expect((await get("/", "POST")).status).toBe(405);
  });
});
