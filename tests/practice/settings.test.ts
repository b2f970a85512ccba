import { afterAll, describe, expect, test } from "vitest";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
const books: OpenBook[] = [];
const open = (storage?: number) => books.push(openBook(storage === undefined ? {} : { storage }));
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const add = (key: string, value: string) =>
  Excel.run(async (context) => {
    context.workbook.settings.add(key, value);
    await context.sync();
  });
const keys = () =>
  Excel.run(async (context) => {
    const all = context.workbook.settings.load("items/key");
    await context.sync();
    return all.items.map(({ key }) => key);
  });

describe("the workbook's settings", () => {
  // The limit: "Office.Settings", Office Add-ins documentation. The code: a report of Excel for Windows, office-js 3957.
  test("take 2 MB and refuse more, as an invalid argument", async () => {
    open();
    await add("one", "x".repeat(1_500_000));
    await expect(add("two", "x".repeat(700_000))).rejects.toMatchObject({ code: "InvalidArgument" });
    expect(await keys()).toEqual(["one"]);
    await add("one", "x");
    await add("two", "x".repeat(700_000));
    expect(await keys()).toEqual(["one", "two"]);
  });
  test("have less room where a test wants it so", async () => {
    open(100);
    await add("one", "x".repeat(50));
    await expect(add("two", "x".repeat(50))).rejects.toMatchObject({ code: "InvalidArgument" });
  });
});
