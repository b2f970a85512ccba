/** One understood table: a grid of cells to correct, each doubt beside its cell. */
import { paneWords, type ChartTable } from "../../src/index";
import { choices, element, freshId } from "../dom";
import type { CellAt, Draft, Flag } from "./draft";
import { figureText, labelColumns, labelText, type LabelColumn, type Place } from "./grid";
import { sparkline } from "./sparkline";

const words = paneWords.chart;
/** Rows shown; the rest of a very long table goes into the sheet as it was read. */
const MOST_ROWS = 80;

export interface TableEvents {
  /** A corrected cell; the answer is why it was not taken, or null. */
  correct(place: Place, text: string): string | null;
  leaveOut(row: number): void;
  retitle(change: Partial<Pick<ChartTable, "kind" | "unit">>): void;
}
export interface TableView {
  readonly element: HTMLElement;
  /** Shows the flags and figures of a newer draft whose table has the same rows and sizes. */
  update(draft: Draft): void;
  focus(at: CellAt): void;
}

interface Cell {
  readonly input: HTMLInputElement;
  readonly place: Place;
  readonly at: CellAt;
  readonly name: string;
}

export function tableView(first: Draft, tableIndex: number, events: TableEvents): TableView {
  let table = first.tables[tableIndex]!;
  const labels = labelColumns(table);
  const shown = Math.min(table.rows.length, MOST_ROWS);
  const rows: { readonly cells: Cell[]; readonly spark: HTMLElement; readonly reasons: HTMLElement }[] = [];
  const all: Cell[] = [];

  const textOf = ({ row, column }: Place): string => {
    if (typeof column !== "number") return labelText(table, row, column);
    return row < 0 ? table.sizes[column]! : figureText(table.rows[row]!.values[column]!, table.unit);
  };
  const nameOf = (place: Place): string => {
    const { row, column } = place;
    if (row < 0) return words.sizeHeading(Number(column) + 1);
    const rowName = rowTitle(table, row);
    return typeof column === "number"
      ? words.cell(rowName, words.size(table.sizes[column]!))
      : words.cell(rowName, words.columns[column]);
  };
  const cellOf = (place: Place, atColumn: number): Cell => {
    const name = nameOf(place);
    const input = element("input", { type: "text", "aria-label": name, autocomplete: "off", spellcheck: "false" });
    input.value = textOf(place);
    input.dataset.at = `${tableIndex}/${place.row}/${atColumn}`;
    const cell = { input, place, at: { table: tableIndex, row: place.row, column: atColumn }, name };
    input.addEventListener("focus", () => input.select());
    input.addEventListener("change", () => commit(cell));
    all.push(cell);
    return cell;
  };
  const commit = ({ input, place }: Cell) => {
    if (input.value === textOf(place)) return;
    const refusal = events.correct(place, input.value);
    // Refused text stays in its cell, so that it can be put right.
    if (refusal === null) input.value = textOf(place);
    input.classList.toggle("refused", refusal !== null);
  };

  const heads = table.sizes.map((_, column) => cellOf({ row: -1, column }, column));
  const body: HTMLElement[] = [];
  for (let row = 0; row < shown; row++) {
    const labelCells = labels.map((column) => cellOf({ row, column }, -1));
    const figures = table.sizes.map((_, column) => cellOf({ row, column }, column));
    const spark = element("td", { class: "shape" });
    const reasons = element("td", { colspan: labels.length + table.sizes.length + 2 });
    rows.push({ cells: [...labelCells, ...figures], spark, reasons });
    body.push(
      element(
        "tr",
        {},
        ...labelCells.map(({ input, place }) =>
          element(
            place.column === labels[0] ? "th" : "td",
            { class: `label ${place.column as LabelColumn}`, scope: place.column === labels[0] ? "row" : null },
            input,
          ),
        ),
        spark,
        ...figures.map(({ input }) => element("td", {}, input)),
        element(
          "td",
          {},
          removeButton(
            () => rowTitle(table, row),
            () => events.leaveOut(row),
          ),
        ),
      ),
      element("tr", { class: "reasons", hidden: true }, reasons),
    );
  }

  const title = element("span", {});
  const grid = element(
    "table",
    { class: `grid ${table.kind}` },
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        ...labels.map((column) => element("th", { scope: "col", class: `label ${column}` }, words.columns[column])),
        element("th", { scope: "col" }, element("span", { class: "unseen" }, words.shape)),
        ...heads.map(({ input }) => element("th", { scope: "col" }, input)),
        element("td", {}),
      ),
    ),
    element("tbody", {}, ...body),
  );
  grid.addEventListener("keydown", (event) => move(event, grid));

  const update = (draft: Draft) => {
    table = draft.tables[tableIndex]!;
    title.textContent = words.showTable(words.kinds[table.kind], table.rows.length);
    const flags = draft.flags.filter(({ at }) => at.table === tableIndex);
    for (const cell of all) {
      const mine = flags.filter(({ at }) => at.row === cell.at.row && at.column === cell.at.column);
      if (cell.input !== document.activeElement && !cell.input.classList.contains("refused"))
        cell.input.value = textOf(cell.place);
      cell.input.setAttribute("aria-label", nameOf(cell.place));
      cell.input.classList.toggle("flagged", mine.length > 0);
      cell.input.tabIndex = mine.length > 0 ? 0 : -1;
    }
    // With nothing to look at, Tab still enters the grid.
    if (flags.length === 0) (rows[0]?.cells[0] ?? heads[0])!.input.tabIndex = 0;
    rows.forEach(({ cells, spark, reasons }, row) => {
      const mine = flags.filter(({ at }) => at.row === row);
      explain(mine, cells, reasons, table);
      const doubtful = new Set(mine.map(({ at }) => at.column));
      const { values } = table.rows[row]!;
      spark.replaceChildren(sparkline(values, doubtful, words.rowShape(rowTitle(table, row), values.length)));
    });
  };
  const view = element(
    "details",
    { class: "chart", open: tableIndex < 6 },
    element("summary", {}, title),
    titleFields(table, events),
    element("div", { class: "scroll" }, grid),
    table.rows.length > shown ? element("p", { class: "hint" }, words.moreRows(table.rows.length - shown)) : null,
  );
  update(first);
  return {
    element: view,
    update,
    focus(at) {
      view.open = true;
      all.find((cell) => cell.at.row === at.row && cell.at.column === at.column)?.input.focus();
    },
  };
}

