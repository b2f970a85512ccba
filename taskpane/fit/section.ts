/** The Fit section: a pattern, a person, a garment; a picture of it, and its formulas beside the chart. */
import { childCautions, paneWords, refusalSentence } from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field } from "../dom";
import { carryOut, watch } from "../excel";
import type { Shown } from "../section";
import { patternToShow, readInventory, type Inventory } from "../patterns";
import { fitAnswer, fitPlan, garmentsFor, type FitAnswer, type FitChoice } from "./answers";
import { guide } from "./guide";
import { fitDrawing, fitTable } from "./picture";

const words = paneWords.fit;

export function fitSection(app: App): Shown {
  const pattern = element("select", {});
  const person = element("select", {});
  const garment = element("select", {});
  const result = element("div", { class: "result" });
  const missing = element("p", { class: "hint", hidden: true });
  const form = element(
    "div",
    { hidden: true },
    field(words.pattern, pattern),
    element("div", { class: "pair" }, field(words.person, person), field(words.garment, garment)),
  );
  let inventory: Inventory | undefined;
  let shown: { readonly choice: FitChoice; readonly answer: FitAnswer } | undefined;
  let visible = false;
  let turn = 0;
  /** The sheet that was shown when the pattern was last chosen for her. */
  let sheetSeen = "";
  /** What she chose herself: for each pattern her last choice. */
  const garmentChosen = new Map<string, string>();

  const choice = (): FitChoice | undefined => {
    const chosen = inventory?.patterns.find(({ name }) => name === pattern.value);
    return chosen && person.value ? { pattern: chosen, person: person.value, garment: garment.value } : undefined;
  };
  const redraw = async () => {
    const mine = ++turn;
    if (!inventory || !(await suggestGarment(inventory, mine))) return;
    const chosen = choice();
    if (!chosen) return;
    const answered = await fitAnswer(inventory, chosen);
    // A later choice has overtaken this one.
    if (mine !== turn) return;
    shown = answered.ok ? { choice: chosen, answer: answered.value } : undefined;
    result.replaceChildren(
      ...(answered.ok ? answerParts(answered.value, chosen) : [element("p", { class: "warning-box" }, answered.said)]),
    );
    const said = answered.ok ? words.headline(answered.value.picture.cut, answered.value.picture.frame) : answered.said;
    app.say(said, answered.ok ? "said" : "warning");
  };
  const answerParts = (answer: FitAnswer, { garment: name }: FitChoice) => [
    element("p", { class: "headline" }, words.headline(answer.picture.cut, answer.picture.frame)),
    element("p", {}, answer.note),
    fitDrawing(answer.picture),
    fitTable(answer.picture),
    ...cautions(name),
    element(
      "div",
      { class: "buttons" },
      button(words.insert, () => void app.run(insert), { class: "main" }),
    ),
    element("p", { class: "hint" }, words.insertHint),
  ];
  const insert = async () => {
    if (!inventory || !shown) return;
    const { choice: chosen, answer } = shown;
    const planned = await fitPlan(inventory, chosen, answer);
    if (!planned.ok) return app.say(planned.said, "warning");
    const carried = await carryOut({ cells: [planned.plan], show: chosen.pattern.sheet });
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.whatInserted(chosen.person));
    app.say(words.inserted(chosen.pattern.sheet));
  };
  const refresh = async () => {
    const read = await readInventory();
    if (!read.ok) return app.say(refusalSentence(read.refusal), "warning");
    inventory = read.value;
    const fitting = inventory.patterns.filter(({ tables }) => tables.body.length > 0);
    const people = inventory.people?.names ?? [];
    choices(
      pattern,
      fitting.map(({ name }) => ({ value: name, label: name })),
    );
    choices(
      person,
      people.map((name) => ({ value: name, label: name })),
    );
    if (inventory.facts.shown !== sheetSeen) {
      sheetSeen = inventory.facts.shown;
      pattern.value = patternToShow(fitting, inventory.facts, pattern.value) ?? "";
    }
    const lacking = [fitting.length === 0 ? words.noPattern : "", people.length === 0 ? words.noPeople : ""].filter(
      Boolean,
    );
    missing.textContent = lacking.join(" ");
    missing.hidden = lacking.length === 0;
    form.hidden = lacking.length > 0;
    if (lacking.length > 0) result.replaceChildren();
    else await redraw();
  };
  /** Her own choice for this pattern stands; else the garment that the pattern seems to be. False when overtaken. */
  const suggestGarment = async (now: Inventory, mine: number): Promise<boolean> => {
    const named = now.patterns.find(({ name }) => name === pattern.value);
    const { names, suggested } = await garmentsFor(now, named);
    if (mine !== turn) return false;
    choices(
      garment,
      names.map((name) => ({ value: name, label: name })),
    );
    const own = garmentChosen.get(pattern.value);
    const first = own !== undefined && names.includes(own) ? own : suggested;
    if (first !== undefined) garment.value = first;
    return true;
  };
  garment.addEventListener("change", () => garmentChosen.set(pattern.value, garment.value));
  for (const select of [pattern, person, garment]) select.addEventListener("change", () => void app.run(redraw));
  void watch(() => {
    if (visible) void app.run(refresh);
  });
  const view = element("div", {}, element("h2", {}, words.heading), missing, form, result, guide());
  return {
    element: view,
    shown: () => {
      visible = true;
      void app.run(refresh);
    },
    hidden: () => (visible = false),
  };
}

function cautions(garment: string): HTMLElement[] {
  const list = childCautions(garment);
  if (list.length === 0) return [];
  const items = list.map(({ sentence, rules }) =>
    element("li", {}, [sentence, rules.join(", ")].filter(Boolean).join(" ")),
  );
  return [element("h3", {}, words.cautions), element("ul", { class: "cautions" }, ...items)];
}
