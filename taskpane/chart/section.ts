/** The Chart section: paste or open, look, correct, name, insert. */
import { paneWords } from "../../src/index";
import type { App } from "../app";
import { button, element, field, freshId } from "../dom";
import { openFile, pastedText } from "./files";

const words = paneWords.chart;
/** A longer paste is read but not put into the box, which would take seconds. */
const BOX = 100_000;

export function chartSection(app: App): HTMLElement {
  const box = element("textarea", { rows: 6, spellcheck: "false", autocomplete: "off" });
  const result = element("div", { hidden: true });
  const intake = element("div", { class: "intake" });

  const understand = async (pasted: string, note = "") => {
    app.say(words.reading);
    // Lets the sentence be painted before a long paste is read.
    await new Promise((resolve) => setTimeout(resolve, 0));
    const { understand: read, viewOf } = await import(/* webpackChunkName: "reader" */ "./understand");
    const { draft, isEmpty } = read(pasted);
    if (isEmpty) {
      const said = draft.loose.map(({ message }) => message).join(" ");
      return app.say(said || words.understood(0, 0), "warning");
    }
    intake.hidden = true;
    result.hidden = false;
    const view = viewOf(app, draft, again, startAgain);
    result.replaceChildren(view.element);
    app.say(
      [note, words.understood(draft.tables.length, draft.flags.length + draft.loose.length)].filter(Boolean).join(" "),
    );
    view.focus();
  };
  const again = (pasted: string) => void app.run(() => understand(pasted));
  const startAgain = () => {
    result.hidden = true;
    result.replaceChildren();
    intake.hidden = false;
    box.value = "";
    box.focus();
    app.say("");
  };
  const open = async (file: File | undefined) => {
    if (!file) return;
    app.say(words.reading);
    const opened = await openFile(file);
    if (!opened.ok) return app.say(opened.message, "warning");
    if (opened.value.kind === "text") return understand(opened.value.text);
    const { readPdf } = await import(/* webpackChunkName: "pdf" */ "./pdf");
    const pdf = await readPdf(opened.value.bytes, file.name);
    if (!pdf.ok) return app.say(pdf.message, "warning");
    return understand(pdf.text, pdf.note);
  };

  box.addEventListener("paste", (event) => {
    const { clipboardData } = event;
    const pasted = pastedText(clipboardData);
    // What we may not read the box may still get.
    if (!clipboardData || (!pasted.ok && pasted.message === words.clipboardClosed))
      return app.say(words.clipboardClosed, "warning");
    event.preventDefault();
    if (!pasted.ok) {
      const [first, second] = clipboardData.files;
      if (second) return app.say(words.severalFiles, "warning");
      if (first && pasted.message === words.nothingPasted) return void app.run(() => open(first));
      return app.say(pasted.message, "warning");
    }
    const plain = clipboardData.getData("text/plain");
    // A line put into a half-typed chart goes where it is put; what is too long for the box is read by itself.
    if (box.value.trim() !== "" && !/<table/i.test(pasted.value) && box.value.length + plain.length <= BOX)
      return box.setRangeText(plain, box.selectionStart, box.selectionEnd, "end");
    if (box.value.trim() === "" || plain.length <= BOX) box.value = plain.slice(0, BOX);
    void app.run(() => understand(pasted.value));
  });
  const file = element("input", {
    type: "file",
    id: freshId("file"),
    class: "unseen",
    accept: ".txt,.csv,.tsv,.md,.html,.htm,.pdf,text/*,application/pdf",
  });
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    void app.run(() => open(chosen)).then(() => (file.value = ""));
  });
  intake.addEventListener("dragover", (event) => event.preventDefault());
  intake.addEventListener("drop", (event) => {
    event.preventDefault();
    const dropped = event.dataTransfer;
    if (!dropped) return;
    const [first, second] = dropped.files;
    if (second) return app.say(words.severalFiles, "warning");
    if (first) return void app.run(() => open(first));
    const text = pastedText(dropped);
    if (text.ok) void app.run(() => understand(text.value));
    else app.say(text.message === words.nothingPasted ? words.nothingDropped : text.message, "warning");
  });
  const readBox = async () =>
    box.value.trim() === "" ? app.say(words.nothingInBox, "warning") : understand(box.value);
  intake.append(
    element("h2", {}, words.heading),
    element("p", {}, words.intro),
    field(words.pasteLabel, box),
    element(
      "div",
      { class: "buttons" },
      button(words.read, () => void app.run(readBox), { class: "main" }),
      file,
      element("label", { for: file.id, class: "button" }, words.open),
    ),
    element("p", { class: "hint" }, words.openHint),
  );
  return element("div", {}, intake, result);
}
