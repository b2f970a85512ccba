import { namesText } from "../chart/cells-names";
import type { ClothWidth } from "../chart/cells-fabric";
import { isFault, type FabricChart, type FabricChartRow, type FabricUnit, type Nap } from "../chart/model";
import { columnOfSize, labelKey, sizeIndex } from "../chart/size-label";
import { lengthIn } from "../length/length";
import { formatLength } from "../length/format";
import { plainText } from "../length/read";
import { answer, refuse, type Problem, type Result } from "../problem";
import { fabricWidth } from "./fabric-width";
import { inCm, isNarrower, knownWidth, sameWidth, type KnownWidth } from "./yardage-width";

/** What is asked of a printed fabric table. */
export interface YardageQuestion {
  /** "" only where the table names no views, or one. */
  readonly view: string;
  readonly width: ClothWidth;
  /** A size of the table, or a blend: "12-16" or "12+16". */
  readonly size: string;
  /** "main" unless said. */
  readonly part?: string;
  /** null: whichever needs more. */
  readonly nap?: Nap | null;
  /** Whether a width that isn't printed may be estimated from one that is. */
  readonly estimate?: boolean;
}

/** An amount of fabric and where it stands. */
export interface Yardage {
  readonly amount: number;
  readonly unit: FabricUnit | null;
  readonly width: KnownWidth;
  /** Whether the amount is an estimate from `width`, and not printed for the width that was asked. */
  readonly estimated: boolean;
}

interface Line {
  readonly row: FabricChartRow;
  readonly width: KnownWidth | null;
  readonly unit: FabricUnit | null;
  readonly columns: readonly number[];
  readonly sizes: readonly string[];
}

/**
 * The printed amount for a view, a fabric width and a size. Equal widths count as one (44/45 in = 115 cm). Without a nap
 * the larger amount; for a blend the largest of its sizes and those between. With nap, a row that prints only "without"
 * isn't enough; without nap, the amount with nap is, where no other is printed.
 *
 * A width that isn't printed is refused, naming the nearest narrower one, whose amount is always enough; with `estimate`
 * the answer is made from that amount, or from the nearest wider one where none is narrower.
 *
 * Common practice, no source.
 *
 * @param charts all tables of the pattern: yards and metres, two lists of sizes
 */
export function printedYardage(charts: readonly FabricChart[], question: YardageQuestion): Result<Yardage> {
  const sized = linesOfSize(charts, question.size);
  if (!sized.ok) return sized;
  const viewed = ofView(sized.value, question.view);
  if (!viewed.ok) return viewed;
  const parts = ofPart(viewed.value, question);
  if (!parts.ok) return parts;
  const wanted = knownWidth(question.width);
  const equal = parts.value.filter(({ width }) => width === null || sameWidth(width, wanted));
  // Yards belong to inches and metres to centimetres, also where an amount holds for every width.
  const foreign = wanted.unit === "in" ? "m" : "yd";
  const own = equal.filter(({ width, unit }) => (width === null ? unit !== foreign : width.unit === wanted.unit));
  const lines = own.length > 0 ? own : equal;
  if (lines.length === 0) return otherWidth(parts.value, wanted, question);
  const amount = largest(lines, question, wanted);
  if (!amount.ok) return amount;
  return answer({ amount: amount.value.amount, unit: amount.value.unit, width: wanted, estimated: false });
}

/** The rows of the tables that have the size, with the columns that it needs. */
function linesOfSize(charts: readonly FabricChart[], size: string): Result<readonly Line[]> {
  const lines: Line[] = [];
  let missing: Problem | undefined;
  for (const chart of charts) {
    const columns = columnsOfSize(chart.sizes, size);
    if (!columns.ok) missing ??= columns.problem;
    else
      for (const row of chart.rows)
        lines.push({
          row,
          width: row.width === null ? null : { value: row.width, unit: row.widthUnit },
          unit: chart.unit,
          columns: columns.value,
          sizes: chart.sizes,
        });
  }
  if (lines.length > 0 || !missing) return answer(lines);
  return { ok: false, problem: missing };
}

/**
 * The columns of a size, or of a blend: "12-16" is every column from one to the other, "12+16" those two. A label that
 * the table itself has ("12-14") is one column.
 */
