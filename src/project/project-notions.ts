import type { Cells } from "../chart/cell";
import { isErrorCell } from "../chart/cell";
import { answer, type Result } from "../problem";
import { cellWords, headedRows, sameWords } from "./headed-rows";

const HEADINGS = {
  notions: ["Notions", "Haberdashery"],
  project: ["Project", "Name"],
  pattern: ["Pattern", "Garment"],
  status: ["Status"],
} as const;

/** Nothing is bought any more for these; cloth that is bought or cut may still want its buttons. */
export const NO_NOTIONS_WANTED = ["finished", "dropped"] as const;

/** What one project wants besides its cloth, and how far it is. */
export interface NotionsOfProject {
  readonly project: string;
  /** The filled cells, one for each row of the project. */
  readonly texts: readonly string[];
  /** "" where the list has no status. */
  readonly status: string;
  /** Whether it is still to be made. */
  readonly wanted: boolean;
  /** The same text stands in more than one row of the project: its lining may only repeat it. */
  readonly repeated: boolean;
}

/**
 * The notions of a list of projects, read from any column headed Notions. The rows of a project (a row for each of its
 * fabrics) are put together; projects without notions are left out, a blank name is "row 5". An error
 * in a cell is a line that can't be read. A project is still wanted as long as one of its rows is.
 *
 * Refuses a range without that heading.
 *
 * @example projectNotions([["Project", "Notions"], ["Camp shirt", "6 buttons"]]).value[0].texts //=> ["6 buttons"]
 */
export function projectNotions(cells: Cells): Result<readonly NotionsOfProject[]> {
  const rows = headedRows<keyof typeof HEADINGS>(cells, "the list of projects", HEADINGS, ["notions"]);
  if (!rows.ok) return rows;
  const projects = new Map<string, NotionsOfProject>();
  for (const { number, cell } of rows.value) {
    const notions = cell("notions");
    const text = isErrorCell(notions) ? notions.error : cellWords(notions);
    if (text === "") continue;
    const project = cellWords(cell("project")) || cellWords(cell("pattern")) || `row ${number}`;
    const status = cellWords(cell("status"));
    const wanted = !NO_NOTIONS_WANTED.some((word) => word === sameWords(status));
    const key = sameWords(project);
    const before = projects.get(key);
    const texts = [...(before?.texts ?? []), text];
    projects.set(key, {
      project: before?.project ?? project,
      texts,
      status: before && (before.wanted || !wanted) ? before.status : status,
      wanted: (before?.wanted ?? false) || wanted,
      repeated: new Set(texts.map(sameWords)).size < texts.length,
    });
  }
  return answer([...projects.values()]);
}
