import { describe, expect, it } from "vitest";
import { paneWords } from "../../src/words/pane";

const { chart, fit, fabric, help, sheets } = paneWords;

describe("paneWords", () => {
  it("counts one thing and several in plain words", () => {
    expect(help.count(1)).toBe("1 function");
    expect(help.count(27)).toBe("27 functions");
    expect(chart.noChartInPdf("guide.pdf", 1)).toBe('No chart was found on the 1 page of "guide.pdf".');
    expect(chart.noChartInPdf("guide.pdf", 0)).toBe('No chart was found on the 0 pages of "guide.pdf".');
    expect(chart.rowShape("Bust", 1)).toBe("Bust: 1 figure as a line, smallest size to largest");
    expect(chart.moreRows(2)).toBe("2 more rows: they go into the sheet as they were read.");
    expect(chart.showTable("Body", 1)).toBe("Body, 1 row");
    expect(chart.insertDoubtful(1)).toBe("1 place still looks doubtful. Insert the sheet all the same?");
    expect(chart.insertDoubtful(3)).toBe("3 places still look doubtful. Insert the sheet all the same?");
    expect(fabric.tries(1)).toBe("1 layout tried.");
    expect(sheets.whatSetUp(2)).toBe("2 new sheets");
    expect(sheets.kept(1)).toBe("1 formula is a value now. The workbook remembers them.");
    expect(sheets.kept(5)).toBe("5 formulas are values now. The workbook remembers them.");
  });

  it("says how a paste was understood", () => {
    expect(chart.understood(0, 3)).toBe("No chart was found.");
    expect(chart.understood(1, 0)).toBe("1 table understood, nothing looks doubtful.");
    expect(chart.understood(3, 1)).toBe("3 tables understood, 1 place to look at.");
    expect(chart.understood(2, 4)).toBe("2 tables understood, 4 places to look at.");
  });

  it("heads the fit by the size to cut, its frame only where it differs, or by none", () => {
    expect(fit.headline("12", "12")).toBe("Size to cut in one piece: 12");
    expect(fit.headline("14", "12")).toBe("Size to cut in one piece: 14 (frame size 12)");
    expect(fit.headline(null, "12")).toBe("No size will do in one piece: blend from frame size 12");
    expect(fit.easeShort("3 in", "fitted")).toBe("ease 3 in, fitted");
    expect(fit.easeShort("3 in", "")).toBe("ease 3 in");
  });

  it("asks for the length of the fabric she owns, by its name where there are several", () => {
    expect(fabric.own("")).toBe("Length you own");
    expect(fabric.own("Linen")).toBe("Length of Linen you own");
  });

  it("says what came back of the formulas, and what was left alone", () => {
    expect(sheets.broughtBack(0)).toBe("The formulas are back.");
    expect(sheets.broughtBack(1)).toBe(
      "The formulas are back, but for 1 place that somebody has changed: they stay as they are, see the list.",
    );
    expect(sheets.broughtBack(2)).toBe(
      "The formulas are back, but for 2 places that somebody has changed: they stay as they are, see the list.",
    );
  });
});