/** What a row is called where it stands alone. */
function rowTitle(table: ChartTable, row: number): string {
  if (table.kind !== "fabric") {
    const { view } = table.rows[row]!;
    return [labelText(table, row, "place"), view].filter(Boolean).join(" ");
  }
  const texts = (["view", "part", "width"] as const).map((column) => labelText(table, row, column));
  return texts.filter(Boolean).join(" ") || words.rowNumber(row + 1);
}

function removeButton(title: () => string, onclick: () => void): HTMLButtonElement {
  const label = words.removeRow(title());
  return element(
    "button",
    { type: "button", class: "remove", "aria-label": label, title: label, tabindex: -1, onclick },
    "×",
  );
}

/** Puts each reason under its row, and ties it to its cell. */
function explain(flags: readonly Flag[], cells: readonly Cell[], reasons: HTMLElement, table: ChartTable): void {
  const line = reasons.parentElement!;
  line.hidden = flags.length === 0;
  for (const { input } of cells) input.removeAttribute("aria-describedby");
  reasons.replaceChildren(
    ...flags.map(({ at, issue }) => {
      const id = freshId("reason");
      const cell = cells.find((one) => one.at.column === at.column);
      const before = cell?.input.getAttribute("aria-describedby");
      cell?.input.setAttribute("aria-describedby", before ? `${before} ${id}` : id);
      const size = at.column >= 0 ? `${table.sizes[at.column]}: ` : "";
      return element("p", { id, class: issue.severity }, size + issue.message);
    }),
  );
}

function titleFields(table: ChartTable, events: TableEvents): HTMLElement {
  const units = table.kind === "fabric" ? ["yd", "m"] : ["in", "cm"];
  const unit = choices(
    element("select", { id: freshId("unit") }),
    units.map((value) => ({ value, label: value })),
  );
  unit.value = table.unit;
  unit.addEventListener("change", () => events.retitle({ unit: unit.value } as Pick<ChartTable, "unit">));
  const parts: HTMLElement[] = [];
  if (table.kind !== "fabric") {
    const kinds = (["body", "finished"] as const).map((value) => ({ value, label: words.kinds[value] }));
    const kind = choices(element("select", { id: freshId("kind") }), kinds);
    kind.value = table.kind;
    kind.addEventListener("change", () => events.retitle({ kind: kind.value } as Pick<ChartTable, "kind">));
    parts.push(element("label", { for: kind.id, class: "unseen" }, words.kind), kind);
  }
  return element(
    "div",
    { class: "inline" },
    ...parts,
    element("span", {}, element("label", { for: unit.id }, words.unit), unit),
  );
}

/** The arrow keys go from cell to cell; left and right only from the ends of the text. */
function move(event: KeyboardEvent, grid: HTMLTableElement): void {
  const input = event.target;
  if (!(input instanceof HTMLInputElement)) return;
  const { selectionStart: from, selectionEnd: to, value } = input;
  const whole = from === 0 && to === value.length;
  const steps: Record<string, readonly [number, number] | undefined> = {
    ArrowUp: [-1, 0],
    ArrowDown: [1, 0],
    Enter: [1, 0],
    ArrowLeft: whole || to === 0 ? [0, -1] : undefined,
    ArrowRight: whole || from === value.length ? [0, 1] : undefined,
  };
  const step = steps[event.key];
  if (!step) return;
  event.preventDefault();
  const lines = [...grid.querySelectorAll("tr:not(.reasons)")].map((line) => [...line.querySelectorAll("input")]);
  const row = lines.findIndex((line) => line.includes(input));
  const fromEnd = lines[row]!.length - lines[row]!.indexOf(input);
  const line = lines[row + step[0]];
  // Columns are counted from the right: the heading row has inputs only over the sizes.
  const next = step[0] !== 0 ? line?.at(-Math.min(fromEnd, line.length)) : line?.[line.length - fromEnd + step[1]];
  next?.focus();
}
