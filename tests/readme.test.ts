/** Types what README tells people to type, into the practice workbook, and looks whether they get what it says. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { DIST, loadClient, openBook, type OpenBook } from "./practice/office";

const readme = readFileSync(join(import.meta.dirname, "../README.md"), "utf8");
const rows = readme
  .split("\n")
  .filter((line) => line.startsWith("|"))
  .map((line) =>
    line
      .slice(1, -1)
      .split(/(?<!\\)\|/)
      .map((cell) => cell.trim()),
  );
/** "| 2 | Bust | 32 1/2 | …": the rows of the little sheet, without their numbers. */
const sheet = rows.filter(([number]) => /^\d+$/.test(number!)).map(([, ...cells]) => cells);
const formulas = rows.flatMap(([formula, shown]) =>
  /^`=/.test(formula!) ? [[formula!.slice(1, -1), shown!] as const] : [],
);

let book: OpenBook;
beforeAll(async () => {
  loadClient();
  book = openBook({ functions: DIST });
  for (const [row, cells] of sheet.entries())
    for (const [column, text] of cells.entries())
      if (text) await book.type(`${String.fromCharCode(65 + column)}${row + 1}`, text);
}, 60_000);
afterAll(() => book.dispose());

describe("README", () => {
  test("has a sheet to type and ten formulas", () => {
    expect(sheet.length).toBe(4);
    expect(formulas.length).toBe(10);
  });

  test.each(formulas)("%s gives %s", async (formula, shown) => {
    const wanted = shown.replace(/ \(.*\)$/, "").split(", ");
    const area = `K1:K${wanted.length}`;
    await book.type("K1", formula);
    expect(
      (await book.values(area)).map(([value]) =>
        typeof value === "number" ? String(Number(value.toFixed(4))) : value,
      ),
    ).toEqual(wanted);
    await book.type("K1", "");
  });

  test("prints both commands, each alone in its block", () => {
    expect(readme).toMatch(/```\nnpm ci && npm start\n```/);
    expect(readme).toMatch(/```\nnpm ci && npm test\n```/);
  });

  test("has a line for every function", () => {
    const { functions } = JSON.parse(readFileSync(join(DIST, "functions.json"), "utf8")) as {
      functions: { id: string }[];
    };
    for (const { id } of functions) expect(readme, id).toMatch(new RegExp(`\`${id}\\(`));
  });
});
