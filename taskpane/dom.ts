/** Elements made in one call. Text goes in as text nodes only, so that nothing pasted is ever rendered. */

type Child = Node | string | null | undefined | false;
interface Properties {
  readonly [attribute: string]: unknown;
}

const SVG = "http://www.w3.org/2000/svg";

/**
 * An element with attributes, listeners (`onclick`: a function) and children. true sets a bare attribute; false, null
 * and undefined leave it out.
 *
 * @example element("button", { type: "button", onclick: read }, "Read it")
 */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  return filled(document.createElement(tag), properties, children);
}

/** The same for a drawing. */
export function drawn<K extends keyof SVGElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] {
  return filled(document.createElementNS(SVG, tag), properties, children);
}

function filled<E extends Element>(made: E, properties: Properties, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (typeof value === "function") made.addEventListener(name.slice(2), value as EventListener);
    else made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...children.filter((child): child is Node | string => Boolean(child)));
  return made;
}

export function button(label: string, onclick: () => void, properties: Properties = {}): HTMLButtonElement {
  return element("button", { type: "button", onclick, ...properties }, label);
}

let lastId = 0;
export const freshId = (start: string): string => `${start}-${++lastId}`;

/** A label with its control under it, and a hint that is read out with it. */
export function field(
  label: string,
  control: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement,
  hint?: string,
): HTMLElement {
  control.id ||= freshId("field");
  const hintId = hint ? `${control.id}-hint` : undefined;
  if (hintId) control.setAttribute("aria-describedby", hintId);
  return element(
    "div",
    { class: "field" },
    element("label", { for: control.id }, label),
    control,
    hint ? element("p", { id: hintId, class: "hint" }, hint) : null,
  );
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** A drop-down list; it keeps its choice when it is filled anew and still has it. */
export function choices(select: HTMLSelectElement, options: readonly Choice[]): HTMLSelectElement {
  const { value } = select;
  select.replaceChildren(...options.map((option) => element("option", { value: option.value }, option.label)));
  if (options.some((option) => option.value === value)) select.value = value;
  return select;
}

/** A checkbox with its label behind it. */
export function tick(label: string, checked: boolean, onchange: (on: boolean) => void): HTMLElement {
  const box = element("input", { type: "checkbox", id: freshId("tick") });
  box.checked = checked;
  box.addEventListener("change", () => onchange(box.checked));
  return element("div", { class: "tick" }, box, element("label", { for: box.id }, label));
}
