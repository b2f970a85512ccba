import { paneWords, type Issue } from "../../src/index";
import type { App } from "../app";
import { button, element, field, freshId } from "../dom";
import { insertChart } from "../insert-chart";
import {
  correct,
  leftOut,
  lineOf,
  nextFlag,
  retitled,
  withLine,
  type CellAt,
  type Draft,
  type ReadCharts,
} from "./draft";
import { tableView, type TableView } from "./table-view";

const words = paneWords.chart;

export interface DraftView {
  readonly element: HTMLElement;
  focus(): void;
}

/** What was understood of a paste, to be looked at, corrected, named and inserted. */
export function draftView(
  app: App,
  first: Draft,
  read: ReadCharts,
  again: (pasted: string) => void,
  startAgain: () => void,
): DraftView {
  let draft = first;
  let at: CellAt | null = null;
  let views: TableView[] = [];
  const summary = element("h2", { tabindex: -1 });
  const tables = element("div", {});
  const next = button(words.next, () => goNext());
  const toLookAt = looseList(draft, again);

  tables.addEventListener("focusin", ({ target }) => {
    const [table, row, column] = (target as HTMLElement).dataset.at?.split("/").map(Number) ?? [];
    if (table !== undefined) at = { table, row: row!, column: column! };
  });
  const goNext = () => {
    const found = nextFlag(draft, at);
    if (!found) return app.say(words.noneLeft);
    views[found.table]!.focus(found);
  };
  const refresh = () => {
    summary.textContent = words.understood(draft.tables.length, draft.flags.length + draft.loose.length);
    next.hidden = draft.flags.length === 0;
  };
  const rebuild = () => {
    views = draft.tables.map((_, index) =>
      tableView(draft, index, {
        correct(place, text) {
          const result = correct(draft, index, place, text, read);
          if (!result.ok) {
            const said = words.wrong(result.message);
            app.say(said, "warning");
            return said;
          }
          draft = result.value;
          for (const view of views) view.update(draft);
          refresh();
          app.say(words.understood(draft.tables.length, draft.flags.length + draft.loose.length));
          return null;
        },
        leaveOut(row) {
          draft = leftOut(draft, index, row, read);
          rebuild();
          summary.focus();
        },
        retitle(change) {
          draft = retitled(draft, index, change, read);
          rebuild();
          views[index]!.element.querySelector("select")?.focus();
        },
      }),
    );
    tables.replaceChildren(...views.map((view) => view.element));
    at = null;
    refresh();
  };
  rebuild();

  const name = element("input", { type: "text", maxlength: 60, autocomplete: "off" });
  const insert = () => app.run(() => insertDraft(app, draft, name, startAgain));
  name.addEventListener("keydown", (event) => {
    if (event.key === "Enter") void insert();
  });
  const view = element(
    "div",
    { class: "draft" },
    summary,
    toLookAt,
    draft.tables.length > 0 ? element("p", { class: "hint" }, words.gridHelp) : null,
    element("div", { class: "buttons" }, next, button(words.startAgain, startAgain, { class: "quiet" })),
    tables,
    draft.tables.length > 0 ? field(words.name, name, words.nameHint) : null,
    draft.tables.length > 0
      ? element(
          "div",
          { class: "buttons" },
          button(words.insert, () => void insert(), { class: "main" }),
        )
      : null,
  );
  return { element: view, focus: () => summary.focus() };
}

/** What belongs to no cell: what was assumed, and lines that were left out, each to be put right where it stands. */
function looseList(draft: Draft, again: (pasted: string) => void): HTMLElement | null {
  if (draft.loose.length === 0) return null;
  const item = (issue: Issue) => {
    const line = issue.severity === "error" ? lineOf(draft, issue) : undefined;
    if (line === undefined) return element("li", { class: issue.severity }, issue.message);
    const input = element("input", { type: "text", id: freshId("line"), spellcheck: "false", autocomplete: "off" });
    // Tabs can't be seen nor typed in a text field: bars stand for them while they are in it.
    const tabbed = line.includes("\t") && !line.includes("|");
    input.value = tabbed ? line.replace(/\t/g, " | ") : line;
    const put = () => {
      const text = tabbed
        ? input.value
            .split("|")
            .map((part) => part.trim())
            .join("\t")
        : input.value;
      again(withLine(draft.pasted, issue.line, text));
    };
    input.addEventListener("keydown", (event) => {
      if (event.key === "Enter") put();
    });
    return element(
      "li",
      { class: issue.severity },
      element("p", {}, issue.message),
      element("label", { for: input.id }, words.leftOutLine(issue.line)),
      input,
      button(words.readAgain, put),
    );
  };
  return element(
    "div",
    { class: "loose" },
    element("h3", {}, words.toLookAt),
    element("ul", {}, ...draft.loose.map(item)),
  );
}

async function insertDraft(app: App, draft: Draft, name: HTMLInputElement, startAgain: () => void): Promise<void> {
  const pattern = name.value.trim();
  if (pattern === "") {
    name.focus();
    return app.say(words.nameMissing, "warning");
  }
  if (draft.flags.length > 0) {
    const answer = await app.ask(words.insertDoubtful(draft.flags.length), [
      { value: "look", label: words.lookAgain, main: true },
      { value: "insert", label: words.insertAnyway },
    ]);
    if (answer !== "insert") return;
  }
  let inserted = await insertChart(pattern, draft.tables);
  if (!inserted.ok && inserted.free !== null) {
    const answer = await app.ask(inserted.said, [
      { value: "free", label: words.insertAs(inserted.free), main: true },
      { value: "other", label: words.otherName },
    ]);
    if (answer !== "free") {
      name.focus();
      name.select();
      return;
    }
    inserted = await insertChart(inserted.free, draft.tables);
  }
  if (!inserted.ok) return app.say(inserted.said, "warning");
  app.wrote(inserted.receipt, words.whatInserted(inserted.sheet));
  startAgain();
  app.say(inserted.said);
}
