import type { ChartProblems } from "../problem";
import type { Sentences } from "./sentences";

export const chartSentences: Sentences<ChartProblems> = {};
