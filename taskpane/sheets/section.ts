/** The Sheets section: set up, add to, take along, keep values. */
import {
  isTrackerThere,
  paneWords,
  refusalSentence,
  trackerKeys,
  trackersToMake,
  trackerSheetName,
  type TrackerKey,
  type Units,
} from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field, freshId } from "../dom";
import { readFacts, type Facts } from "../excel";
import type { Shown } from "../section";
import { usualUnits } from "../units";
import { comeBack, keep } from "./keep";
import { notionsView } from "./notions";
import { addColumns, addPerson, setUp, shopCopy } from "./set-up";

const words = paneWords.sheets;

const tableNames = ({ tables }: Facts): string[] => tables.map(({ name }) => name);

export function sheetsSection(app: App): Shown {
  let facts: Facts | undefined;
  const boxes = new Map<TrackerKey, HTMLInputElement>();
  const units = choices(
    element("select", {}),
    (["in", "cm", "both"] as const).map((value) => ({ value, label: words.units[value] })),
  );
  units.value = usualUnits();
  const chosenUnits = () => units.value as Units;
  const brings = element("p", { class: "hint" });

  const wanted = () => trackerKeys.filter((key) => boxes.get(key)?.checked && !boxes.get(key)?.disabled);
  const showBrings = () => {
    const all = facts ? trackersToMake(wanted(), facts.sheets, tableNames(facts)) : [];
    const others = all.filter((key) => !wanted().includes(key)).map(trackerSheetName);
    brings.textContent = others.length > 0 ? words.brings(others) : "";
  };
  const list = element(
    "ul",
    { class: "ticks" },
    ...trackerKeys.map((key) => {
      const box = element("input", { type: "checkbox", id: freshId("sheet"), onchange: showBrings });
      boxes.set(key, box);
      const about = element("span", { class: "hint", id: `${box.id}-about` }, words.about[key]);
      box.setAttribute("aria-describedby", about.id);
      return element(
        "li",
        { class: "tick" },
        box,
        element("div", {}, element("label", { for: box.id }, trackerSheetName(key)), about),
      );
    }),
  );

  const name = element("input", { type: "text", maxlength: 40, autocomplete: "off" });
  const table = element("select", {});
  const kind = choices(
    element("select", {}),
    trackerKeys.filter((key) => key !== "shoppingList").map((key) => ({ value: key, label: trackerSheetName(key) })),
  );
  const left = element("ul", { class: "left-alone", hidden: true });

  const refresh = async () => {
    const read = await readFacts();
    if (!read.ok) return app.say(refusalSentence(read.refusal), "warning");
    facts = read.value;
    const { sheets, tables } = facts;
    for (const [key, box] of boxes) {
      const isThere = isTrackerThere(key, sheets, tableNames(facts));
      box.disabled = isThere;
      if (isThere) box.checked = false;
      box.parentElement!.querySelector(".hint")!.textContent = isThere ? words.isThere : words.about[key];
    }
    const own = tables.filter((one) => !/_(?:body|finished|fabric)(?:_\d+)?$/.test(one.name));
    choices(
      table,
      own.map((one) => ({ value: one.name, label: `${one.name} (${one.sheet})` })),
    );
    showBrings();
    await notions.refresh(facts);
  };
  /** Each button looks at the workbook as it is now, and shows afterwards what has become of it. */
  const press = (work: (facts: Facts) => Promise<unknown>) => () =>
    void app.run(async () => {
      await refresh();
      if (facts) await work(facts);
      await refresh();
    });
  const notions = notionsView(app, press);
  const add = press(async (now) => {
    if (await addPerson(app, name.value, now, chosenUnits())) name.value = "";
  });
  name.addEventListener("keydown", (event) => {
    if (event.key === "Enter") add();
  });
  const showLeft = (lines: readonly string[]) => {
    left.replaceChildren(...lines.map((line) => element("li", {}, line)));
    left.hidden = lines.length === 0;
  };

  const part = (title: string, about: string, ...children: HTMLElement[]) =>
    element("section", { "aria-label": title }, element("h3", {}, title), element("p", {}, about), ...children);
  const buttons = (...all: HTMLElement[]) => element("div", { class: "buttons" }, ...all);
  const view = element(
    "div",
    {},
    element("h2", {}, words.heading),
    element("p", {}, words.intro),
    field(words.unitsLabel, units),
    list,
    brings,
    buttons(
      button(
        words.setUpButton,
        press((now) => setUp(app, wanted(), now, chosenUnits())),
        { class: "main" },
      ),
    ),
    part(
      words.personHeading,
      words.personAbout,
      field(words.personName, name),
      buttons(button(words.personButton, add)),
    ),
    notions.element,
    part(
      words.copyHeading,
      words.copyAbout,
      buttons(
        button(
          words.copyButton,
          press((now) => shopCopy(app, now, chosenUnits(), new Date(), notions.totals())),
        ),
      ),
    ),
    part(
      words.keepHeading,
      words.keepAbout,
      buttons(
        button(words.keepButton, () => void app.run(() => keep(app).then(() => showLeft([])))),
        button(words.backButton, () => void app.run(() => comeBack(app).then(showLeft))),
      ),
      left,
    ),
    part(
      words.columnsHeading,
      words.columnsAbout,
      field(words.columnsTable, table),
      field(words.columnsKind, kind),
      buttons(
        button(
          words.columnsButton,
          press((now) =>
            addColumns(app, table.value, kind.value as Exclude<TrackerKey, "shoppingList">, now, chosenUnits()),
          ),
        ),
      ),
    ),
  );
  return { element: view, shown: () => void app.run(refresh) };
}
