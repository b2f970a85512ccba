import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columnsPlan } from "../../src/sheet/trackers/all";
import { changeReferences, columnLetters, columnName, ownColumns, thisRow } from "../../src/sheet/references";
import {
  headingRow,
  titleBlocks,
  trackerColumns,
  trackerRow,
  trackerSheet,
  type Tracker,
} from "../../src/sheet/tracker";

const offers: Tracker = {
  key: "stash",
  sheet: "Offers",
  table: "Offers",
  intro: ["What is on offer."],
  totals: [{ label: "All", formula: "=SUM(Offers[Cost])", format: "money", remark: '="some"' }],
  columns: [
    { heading: "Cloth", format: "text", note: "What it is." },
    { heading: "Width", format: "general", validation: { from: 1, to: 400 } },
    { heading: "Needed", format: "cloth" },
    { heading: "Sale price", format: "money" },
    {
      heading: "Cost",
      format: "money",
      formula: '=IF([@Needed]="","[@Width]",[@Needed]*[@[Sale price]])',
      emphasis: { when: "=[@Cost]>[@[Sale price]]", tone: "attention" },
    },
  ],
  needs: [],
  print: "lying",
};

describe("titleBlocks", () => {
  it("has the title, and under it the words where there are any", () => {
    const title = { row: 0, column: 0, cells: [["Offers"]], format: "text", style: "title" };
    expect(titleBlocks("Offers", [])).toEqual([title]);
    expect(titleBlocks("Offers", ["One.", "Two."])).toEqual([
      title,
      { row: 1, column: 0, cells: [["One."], ["Two."]], format: "text", style: "note" },
    ]);
  });
});

describe("a colour", () => {
  it("is left out where its formula asks for a column that isn't there", () => {
    const columns = offers.columns.map((column) =>
      column.heading === "Cost"
        ? { ...column, emphasis: { when: "=[@Cost]>[@Budget]", tone: "attention" as const } }
        : column,
    );
    const cost = (tracker: Tracker) => trackerSheet(tracker, "in").tables[0]!.columns.find(({ heading }) => heading === "Cost")!; // prettier-ignore
    expect(cost(offers)).toHaveProperty("emphasis");
    expect(cost({ ...offers, columns })).not.toHaveProperty("emphasis");
  });
});

describe("changeReferences", () => {
  it("changes this row's cells and leaves texts and other tables alone", () => {
    const formula = '=IF([@Width]="[@Width]",[@[Sale price]],Other[Width])';
    expect(changeReferences(formula, (heading) => `<${heading}>`)).toBe(
      '=IF(<Width>="[@Width]",<Sale price>,Other[Width])',
    );
    expect(ownColumns(formula)).toEqual(["Width", "Sale price"]);
  });
  it("changes nothing when each column is called by its own name", () => {
    const heading = fc.stringMatching(/^[A-Z][a-z ]{0,8}[a-z]$/);
    const piece = fc.oneof(heading.map(thisRow), fc.constantFrom('"[@x]"', "+", "SUM(", ")", ",", "Other[Width]"));
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const formula = `=${pieces.join("")}`;
        expect(changeReferences(formula, thisRow)).toBe(formula);
      }),
    );
  });
});

describe("columnLetters", () => {
  it("counts as a spreadsheet does", () => {
    expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
  });
});

describe("trackerRow", () => {
  it("puts what is typed, the formulas and nothing under their headings", () => {
    expect(trackerRow(offers, { Cloth: "=linen", "Sale price": 7 })).toEqual([
      "=linen",
      null,
      null,
      7,
      { formula: offers.columns[4]!.formula },
    ]);
    expect(trackerRow(offers, { Cost: 12 })[4]).toBe(12);
  });
  it("throws on a heading that isn't there", () => {
    expect(() => trackerRow(offers, { Colour: "red" })).toThrow(RangeError);
  });
});

describe("trackerSheet", () => {
  const plan = trackerSheet(offers, "in", [{ Cloth: "linen" }]);
  it("stands title, words and totals above the table", () => {
    expect(headingRow(offers)).toBe(4);
    expect(plan.tables.map(({ name, row, column }) => [name, row, column])).toEqual([["Offers", 4, 0]]);
    expect(Math.max(...plan.blocks.map(({ row, cells }) => row + cells.length))).toBeLessThan(plan.tables[0]!.row);
    expect(plan.frozenRows).toBe(5);
  });
  it("shows lengths as her units want them", () => {
    const formats = (units: "in" | "cm" | "both"): string[] =>
      trackerSheet(offers, units).tables[0]!.columns.map(({ format }) => format);
    expect(formats("in")[2]).toBe("fraction");
    expect(formats("cm")[2]).toBe("thousandths");
    expect(formats("both")[2]).toBe("thousandths");
  });
  it("says conditional colours with addresses of the first data row", () => {
    expect(plan.tables[0]!.columns[4]!.emphasis).toEqual({ formula: "=$E6>$D6", tone: "attention" });
  });
  it("has one row to begin with", () => {
    expect(trackerSheet(offers, "in").tables[0]!.rows).toHaveLength(1);
  });
});

