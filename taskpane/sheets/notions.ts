/** What the projects want besides cloth, added up: which projects, the list, the sheet to take along. */
import {
  formatNotion,
  isNamed,
  notionsSheet,
  paneWords,
  projectNotions,
  refusalSentence,
  sentence,
  totalNotions,
  type NotionsOfProject,
  type NotionTotals,
} from "../../src/index";
import type { App } from "../app";
import { button, choices, element, field, tick } from "../dom";
import { carryOut, type Facts } from "../excel";
import { tableCells } from "../patterns";
import { freeSheet, today } from "./free-sheet";

const words = paneWords.sheets.notions;
const [WANTED, ALL] = ["(wanted)", "(all)"];

export interface NotionsView {
  readonly element: HTMLElement;
  /** Reads the projects again. */
  refresh(facts: Facts): Promise<void>;
  /** Of the projects that are ticked. */
  totals(): NotionTotals;
}

/** The notions of the projects; `[]` where no table has such a column. */
export async function readNotionsOf({
  tables,
}: Facts): Promise<readonly NotionsOfProject[] | { readonly said: string }> {
  const having = tables.filter(({ headings }) => isNamed("Notions", headings));
  const table = having.find(({ name }) => name === "Projects") ?? having[0];
  if (!table) return [];
  const cells = await tableCells(table.name);
  if (!cells.ok) return { said: refusalSentence(cells.refusal) };
  const read = projectNotions(cells.value);
  return read.ok ? read.value : { said: sentence(read.problem) };
}

/** The list of totals of these projects. */
export const totalsOf = (projects: readonly NotionsOfProject[]): NotionTotals =>
  totalNotions(projects.flatMap(({ project, texts }) => texts.map((text) => ({ project, text }))));

export function notionsView(app: App, press: (work: (facts: Facts) => Promise<unknown>) => () => void): NotionsView {
  const which = element("select", {});
  const ticks = element("fieldset", { class: "projects" });
  const missing = element("p", { class: "hint" });
  const result = element("div", { class: "result" });
  let projects: readonly NotionsOfProject[] = [];
  let chosen = new Set<string>();

  const ticked = () => projects.filter(({ project }) => chosen.has(project));
  const totals = () => totalsOf(ticked());
  const showTotals = () => {
    const { totals: lines, unread } = totals();
    const repeated = ticked().filter((project) => project.repeated);
    const list = (all: readonly (readonly [what: string, who: string])[]) =>
      element("ul", { class: "notions" }, ...all.map(([what, who]) => notionLine(what, who)));
    result.replaceChildren(
      ...(lines.length + unread.length === 0 ? [element("p", {}, words.none)] : []),
      ...(lines.length > 0 ? [list(lines.map((line) => [formatNotion(line), line.projects.join(", ")]))] : []),
      ...(unread.length > 0
        ? [element("h4", {}, words.unread), list(unread.map(({ text, project }) => [text, project]))]
        : []),
      ...repeated.map(({ project }) => element("p", { class: "warning-box" }, words.repeated(project))),
    );
  };
  const showTicks = () => {
    ticks.replaceChildren(
      element("legend", {}, words.projects),
      ...projects.map(({ project, status }) =>
        tick(status === "" ? project : words.project(project, status), chosen.has(project), (on) => {
          if (on) chosen.add(project);
          else chosen.delete(project);
          showTotals();
        }),
      ),
    );
    showTotals();
  };
  const choose = () => {
    const fits = ({ status, wanted }: NotionsOfProject) =>
      which.value === ALL || (which.value === WANTED ? wanted : status === which.value);
    chosen = new Set(projects.filter(fits).map(({ project }) => project));
    showTicks();
  };
  which.addEventListener("change", choose);
  const write = press(async ({ sheets }) => {
    if (ticked().length === 0) return app.say(words.chooseFirst, "warning");
    const planned = notionsSheet(totals(), today(new Date()));
    const sheet = freeSheet(planned.sheet, sheets);
    const carried = await carryOut({ sheets: [{ ...planned, sheet }], show: sheet });
    if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
    app.wrote(carried.receipt, words.what);
    app.say(words.written(sheet));
  });
  const form = element(
    "div",
    {},
    field(words.which, which),
    ticks,
    result,
    element("div", { class: "buttons" }, button(words.write, write)),
  );
  const seen = new Set<string>();
  return {
    element: element(
      "section",
      { "aria-label": words.heading },
      element("h3", {}, words.heading),
      element("p", {}, words.about),
      missing,
      form,
    ),
    async refresh(facts) {
      const read = await readNotionsOf(facts);
      projects = "said" in read ? [] : read;
      missing.textContent = "said" in read ? read.said : words.missing;
      missing.hidden = projects.length > 0;
      form.hidden = projects.length === 0;
      const statuses = [...new Set(projects.map(({ status }) => status))].filter(Boolean);
      choices(which, [
        { value: WANTED, label: words.wanted },
        { value: ALL, label: words.all },
        ...statuses.map((status) => ({ value: status, label: words.status(status) })),
      ]);
      // Her ticks stay; a project that is new is ticked when it is still to be made.
      for (const { project, wanted } of projects) {
        if (!seen.has(project) && wanted) chosen.add(project);
        seen.add(project);
      }
      showTicks();
    },
    totals,
  };
}

const notionLine = (what: string, who: string) =>
  element("li", {}, element("span", {}, what), " ", element("span", { class: "hint" }, who));
