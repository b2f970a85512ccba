/** Sections one at a time, and what was said in the one that goes. A page of the few parts that tabs need stands in. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createApp } from "../../taskpane/app";
import { tabs } from "../../taskpane/tabs";

/** An element as far as tabs and the pane's foot use it. */
class Part {
  textContent = "";
  hidden = false;
  tabIndex = 0;
  readonly attributes = new Map<string, string>();
  readonly children: unknown[] = [];
  readonly listeners = new Map<string, ((event: unknown) => void)[]>();
  readonly classList = {
    toggle: (name: string, on: boolean) => void this.attributes.set("class", on ? name : ""),
  };
  constructor(readonly tag: string) {}
  setAttribute = (name: string, value: string) => void this.attributes.set(name, value);
  removeAttribute = (name: string) => void this.attributes.delete(name);
  append = (...children: unknown[]) => void this.children.push(...children);
  addEventListener = (type: string, listener: (event: unknown) => void) =>
    void this.listeners.set(type, [...(this.listeners.get(type) ?? []), listener]);
  focus = () => void (page.activeElement = this);
  fire = (type: string, event: unknown = {}) => this.listeners.get(type)?.forEach((listener) => listener(event));
}
const page: { activeElement: unknown; body: Part; createElement(tag: string): Part } = {
  activeElement: null,
  body: new Part("body"),
  createElement: (tag) => new Part(tag),
};
beforeEach(() => void vi.stubGlobal("document", page));
afterEach(() => void vi.unstubAllGlobals());

function open() {
  const { app, foot } = createApp();
  const status = (foot as unknown as Part).children[0] as Part;
  const shown: string[] = [];
  const section = (id: string) => ({
    id,
    title: id,
    element: new Part("div") as never,
    shown: () => void shown.push(id),
    hidden: () => void shown.push(`${id} goes`),
  });
  const { list, panels } = tabs("Parts", [section("chart"), section("sheets")], () => app.say(""));
  const heads = (list as unknown as Part).children as Part[];
  return { app, status, shown, heads, list: list as unknown as Part, panels: panels as unknown as Part[] };
}

describe("tabs", () => {
  it("begin with the first section and don't wipe what has been said before it", () => {
    const changed = vi.fn();
    tabs("Parts", [{ id: "chart", title: "Chart", element: new Part("div") as never }], changed);
    expect(changed).not.toHaveBeenCalled();
  });

  it("clear what was said when another section is opened, before that one says something", () => {
    const { app, status, heads, shown, panels } = open();
    app.say("Set up: Projects.", "warning");
    heads[1]!.fire("click");
    expect(status.textContent).toBe("");
    expect(status.attributes.get("class")).toBe("");
    expect(shown).toEqual(["chart", "chart goes", "sheets"]);
    expect(panels.map(({ hidden }) => hidden)).toEqual([true, false]);
  });

  it("leave it when the section that is open is pressed again", () => {
    const { app, status, heads, shown } = open();
    app.say("Set up: Projects.");
    heads[0]!.fire("click");
    expect(status.textContent).toBe("Set up: Projects.");
    expect(shown).toEqual(["chart", "chart"]);
  });

  it("clear it on the way by keyboard too, and the last one is followed by the first", () => {
    const { app, status, heads, list } = open();
    page.activeElement = heads[0]!;
    app.say("The formulas are back.");
    list.fire("keydown", { key: "ArrowLeft", preventDefault: () => undefined });
    expect(status.textContent).toBe("");
    expect(page.activeElement).toBe(heads[1]);
    app.say("Here.");
    list.fire("keydown", { key: "Enter", preventDefault: () => undefined });
    expect(status.textContent).toBe("Here.");
  });
});

describe("what the pane has said", () => {
  it("stays while work goes on that says nothing: the workbook may change", async () => {
    const { app, status } = open();
    app.say("Set up: Projects.");
    await app.run(() => Promise.resolve());
    expect(status.textContent).toBe("Set up: Projects.");
  });
});
