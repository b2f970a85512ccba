import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const INCHES = "Body measurements (in)";
const back = "backWaistLength: Back waist length | 15 15.25 15.5";

describe("joinedRows", () => {
  it.each([
    ["over two lines", page("Back waist", "length 15 15 1/4 15 1/2")],
    ["over three lines", page("Back", "waist", "length 15 15 1/4 15 1/2")],
    ["over three lines with tabs", sheet("Back", "waist", "length|15|15 1/4|15 1/2")],
    ["above a row whose first cell is blank", sheet("Back waist length", "|15|15 1/4|15 1/2")],
  ])("reads a label broken %s", (_, lines) => {
    expect(paste(page(INCHES, "Size 8 10 12", "Bust 31 32 34", lines, "Hip 33 34 36"))).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", back, "hip: Hip | 33 34 36"]],
      issues: [],
    });
  });
  it.each([
    ["with the figures behind its end", page("natural waist 15 15 1/4 15 1/2")],
    ["with the figures on a fourth line", page("natural waist", "15 15 1/4 15 1/2")],
  ])("never takes the last words of a long label for a place of their own, %s", (_, end) => {
    const lines = page(INCHES, "Size 8 10 12", "Back waist", "length, neck to", end);
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "backWaistLength: Back waist length, neck to natural waist | 15 15.25 15.5"]],
      issues: [],
    });
  });
  it("joins no prose to a label that is known without it", () => {
    const lines = page(INCHES, "Size 8 10 12", "Bust 31 32 34", "Hold the tape level", "Waist", "24 25 26");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26"]],
      issues: [],
    });
  });
  it("says that figures under a row of blanks have no label", () => {
    const lines = sheet(INCHES, "Size|8|10|12", "Bust|31|32|34", "Waist|||", "|24|25|26");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34"]],
      issues: [`5 error ${doubts.noLabel()}`],
    });
  });
});

describe("joinedRows on rows whose figures can't be read", () => {
  it("doesn't give one row's figures to the label above it", () => {
    const lines = page(INCHES, "Size 8 10 12", "Height tall tall tall", "Sleeve 22 22 1/2 23");
    expect(paste(lines).tables).toEqual([["body in | 8 10 12", "sleeveLength: Sleeve | 22 22.5 23"]]);
  });
});

describe("looseRow", () => {
  it("reads feet and inches", () => {
    const lines = page(INCHES, "Size 8 10 12", `Height 5'4" 5'5" 5'6"`, "Sleeve 22 22 1/2 23");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "height: Height | 64 65 66", "sleeveLength: Sleeve | 22 22.5 23"]],
      issues: [],
    });
  });
});
