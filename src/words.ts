/** Every sentence a person reads. One file for each room stands in src/words/; this is their door. */
import type { Problem, ProblemCode, ProblemDetails } from "./problem";
import { chartSentences } from "./words/chart";
import { fabricSentences } from "./words/fabric";
import { fitSentences } from "./words/fit";
import { lengthSentences } from "./words/length";
import { projectSentences } from "./words/project";
import { sizeSentences } from "./words/size";
import { yardageSentences } from "./words/yardage";

const sentences: { readonly [Code in ProblemCode]: (details: ProblemDetails[Code]) => string } = {
  ...lengthSentences,
  ...chartSentences,
  ...sizeSentences,
  ...yardageSentences,
  ...fitSentences,
  ...fabricSentences,
  ...projectSentences,
};

/** The sentence for a problem: what was found, and what to do. */
export function sentence(problem: Problem): string {
  return (sentences[problem.code] as (details: Problem["details"]) => string)(problem.details);
}
