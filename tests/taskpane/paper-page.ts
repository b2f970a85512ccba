/** As much of a page as the pane's small parts need: elements that keep what they are given, and buttons to press. */
export class Part {
  hidden = false;
  value = "";
  id = "";
  files: unknown = null;
  parent: Part | undefined;
  selectionStart = 0;
  selectionEnd = 0;
  children: (Part | string)[] = [];
  readonly attributes = new Map<string, string>();
  readonly listeners = new Map<string, ((event: unknown) => void)[]>();
  readonly classList = { toggle: (name: string, on: boolean) => void this.attributes.set("class", on ? name : "") };
  constructor(readonly tag: string) {}

  get textContent(): string {
    return this.children.map((child) => (typeof child === "string" ? child : child.textContent)).join("");
  }
  set textContent(text: string) {
    this.children = text === "" ? [] : [text];
  }
  setAttribute = (name: string, value: string) => {
    this.attributes.set(name, value);
    if (name === "id") this.id = value;
  };
  removeAttribute = (name: string) => void this.attributes.delete(name);
  append = (...children: (Part | string)[]) => {
    for (const child of children) if (child instanceof Part) child.parent = this;
    this.children.push(...children);
  };
  replaceChildren = (...children: (Part | string)[]) => {
    this.children = [];
    this.append(...children);
  };
  remove = () => {
    if (this.parent) this.parent.children = this.parent.children.filter((child) => child !== this);
  };
  addEventListener = (type: string, listener: (event: unknown) => void) =>
    void this.listeners.set(type, [...(this.listeners.get(type) ?? []), listener]);
  focus = () => void (paperPage.activeElement = this);
  fire = (type: string, event: unknown = {}) => this.listeners.get(type)?.forEach((listener) => listener(event));

  /** Everything in it with this tag, in order. */
  all(tag: string): Part[] {
    return this.children.flatMap((child) =>
      typeof child === "string" ? [] : [...(child.tag === tag ? [child] : []), ...child.all(tag)],
    );
  }
}

/** Stands for `document`; `tab` is the section that is chosen. */
export const paperPage = {
  activeElement: null as unknown,
  tab: new Part("button"),
  body: new Part("body"),
  createElement: (tag: string) => new Part(tag),
  querySelector: (wanted: string) => (wanted.includes('[role="tab"]') ? paperPage.tab : null),
};
