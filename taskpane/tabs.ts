import { element } from "./dom";

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly element: HTMLElement;
  /** Called each time the section is shown, and when another takes its place. */
  readonly shown?: () => void;
  readonly hidden?: () => void;
}

/**
 * Sections as tabs: the arrow keys, Home and End move between them, Tab goes on into the section. Source: "Tabs
 * pattern", ARIA Authoring Practices Guide, W3C.
 */
export function tabs(
  label: string,
  sections: readonly Section[],
  /** Called between one section and the next: what was said belongs to the one that goes. */
  changed: () => void = () => undefined,
): { list: HTMLElement; panels: HTMLElement[] } {
  const heads = sections.map((section) =>
    element(
      "button",
      { type: "button", role: "tab", id: `tab-${section.id}`, "aria-controls": section.id, "aria-selected": "false" },
      section.title,
    ),
  );
  const panels = sections.map((section) =>
    element(
      "section",
      { role: "tabpanel", id: section.id, "aria-labelledby": `tab-${section.id}`, hidden: true },
      section.element,
    ),
  );
  let open = -1;
  const show = (at: number) => {
    if (open !== at && open >= 0) {
      sections[open]!.hidden?.();
      changed();
    }
    open = at;
    heads.forEach((head, index) => {
      head.setAttribute("aria-selected", String(index === at));
      head.tabIndex = index === at ? 0 : -1;
      panels[index]!.hidden = index !== at;
    });
    sections[at]!.shown?.();
  };
  const list = element("div", { role: "tablist", "aria-label": label, class: "tabs" }, ...heads);
  heads.forEach((head, index) => head.addEventListener("click", () => show(index)));
  list.addEventListener("keydown", (event) => {
    const at = heads.indexOf(document.activeElement as HTMLButtonElement);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: heads.length - 1 }[event.key];
    if (to === undefined || at < 0) return;
    event.preventDefault();
    const next = (to + heads.length) % heads.length;
    show(next);
    heads[next]!.focus();
  });
  show(0);
  return { list, panels };
}
