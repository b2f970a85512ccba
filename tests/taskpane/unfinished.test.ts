/** The pane closed for good over a sheet that is being written: the next start finds it, asks, and never acts by itself. */
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { chartSheet, indexPlan, type ChartTable, type WorkbookPlan } from "../../src/index";
import { carryOut, readUnfinished } from "../../taskpane/excel";
import { offerToRemove, type Clock } from "../../taskpane/unfinished";
import type { Batch } from "../../src/practice/host/executor";
import { loadClient, openBook, type OpenBook } from "../practice/office";
import { listeningApp } from "./listening-app";
import { paperPage, Part } from "./paper-page";

loadClient();
const books: OpenBook[] = [];
let book: OpenBook;
/** From which request on the pane is gone; nothing of it reaches Excel any more. */
let from = Infinity;
let batch = 0;
/** The pane is gone after the first request in which this stands. */
let cutAfter: string | undefined;
beforeEach(() => {
  vi.stubGlobal("document", paperPage);
  from = Infinity;
  cutAfter = undefined;
  const before = (sent: Batch) => {
    if (batch++ >= from) throw new Error("closed");
    if (cutAfter === undefined || !JSON.stringify(sent).includes(cutAfter)) return;
    cutAfter = undefined;
    from = 0;
  };
  books.push((book = openBook({ before })));
});
afterEach(() => void vi.unstubAllGlobals());
afterAll(() => Promise.all(books.map((one) => one.dispose())));

/** Invented figures. */
const table: ChartTable = {
  kind: "body",
  unit: "in",
  sizes: ["12", "14"],
  rows: [{ place: "bust", label: "Bust", values: [34, 36] }],
};
const chart = chartSheet("Camp shirt", [table], []);
const index = indexPlan([{ pattern: "Camp shirt", table: "CampShirt_body" }], 2, false);
const plan: WorkbookPlan = { ...index, sheets: [chart.plan, ...index.sheets!], show: "Camp shirt" };

/** Writes the plan with the pane gone from this request on. @returns whether all of it was written */
async function closedAt(at: number): Promise<boolean> {
  [batch, from] = [0, at];
  const carried = await carryOut(plan);
  from = Infinity;
  return carried.ok;
}
const sheets = () => book.book.Worksheets.all().map(({ Name }) => Name);
const marks = () => book.book.Settings.all().map(({ Key }) => Key);
const isFilled = (name: string) => {
  const used = book.book.Worksheets.GetItem(name).GetRange("A1:L20").Formulas.flat();
  return used.some((formula) => formula !== "");
};

/** The pane starts again, so many milliseconds later. */
async function started(later = 600_000) {
  const { app, said } = listeningApp();
  const place = new Part("div");
  const waiting: (() => void)[] = [];
  const clock: Clock = { now: () => Date.now() + later, later: (work) => void waiting.push(work) };
  await offerToRemove(app, place as never, clock);
  const press = async (label: RegExp) => {
    const found = place.all("button").find(({ textContent }) => label.test(textContent));
    const before = said.length;
    found!.fire("click");
    await vi.waitFor(() => expect(said.length).toBeGreaterThan(before));
  };
  return { said, place, waiting, press };
}
/** The pane is gone after the request that writes the chart's table: by what is written, not by a count of requests. */
async function halfWritten(): Promise<void> {
  cutAfter = "CampShirt_body";
  const carried = await carryOut(plan);
  from = Infinity;
  expect(carried).toMatchObject({ ok: false, refusal: { code: "halfWritten" } });
  expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
  expect(isFilled("Camp shirt")).toBe(true);
}

describe("a sheet that was being written when the pane was closed", () => {
  it("is marked before its first cell and until its last, wherever the pane is closed", async () => {
    let half = 0;
    for (let at = 0; ; at++) {
      const isDone = await closedAt(at);
      const made = sheets().filter((name) => name !== "Sheet1");
      const read = await readUnfinished();
      if (!read.ok) throw new Error(read.refusal.code);
      const marked = read.value.flatMap((one) => one.sheets.map(({ name }) => name));
      // After the last request all of it is there, whether the pane has heard so or not.
      if (isDone || book.book.Names.find("PatternIndex")) expect(marked).toEqual([]);
      else expect(marked).toEqual(made);
      if (made.some(isFilled) && !isDone) half++;
      if (isDone) break;
      for (const name of made) book.book.Worksheets.GetItem(name).Delete();
      book.book.Names.find("PatternIndex")?.Delete();
      for (const key of marks()) book.book.Settings.GetItem(key).Delete();
    }
    expect(half).toBeGreaterThan(3);
    expect(marks()).toEqual([]);
    expect((await started()).place.children).toEqual([]);
  }, 120_000);

  it("is asked about at the next start, and stays until the button is pressed", async () => {
    await halfWritten();
    const { place, press, said } = await started();
    expect(place.textContent).toMatch(
      /"Camp shirt" is not finished: .*What you have typed on it since would go with it/,
    );
    expect(place.all("p")[0]!.attributes.get("role")).toBe("alert");
    expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
    await press(/^Remove the sheet$/);
    expect(sheets()).toEqual(["Sheet1"]);
    expect(marks()).toEqual([]);
    expect(said).toEqual(["Removed: Camp shirt."]);
    expect(place.children).toEqual([]);
    expect(paperPage.activeElement).toBe(paperPage.tab);
    expect(await closedAt(Infinity)).toBe(true);
  }, 60_000);

  it("may stay, and is not asked about again", async () => {
    await halfWritten();
    await (await started()).press(/^Leave it as it is$/);
    expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
    expect(marks()).toEqual([]);
    expect((await started()).place.children).toEqual([]);
  }, 60_000);

  it("is found under the name that she has given it; another sheet of its old name is not it", async () => {
    await halfWritten();
    book.book.Worksheets.GetItem("Camp shirt").Name = "Shirt, half";
    book.book.Worksheets.Add("Camp shirt").GetRange("A1").Values = [["hers"]];
    const { place, press } = await started();
    expect(place.textContent).toContain('"Shirt, half" is not finished');
    await press(/^Remove the sheet$/);
    expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
  }, 60_000);

  it("is not asked about when she has removed it herself, and another sheet of its name is hers", async () => {
    await halfWritten();
    book.book.Worksheets.GetItem("Camp shirt").Delete();
    book.book.Worksheets.Add("Camp shirt").GetRange("A1").Values = [["hers"]];
    expect((await started()).place.children).toEqual([]);
    expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
    expect(marks()).toEqual([]);
  }, 60_000);

  it("may be one that another window is writing just now: it is asked about when it stays unfinished", async () => {
    await halfWritten();
    const first = await started(10_000);
    expect(first.place.children).toEqual([]);
    expect(first.waiting).toHaveLength(1);
    first.waiting[0]!();
    await vi.waitFor(() => expect(first.place.textContent).toContain('"Camp shirt" is not finished'));
    const second = await started(10_000);
    for (const key of marks()) book.book.Settings.GetItem(key).Delete();
    second.waiting[0]!();
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(second.place.children).toEqual([]);
    expect(sheets()).toContain("Camp shirt");
  }, 60_000);

  it("stays when Excel refuses to remove it, and is asked about still", async () => {
    await halfWritten();
    const { place, press, said } = await started();
    [batch, from] = [0, 0];
    await press(/^Remove the sheet$/);
    from = Infinity;
    expect(said.at(-1)).toContain("Nothing was written");
    expect(sheets()).toContain("Camp shirt");
    expect(place.textContent).toContain('"Camp shirt" is not finished');
  }, 60_000);
});
