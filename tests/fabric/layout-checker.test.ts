import { describe, expect, it } from "vitest";
import { cuttingLayout } from "../../src/fabric/layout/cutting-layout";
import type { Layout, Placement } from "../../src/fabric/layout/types";
import { checkLayout, linesOverlap } from "./layout-checker";

const pieces = [
  { name: "Back", width: 20, length: 60, count: 1, onFold: true },
  { name: "Front", width: 22, length: 58, count: 2 },
];
const cloth = { width: 90, layout: "folded", gap: 1, repeat: 10 } as const;

describe("checkLayout", () => {
  const good = cuttingLayout(pieces, cloth, { tries: 50 });
  const broken = (
    change: (one: Placement) => Partial<Placement>,
    name: string,
    more: Partial<Layout> = {},
  ): Layout => ({
    ...good,
    ...more,
    placements: good.placements.map((one) => (one.piece === name ? { ...one, ...change(one) } : one)),
  });
  it("passes a good layout", () => {
    expect(() => checkLayout(good, pieces, cloth)).not.toThrow();
  });
  it.each([
    ["lies clear of", broken(() => ({ x: 19 }), "Front")],
    ["lies clear of", broken(() => ({ x: 20.5 }), "Front")],
    ["on the fold", broken(() => ({ x: 1 }), "Back")],
    ["inside the width", broken(() => ({ x: 24 }), "Front")],
    ["inside the length", broken(() => ({ y: 10 }), "Front")],
    ["starts on a repeat", broken(() => ({ y: 1 }), "Front")],
    ["keeps its size", broken(() => ({ width: 21 }), "Front")],
    ["keeps its size", broken(() => ({ turned: true }), "Front")],
    ["is cut 2 times", { ...good, placements: good.placements.slice(0, 1) }],
    ["where the last piece ends", { ...good, length: 61 }],
    ["not under the bound", { ...good, lowerBound: 65 }],
    ["only what was asked", { ...good, placements: [...good.placements, { ...good.placements[0]!, piece: "Cuff" }] }],
  ])("finds what is broken: %s", (what, layout) => {
    expect(() => checkLayout(layout, pieces, cloth)).toThrow(what);
  });
});

describe("linesOverlap", () => {
  const square = (x: number, y: number, size = 10) =>
    [[x, y], [x + size, y], [x + size, y + size], [x, y + size]].map(([x, y]) => ({ x: x!, y: y! })); // prettier-ignore
  it("tells overlapping, nested and equal lines from touching ones", () => {
    expect(linesOverlap(square(0, 0), square(5, 5))).toBe(true);
    expect(linesOverlap(square(0, 0), square(2, 2, 3))).toBe(true);
    expect(linesOverlap(square(0, 0), square(0, 0))).toBe(true);
    expect(linesOverlap(square(0, 0), square(10, 0))).toBe(false);
    expect(linesOverlap(square(0, 0), square(10, 10))).toBe(false);
    expect(linesOverlap(square(0, 0), square(10.5, 0), 1)).toBe(true);
    expect(linesOverlap(square(0, 0), square(11, 0), 1)).toBe(false);
  });
});
