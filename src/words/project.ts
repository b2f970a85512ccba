import type { ProjectProblems } from "../problem";
import type { Sentences } from "./sentences";

export const projectSentences: Sentences<ProjectProblems> = {};
