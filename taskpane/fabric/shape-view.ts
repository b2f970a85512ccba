/** Enters the edge of a piece by a few widths at heights, and writes it into the list. */
import {
  clean,
  convert,
  formatOutline,
  outlineFromWidths,
  paneWords,
  paperPieces,
  readLength,
  refusalSentence,
  sentence,
  widthsFromOutline,
  type HowShaped,
  type PaperPiece,
  type Point,
  type WidthAt,
} from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field } from "../dom";
import { carryOut, carryOutAll } from "../excel";
import type { PiecesCells } from "./pieces-source";
import { shapeDrawing } from "./shape-picture";

const words = paneWords.fabric.shape;
const LINES = 3;

export interface ShapeView {
  readonly element: HTMLElement;
  /** The list may have changed. */
  refresh(): void;
}
type Shape = { readonly ok: true; readonly outline: readonly Point[] } | { readonly ok: false; readonly said: string };

/**
 * @param list reads the chosen list as it is now
 * @param unit what a row without a unit is in
 */
export function shapeView(app: App, list: () => Promise<PiecesCells>, unit: () => "in" | "cm"): ShapeView {
  const choice = element("select", {});
  const edge = choices(element("select", {}), words.edges);
  const from = choices(element("select", {}), words.froms);
  const about = element("p", { class: "hint" });
  const caption = element("caption", {});
  const headings = [element("th", { scope: "col" }), element("th", { scope: "col" })] as const;
  const body = element("tbody", {});
  const drawing = element("div", {});
  const problem = element("p", { class: "hint" });
  const missing = element("p", { class: "hint" }, words.noPieces);
  const write = button(words.write, () => void app.run(writeOutline), { class: "main" });
  let lines: { readonly height: HTMLInputElement; readonly width: HTMLInputElement }[] = [];
  let pieces: readonly PaperPiece[] = [];
  let seen = "";

  const piece = () => pieces[Number(choice.value)];
  const how = (): HowShaped => ({
    edge: edge.value as HowShaped["edge"],
    from: from.value as HowShaped["from"],
  });
  const addLine = (height = "", width = "") => {
    const cell = (value: string, label: string) => {
      const input = element("input", {
        type: "text",
        inputmode: "decimal",
        autocomplete: "off",
        "aria-label": label,
        oninput: draw,
      });
      input.value = value;
      return input;
    };
    const number = lines.length + 1;
    const line = { height: cell(height, words.rowHeight(number)), width: cell(width, words.rowWidth(number)) };
    lines.push(line);
    body.append(element("tr", {}, element("td", {}, line.height), element("td", {}, line.width)));
    line.width.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      const next = lines[lines.indexOf(line) + 1] ?? addLine();
      next.height.focus();
    });
    return line;
  };
  /** What has been typed; blank lines are left aside. */
  const shape = (of: PaperPiece): Shape => {
    const rows: WidthAt[] = [];
    for (const [index, line] of lines.entries()) {
      const texts = [line.height.value.trim(), line.width.value.trim()];
      if (texts.every((text) => text === "")) continue;
      if (texts.includes("")) return { ok: false, said: words.halfFilled(index + 1) };
      const figures: number[] = [];
      for (const text of texts) {
        const read = readLength(text);
        if (!read.ok) return { ok: false, said: sentence(read.problem) };
        figures.push(read.value.unit ? clean(convert(read.value.value, read.value.unit, of.unit)) : read.value.value);
      }
      rows.push({ height: figures[0]!, width: figures[1]! });
    }
    // A height that was forgotten is added below the others.
    rows.sort((one, other) => one.height - other.height);
    const made = outlineFromWidths(of, rows, how());
    return made.ok ? { ok: true, outline: made.value } : { ok: false, said: sentence(made.problem) };
  };
  const draw = () => {
    const chosen = piece();
    const made = chosen && shape(chosen);
    drawing.replaceChildren(...(chosen ? [shapeDrawing(chosen, made?.ok ? made.outline : undefined)] : []));
    problem.textContent = made && !made.ok ? made.said : "";
    problem.hidden = problem.textContent === "";
  };
  /** Fills the lines anew: from the outline that the piece has, else its two ends. */
  const fill = () => {
    const chosen = piece();
    lines = [];
    body.replaceChildren();
    if (!chosen) return;
    const { width, length, outline, onFold, outlined } = chosen;
    const known = outline && widthsFromOutline(outline, { width, length }, how().from);
    edge.disabled = onFold;
    if (known || onFold) edge.value = known && !onFold ? known.edge : "straight";
    about.textContent = [
      words.size(`${length} ${chosen.unit}`, `${width} ${chosen.unit}`),
      onFold ? words.onFold : "",
      outlined && !known ? words.otherKind : "",
    ].join(" ");
    caption.textContent = words.caption(chosen.name);
    headings[0].textContent = words.height(chosen.unit);
    headings[1].textContent = words.width(chosen.unit);
    if (known) for (const row of known.rows) addLine(String(row.height), String(row.width));
    else {
      addLine("0");
      while (lines.length < LINES - 1) addLine();
      addLine(String(length));
    }
    draw();
  };
  const load = async () => {
    const read = await list();
    const found = read.ok ? paperPieces(read.cells, unit()) : undefined;
    pieces = found?.ok ? found.value.pieces : [];
    missing.hidden = pieces.length > 0;
    form.hidden = pieces.length === 0;
    choices(
      choice,
      pieces.map(({ name }, index) => ({ value: String(index), label: name })),
    );
    show();
  };
  /** What is being typed stays while its piece is as it was. */
  const show = () => {
    const now = JSON.stringify(piece() ?? null);
    if (now === seen) return;
    seen = now;
    fill();
  };
  const writeOutline = async () => {
    const chosen = piece();
    if (!chosen) return;
    const made = shape(chosen);
    if (!made.ok) return app.say(made.said, "warning");
    const read = await list();
    if (!read.ok) return app.say(read.said, "warning");
    const now = paperPieces(read.cells, unit());
    const same = now.ok && now.value.pieces.find((one) => JSON.stringify(one) === JSON.stringify(chosen));
    if (!now.ok || !same) {
      await load();
      return app.say(words.changed, "warning");
    }
    const { source } = read;
    const has = now.value.column >= 0;
    if (!has && source.table === undefined) return app.say(words.noColumn, "warning");
    if (chosen.outlined && (await keepsIts(chosen))) return;
    const column = source.column + (has ? now.value.column : source.columns);
    const block = {
      row: source.row + chosen.at,
      column,
      cells: [[formatOutline(made.outline)]],
      format: "text",
    } as const;
    const cells = [{ sheet: source.sheet, blocks: [block] }];
    const added = { heading: "Outline", format: "text", width: 26, cell: null } as const;
    const carried = has
      ? await carryOut({ cells }, { overFilled: chosen.outlined })
      : await carryOutAll([{ columns: [{ table: source.table!, columns: [added] }] }, { cells }]);
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.what(chosen.name));
    app.say(words.written(chosen.name, source.sheet));
    await load();
  };
  const keepsIts = async ({ name }: PaperPiece) => {
    const answers = [
      { value: "keep", label: paneWords.frame.keep, main: true },
      { value: "over", label: paneWords.help.writeOver },
    ];
    return (await app.ask(words.replace(name), answers)) !== "over";
  };

  choice.addEventListener("change", show);
  edge.addEventListener("change", draw);
  from.addEventListener("change", draw);
  const form = element(
    "div",
    {},
    field(words.piece, choice),
    about,
    field(words.edge, edge),
    field(words.from, from),
    element("table", { class: "widths" }, caption, element("thead", {}, element("tr", {}, ...headings)), body),
    button(words.addRow, () => addLine().height.focus(), { class: "quiet" }),
    element("p", { class: "hint" }, words.curve),
    drawing,
    problem,
    element("div", { class: "buttons" }, write),
  );
  const view = element(
    "details",
    { class: "shape" },
    element("summary", {}, words.heading),
    element("p", { class: "hint" }, words.intro),
    missing,
    form,
  );
  const reload = () => {
    if (view.open) void app.run(load);
  };
  view.addEventListener("toggle", reload);
  return { element: view, refresh: reload };
}
