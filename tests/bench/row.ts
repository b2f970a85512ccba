/** One line of the bench's table. */
export interface BenchRow {
  readonly name: string;
  readonly value: number | string;
  readonly unit?: string;
  /** The limit it is held against, as it reads: "≤ 40". */
  readonly wanted?: string;
}
