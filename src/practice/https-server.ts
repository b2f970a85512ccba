/**
 * dist/ over https for Excel on this machine, unchanged. Excel loads add-ins by https only, so it needs a certificate
 * that the machine trusts: made once by `npx office-addin-dev-certs install`, which asks before it changes anything.
 */
import { existsSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:https";
import { homedir } from "node:os";
import { join } from "node:path";
import { DIST } from "./root";
import { contentType, fileIn, pathOf } from "./served-file";

const CERTIFICATES = join(homedir(), ".office-addin-dev-certs");

export interface Certificate {
  readonly cert: string | Buffer;
  readonly key: string | Buffer;
}

export async function serveForExcel(port: number): Promise<void> {
  const files = { cert: join(CERTIFICATES, "localhost.crt"), key: join(CERTIFICATES, "localhost.key") };
  if (!existsSync(files.cert) || !existsSync(files.key)) {
    console.log(`Excel wants https with a certificate that this machine trusts, and there is none in ${CERTIFICATES}.`);
    console.log("Run this once, read what it asks, and start again:\n\n  npx office-addin-dev-certs install\n");
    process.exitCode = 1;
    return;
  }
  if (!existsSync(join(DIST, "manifest.xml"))) {
    console.log("There is nothing to serve yet: run npm run build first.");
    process.exitCode = 1;
    return;
  }
  const server = httpsServer(DIST, { cert: readFileSync(files.cert), key: readFileSync(files.key) });
  server.once("error", (error: NodeJS.ErrnoException) => {
    console.log(
      error.code === "EADDRINUSE"
        ? `Port ${port} is taken: stop what uses it. The manifest names this port.`
        : error.message,
    );
    process.exitCode = 1;
  });
  server.listen(port, "127.0.0.1", () => {
    console.log(
      `The add-in is at https://localhost:${port}/. In Excel, add dist/manifest.xml as README says.\nStop with Ctrl+C.`,
    );
  });
}

/** Serves one folder and nothing above it. Excel for the web asks from another origin, so reading is allowed to all. */
export function httpsServer(folder: string, certificate: Certificate): Server {
  return createServer({ ...certificate }, (request, response) => {
    response.setHeader("access-control-allow-origin", "*");
    response.setHeader("cache-control", "no-cache");
    response.setHeader("x-content-type-options", "nosniff");
    const path = pathOf(request.url ?? "/");
    const file = path === undefined ? undefined : fileIn(folder, path === "/" ? "index.html" : path);
    if (request.method !== "GET" && request.method !== "HEAD") return void response.writeHead(405).end();
    if (!file) return void response.writeHead(404).end();
    response.setHeader("content-type", contentType(file));
    response.end(request.method === "HEAD" ? undefined : readFileSync(file));
  });
}
