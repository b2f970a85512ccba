/** Starts the pane once Excel is ready. */
import { paneWords } from "../src/index";
import { createApp } from "./app";
import { chartSection } from "./chart/section";
import { element } from "./dom";
import { loadedLater } from "./section";
import { tabs } from "./tabs";
import { followTheme } from "./theme";
import { offerToRemove } from "./unfinished";

const words = paneWords.frame;

function start(): void {
  followTheme();
  const { app, foot } = createApp();
  const sections = [
    { id: "chart", title: words.sections.chart, element: chartSection(app) },
    {
      id: "fit",
      title: words.sections.fit,
      ...loadedLater(app, () =>
        import(/* webpackChunkName: "fit" */ "./fit/section").then(({ fitSection }) => fitSection),
      ),
    },
    {
      id: "fabric",
      title: words.sections.fabric,
      ...loadedLater(app, () =>
        import(/* webpackChunkName: "fabric" */ "./fabric/section").then((loaded) => loaded.fabricSection),
      ),
    },
    {
      id: "sheets",
      title: words.sections.sheets,
      ...loadedLater(app, () =>
        import(/* webpackChunkName: "sheets" */ "./sheets/section").then((loaded) => loaded.sheetsSection),
      ),
    },
    {
      id: "help",
      title: words.sections.help,
      ...loadedLater(app, () =>
        import(/* webpackChunkName: "help" */ "./help/section").then((loaded) => loaded.helpSection),
      ),
    },
  ];
  const { list, panels } = tabs(words.sectionsLabel, sections, () => app.say(""));
  document.getElementById("starting")?.remove();
  const notices = element("div", {});
  document.body.append(element("nav", {}, list), element("main", {}, notices, ...panels), foot);
  void offerToRemove(app, notices);
}

function cannotStart(sentence: string): void {
  const starting = document.getElementById("starting");
  if (starting) starting.textContent = sentence;
}

// office.js comes from Microsoft's address and may not have come at all: then nobody is there either to whom functions.js,
// the script after this one, could announce its functions.
if (typeof Office === "undefined") {
  Object.assign(globalThis, { CustomFunctions: { associate: () => undefined } });
  cannotStart(words.noOffice);
} else
  void Office.onReady(({ host }) => {
    if (host !== Office.HostType.Excel) cannotStart(words.noExcel);
    else if (!Office.context.requirements.isSetSupported("ExcelApi", "1.12")) cannotStart(words.tooOld);
    else start();
  });
