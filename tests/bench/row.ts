/** One line of the bench's table. */
export interface BenchRow {
  /** As DEVELOPERS.md has it in its table of figures, if it is quoted there. */
  readonly name: string;
  readonly value: number | string;
  readonly unit?: string;
  /** The limit it is held against, as it reads: "≤ 40". */
  readonly wanted?: string;
  /** Where the figure is from, when it was not measured just now. */
  readonly from?: string;
}
