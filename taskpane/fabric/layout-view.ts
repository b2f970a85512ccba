/** A list of pieces, laid out on the cloth: improved for about a second, drawn, printed, written as formulas. */
import {
  formatLength,
  layoutFormulas,
  layoutSearch,
  paneWords,
  PIECES_SHEET,
  piecesSheet,
  quotedSheet,
  readLength,
  readPieces,
  refusalSentence,
  roundUp,
  sentence,
  type Cloth,
  type LayoutSearch,
  type LengthUnit,
  type PiecesOfFabric,
} from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field, tick } from "../dom";
import { carryOut, readSelection, readUsed, type RangeCells } from "../excel";
import { engineCells, tableCells, type Inventory } from "../patterns";
import { usualUnits } from "../units";
import { improve, type Improving } from "./improve";
import { layoutDrawing } from "./layout-picture";

const words = paneWords.fabric;
/** How long a press looks for something better, in milliseconds. */
const A_WHILE = 1000;
/** What the shop cuts by. */
const STEPS = { yd: 0.125, m: 0.1 } as const;
const SELECTION = "(selection)";

/** One cloth of the list with its search. */
interface Lay {
  readonly fabric: PiecesOfFabric;
  readonly search: LayoutSearch;
}
interface Source {
  /** As a formula says it. */
  readonly reference: string;
  readonly sheet: string;
}

export interface LayoutView {
  readonly element: HTMLElement;
  refresh(inventory: Inventory): void;
}

export function layoutView(app: App): LayoutView {
  const pieces = element("select", {});
  const text = (value = "") => {
    const input = element("input", { type: "text", inputmode: "decimal", autocomplete: "off" });
    input.value = value;
    return input;
  };
  const unit = choices(element("select", {}), [
    { value: "in", label: "in" },
    { value: "cm", label: "cm" },
  ]);
  unit.value = usualUnits();
  const width = text(unit.value === "in" ? "45" : "140");
  const folds = choices(element("select", {}), words.foldsChoices);
  const [repeat, gap, own] = [text(), text(), text()];
  const bar = element("progress", { max: 1, value: 0, "aria-label": words.progress });
  const stop = button(words.stop, () => running?.stop());
  const progress = element("div", { class: "inline", hidden: true }, bar, stop);
  const result = element("div", { class: "result" });
  let running: Improving | undefined;
  let withPlan = false;
  let source: Source | undefined;
  let lays: Lay[] = [];
  let inventory: Inventory | undefined;

  const bodyUnit = () => unit.value as "in" | "cm";
  const number = (input: HTMLInputElement): number | null => {
    if (input.value.trim() === "") return 0;
    const read = readLength(input.value);
    if (read.ok && read.value.value >= 0) return read.value.value;
    app.say(read.ok ? paneWords.chart.wrong(paneWords.chart.negative(input.value)) : sentence(read.problem), "warning");
    input.focus();
    return null;
  };
  const cloth = (): Cloth | null => {
    const [clothWidth, by, between] = [number(width), number(repeat), number(gap)];
    if (clothWidth === null || by === null || between === null) return null;
    return {
      width: clothWidth,
      layout: folds.value as "single" | "folded",
      repeat: by,
      gap: between,
      unit: bodyUnit(),
    };
  };
  const layOut = async () => {
    running?.stop();
    const on = cloth();
    if (!on) return;
    const read = await cellsOf(pieces.value, inventory);
    if (!read.ok) return app.say(read.said, "warning");
    const found = readPieces(read.cells, bodyUnit());
    if (!found.ok) return app.say(sentence(found.problem), "warning");
    source = read.source;
    lays = found.value.map((fabric) => ({ fabric, search: layoutSearch(fabric.pieces, on) }));
    await look();
  };
  /** Looks for something better for a while, one cloth after the other. */
  const look = async () => {
    progress.hidden = false;
    for (const [index, { search }] of lays.entries()) {
      running = improve(search, A_WHILE / lays.length, (share) => (bar.value = (index + share) / lays.length));
      await running.done;
    }
    running = undefined;
    progress.hidden = true;
    show();
  };
  const show = () => {
    const on = cloth();
    if (!on) return;
    const shown = lays.map(({ fabric, search }) => clothParts(fabric, search, on, bodyUnit(), number(own) ?? 0));
    result.replaceChildren(
      ...shown.flatMap(({ parts }) => parts),
      element(
        "div",
        { class: "buttons" },
        lays.some(({ search }) => !search.finished) ? button(words.goOn, () => void app.run(look)) : null,
        button(words.print, printLayout),
      ),
      tick(words.withPlan, withPlan, (now) => (withPlan = now)),
      element(
        "div",
        { class: "buttons" },
        button(words.insertAmount, () => void app.run(insert), { class: "main" }),
      ),
    );
    app.say(shown.map(({ said }) => said).join(" "), shown.every(({ ok }) => ok) ? "said" : "warning");
  };
  const insert = async () => {
    const on = cloth();
    if (!on || !source) return;
    const used = await readUsed(source.sheet);
    if (!used.ok) return app.say(refusalSentence(used.refusal), "warning");
    const plan = layoutFormulas({
      sheet: source.sheet,
      row: used.value?.row ?? 0,
      column: used.value ? used.value.column + used.value.columns + 1 : 0,
      pieces: source.reference,
      width: on.width,
      unit: bodyUnit(),
      layout: on.layout ?? "single",
      repeat: on.repeat ?? 0,
      gap: on.gap ?? 0,
      fabrics: lays.length,
      placements: lays.reduce((sum, { search }) => sum + search.layout().placements.length, 0),
      plan: withPlan,
    });
    const carried = await carryOut({ cells: [plan], show: source.sheet });
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.whatLayout);
    app.say(words.insertedLayout(source.sheet));
  };
  const setUp = async () => {
    const carried = await carryOut({ sheets: [piecesSheet(bodyUnit())], show: PIECES_SHEET });
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.whatPieces);
    app.say(words.piecesSetUp);
  };

  const pair = (...parts: HTMLElement[]) => element("div", { class: "pair" }, ...parts);
  const view = element(
    "section",
    { class: "layout-section", "aria-label": words.layoutHeading },
    element("h2", {}, words.layoutHeading),
    element("p", {}, words.layoutIntro),
    field(words.piecesTable, pieces),
    button(words.newPieces, () => void app.run(setUp), { class: "quiet" }),
    pair(field(words.clothWidth, width), field(words.clothUnit, unit)),
    field(words.folds, folds),
    element(
      "details",
      {},
      element("summary", {}, words.layoutMore),
      pair(field(words.layoutRepeat, repeat), field(words.gap, gap)),
      field(words.own, own),
    ),
    element(
      "div",
      { class: "buttons" },
      button(words.layButton, () => void app.run(layOut), { class: "main" }),
    ),
    progress,
    result,
  );
  return {
    element: view,
    refresh(now) {
      inventory = now;
      const listed = now.facts.tables.filter(
        ({ headings }) => headings.includes("Piece") && headings.includes("Width"),
      );
      choices(pieces, [
        ...listed.map(({ name, sheet }) => ({ value: name, label: `${name} (${sheet})` })),
        { value: SELECTION, label: words.selection },
      ]);
    },
  };
}

