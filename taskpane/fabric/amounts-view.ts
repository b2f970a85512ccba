/** The form and the answer for the amount to buy. */
import { fabricFormulas, formatLength, paneWords, refusalSentence, type Nap } from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field, freshId, tick } from "../dom";
import { carryOut, readUsed } from "../excel";
import { usualUnits } from "../units";
import { patternToShow, type Inventory, type Pattern } from "../patterns";
import { amount, fabricSources, offered, type Amount, type AmountQuestion, type FabricSource } from "./amounts";

const words = paneWords.fabric;

export interface AmountsView {
  readonly element: HTMLElement;
  /** Shows what the workbook has now. */
  refresh(inventory: Inventory): Promise<void>;
}

export function amountsView(app: App): AmountsView {
  const select = () => element("select", {});
  const [pattern, view, part, size, nap] = [select(), select(), select(), select(), select()];
  const list = element("datalist", { id: freshId("widths") });
  const text = (value = "") => {
    const input = element("input", { type: "text", inputmode: "decimal", autocomplete: "off" });
    input.value = value;
    return input;
  };
  const width = element("input", { type: "text", list: list.id, autocomplete: "off" });
  const [shrinkage, repeat, lengths, step] = [text("0"), text(), text("1"), text()];
  let estimate = false;
  let sheetSeen = "";
  let sources: readonly FabricSource[] = [];
  let patterns: readonly Pattern[] = [];
  let shown: { readonly question: AmountQuestion; readonly answer: Amount } | undefined;

  const result = element("div", { class: "result" });
  const missing = element("p", { class: "hint" }, words.noFabric);
  choices(nap, words.naps);

  const question = (): AmountQuestion => ({
    view: view.value,
    part: part.value,
    width: width.value,
    size: size.value,
    nap: nap.value === "" ? null : (nap.value as Nap),
    estimate,
    shrinkage: shrinkage.value,
    repeat: repeat.value,
    lengths: lengths.value,
    step: step.value,
  });
  /** `quietly`: nobody has asked, so that what was said last stays. */
  const answer = (quietly = false) => {
    const asked = question();
    const found = amount(sources, asked);
    shown = found.ok ? { question: asked, answer: found.value } : undefined;
    if (!found.ok) {
      result.replaceChildren(element("p", { class: "warning-box" }, found.said));
      return quietly ? undefined : app.say(found.said, "warning");
    }
    const buy = words.buy(formatLength(found.value.buy, found.value.unit));
    result.replaceChildren(
      element("p", { class: "headline" }, buy),
      ...found.value.how.map((sentence) => element("p", {}, sentence)),
      element(
        "div",
        { class: "buttons" },
        button(words.insertAmount, () => void app.run(insert), { class: "main" }),
      ),
    );
    if (!quietly) app.say(buy);
  };
  const choose = async (quietly = false) => {
    const chosen = patterns.find(({ name }) => name === pattern.value);
    if (!chosen) return;
    const read = await fabricSources(chosen, usualUnits() === "in" ? "yd" : "m");
    if (!read.ok) return app.say(read.said, "warning");
    sources = read.value;
    const { views, parts, widths, sizes } = offered(sources);
    const plain = (values: readonly string[]) => values.map((value) => ({ value, label: value || words.noView }));
    choices(view, plain(views));
    choices(part, plain(parts));
    choices(size, plain(sizes));
    list.replaceChildren(...widths.map((value) => element("option", { value })));
    if (!width.value) width.value = widths[0] ?? "";
    step.placeholder = sources[0]?.chart.unit === "m" ? "0.1" : "1/8";
    answer(quietly);
  };
  const insert = async () => {
    if (!shown) return;
    const { table, sheet } = shown.answer;
    const used = await readUsed(sheet);
    if (!used.ok) return app.say(refusalSentence(used.refusal), "warning");
    const { question: asked, answer: found } = shown;
    const plan = fabricFormulas({
      ...asked,
      ...found,
      table,
      sheet,
      row: 2,
      column: used.value ? used.value.column + used.value.columns + 1 : 0,
      repeatUnit: found.unit === "yd" ? "in" : "cm",
    });
    const carried = await carryOut({ cells: [plan], show: sheet });
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.whatAmount);
    app.say(words.insertedAmount(sheet));
  };
  pattern.addEventListener("change", () => void app.run(() => choose()));
  for (const control of [view, part, size, nap, width, shrinkage, repeat, lengths, step])
    control.addEventListener("change", () => answer());

  const pair = (...parts: HTMLElement[]) => element("div", { class: "pair" }, ...parts);
  const form = element(
    "div",
    {},
    field(words.pattern, pattern),
    pair(field(words.view, view), field(words.part, part)),
    pair(field(words.width, width), field(words.size, size)),
    list,
    field(words.nap, nap),
    tick(words.estimate, false, (on) => {
      estimate = on;
      answer();
    }),
    element(
      "details",
      {},
      element("summary", {}, words.extras),
      pair(field(words.shrinkage, shrinkage), field(words.step, step)),
      pair(field(words.repeat, repeat), field(words.lengths, lengths)),
      element("p", { class: "hint" }, words.extrasHint),
    ),
    result,
  );
  return {
    element: element("div", {}, missing, form),
    async refresh(inventory) {
      patterns = inventory.patterns.filter(({ tables }) => tables.fabric.length > 0);
      missing.hidden = patterns.length > 0;
      form.hidden = patterns.length === 0;
      choices(
        pattern,
        patterns.map(({ name }) => ({ value: name, label: name })),
      );
      if (inventory.facts.shown !== sheetSeen) {
        sheetSeen = inventory.facts.shown;
        pattern.value = patternToShow(patterns, inventory.facts, pattern.value) ?? "";
      }
      await choose(true);
    },
  };
}
