/** The practice workbook: a spreadsheet on the left, the add-in's own pane in a frame on the right. */
import type { IWorkbookData } from "@univerjs/core";
import { createBridge, dressWindow } from "../host/office-client";
import { openSession } from "../session";
import { DECLARED_SETS, NAMESPACE } from "../settings";
import { type Bundle, customFunctionsGlobal } from "../univer/bundle";
import { messageOf } from "../univer/book/messages";
import { type Metadata, sheetFunctions } from "../univer/functions";
import { engine, startOnScreen } from "../univer/page";
import { EMPTY_BOOK } from "../univer/snapshot";

declare global {
  interface Window {
    /** For the pane's first script, and for whoever looks under the bonnet. */
    practice?: object;
  }
}

const read = async <T>(url: string) => (await (await fetch(url)).json()) as T;

/** Runs the bundle as it is, in a script of its own: evaluating its text is against the page's policy. */
async function loadBundle(): Promise<Bundle> {
  const { CustomFunctions, found } = customFunctionsGlobal();
  Object.assign(window, { CustomFunctions });
  await new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = "/addin/functions.js";
    script.onload = resolve;
    script.onerror = () => reject(new Error("the functions are not there"));
    document.head.append(script);
  });
  return found;
}

/** The address with ?empty opens a new workbook in place of the starter's. */
const isEmptyWanted = new URLSearchParams(location.search).has("empty");

async function open(): Promise<void> {
  const [bundle, metadata, snapshot] = await Promise.all([
    loadBundle(),
    read<Metadata>("/addin/functions.json"),
    isEmptyWanted ? EMPTY_BOOK : read<Partial<IWorkbookData>>("/workbook.json"),
  ]);
  const functions = sheetFunctions({ engine, namespace: NAMESPACE, metadata, bundle });
  const screen = startOnScreen("sheet", functions, snapshot);
  const { book } = screen;
  const runner = { run: (batch: never) => session.run(batch) };
  const bridge = createBridge(runner);
  const session = openSession(book, bridge, { editing: screen.editing });
  window.practice = {
    ...screen,
    messageAt: (address: string) =>
      messageOf(functions.messages, book.Worksheets.GetActiveWorksheet().GetRange(address)),
    connect: (pane: Window) => dressWindow(pane, bridge, book.documentSettings, DECLARED_SETS),
  };
  performance.mark("workbook ready");
}

function openPane(): void {
  const pane = document.createElement("iframe");
  pane.title = "Sewing pane";
  pane.src = "/addin/taskpane.html";
  pane.addEventListener("load", () => performance.mark("pane loaded"));
  document.querySelector("#pane")?.append(pane);
}

const status = document.querySelector("#status");
open().then(
  () => {
    openPane();
    if (status) status.textContent = "";
  },
  (error: unknown) => {
    if (status) status.textContent = `The workbook did not open: ${error instanceof Error ? error.message : "?"}`;
    throw error;
  },
);
