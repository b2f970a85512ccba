/** What one row of a paste says, before rows are gathered into tables. */
import type { LengthUnit } from "../../length";
import type { Figure, Issue, Nap } from "../model";
import type { Cell } from "./cell";
import type { Header } from "./header";
import type { PrintedWidths } from "./widths";

interface RecordBase {
  readonly header: Header;
  readonly label: string;
  readonly line: number;
  readonly figures: readonly Figure[];
  readonly cells: readonly Cell[];
  unit: LengthUnit | null;
}
export interface MeasureRecord extends RecordBase {
  readonly sort: "measure";
  kind: "body" | "finished";
  place: string;
  readonly known: boolean;
  readonly view: string | null;
}
export interface FabricRecord extends RecordBase {
  readonly sort: "fabric";
  readonly views: readonly string[] | "all";
  readonly part: string;
  readonly widths: PrintedWidths | null;
  readonly nap: Nap | null;
}
export type Reading = MeasureRecord | FabricRecord;

/** Issues as they are found; put in the order of the paste at the end. */
export class Doubts {
  issues: Issue[] = [];

  warn(line: number, message: string, more: Partial<Issue> = {}): void {
    this.issues.push({ line, ...more, severity: "warning", message });
  }
  /** Takes back what was said of a line and turned out to be nothing. */
  withdraw(line: number, messages: readonly string[]): void {
    this.issues = this.issues.filter((issue) => issue.line !== line || !messages.includes(issue.message));
  }
  error(line: number, message: string, more: Partial<Issue> = {}): void {
    this.issues.push({ line, ...more, severity: "error", message });
  }
}
