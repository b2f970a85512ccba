/** A list of pieces, laid out on the cloth: improved for about a second, drawn, printed, written as formulas. */
import {
  isNamed,
  layoutFormulas,
  layoutSearch,
  lengthInto,
  paneWords,
  PIECES_SHEET,
  PIECES_TABLE,
  piecesSheet,
  readLength,
  readPieces,
  refusalSentence,
  sentence,
  type Cloth,
} from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field, tick } from "../dom";
import { carryOut, readUsed } from "../excel";
import type { Inventory } from "../patterns";
import { usualUnits } from "../units";
import { improve, type Improving } from "./improve";
import { laidCloth, type Lay } from "./laid-cloth";
import { piecesCells, SELECTION, type Source } from "./pieces-source";
import { shapeView } from "./shape-view";

const words = paneWords.fabric;
/** How long a press looks for something better, in milliseconds. */
const A_WHILE = 1000;

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
  const [repeat, gap] = [text(), text()];
  /** What she has of each cloth of the list; of all of it before the list is read. */
  const owns = element("div", {});
  let own: ReadonlyMap<string, HTMLInputElement> = new Map();
  const bar = element("progress", { max: 1, value: 0, "aria-label": words.progress });
  const stop = button(words.stop, () => {
    stopped = true;
    running?.stop();
  });
  const progress = element("div", { class: "inline", hidden: true }, bar, stop);
  const result = element("div", { class: "result" });
  let running: Improving | undefined;
  let stopped = false;
  let withPlan = false;
  let source: Source | undefined;
  let lays: Lay[] = [];
  /** The cloth that the drawn layout lies on, whatever the fields say by now. */
  let laidOn: Cloth & { readonly unit: "in" | "cm" } = { width: 0, unit: "in" };
  const shape = shapeView(
    app,
    () => piecesCells(pieces.value),
    () => bodyUnit(),
  );

  const bodyUnit = () => unit.value as "in" | "cm";
  const number = (input: HTMLInputElement, into = bodyUnit()): number | null => {
    if (input.value.trim() === "") return 0;
    const read = readLength(input.value);
    if (read.ok && read.value.value >= 0) return lengthInto(read.value, into);
    app.say(read.ok ? paneWords.chart.wrong(paneWords.chart.negative(input.value)) : sentence(read.problem), "warning");
    input.focus();
    return null;
  };
  /** A field for each cloth that is named; what has been typed for one of them stays. */
  const askOwn = (names: readonly string[]) => {
    const before = own.get("")?.value ?? "";
    own = new Map(names.map((name) => [name, own.get(name) ?? text(names.length === 1 ? before : "")]));
    const hint = words.ownHint(bodyUnit());
    owns.replaceChildren(...[...own].map(([name, input]) => field(words.own(name), input, hint)));
    for (const input of own.values()) input.onchange = () => (lays.length > 0 ? show() : undefined);
  };
  const cloth = (): typeof laidOn | null => {
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
    const read = await piecesCells(pieces.value);
    if (!read.ok) return app.say(read.said, "warning");
    const found = readPieces(read.cells, bodyUnit());
    if (!found.ok) return app.say(sentence(found.problem), "warning");
    source = read.source;
    laidOn = on;
    lays = found.value.map((fabric) => ({ fabric, search: layoutSearch(fabric.pieces, on) }));
    askOwn(lays.map(({ fabric }) => fabric.name));
    await look();
  };
  /** Looks for something better for a while, one cloth after the other. */
  const look = async () => {
    const mine = lays;
    // Stopped or not, every cloth shows a layout.
    for (const { search } of mine) if (search.tries === 0) search.run(1);
    stopped = false;
    progress.hidden = false;
    for (const [index, { search }] of mine.entries()) {
      if (stopped) break;
      running = improve(search, A_WHILE / mine.length, (share) => (bar.value = (index + share) / mine.length));
      await running.done;
      // Another press has begun with another list meanwhile, and shows it.
      if (mine !== lays) return;
    }
    running = undefined;
    progress.hidden = true;
    show();
  };
  const show = () => {
    const shown = lays.map((lay) => {
      const mine = own.get(lay.fabric.name);
      return laidCloth(lay, laidOn, laidOn.unit, (mine && number(mine, laidOn.unit)) ?? 0);
    });
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
    if (!source) return;
    const on = laidOn;
    const used = await readUsed(source.sheet);
    if (!used.ok) return app.say(refusalSentence(used.refusal), "warning");
    const plan = layoutFormulas({
      sheet: source.sheet,
      row: used.value?.row ?? 0,
      column: used.value ? used.value.column + used.value.columns + 1 : 0,
      pieces: source.reference,
      width: on.width,
      unit: on.unit,
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
    choices(pieces, [{ value: PIECES_TABLE, label: `${PIECES_TABLE} (${PIECES_SHEET})` }]);
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
    shape.element,
    pair(field(words.clothWidth, width), field(words.clothUnit, unit)),
    field(words.folds, folds),
    element(
      "details",
      {},
      element("summary", {}, words.layoutMore),
      pair(field(words.layoutRepeat, repeat), field(words.gap, gap)),
      owns,
    ),
    element(
      "div",
      { class: "buttons" },
      button(words.layButton, () => void app.run(layOut), { class: "main" }),
    ),
    progress,
    result,
  );
  askOwn([""]);
  unit.addEventListener("change", () => {
    askOwn([...own.keys()]);
    shape.refresh();
  });
  pieces.addEventListener("change", () => shape.refresh());
  return {
    element: view,
    refresh(now) {
      const listed = now.facts.tables.filter(
        // A stash has pieces too, but nobody counts them.
        ({ headings }) => ["Piece", "Length", "Width", "Count"].every((heading) => isNamed(heading, headings)),
      );
      choices(pieces, [
        ...listed.map(({ name, sheet }) => ({ value: name, label: `${name} (${sheet})` })),
        { value: SELECTION, label: words.selection },
      ]);
      shape.refresh();
    },
  };
}

/** Prints the drawing alone. */
function printLayout(): void {
  document.body.classList.add("printing-layout");
  window.addEventListener("afterprint", () => document.body.classList.remove("printing-layout"), { once: true });
  window.print();
}
