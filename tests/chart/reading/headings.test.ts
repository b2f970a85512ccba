import { describe, expect, it } from "vitest";
import { page, paste } from "../paste";
import { isChestChart, kindOf, readHeading, unitAlone, unitsIn } from "../../../src/chart/reading/headings";

// Headings as charts print them. Common practice, no source.
describe("kindOf", () => {
  it.each([
    ["Body measurements", "body"],
    ["Size chart", "body"],
    ["Körpermaße", "body"],
    ["Mensurations", "body"],
    ["Maßtabelle", "body"],
    ["Finished garment measurements", "finished"],
    ["Garment dimensions", "finished"],
    ["Fertigmaße", "finished"],
    ["Mesures du vêtement fini", "finished"],
    ["Medidas de la prenda terminada", "finished"],
    ["Fabric required", "fabric"],
    ["Yardage", "fabric"],
    ["Stoffverbrauch", "fabric"],
    ["Métrage", "fabric"],
    ["Tissus", "fabric"],
    ["Materialbedarf", "fabric"],
    ["Finished fabric", "fabric"],
    // Two kinds name none, and advice is no table.
    ["Body and finished measurements", null],
    ["Fabric for the body", null],
    ["Suggested fabrics", null],
    ["Fabric types", null],
    ["Empfohlene Stoffe", null],
    ["Tissus conseillés", null],
    ["Bust", null],
    ["", null],
  ])("takes %j for %s", (text, kind) => {
    expect(kindOf(text)).toBe(kind);
  });
});

describe("unitsIn", () => {
  it.each([
    ["Body measurements (in)", "in"],
    ["Bust, in", "in"],
    ["Bust in", "in"],
    ["in", "in"],
    ["Inches", "in"],
    ["Body measurements in inches", "in"],
    ["Angaben in cm", "cm"],
    ["en cm", "cm"],
    ["Zentimeter", "cm"],
    ["in Zentimetern", "cm"],
    ["Metric", "cm"],
    ["Yardage", "yd"],
    ["Fabric (yd)", "yd"],
    ["Fabric (m)", "m"],
    ["Meterware in Metern", "m"],
    ['Bust "', "in"],
    // Words, and sizes.
    ["Fabric in stock here", null],
    ["in the middle", null],
    ["S M L", null],
    ["Bust", null],
  ])("reads the unit of %j as %s", (text, unit) => {
    expect(unitsIn(text)).toEqual({ unit, both: false });
  });
  it.each(["in (cm)", "in / cm", "inches / cm", "cm and inches", "yd/m"])(
    "gives none of two units in %j, and says so",
    (text) => {
      expect(unitsIn(text)).toEqual({ unit: null, both: true });
    },
  );
});

describe("unitAlone", () => {
  it.each([
    ["cm", "cm"],
    ["(cm)", "cm"],
    ["[in]", "in"],
    ["Ins.", "in"],
    ["inches:", "in"],
    ["yds", "yd"],
    ["m", "m"],
    ["M", null],
    ["5 cm", null],
    ["mm", null],
    ["cm wide", null],
    ["", null],
    ["()", null],
  ])("reads %j as %s", (text, unit) => {
    expect(unitAlone(text)).toBe(unit);
  });
});

describe("readHeading", () => {
  it("reads the kind and the unit of a short line", () => {
    expect(readHeading("## Body measurements (in) ##")).toEqual({ kind: "body", unit: "in", bothUnits: false });
    expect(readHeading("Finished measurements - in (cm)")).toEqual({ kind: "finished", unit: null, bothUnits: true });
    expect(readHeading("In centimetres")).toEqual({ kind: null, unit: "cm", bothUnits: false });
  });
  it("is none in a sentence, a long line, or a line without kind or unit", () => {
    expect(readHeading("")).toBeNull();
    expect(readHeading("***")).toBeNull();
    expect(readHeading("Bust")).toBeNull();
    expect(readHeading("We took the body measurements. Compare them.")).toBeNull();
    expect(readHeading("see the chart of all body measurements on the last page here")).toBeNull();
    expect(readHeading("all the figures here are in cm")).toBeNull();
    expect(readHeading(`Body measurements ${"x".repeat(103)}`)).toBeNull();
    expect(readHeading(`Body measurements ${"x".repeat(102)}`)?.kind).toBe("body");
  });
  it("is one in a long line that begins with words that only head a table", () => {
    expect(readHeading("Body measurements of the sizes that this pattern is printed in for you")?.kind).toBe("body");
    expect(readHeading("Fabric requirements in yards, approx.")?.kind).toBe("fabric");
    expect(readHeading("Fabric is not included. Buy it first.")).toBeNull();
  });
});

describe("isChestChart", () => {
  it.each(["Men's sizes", "Boys", "Herrengrößen", "Kinder", "CHILDREN'S body measurements", "Toddler", "Hommes"])(
    "knows %j",
    (text) => {
      expect(isChestChart(text)).toBe(true);
    },
  );
  it.each(["Misses", "Women's sizes", "Damen", "Measurements", "Femmes", "Manchester"])(
    "does not take %j for one",
    (text) => {
      expect(isChestChart(text)).toBe(false);
    },
  );
});

describe("readCharts under a line that begins with a unit's word", () => {
  // Invented figures that would do in either unit.
  it("takes the centimetres of a line of their own", () => {
    const lines = ["Body measurements", "In centimetres", "Size\t98\t104", "Wrist\t13\t13.5"];
    expect(paste(page(...lines))).toEqual({ tables: [["body cm | 98 104", "wrist: Wrist | 13 13.5"]], issues: [] });
  });
});

describe("readCharts with a name in quotation marks", () => {
  it.each(['The "Rosa" blouse', "The “Rosa” blouse", '"Rosa"'])("doesn't take the marks of %s for inches", (name) => {
    const lines = ["Body measurements (cm)", "Size\t34\t36", "Bust\t80\t84", name, "Hip\t86\t90"];
    expect(paste(page(...lines))).toEqual({
      tables: [["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]],
      issues: [],
    });
  });
});
