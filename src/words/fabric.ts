import type { FabricProblems } from "../problem";
import type { Sentences } from "./sentences";

export const fabricSentences: Sentences<FabricProblems> = {
  badClothWidth: ({ text }) => `"${text}" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`,
  shrinkage: ({ text }) => `Shrinkage goes from 0 to 30%, and this is ${text}: write 5% for five percent.`,
};
