/** The Fabric section: how much to buy, and how a list of pieces lies on the cloth. */
import { paneWords, refusalSentence } from "../../src/index";
import type { App } from "../app";
import { element } from "../dom";
import { watch } from "../excel";
import { readInventory } from "../patterns";
import type { Shown } from "../section";
import { amountsView } from "./amounts-view";
import { layoutView } from "./layout-view";

const words = paneWords.fabric;

export function fabricSection(app: App): Shown {
  const amounts = amountsView(app);
  const layout = layoutView(app);
  let visible = false;
  const refresh = async () => {
    const read = await readInventory();
    if (!read.ok) return app.say(refusalSentence(read.refusal), "warning");
    layout.refresh(read.value);
    await amounts.refresh(read.value);
  };
  void watch(() => {
    if (visible) void app.run(refresh);
  });
  return {
    element: element("div", {}, element("h2", {}, words.heading), amounts.element, layout.element),
    shown: () => {
      visible = true;
      void app.run(refresh);
    },
    hidden: () => (visible = false),
  };
}
