/** What is known while the rows of a paste are read, from top to bottom. */
import type { LengthUnit } from "../../length";
import type { Nap } from "../model";
import type { FabricState } from "./fabric-rows";
import type { Header } from "./header";
import type { Kind } from "./headings";
import type { MeasureState } from "./measure-rows";
import type { Doubts, Reading } from "./record";
import type { PrintedWidths } from "./widths";

/** What the lines above have said. */
export interface State extends FabricState, MeasureState {
  kind: Kind | null;
  measureKind: "body" | "finished" | null;
  unit: LengthUnit | null;
  header: Header | null;
  view: string | null;
  views: readonly string[] | "all" | null;
  part: string | null;
  nap: Nap | null;
  widths: PrintedWidths | null;
  chest: boolean;
  stars: ReadonlyMap<string, Nap>;
  columnUnits: ReadonlyMap<number, LengthUnit>;
  readings: Reading[];
  found: Doubts;
}
