import { describe, expect, test } from "vitest";
import { namesText } from "../../src/chart/cells-names";
import { columnRole, isUnitWord, unitInLabel } from "../../src/chart/cells-words";

describe("namesText", () => {
  test("lists six names at most, and says how many there are", () => {
    expect(namesText([])).toBe("none");
    expect(namesText(["Ada"])).toBe("Ada");
    expect(namesText(["Ada", "Ben", "Cleo", "Dan", "Eva", "Fay"])).toBe("Ada, Ben, Cleo, Dan, Eva, Fay");
    expect(namesText(["Ada", "Ben", "Cleo", "Dan", "Eva", "Fay", "Gus"])).toBe(
      "Ada, Ben, Cleo, Dan, Eva, Fay … 7 in all",
    );
  });
});

describe("columnRole", () => {
  // Headings as charts print them. Common practice, no source.
  test.each([
    ["Size", "label"], ["SIZE:", "label"], ["Body measurements", "label"], ["Größe", "label"], ["Taglia", "label"],
    ["View", "view"], ["Part", "part"], ["Fabric width", "width"], ["Width unit", "widthUnit"], ["With nap", "nap"],
    ["Unit.", "unit"], ["in/cm", "unit"], ["8", undefined], ["XL", undefined], ["Si:ze", undefined], ["", undefined],
  ])("of %j is %s", (heading, role) => expect(columnRole(heading)).toBe(role)); // prettier-ignore
});

describe("isUnitWord", () => {
  test("knows words that can only be a unit", () => {
    for (const word of ["in", " IN. ", "Inches", "cm", "yd", '"']) expect(isUnitWord(word)).toBe(true);
    for (const word of ["M", "m", "ft", "8", "", "Size"]) expect(isUnitWord(word)).toBe(false);
  });
});

describe("unitInLabel", () => {
  // Labels as charts print them. Common practice, no source.
  test.each([
    ["Bust (cm)", "cm"], ["Bust (in) ", "in"], ["Hip, in", "in"], ["Body measurements in inches", "in"],
    ["Height in metres", "m"], ["Sizes S to M", undefined], ["Height (m)", undefined], ["Size M.", undefined],
    ["Bust", undefined], ["Waist (in) to floor", undefined], ["Leg (in)side", undefined], ["", undefined],
    [`${"x".repeat(200)} (cm)`, undefined], [`${"x".repeat(195)} (cm)`, "cm"],
  ])("of %j is %s", (label, unit) => expect(unitInLabel(label)?.unit).toBe(unit)); // prettier-ignore
});
