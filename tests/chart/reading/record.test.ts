import { describe, expect, it } from "vitest";
import { Doubts } from "../../../src/chart/reading/record";
import { doubts } from "../../../src/words/reading";
import { paste, sheet } from "../paste";

describe("Doubts", () => {
  it("keeps what was found in order, with where it was found", () => {
    const found = new Doubts();
    found.warn(2, "a", { column: 3 });
    found.error(1, "b");
    expect(found.issues).toEqual([
      { line: 2, column: 3, severity: "warning", message: "a" },
      { line: 1, severity: "error", message: "b" },
    ]);
  });
  it("takes back these sentences of this line, and no others", () => {
    const found = new Doubts();
    for (const line of [1, 2]) for (const message of ["a", "b", "c"]) found.warn(line, message);
    found.withdraw(2, ["a", "c"]);
    expect(found.issues.map(({ line, message }) => `${line}${message}`)).toEqual(["1a", "1b", "1c", "2b"]);
  });
  it("takes back that two columns are called alike when a second row of sizes tells them apart", () => {
    // Figures are invented.
    const rows = ["Body measurements (cm)", "Letter|XS|XS|S|S", "Size|32|34|36|38", "Bust|76|80|84|88"];
    expect(paste(sheet(...rows))).toEqual({
      tables: [["body cm | 32 34 36 38", "also Letter: XS XS S S", "bust: Bust | 76 80 84 88"]],
      issues: [],
    });
    expect(paste(sheet("Body measurements (cm)", "Size|32|34|34|38", "Bust|76|80|84|88")).issues).toEqual([
      `2:4 warning (34) ${doubts.equalSizes("34")}`,
    ]);
  });
});
