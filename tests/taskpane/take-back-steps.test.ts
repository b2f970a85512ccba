/** How many writes the pane can take back, one after another, and what it says when there is no more. */
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createApp } from "../../taskpane/app";
import { carryOut } from "../../taskpane/excel";
import { loadClient, openBook, type OpenBook } from "../practice/office";

/** An element as far as the pane's foot uses it. */
class Part {
  textContent = "";
  hidden = false;
  readonly children: Part[] = [];
  press: () => void = () => undefined;
  readonly classList = { toggle: () => undefined };
  setAttribute = (name: string) => void (this.hidden ||= name === "hidden");
  removeAttribute = () => undefined;
  append = (...children: Part[]) => void this.children.push(...children);
  addEventListener = (_type: string, listener: () => void) => void (this.press = listener);
}
const books: OpenBook[] = [];
beforeEach(() => {
  loadClient();
  books.push(openBook());
  vi.stubGlobal("document", { body: new Part(), createElement: () => new Part() });
});
afterEach(() => void vi.unstubAllGlobals());
afterAll(() => Promise.all(books.map((book) => book.dispose())));

/** Writes a number into each of so many cells below one another, each by itself. */
async function write(writes: number) {
  const { app, foot } = createApp();
  const [status, back] = (foot as unknown as Part).children as [Part, Part];
  for (let row = 0; row < writes; row++) {
    const plan = { cells: [{ sheet: "Sheet1", blocks: [{ row, column: 0, cells: [[row + 1]] }] }] };
    const carried = await carryOut(plan);
    if (!carried.ok) throw new Error(JSON.stringify(carried.refusal));
    app.wrote(carried.receipt, `number ${row + 1}`);
  }
  const takeBack = async () => {
    status.textContent = "";
    back.press();
    await vi.waitFor(() => expect(status.textContent).not.toBe(""), 5000);
  };
  return { status, back, takeBack };
}
const numbers = async () => (await books.at(-1)!.values("A1:A23")).flat().filter((cell) => cell !== "");

describe("the button that takes back", () => {
  it.each([1, 20])(
    "takes back all of %i writes, the last one first, and then is gone",
    async (writes) => {
      const { status, back, takeBack } = await write(writes);
      for (let left = writes; left > 0; left--) {
        expect([back.hidden, back.textContent]).toEqual([false, `Take back: number ${left}`]);
        await takeBack();
        expect(status.textContent).toBe(`Taken back: number ${left}. Everything is as it was before.`);
        expect(await numbers()).toEqual(Array.from({ length: left - 1 }, (_, index) => index + 1));
      }
      expect(back.hidden).toBe(true);
      back.press();
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(status.textContent).toContain("number 1");
    },
    60_000,
  );

  it("forgets the oldest of more than twenty, leaves what it wrote, and says so after the last step", async () => {
    const { status, back, takeBack } = await write(22);
    for (let left = 22; left > 2; left--) {
      expect(back.textContent).toBe(`Take back: number ${left}`);
      await takeBack();
      if (left > 3) expect(status.textContent).toBe(`Taken back: number ${left}. Everything is as it was before.`);
    }
    expect(await numbers()).toEqual([1, 2]);
    expect(back.hidden).toBe(true);
    expect(status.textContent).toMatch(/^Taken back: number 3\. .*no more steps.*stays/);
  }, 60_000);
});
