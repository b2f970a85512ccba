/** A pattern's printed charts, read from whatever was pasted. */
import { doubts } from "../words/reading";
import type { ChartReading, Issue } from "./model";
import { assemble, tableOf } from "./reading/assemble";
import type { Row } from "./reading/cell";
import { checkTables } from "./reading/checks";
import { htmlRows } from "./reading/html";
import { textRows } from "./reading/lines";
import { readRows } from "./reading/reader";
import { Doubts } from "./reading/record";

/** Far more than any chart: a whole web page with its markup, a whole instruction sheet. */
const LONGEST_HTML = 3_000_000;
const LONGEST_TEXT = 200_000;

/**
 * Reads every chart in a paste: body measurements, finished garment measurements and fabric required, in plain text
 * (tabs, CSV, pipes, aligned columns, single spaces) or in HTML, in any order, with prose around them.
 *
 * Tables come in reading order, one for each kind, unit and list of sizes. What is doubtful is an issue beside its cell;
 * a row whose figures don't match the sizes is an error and is left out, never shifted. Nothing readable is an issue
 * too. It never throws and gives no text that a sheet could run.
 *
 * Lines and columns count from 1. A column is a cell of its row, or a character where only spaces part the cells. In HTML
 * a line is a row, counted over the rows of all tables in reading order; text between tables has that of the row below.
 *
 * @param pasted text, or HTML when it holds a table or a clipboard's StartFragment
 * @example readCharts("Size\t8\t10\nBust\t31½\t32½").tables[0]?.sizes //=> ["8", "10"]
 */
export function readCharts(pasted: string): ChartReading {
  const isHtml = /<table|StartFragment/i.test(pasted);
  if (pasted.length > (isHtml ? LONGEST_HTML : LONGEST_TEXT))
    return refusal(doubts.tooLong(isHtml ? "3,000,000 characters" : "200,000 characters"));
  if (!isHtml) return readAll(textRows(pasted));
  const html = htmlRows(pasted);
  if (!html.hasTable && html.text.length > LONGEST_TEXT) return refusal(doubts.tooLong("200,000 characters"));
  if (html.isCut) return refusal(doubts.tooLong("4,000 rows"));
  return readAll(html.hasTable ? html.rows : textRows(html.text));
}

const refusal = (message: string): ChartReading => ({ tables: [], issues: [{ line: 1, severity: "error", message }] });

function readAll(rows: readonly Row[]): ChartReading {
  const found = new Doubts();
  const { readings, viewsNamed } = readRows(rows, found);
  const tables = assemble(readings, viewsNamed, found);
  checkTables(tables, found);
  if (tables.length === 0 && !found.issues.some((issue) => issue.severity === "error"))
    found.error(1, doubts.noChart());
  return { tables: tables.map(tableOf), issues: inOrder(found.issues) };
}

/** More issues than anybody reads; a paste of anything must not freeze the pane. */
const MOST_ISSUES = 500;

function inOrder(issues: readonly Issue[]): Issue[] {
  // What is said of a cell need not be said of its row again.
  const said = new Set(
    issues.filter(({ column }) => column !== undefined).map(({ line, message }) => `${line} ${message}`),
  );
  const sorted = issues
    .filter(({ line, column, message }) => column !== undefined || !said.has(`${line} ${message}`))
    .sort((a, b) => a.line - b.line || (a.column ?? 0) - (b.column ?? 0));
  if (sorted.length <= MOST_ISSUES) return sorted;
  const line = sorted[MOST_ISSUES]!.line;
  return [
    ...sorted.slice(0, MOST_ISSUES),
    { line, severity: "error", message: doubts.more(sorted.length - MOST_ISSUES) },
  ];
}
