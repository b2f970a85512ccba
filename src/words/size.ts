import type { SizeProblems } from "../problem";
import type { Sentences } from "./sentences";

export const sizeSentences: Sentences<SizeProblems> = {
  unknownRule: ({ text, known }) => `"${text}" is not a rule known here. Write ${known}.`,
  cmAgainstInches: ({ found, against }) =>
    `${found} against ${against}: cm against inches? Write the unit beside the figure.`,
  aboveChart: ({ measure, place, by, end }) =>
    by === "just"
      ? `${measure} at the ${place} is just above this chart: ${end} stops short of its upper end.`
      : `${measure} at the ${place} is ${by} above this chart, which ends at ${end}.`,
  belowChart: ({ measure, place, by, end }) =>
    `${measure} at the ${place} is ${by} below this chart, which begins at ${end}.`,
  fallingRow: ({ place, size, figures }) =>
    `The row for ${place} goes out of order at size ${size} (${figures}): correct the chart.`,
  missingFigure: ({ place, size }) =>
    `The chart has no figure for ${place} in size ${size}, and the answer hangs on it: fill it in.`,
  unreadableGroup: ({ text }) => `"${text}" can't be read as a group of sizes. Write it like 6-12, or 6 to 12.`,
  sizeInNoGroup: ({ size, known }) => `Size ${size} is in none of these groups (${known}).`,
  tooManyGroups: ({ found }) =>
    `${found} are too many groups or sizes to choose among: give the groups of one pattern.`,
};

/** What the last column of a plan of sizes says. */
export const sizeNotes = {
  closest: "The closest size; a tie goes to the larger.",
  inRange: "The size whose printed range holds the measure.",
  betweenRanges: "Between two printed ranges: the larger size.",
  beyond: (by: string, way: "above" | "below"): string =>
    `The closest size; the measure is ${by} ${way} the ${way === "above" ? "largest" : "smallest"} size.`,
  notMeasured: "Not measured.",
  notOnChart: "Not on this chart.",
} as const;
