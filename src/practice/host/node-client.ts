/** Loads the real Excel client into this Node process, unmodified and once: what the tests and the demo talk to. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import vm from "node:vm";
import { type ApiSets, type BatchRunner, type Bridge, createBridge, hasSet } from "./office-client";

const CLIENT_FILE = "excel-win32-16.01.js";
/** The client's pauses between results are shorter than this, in milliseconds; its time limits are longer. */
const LONGEST_PAUSE = 2000;

interface ClientGlobals {
  OSF?: { _OfficeAppFactory?: { getContext(): object; getHostInfo(): object } };
  OfficeExtension?: { CommonUtility: { _doApiNotSupportedCheck: boolean } };
}

const HOST = { hostType: "Excel", hostPlatform: "Win32", hostSpecificFileVersion: "16.01" };

/** The bridge of the client that this process has loaded. */
export interface NodeClient {
  readonly bridge: Bridge;
}

let loaded: NodeClient | undefined;

/** The folder of office.js in node_modules; nothing of it is ever copied. */
export function officeFolder(from: string): string {
  return join(dirname(createRequire(from).resolve("@microsoft/office-js/package.json")), "dist");
}

/**
 * The client answers only from `runner`; whatever is outside `sets` it refuses by itself, as in an old Excel.
 *
 * The client spaces the results of custom functions by half a second to spare Excel. Its text is loaded as it is but
 * with a faster clock, so that a test of one function need not wait for that.
 */
export function loadNodeClient(from: string, runner: BatchRunner, sets: ApiSets): NodeClient {
  if (loaded) return loaded;
  const bridge = createBridge(runner);
  globalThis.navigator ??= { userAgent: "node" } as Navigator; // Node 20 has none
  Object.assign(globalThis, { window: globalThis, self: globalThis, _richApiNativeBridge: bridge });
  const file = join(officeFolder(from), CLIENT_FILE);
  // With what it is to be called with: after a second of calls in one message the client goes on in a later turn.
  const setClock = (work: (...given: unknown[]) => void, delay: number, ...given: unknown[]) =>
    setTimeout(work, delay > LONGEST_PAUSE ? delay : 0, ...given);
  Object.assign(globalThis, { practiceClock: { setTimeout: setClock } });
  Object.assign(globalThis, { CustomFunctions: association() });
  // In this realm, not in a context of its own: the client tells plain objects by their prototype. Its `var`s become
  // globals, as in a script tag; only `setTimeout` is looked up in the clock first.
  vm.runInThisContext(`with (practiceClock) {${readFileSync(file, "utf8")}\n}`, { filename: file });
  const client: ClientGlobals = globalThis as object;
  if (!client.OSF || !client.OfficeExtension) throw new Error("The Excel client has not set its globals");
  client.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  const requirements = { isSetSupported: (name: string, version?: string) => hasSet(sets, name, version) };
  // office.js makes this one when it starts; here there is only the client, which asks it for Office.context.
  client.OSF._OfficeAppFactory = { getContext: () => ({ requirements }), getHostInfo: () => HOST };
  loaded = { bridge };
  return loaded;
}

/** The list of functions, which office.js makes before it loads the client. */
function association(): object {
  const mappings: Record<string, unknown> = {};
  const listeners: (() => void)[] = [];
  const associate = (id: string, implementation: unknown) => {
    mappings[id.toUpperCase()] = implementation;
    for (const heard of listeners) heard();
  };
  const onchange = (heard: () => void) => void listeners.push(heard);
  return { associate, _association: { mappings, onchange } };
}
