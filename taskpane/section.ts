import type { App } from "./app";
import { element } from "./dom";

/** A section that wants to know when it is on the screen. */
export interface Shown {
  readonly element: HTMLElement;
  readonly shown: () => void;
  readonly hidden?: () => void;
}

/** A section whose code is loaded when it is first shown; once loaded it stays. */
export function loadedLater(app: App, load: () => Promise<(app: App) => Shown>): Shown {
  const place = element("div", {});
  let section: Promise<Shown> | undefined;
  let visible = false;
  const open = async () => {
    section ??= load().then((make) => make(app));
    try {
      const loaded = await section;
      if (!place.contains(loaded.element)) place.replaceChildren(loaded.element);
      if (visible) loaded.shown();
    } catch (error) {
      // The next press tries again: a connection comes back.
      section = undefined;
      throw error;
    }
  };
  return {
    element: place,
    shown: () => {
      visible = true;
      void app.run(open);
    },
    hidden: () => {
      visible = false;
      void section?.then((loaded) => loaded.hidden?.());
    },
  };
}
