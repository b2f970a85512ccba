import type { FitProblems } from "../problem";
import type { Sentences } from "./sentences";

export const fitSentences: Sentences<FitProblems> = {};
