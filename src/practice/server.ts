/** Serves the practice page, the built add-in and office.js, to this machine only. */
import { createReadStream, readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname } from "node:path";
import { officeFolder } from "./host/node-client";
import { contentType, fileIn, isFile, pathOf } from "./served-file";

export interface ServedFolders {
  /** The bundled practice page. */
  readonly page: string;
  /** dist/ */
  readonly addin: string;
  /** The workbook that the page opens, as JSON. */
  readonly workbook: string;
}
export interface RunningServer {
  readonly url: string;
  close(): Promise<void>;
}

const OFFICE_ADDRESS = "https://appsforoffice.microsoft.com";
/** The three style elements that the embedded spreadsheet (0.25.1) makes; the last starts empty. */
const SPREADSHEET_STYLES = [
  "'sha256-qehDXQGi+mtaFkbShaHTjtdxRzE9Ba4Ffh5AsXR+z7s='",
  "'sha256-StEaX+se6YS7pqjzrzMIA0KaX9zF/8zAhvQXZAe5epY='",
  "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='",
];
const STYLES = "style-src 'self'";
/** Nothing from outside, nothing evaluated. The grid draws its pictures and fonts from data of its own. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  [STYLES, ...SPREADSHEET_STYLES].join(" "),
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "frame-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join("; ");
/** The pane's own policy stands in its page; a header can only make it narrower. */
const PANE_POLICY = POLICY.replace([STYLES, ...SPREADSHEET_STYLES].join(" "), STYLES).replaceAll(
  / (?:data|blob):/g,
  "",
);

/** The first free port from `port` on; 0 is any. */
export async function serve(folders: ServedFolders, port = 3000): Promise<RunningServer> {
  const server = createServer((request, response) => answer(request, response, folders));
  const listening = await listen(server, port, port === 0 ? 0 : port + 50);
  return {
    url: `http://127.0.0.1:${listening}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function listen(server: Server, port: number, last: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException) => {
      if (error.code !== "EADDRINUSE" || port >= last) reject(error);
      else resolve(listen(server, port + 1, last));
    };
    server.once("error", failed);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", failed);
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : port);
    });
  });
}

function answer(request: IncomingMessage, response: ServerResponse, folders: ServedFolders): void {
  const isPane = request.url?.startsWith("/addin/") ?? false;
  response.setHeader("content-security-policy", isPane ? PANE_POLICY : POLICY);
  response.setHeader("x-content-type-options", "nosniff");
  response.setHeader("referrer-policy", "no-referrer");
  response.setHeader("cross-origin-resource-policy", "same-origin");
  response.setHeader("cache-control", "no-cache");
  const refuse = (status: number) => void response.writeHead(status, { "content-type": "text/plain" }).end();
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405);
  // A page elsewhere could reach this server through a name that it points here.
  if (!/^(?:127\.0\.0\.1|localhost)(?::\d+)?$/.test(request.headers.host ?? "")) return refuse(403);
  const file = fileOf(request.url ?? "/", folders);
  if (!file) return refuse(404);
  response.setHeader("content-type", contentType(file));
  if (request.method === "HEAD") return void response.end();
  if (isPane && extname(file) === ".html") return void response.end(withLocalOffice(readFileSync(file, "utf8")));
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

function fileOf(url: string, folders: ServedFolders): string | undefined {
  const path = pathOf(url);
  if (path === undefined) return undefined;
  if (path === "/workbook.json") return isFile(folders.workbook);
  const served: readonly (readonly [string, string])[] = [
    ["/lib/1/hosted/", officeFolder(import.meta.url)],
    ["/addin/", folders.addin],
    ["/page/", folders.page],
  ];
  const wanted = path === "/" ? "/page/index.html" : path;
  for (const [start, folder] of served) {
    if (!wanted.startsWith(start)) continue;
    return fileIn(folder, wanted.slice(start.length));
  }
  return undefined;
}

/** The page on disk stays as it was built for Excel; what is answered loads office.js from here. */
function withLocalOffice(html: string): string {
  const tag = `<script src=${OFFICE_ADDRESS}/lib/1/hosted/office.js>`;
  const quoted = `<script src="${OFFICE_ADDRESS}/lib/1/hosted/office.js">`;
  const local = '<script src="/page/pane.js"></script><script src="/lib/1/hosted/office.js">';
  return html.replace(html.includes(tag) ? tag : quoted, local);
}