describe("trackerColumns", () => {
  const her = { name: "Mine", row: 9, column: 2, headings: ["cloth", "Fabric width", "Colour"] };
  it("adds just what is missing, in our order, at the right end", () => {
    const plan = trackerColumns(offers, her, "in");
    expect(plan.table).toBe("Mine");
    expect(plan.columns.map(({ heading }) => heading)).toEqual(["Width", "Needed", "Sale price", "Cost"]);
    expect(plan.columns[3]!.cell).toEqual({ formula: offers.columns[4]!.formula });
    // Her columns are C to E, so the new ones are F, G, H and I; her first data row is 11.
    expect(plan.columns[3]!.emphasis!.formula).toBe("=$I11>$H11");
    expect(plan.columns[0]!.validation).toEqual({ from: 1, to: 400 });
    expect(plan.columns[0]!.cell).toBeNull();
  });
  it("says her heading where hers stands for ours, and only there", () => {
    const named = { ...her, headings: ["What", "Yards wanted", "Offer"] };
    const sameAs = { Needed: "Yards wanted", "Sale price": "Offer" };
    const plan = trackerColumns(offers, named, "in", { wanted: ["Cost"], sameAs });
    expect(plan.columns.map(({ heading }) => heading)).toEqual(["Cost"]);
    expect(plan.columns[0]!.cell).toEqual({
      formula: '=IF([@[Yards wanted]]="","[@Width]",[@[Yards wanted]]*[@Offer])',
    });
    expect(plan.columns[0]!.emphasis!.formula).toBe("=$F11>$E11");
  });
  it("brings the columns that a formula looks at with it", () => {
    const plan = trackerColumns(offers, { ...her, headings: ["x"] }, "in", { wanted: ["Cost"] });
    expect(plan.columns.map(({ heading }) => heading)).toEqual(["Needed", "Sale price", "Cost"]);
  });
  it("has nothing to add to a table that has it all", () => {
    const all = offers.columns.map(({ heading }) => heading.toUpperCase());
    expect(trackerColumns(offers, { ...her, headings: all }, "in").columns).toEqual([]);
  });
  it("never adds a heading that she has, whatever hers are", () => {
    const heading = fc.constantFrom("Cloth", "WIDTH", "needed", "Sale price", "Cost", "Colour", "Note");
    fc.assert(
      fc.property(fc.uniqueArray(heading), fc.subarray(offers.columns.map((c) => c.heading)), (headings, wanted) => {
        const { columns } = trackerColumns(offers, { ...her, headings }, "in", { wanted });
        const all = [...headings, ...columns.map((column) => column.heading)].map((one) => one.toLowerCase());
        expect(new Set(all).size).toBe(all.length);
        for (const one of wanted) expect(all).toContain(one.toLowerCase());
      }),
    );
  });
});

// Source: "Using structured references with Excel tables", Microsoft Support: these signs need an apostrophe before.
describe("a column's name in a formula", () => {
  it.each([
    ["Price", "[@Price]", "Price"],
    ["Sale price", "[@[Sale price]]", "Sale price"],
    ["Price (each)", "[@[Price (each)]]", "[Price (each)]"],
    ["Piece #", "[@[Piece '#]]", "[Piece '#]"],
    ["Ada's [old]", "[@[Ada''s '[old']]]", "[Ada''s '[old']]"],
    ["@work", "[@['@work]]", "['@work]"],
  ])("of %s", (heading, inRow, inTable) => {
    expect(thisRow(heading)).toBe(inRow);
    expect(columnName(heading)).toBe(inTable);
  });
});

describe("columnsPlan", () => {
  const there = { sheets: ["Mine"], tables: ["Mine"] };
  const added = (key: "projects" | "stash", headings: readonly string[]) =>
    columnsPlan(key, { name: "Mine", sheet: "Mine", row: 0, column: 0, headings }, "in", there)
      .flatMap(({ columns = [] }) => columns.flatMap((plan) => plan.columns))
      .map(({ heading }) => heading);
  it("adds no second column for what hers has under a name that the shopping list knows", () => {
    const headings = added("projects", ["Project", "Cloth", "Fabric width"]);
    expect(headings).not.toContain("Fabric");
    expect(headings).not.toContain("Width");
    expect(headings).toContain("Status");
    expect(added("stash", ["Label", "Material", "Length"])).not.toEqual(expect.arrayContaining(["Fabric"]));
  });
  it("adds the columns that reckon whatever hers are called", () =>
    expect(added("projects", ["Project", "Amount", "Buy"])).toEqual(expect.arrayContaining(["Needed", "To buy"])));
  it("adds ours where hers has neither name", () =>
    expect(added("projects", ["Colour"])).toEqual(expect.arrayContaining(["Project", "Fabric", "Width"])));
});
