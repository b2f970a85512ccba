/** Which file an address means, never one outside the folder that is served, and what a browser should take it for. */
import { existsSync, statSync } from "node:fs";
import { extname, join, sep } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".xml": "application/xml",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
};

export const contentType = (file: string): string => TYPES[extname(file)] ?? "application/octet-stream";

/** Undefined for an address with a part that could lead out of a folder. */
export function pathOf(url: string): string | undefined {
  try {
    const path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "/");
    const parts = path.split("/");
    const tricky = parts.some((part) => part.startsWith(".") || part.includes("\\") || part.includes("\0"));
    return path.startsWith("/") && !tricky && !/:/.test(path) ? path : undefined;
  } catch {
    return undefined;
  }
}

/** The file at a path below a folder, undefined where there is none. */
export function fileIn(folder: string, path: string): string | undefined {
  const file = join(folder, path);
  return file.startsWith(folder + sep) ? isFile(file) : undefined;
}

export const isFile = (path: string) => (existsSync(path) && statSync(path).isFile() ? path : undefined);
