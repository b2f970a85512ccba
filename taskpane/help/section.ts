/** The Help section: every function, argument by argument, with an example that goes into the selected cell. */
import { example, paneWords, refusalSentence, type BodyUnit, type Example, type HerRanges } from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field } from "../dom";
import { carryOut, readDecimalPoint, readSelection } from "../excel";
import type { Shown } from "../section";
import { found, loadFunctions, signature, typed, type HelpFunction } from "./functions";
import { herRanges } from "./her-ranges";

const words = paneWords.help;

export function helpSection(app: App): Shown {
  const search = element("input", { type: "search", autocomplete: "off", spellcheck: "false" });
  const units = choices(
    element("select", {}),
    (["in", "cm"] as const).map((value) => ({ value, label: paneWords.sheets.units[value] })),
  );
  const count = element("p", { class: "hint", role: "status" });
  const list = element("div", {});
  let functions: readonly HelpFunction[] = [];
  let her: HerRanges = {};
  let separator = ",";
  /** Her own choice stays; until then the unit follows her measurements. */
  let chosen: BodyUnit | undefined;

  const show = () => {
    const some = found(functions, search.value);
    const open = new Set([...list.querySelectorAll("details[open]")].map(({ id }) => id));
    count.textContent = words.count(some.length);
    list.replaceChildren(...some.map((entry) => functionHelp(entry)));
    for (const id of open) document.getElementById(id)?.setAttribute("open", "");
  };
  const functionHelp = (entry: HelpFunction) => {
    const made = example(entry.id, her);
    return element(
      "details",
      { class: "function", id: `help-${entry.id}` },
      element(
        "summary",
        {},
        element("code", {}, `SEW.${entry.id}`),
        " ",
        element("span", { class: "brief" }, entry.description),
      ),
      element("p", {}, element("code", {}, `=${signature(entry, separator)}`)),
      element(
        "dl",
        {},
        ...entry.parameters.flatMap(({ name, description, optional }) => [
          element("dt", {}, name, optional ? element("span", { class: "hint" }, ` ${words.optional}`) : null),
          element("dd", {}, description),
        ]),
      ),
      ...(made ? exampleParts(made) : []),
    );
  };
  const exampleParts = (made: Example) => [
    element("p", { class: "hint" }, words.example),
    element("p", {}, element("code", {}, typed(made.formula, separator))),
    made.missing.length > 0
      ? element("p", { class: "hint" }, words.missing(made.missing.map((range) => words.ranges[range])))
      : element(
          "div",
          { class: "buttons" },
          button(words.insert, () => void app.run(() => insert(made.formula))),
        ),
  ];
  const insert = async (formula: string) => {
    const selected = await readSelection();
    if (!selected.ok) return app.say(refusalSentence(selected.refusal), "warning");
    const { sheet, row, column } = selected.value;
    const plan = { cells: [{ sheet, blocks: [{ row, column, cells: [[{ formula }]] }] }] };
    let carried = await carryOut(plan);
    if (!carried.ok && carried.refusal.code === "cellsFilled") {
      const answer = await app.ask(words.overFilled(refusalSentence(carried.refusal)), [
        { value: "keep", label: paneWords.frame.keep, main: true },
        { value: "over", label: words.writeOver },
      ]);
      if (answer !== "over") return;
      carried = await carryOut(plan, { overFilled: true });
    }
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.whatInserted);
    app.say(words.inserted(sheet));
  };
  const load = async () => {
    if (functions.length === 0) functions = await loadFunctions();
    separator = (await readDecimalPoint()) === "," ? ";" : ",";
    const ranges = await herRanges(chosen);
    her = ranges;
    units.value = ranges.unit;
    show();
  };
  search.addEventListener("input", show);
  units.addEventListener("change", () => {
    chosen = units.value as BodyUnit;
    void app.run(load);
  });
  const view = element(
    "div",
    {},
    element("h2", {}, words.heading),
    field(words.search, search, words.searchHint),
    field(words.units, units),
    count,
    list,
  );
  return { element: view, shown: () => void app.run(load) };
}
