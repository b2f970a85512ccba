/**
 * The private doors through which the unmodified office.js (1.1.110, pinned) talks to its host: the bridge, and what it
 * asks of the window it is loaded into. Every undocumented name is in this file and in node-client.ts; smoke.test.ts
 * fails when a newer client moves one of them.
 */
import type { Batch, Reply } from "./executor";

/** What the client calls, and what it wants to be called back on; the text is JSON both ways. */
export interface Bridge {
  onMessageFromHost: ((text: string) => void) | null;
  sendMessageToHost(text: string): void;
}

/** A request's answer, and a message that the host sends unasked: events, calls of custom functions. */
const RESPONSE = 2;
const NOTICE = 3;

interface Request {
  readonly id: number;
  readonly flags: number;
  readonly message: { readonly body: string | Batch };
}

/** Where batches go. Tests put another workbook behind the same client by changing `run`. */
export interface BatchRunner {
  run(batch: Batch): Promise<Reply>;
}

/** office.js looks for the global `_richApiNativeBridge` when it loads and sends each batch there. */
export function createBridge(runner: BatchRunner): Bridge {
  const bridge: Bridge = {
    onMessageFromHost: null,
    sendMessageToHost(text) {
      const { id, flags, message } = JSON.parse(text) as Request;
      const batch = typeof message.body === "string" ? (JSON.parse(message.body) as Batch) : message.body;
      void runner.run(batch).then((reply) => {
        const body = JSON.stringify(reply);
        bridge.onMessageFromHost?.(
          JSON.stringify({ id, type: RESPONSE, flags, message: { statusCode: 200, headers: {}, body } }),
        );
      });
    },
  };
  return bridge;
}

/** An event as the client expects it: category, number of the event, the sheet or table it is about, its own data. */
export interface HostEvent {
  readonly messageType: number;
  readonly targetId: string;
  readonly data: object;
}

const EVENT_CATEGORY = 65536;

/** Tells the client that something happened in the workbook. */
export function sendEvents(bridge: Bridge, events: readonly HostEvent[]): void {
  const entries = events.map(({ messageType, targetId, data }) => ({
    messageCategory: EVENT_CATEGORY,
    messageType,
    targetId,
    message: JSON.stringify(data),
    isRemoteOverride: false,
  }));
  bridge.onMessageFromHost?.(JSON.stringify({ type: NOTICE, message: { entries } }));
}

/** One call of a custom function, as Excel writes it: [number, name, arguments, address, flags, argument addresses]. */
export type FunctionCall = readonly [number, string, unknown[], string, number, string[] | null];

/** Asks the functions runtime inside the client to call functions. */
export function sendCalls(bridge: Bridge, calls: readonly FunctionCall[]): void {
  const entries = calls.map((call) => ({ messageCategory: 1, messageType: 1000, message: JSON.stringify(call) }));
  bridge.onMessageFromHost?.(JSON.stringify({ type: NOTICE, message: { entries } }));
}

/** `Office.context.document.settings`: kept with the workbook. */
export interface DocumentSettings {
  read(): Record<string, string>;
  write(all: Record<string, string>): void;
}

/** The requirement sets that the host claims to have, by name: "ExcelApi" to "1.12". */
export type ApiSets = Readonly<Record<string, string>>;

/** True when the claimed sets include this one. Versions are compared part by part, so that 1.10 is above 1.9. */
export function hasSet(sets: ApiSets, name: string, version: string | number = "0"): boolean {
  const claimed = Object.entries(sets).find(([key]) => key.toLowerCase() === name.toLowerCase())?.[1];
  if (claimed === undefined) return false;
  const [major = 0, minor = 0] = claimed.split(".").map(Number);
  const [wantedMajor = 0, wantedMinor = 0] = String(version).split(".").map(Number);
  return major > wantedMajor || (major === wantedMajor && minor >= wantedMinor);
}

/** Makes a window look like the web view of Excel for Windows; called before office.js loads there. */
export function dressWindow(win: Window, bridge: Bridge, settings: DocumentSettings, sets: ApiSets): void {
  const colours = {
    primaryfontcolor: 0,
    primarybackgroundcolor: 0xffffff,
    secondaryfontcolor: 0,
    secondarybackgroundcolor: 0xffffff,
  };
  const context = {
    GetAppType: () => 1,
    GetSolutionRef: () => "practice",
    GetInstanceId: () => "practice-1",
    GetCorrelationId: () => "practice-1",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetHostFullVersion: () => "16.0.18000.20000",
    GetAppUILocale: () => "en-US",
    GetAppDataLocale: () => "en-US",
    GetDocUrl: () => "Practice.xlsx",
    GetAppCapabilities: () => 0,
    GetActivationMode: () => 0,
    GetControlIntegrationLevel: () => 1,
    GetSolutionToken: () => "",
    GetInitialDisplayMode: () => 2,
    GetSupportedMatrix: () => JSON.stringify(sets),
    GetOfficeThemeInfo: () => JSON.stringify(colours),
    GetSettings: () => ({
      Read(keys: string[], values: string[]) {
        for (const [key, value] of Object.entries(settings.read())) {
          keys.push(key);
          values.push(value);
        }
      },
      Write: (keys: string[], values: string[]) =>
        settings.write(Object.fromEntries(keys.map((key, at) => [key, values[at] ?? ""]))),
    }),
  };
  Object.assign(win.external, {
    GetContext: () => context,
    // The last 3 means one page for the pane and the functions.
    GetHostInfo: () => "Excel$Win32$16.01$en-US$$$$3",
    GetLoggingAllowed: () => false,
    RegisterEvent: (_id: number, _target: string, _handler: unknown, done?: (status: number) => void) => done?.(0),
    Execute: () => undefined,
  });
  Object.assign(win, { _richApiNativeBridge: bridge });
}
