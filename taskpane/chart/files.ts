/** Text out of what a person opens, drops or pastes, or the sentence that says why there is none. */
import { paneWords } from "../../src/index";
import type { Corrected } from "./grid";

const words = paneWords.chart;
const LARGEST = 20 * 1024 * 1024;

/** What a file was read as: text to go on with, or the bytes of a PDF. */
export type Opened =
  { readonly kind: "text"; readonly text: string } | { readonly kind: "pdf"; readonly bytes: Uint8Array };

const refuse = (message: string) => ({ ok: false, message }) as const;

export async function openFile(file: File): Promise<Corrected<Opened>> {
  const { name, type, size } = file;
  if (size === 0) return refuse(words.emptyFile(name));
  if (size > LARGEST) return refuse(words.tooLargeFile(name));
  if (type.startsWith("image/") || /\.(?:png|jpe?g|gif|webp|heic|bmp|tiff?)$/i.test(name))
    return refuse(words.noPicture(name));
  if (/\.(?:xls[xmb]?|ods|numbers)$/i.test(name)) return refuse(words.workbookFile(name));
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return refuse(words.unreadableFile(name));
  }
  if (startsWith(bytes, "%PDF-")) return { ok: true, value: { kind: "pdf", bytes } };
  // A zip or another file of bytes; no text has a nought in it but UTF-16, which names itself.
  const text = decode(bytes);
  if (text.slice(0, 4096).includes("\0")) return refuse(words.unknownFile(name));
  if (text.trim() === "") return refuse(words.emptyFile(name));
  return { ok: true, value: { kind: "text", text } };
}

function startsWith(bytes: Uint8Array, text: string): boolean {
  return [...text].every((letter, index) => bytes[index] === letter.charCodeAt(0));
}

/** UTF-8, UTF-16 that says so, else what Windows wrote before. */
export function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** What a clipboard holds for us: a table of a web page, or plain text. */
export function pastedText(data: Pick<DataTransfer, "getData" | "types" | "files"> | null): Corrected<string> {
  let html: string;
  try {
    // A browser that was told not to give out the clipboard gives none, or one that refuses.
    if (!data) return refuse(words.clipboardClosed);
    html = data.getData("text/html");
  } catch {
    return refuse(words.clipboardClosed);
  }
  if (/<table/i.test(html)) return { ok: true, value: html };
  const text = data.getData("text/plain");
  if (text.trim() !== "") return { ok: true, value: text };
  const isPicture = [...data.files].some(({ type }) => type.startsWith("image/")) || /<img/i.test(html);
  return refuse(isPicture ? words.imagePasted : words.nothingPasted);
}
