import type { FabricProblems } from "../problem";
import type { Sentences } from "./sentences";

export const fabricSentences: Sentences<FabricProblems> = {};
