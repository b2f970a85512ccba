/** The whole hobby in an empty workbook, by keyboard: sheets, charts, a person, projects, and what follows from them. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

// Invented charts in the steps that are common practice.
const SKIRT = `Body measurements (in)
Size\t10\t12\t14\t16
Waist\t25\t26 1/2\t28\t30
Hip\t34 1/2\t36\t38\t40

Fabric required (yards)
Size\t10\t12\t14\t16
View A
45" with nap\t2\t2 1/8\t2 1/4\t2 3/8
60" with nap\t1 1/2\t1 1/2\t1 5/8\t1 3/4`;
const SHIRT = `Body measurements (in)
Size\t10\t12\t14\t16
Bust\t32 1/2\t34\t36\t38
Waist\t25\t26 1/2\t28\t30

Fabric required (yards)
Size\t10\t12\t14\t16
View A
45" with nap\t2 1/4\t2 3/8\t2 1/2\t2 5/8`;

const PROJECTS = [
  ["Concert skirt", "Alto skirt", "Ada", "straight skirt", "A", "Navy twill", "45", "10"],
  ["Tour skirt", "Alto skirt", "Ada", "straight skirt", "A", "Grey twill", "60", "12"],
  ["Rehearsal shirt", "Tenor shirt", "Ada", "shirt", "A", "White cotton", "45", "8"],
] as const;
const TYPED = ["Project", "Pattern", "Person", "Garment", "View", "Fabric", "Width", "Price"];

describe.skipIf(!hasBrowser)("the sheets in a browser", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open("empty");
  });
  afterAll(() => browser?.close());

  const keys = async (...names: string[]) => {
    for (const name of names) await open.page.keyboard.press(name);
  };
  /** Goes on with Tab until the control has the keyboard. */
  const tabTo = async (role: "button" | "checkbox" | "textbox", name: string) => {
    const control = open.pane.getByRole(role, { name, exact: true });
    await control.waitFor();
    for (let press = 0; press < 60; press++) {
      if (await control.evaluate((found) => found === document.activeElement)) return;
      await keys("Tab");
    }
    throw new Error(`Tab does not reach ${name}`);
  };
  const tab = async (name: string) => {
    await open.pane.getByRole("tab", { selected: true }).focus();
    await keys("Home");
    for (let press = 0; press < 5; press++) {
      if ((await open.pane.getByRole("tab", { selected: true }).textContent()) === name) return;
      await keys("ArrowRight");
    }
    throw new Error(`no section ${name}`);
  };
  const said = async (start: string) => {
    const status = open.pane.getByRole("status").filter({ hasText: start });
    await status.waitFor({ timeout: 60_000 });
    return (await status.textContent()) ?? "";
  };
  const rows = (sheet: string, address: string) => open.value(sheet, address) as Promise<(string | number)[][]>;
  /** The letter of a column by its heading. */
  const letter = async (sheet: string, headingRow: number, heading: string) => {
    const [headings = []] = await rows(sheet, `A${headingRow}:Z${headingRow}`);
    const at = headings.indexOf(heading);
    expect(at, heading).toBeGreaterThanOrEqual(0);
    return String.fromCharCode(65 + at);
  };
  const measure = async (place: string, text: string) => {
    const labels = (await rows("Measurements", "A1:A40")).flat();
    const cell = `${await letter("Measurements", 4, "Ada")}${labels.indexOf(place) + 1}`;
    await open.type("Measurements", cell, text);
    await open.becomes("Measurements", cell, Number(text));
  };
  const column = async (heading: string) => {
    const at = await letter("Projects", 7, heading);
    return (await rows("Projects", `${at}8:${at}10`)).flat();
  };
  const follows = async (size: string[], toBuy: number[], cost: number, yards: number) => {
    await open.becomes("Projects", "B3", cost);
    await open.becomes("Projects", "B4", yards);
    await open.becomes("Shopping list", "B3", cost);
    expect((await column("Size")).map(String)).toEqual(size);
    expect(await column("To buy")).toEqual(toBuy);
    const list = await rows("Shopping list", "A7:E9");
    expect(list.map(([fabric, , , , buy]) => [fabric, buy])).toEqual(PROJECTS.map((row, at) => [row[5], toBuy[at]]));
  };

  test("sets them up, once, with what was said before gone", async () => {
    await keys("Tab");
    await tab("Sheets");
    for (const sheet of ["Measurements", "Projects", "Stash", "Shopping list", "Settings"]) {
      await tabTo("checkbox", sheet);
      await keys("Space");
    }
    await tabTo("button", "Set up the chosen sheets");
    await keys("Enter");
    expect(await said("Set up:")).toContain("Shopping list");
    expect(await open.value("Projects", "A1")).toEqual([["Projects"]]);
    await tab("Chart");
    expect(await open.pane.getByRole("status").textContent()).toBe("");
  });

  test("takes two charts", async () => {
    for (const [name, chart] of [
      ["Alto skirt", SKIRT],
      ["Tenor shirt", SHIRT],
    ] as const) {
      await tab("Chart");
      await tabTo("textbox", "Paste the chart here");
      await open.page.keyboard.insertText(chart);
      await tabTo("button", "Read it");
      await keys("Enter");
      await said("2 tables understood, nothing looks doubtful");
      await tabTo("textbox", "Name of the pattern");
      await open.page.keyboard.insertText(name);
      await tabTo("button", "Insert the sheet");
      await keys("Enter");
      await said(`Inserted: sheet "${name}"`);
    }
  });

  // A box to search in took the keyboard in the middle of a word, on a slow machine only.
  test("opens a cell's list without a box that could take the keyboard", async () => {
    const cell = `${await letter("Projects", 7, "Garment")}8`;
    await open.type("Projects", cell, "skirt");
    await keys("ArrowUp", "s");
    const list = open.page.locator("[data-u-comp=sheets-dropdown-list]");
    await list.waitFor();
    expect(await list.textContent()).toContain("straight skirt");
    expect(await list.locator("input").count()).toBe(0);
    await keys("Escape");
  });

  // By hand. Ada: bust 36 is 14; waist 28 and hip 38 are 14. 45 in, 14: 2 1/4 yd × 10 = 22.50; 60 in: 1 5/8 × 12 = 19.50;
  // shirt: 2 1/2 × 8 = 20.00. Together 62.00 and 6 3/8 yd.
  test("gives a person and three projects their sizes, amounts and cost", async () => {
    await tab("Sheets");
    await tabTo("textbox", "Name");
    await open.page.keyboard.insertText("Ada");
    await tabTo("button", "Add the column");
    await keys("Enter");
    await said('"Ada" has a column');
    await measure("Bust", "36");
    await measure("Waist", "28");
    await measure("Hip", "38");
    for (const [at, project] of PROJECTS.entries())
      for (const [index, heading] of TYPED.entries())
        await open.type("Projects", `${await letter("Projects", 7, heading)}${8 + at}`, project[index]!);
    await follows(["14", "14", "14"], [2.25, 1.625, 2.5], 62, 6.375);
    expect(await open.value("Projects", "C3")).toEqual([["Every row is counted."]]);
  });

  // Hip 40 is 16: 2 3/8 × 10 = 23.75, 1 3/4 × 12 = 21.00; the shirt goes by the bust and stays. 64.75 and 6 5/8 yd.
  test("follows one changed measurement everywhere", async () => {
    await measure("Hip", "40");
    await follows(["16", "16", "14"], [2.375, 1.75, 2.5], 64.75, 6.625);
    await open.shot("sheets-projects");
  });

  test("makes a shop copy of plain values", async () => {
    await tab("Sheets");
    await tabTo("button", "Make a shop copy");
    await keys("Enter");
    const sheet = /"(Shop copy [^"]+)"/.exec(await said("The copy is on"))![1]!;
    const [cost] = await rows(sheet, "B3");
    expect(cost).toEqual([64.75]);
    expect((await rows(sheet, "A7:D9")).map(([tick, fabric, , buy]) => [tick, fabric, buy])).toEqual([
      ["☐", "Navy twill", 2.375],
      ["☐", "Grey twill", 1.75],
      ["☐", "White cotton", 2.5],
    ]);
    await open.shot("sheets-shop-copy");
  });

  test("keeps values, which no longer follow, and brings the formulas back, which do", async () => {
    await tab("Sheets");
    await tabTo("button", "Keep values");
    await keys("Enter");
    await said("The workbook remembers them");
    await measure("Hip", "38");
    expect((await column("Size")).map(String)).toEqual(["16", "16", "14"]);
    expect(await open.value("Projects", "B3")).toEqual([[64.75]]);
    await tab("Sheets");
    await tabTo("button", "Bring back formulas");
    await keys("Enter");
    await said("The formulas are back.");
    await follows(["14", "14", "14"], [2.25, 1.625, 2.5], 62, 6.375);
  });

  test("asks nobody outside for anything, and has no errors in its console", () => {
    expect(open.outside).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});