/** Prints the drawing alone. */
function printLayout(): void {
  document.body.classList.add("printing-layout");
  window.addEventListener("afterprint", () => document.body.classList.remove("printing-layout"), { once: true });
  window.print();
}

type CellsOf =
  | { readonly ok: true; readonly cells: ReturnType<typeof engineCells>; readonly source: Source }
  | { readonly ok: false; readonly said: string };

async function cellsOf(table: string, inventory: Inventory | undefined): Promise<CellsOf> {
  if (table !== SELECTION) {
    const read = await tableCells(table);
    const sheet = inventory?.facts.tables.find(({ name }) => name === table)?.sheet ?? "";
    if (!read.ok) return { ok: false, said: refusalSentence(read.refusal) };
    return { ok: true, cells: read.value, source: { reference: `${table}[#All]`, sheet } };
  }
  const read = await readSelection();
  if (!read.ok) return { ok: false, said: refusalSentence(read.refusal) };
  return { ok: true, cells: engineCells(read.value.values), source: sourceOf(read.value) };
}

const sourceOf = ({ sheet, address }: RangeCells): Source => ({
  reference: `${quotedSheet(sheet)}!${fixed(address)}`,
  sheet,
});

/** "A1:B2" with its rows and columns fixed. */
const fixed = (address: string): string =>
  address
    .split(":")
    .map((cell) => {
      const letters = /^[A-Z]+/.exec(cell)?.[0] ?? "";
      return `$${letters}$${cell.slice(letters.length)}`;
    })
    .join(":");

/** What one cloth shows: how much to buy, how good that is, what is left of her own, the drawing. */
function clothParts(fabric: PiecesOfFabric, search: LayoutSearch, cloth: Cloth, unit: "in" | "cm", own: number) {
  const layout = search.layout();
  if (layout.length === null) {
    const said = layout.problems.map(sentence).join(" ");
    return { ok: false, said, parts: [element("p", { class: "warning-box" }, said)] };
  }
  const inUnit = (value: number, shown: LengthUnit = unit) => formatLength(value, shown);
  const [buyUnit, by] = unit === "in" ? (["yd", 36] as const) : (["m", 100] as const);
  const buy = roundUp(layout.length / by, STEPS[buyUnit]);
  const headline = words.layoutBuy(buy.ok ? inUnit(buy.value, buyUnit) : inUnit(layout.length));
  const over = layout.lowerBound > 0 ? ((layout.length / layout.lowerBound - 1) * 100).toFixed(1) : "0.0";
  const said = fabric.name === "" ? headline : `${fabric.name}: ${headline}`;
  const sentences = [
    words.layoutExact(inUnit(layout.length)),
    layout.proved ? words.proved : words.bound(over),
    ...(search.finished && !layout.proved ? [words.nothingShorter] : []),
    layout.by === "boxes" ? words.byBoxes : words.byOutlines,
    words.tries(layout.tries),
    ...(own > 0
      ? [
          own >= layout.length
            ? words.ownLeft(inUnit(own - layout.length))
            : words.ownShort(inUnit(layout.length - own)),
        ]
      : []),
    ...layout.problems.map(sentence),
  ];
  const drawing = layoutDrawing(
    layout,
    { width: cloth.width, layout: cloth.layout ?? "single", unit },
    fabric.name || words.piecesTable,
  );
  const parts = [element("p", { class: "headline" }, said), element("p", {}, sentences.join(" ")), drawing];
  return { ok: true, said, parts: [element("div", { class: "printed" }, ...parts)] };
}
