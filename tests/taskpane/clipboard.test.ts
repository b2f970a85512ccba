/** A clipboard that gives nothing: the pane says what to do, and the box keeps what is in it. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { chartSection } from "../../taskpane/chart/section";
import { listeningApp } from "./listening-app";
import { paperPage, type Part } from "./paper-page";

beforeEach(() => void vi.stubGlobal("document", paperPage));
afterEach(() => void vi.unstubAllGlobals());

interface Held {
  readonly text?: string;
  readonly html?: string;
  readonly files?: readonly File[];
  readonly denied?: boolean;
}
/** Pastes into the box. @returns what was said, and whether the browser's own paste was kept from it */
async function pasted(held: Held | null, typed = "") {
  const { app, said } = listeningApp();
  const section = chartSection(app) as unknown as Part;
  const box = section.all("textarea")[0]!;
  box.value = typed;
  const getData = (type: string) => {
    if (held?.denied) throw new DOMException("Read permission denied.", "NotAllowedError");
    return (type === "text/html" ? held?.html : held?.text) ?? "";
  };
  const clipboardData = held && { getData, types: [], files: held.files ?? [] };
  const preventDefault = vi.fn();
  box.fire("paste", { clipboardData, preventDefault });
  await vi.waitFor(() => expect(said.filter((sentence) => !sentence.startsWith("Reading"))).not.toEqual([]));
  return { said: said.at(-1)!, stopped: preventDefault.mock.calls.length > 0, box: box.value };
}
const file = (name: string, type: string, content = "") => new File([content], name, { type });

describe("a paste", () => {
  it.each([
    ["no clipboard at all", null],
    ["a clipboard that refuses", { denied: true }],
  ] as const)("of %s says what to press, and the box may still get it", async (_, held) => {
    const { said, stopped, box } = await pasted(held, "Bust 34");
    expect(said).toMatch(/clipboard can't be read .*press Read it.*Ctrl\+V.*Cmd\+V.*open the chart as a file/);
    expect(stopped).toBe(false);
    expect(box).toBe("Bust 34");
  });
  it.each([
    ["nothing", {}],
    ["blanks", { text: " \n" }],
    ["a web page's empty lines", { html: "<p></p>", text: "\n" }],
  ])("of %s says to copy first, to press Ctrl+V or to open a file", async (_, held) => {
    const { said, box } = await pasted(held, "Bust 34");
    expect(said).toMatch(/holds no text\. Copy .*first.*Ctrl\+V.*open the chart as a file/);
    expect(box).toBe("Bust 34");
  });
  it.each([
    ["a picture", { files: [file("shot.png", "image/png", "x")] }],
    ["a web page's picture", { html: '<img src="a.png">' }],
  ])("of %s says that a picture holds no figures", async (_, held) => {
    expect((await pasted(held)).said).toMatch(/picture holds no figures .*Copy the text of the chart, or type it in/);
  });
  it("of a file opens it, as if it had been dropped", async () => {
    const empty = await pasted({ files: [file("chart.csv", "text/csv")] });
    expect(empty.said).toBe('There is nothing in "chart.csv".');
    const workbook = await pasted({ files: [file("chart.xlsx", "", "x")] });
    expect(workbook.said).toMatch(/"chart.xlsx" is a workbook\. Open it in Excel, copy the cells/);
  });
  it("of several files asks for one", async () => {
    const { said } = await pasted({ files: [file("a.csv", "text/csv", "1"), file("b.csv", "text/csv", "2")] });
    expect(said).toContain("Several files at once can't be read");
  });
});

describe("the button under an empty box", () => {
  it("says what to put into it", async () => {
    const { app, said } = listeningApp();
    const section = chartSection(app) as unknown as Part;
    section.all("button")[0]!.fire("click");
    await vi.waitFor(() => expect(said.at(-1)).toMatch(/nothing in the box\. Copy .*paste them there, or open a file/));
  });
});
