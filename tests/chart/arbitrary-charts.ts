/** Charts as they might be printed, for laws: rising rows of known places under ordinary sizes. */
import fc from "fast-check";
import type { FabricTable, MeasureTable } from "../../src/chart/model";

const sizeLists = [
  ["8", "10", "12", "14"], ["XS", "S", "M", "L", "XL"], ["34", "36", "38", "40", "42"], ["00", "0", "2", "4", "6"], ["18W", "20W", "22W"],
  ["2T", "3T", "4T"], ["6-8", "10-12", "14-16", "18-20"], ["10", "12"], ["92", "98", "104", "110", "116", "122"], ["1X", "2X", "3X"],
  ["XS (4-6)", "S (8-10)", "M (12-14)"], ["3-6M", "6-9M", "9-12M"], ["6", "8", "10", "12", "14", "16", "18", "20", "22", "24"],
]; // prettier-ignore

// Labels and where in the span of their place a first figure may lie, in inches. Common practice, no source.
const labels = [
  ["Bust", "bust", 28], ["Waist", "waist", 22], ["Hip", "hip", 30], ["Back waist length", "backWaistLength", 14], ["High bust", "highBust", 27],
  ["Chest", "chest", 30], ["Upper arm", "upperArm", 9], ["Sleeve length", "sleeveLength", 20], ["Neck", "neck", 13], ["Thigh", "thigh", 18],
] as const; // prettier-ignore

const step = { in: 0.125, cm: 0.5 };

const risingRow = (
  first: number,
  count: number,
  unit: "in" | "cm",
  ranges: boolean,
): fc.Arbitrary<MeasureTable["rows"][number]["values"]> =>
  fc
    .array(fc.integer({ min: 1, max: unit === "in" ? 16 : 10 }), { minLength: count, maxLength: count })
    .map((grades) => {
      let value = unit === "in" ? first : Math.round(first * 2.54);
      return grades.map((grade) => {
        value += grade * step[unit];
        return ranges ? { low: value, high: value + step[unit] } : value;
      });
    });

export const measureTable: fc.Arbitrary<MeasureTable> = fc
  .record({
    kind: fc.constantFrom("body" as const, "finished" as const),
    unit: fc.constantFrom("in" as const, "cm" as const),
    sizes: fc.constantFrom(...sizeLists),
    chosen: fc.subarray([...labels], { minLength: 2 }),
    ranges: fc.constantFrom(false, false, false, true),
  })
  .chain(({ kind, unit, sizes, chosen, ranges }) =>
    fc.tuple(...chosen.map(([, , first]) => risingRow(first, sizes.length, unit, ranges))).map((rows) => ({
      kind,
      unit,
      sizes,
      rows: rows.map((values, index) => ({ place: chosen[index]![1], label: chosen[index]![0], values })),
    })),
  );

export const fabricTable: fc.Arbitrary<FabricTable> = fc
  .record({
    unit: fc.constantFrom("yd" as const, "m" as const),
    sizes: fc.constantFrom(...sizeLists),
    rows: fc.uniqueArray(
      fc.record({
        view: fc.constantFrom("A", "B", "C"),
        part: fc.constantFrom("main", "lining", "interfacing", "contrast"),
        wide: fc.integer({ min: 0, max: 2 }),
        nap: fc.constantFrom("with" as const, "without" as const, null),
        grades: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 10, maxLength: 10 }),
        first: fc.integer({ min: 4, max: 24 }),
      }),
      { minLength: 1, maxLength: 6, selector: ({ view, part, wide, nap }) => `${view}${part}${wide}${nap}` },
    ),
  })
  .map(({ unit, sizes, rows }) => ({
    kind: "fabric",
    unit,
    sizes,
    rows: rows.map(({ view, part, wide, nap, grades, first }) => {
      const width = (unit === "yd" ? [36, 45, 60] : [90, 115, 150])[wide]!;
      const size = unit === "yd" ? `${width}"` : `${width} cm`;
      const label = [view, part === "main" ? "" : part[0]!.toUpperCase() + part.slice(1), size, nap ? `${nap} nap` : ""]
        .filter(Boolean)
        .join(" ");
      let amount = first;
      const values = sizes.map((_, index) => {
        amount += grades[index % 10]!;
        return unit === "yd" ? amount / 8 : Number((amount * 0.1).toFixed(1));
      });
      return { view, part, label, width, widthUnit: unit === "yd" ? ("in" as const) : ("cm" as const), nap, values };
    }),
  }));