export function columnsOfSize(sizes: readonly string[], size: string): Result<readonly number[]> {
  const whole = sizeIndex(sizes, size);
  if (whole >= 0) return answer([whole]);
  const text = plainText(size);
  const ends = text.includes("+") ? text.split("+") : text.split(/ to |-|\//);
  const columns: number[] = [];
  for (const end of ends.length > 1 ? ends : [size.trim()]) {
    const column = columnOfSize(sizes, end.trim());
    if (!column.ok) return column;
    columns.push(column.value);
  }
  if (text.includes("+")) return answer(columns);
  const [from, to] = [Math.min(...columns), Math.max(...columns)];
  return answer(Array.from({ length: to - from + 1 }, (_, index) => from + index));
}

const viewKey = (view: string): string => labelKey(view).replace(/^views?/, "");

/** The views that a row is for: "A, B" is two; "All views" is every one. */
function viewsOf(row: FabricChartRow): readonly string[] {
  return row.view.split(/[,/&+;]| and /).map((view) => view.trim());
}
const isForAll = (view: string): boolean => ["all", "allviews", "eachview"].includes(labelKey(view));

function ofView(lines: readonly Line[], view: string): Result<readonly Line[]> {
  const known = [...new Set(lines.flatMap(({ row }) => viewsOf(row)).filter((name) => name !== "" && !isForAll(name)))];
  if (view === "") {
    if (known.length <= 1) return answer(lines);
    return refuse("blank", { wanted: `a view (${namesText(known)})` });
  }
  const found = lines.filter(({ row }) =>
    viewsOf(row).some(
      (name) =>
        viewKey(name) === viewKey(view) || (isForAll(name) && known.some((other) => viewKey(other) === viewKey(view))),
    ),
  );
  if (found.length > 0) return answer(found);
  return refuse("unknownView", {
    text: view,
    known: known.length > 0 ? namesText(known) : "it names none: leave the view blank",
  });
}

function ofPart(lines: readonly Line[], { part = "main", view }: YardageQuestion): Result<readonly Line[]> {
  const found = lines.filter(({ row }) => labelKey(row.part) === labelKey(part));
  if (found.length > 0) return answer(found);
  return refuse("unknownPart", { text: part, view, known: namesText([...new Set(lines.map(({ row }) => row.part))]) });
}

/** The rows that answer for a nap: those that name it, else those that don't say, else those that need more. */
function ofNap(lines: readonly Line[], nap: Nap | null): readonly Line[] {
  if (nap === null || nap === "either") return lines;
  const having = (...naps: readonly (Nap | null)[]) => lines.filter(({ row }) => naps.includes(row.nap));
  const [named, unsaid] = [having(nap, "either"), having(null)];
  if (named.length > 0) return named;
  return unsaid.length > 0 || nap === "with" ? unsaid : having("with");
}

function largest(
  lines: readonly Line[],
  { view, nap = null }: YardageQuestion,
  width: KnownWidth,
): Result<{ readonly amount: number; readonly unit: FabricUnit | null; readonly line: Line }> {
  const shown = formatLength(width.value, width.unit);
  const fitting = ofNap(lines, nap);
  if (fitting.length === 0) return refuse("napNotPrinted", { view, width: shown });
  let best: { amount: number; unit: FabricUnit | null; line: Line } | undefined;
  let missing: Problem | undefined;
  for (const line of fitting) {
    const amount = amountOf(line, view, shown);
    if (!amount.ok && amount.problem.code !== "noAmount") return amount;
    if (!amount.ok) missing ??= amount.problem;
    else if (!best || amount.value > best.amount) best = { amount: amount.value, unit: line.unit, line };
  }
  return best ? answer(best) : { ok: false, problem: missing! };
}

function amountOf({ row, columns, sizes }: Line, view: string, width: string): Result<number> {
  let most = 0;
  for (const column of columns) {
    const value = row.values[column] ?? null;
    if (value === null) return refuse("noAmount", { view, width, size: sizes[column] ?? "" });
    if (isFault(value)) return { ok: false, problem: value.fault };
    most = Math.max(most, value);
  }
  return answer(most);
}

/** The answer where the width isn't printed. */
function otherWidth(lines: readonly Line[], wanted: KnownWidth, question: YardageQuestion): Result<Yardage> {
  const printed = lines.filter((line): line is Line & { width: KnownWidth } => line.width !== null);
  const same = printed.filter(({ width }) => width.unit === wanted.unit);
  const pool = same.length > 0 ? same : printed;
  const narrower = pool.filter(({ width }) => isNarrower(width, wanted)).sort((a, b) => inCm(b.width) - inCm(a.width));
  const wider = pool.filter(({ width }) => !isNarrower(width, wanted)).sort((a, b) => inCm(a.width) - inCm(b.width));
  const from = narrower[0] ?? wider[0];
  const base =
    from &&
    largest(
      pool.filter(({ width }) => sameWidth(width, from.width)),
      question,
      from.width,
    );
  if (question.estimate && from && base) {
    if (!base.ok) return base;
    const { amount, unit } = base.value;
    const length = fabricWidth(
      amount,
      lengthIn(from.width.value, from.width.unit),
      lengthIn(wanted.value, wanted.unit),
      {
        ...(unit ? { unit } : {}),
      },
    );
    return length.ok ? answer({ amount: length.value, unit, width: from.width, estimated: true }) : length;
  }
  const known = [...new Set(pool.map(({ width }) => formatLength(width.value, width.unit)))];
  const figure = from && base?.ok ? figureText(base.value, from.width) : null;
  const [enough, estimateFrom] = narrower.length > 0 ? [figure, null] : [null, figure];
  const width = formatLength(wanted.value, wanted.unit);
  return refuse("widthNotPrinted", { width, known: namesText(known), enough, estimateFrom });
}

const figureText = ({ amount, unit }: { amount: number; unit: FabricUnit | null }, width: KnownWidth): string =>
  `${formatLength(amount, unit)} printed for ${formatLength(width.value, width.unit)}`;
