/** What a refusal costs in a column of look-ups: it is thrown, no further than its own element. Needs dist/. */
import { sizeMatch } from "../../functions/size";
import { loadClient } from "../practice/office";
import type { BenchRow } from "./row";

const MEASURES = 20_000;
const chart = [
  ["Measurement", "Unit", 8, 10, 12, 14],
  ["bust", "in", 32, 33, 34, 36],
];

/** The middle of five calls, in ms of this process's own time; every element has to be an answer, or every one a refusal. */
function timed(from: number, refused: boolean): number {
  const measures = Array.from({ length: MEASURES }, (_, index) => [from + (index % 200) / 100]);
  const times = Array.from({ length: 5 }, () => {
    const start = process.cpuUsage().user;
    const answers = sizeMatch(chart, [["bust"]], measures);
    const passed = (process.cpuUsage().user - start) / 1000;
    if (!answers.every(([answer]) => (typeof answer === "object") === refused))
      throw new Error("not what was asked for");
    return passed;
  });
  return times.sort((a, b) => a - b)[2]!;
}

export async function bench(): Promise<BenchRow[]> {
  // Errors are the real client's.
  loadClient();
  const answers = timed(33, false);
  const refusals = timed(60, true);
  return [
    { name: "20,000 refusals in one column of SIZEMATCH", value: refusals, unit: "ms", wanted: "≤ 500" },
    {
      name: "20,000 refusals in one column of SIZEMATCH over 20,000 answers",
      value: refusals / answers,
      unit: "×",
      wanted: "≤ 3",
    },
  ];
}
