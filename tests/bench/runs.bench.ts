/** What the longer runs found, `npm run mutation` and `npm run coverage`: here, or where they were last kept. */
import { latest, rowsOf } from "./kept";
import type { BenchRow } from "./row";

export async function bench(): Promise<BenchRow[]> {
  return rowsOf(latest());
}
