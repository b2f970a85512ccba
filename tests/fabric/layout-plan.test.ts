import { describe, expect, it } from "vitest";
import type { CutPiece, Layout, Placement } from "../../src/fabric/layout/types";
import { layoutPlanRows } from "../../src/fabric/layout-plan";

const lies = (piece: string, more: Partial<Placement> = {}): Placement => ({
  piece, layer: "single", x: 0, y: 0, width: 10, length: 20, turned: false, onFold: false, ...more,
}); // prettier-ignore
const layout = (placements: Placement[], more: Partial<Layout> = {}): Layout => ({
  length: 90, lowerBound: 72, proved: false, by: "boxes", placements, tries: 2000, problems: [], ...more,
}); // prettier-ignore
const cut = (name: string, count: number): CutPiece => ({ name, width: 10, length: 20, count });
const notes = (whole: Layout, pieces: CutPiece[], unit: "in" | "cm" = "in", fabric = "") =>
  layoutPlanRows(whole, pieces, unit, fabric).map((row) => row[7]);

describe("layoutPlanRows", () => {
  // 90 in are 2 1/2 yd, 72 in are 2 yd.
  it("gives each piece where it lies, and first what the whole takes", () => {
    const whole = layout([lies("Front"), lies("Cuff", { x: 10.5, y: 2, width: 8, length: 4, turned: true })]);
    expect(layoutPlanRows(whole, [cut("Front", 1), cut("Cuff", 1)], "in")).toEqual([
      ["Front", "single", 0, 0, 10, 20, "", "By boxes: 2 1/2 yd of fabric; no layout by boxes takes less than 2 yd (2000 tried)."],
      ["Cuff", "single", 10.5, 2, 8, 4, "yes", ""],
    ]); // prettier-ignore
    expect(layoutPlanRows(layout([]), [], "in")).toEqual([]);
  });

  it("speaks in metres of centimetres, of outlines and of what is proved", () => {
    const one = [lies("Front")];
    expect(notes(layout(one, { length: 145, lowerBound: 120, by: "outlines" }), [cut("Front", 1)], "cm")).toEqual([
      "By outlines: 1.45 m of fabric; no layout takes less than 1.2 m (2000 tried).",
    ]);
    expect(notes(layout(one, { proved: true }), [cut("Front", 1)])).toEqual([
      "By boxes: 2 1/2 yd of fabric, the least that is possible by boxes.",
    ]);
    expect(notes(layout(one, { proved: true, by: "outlines" }), [cut("Front", 1)])).toEqual([
      "By outlines: 2 1/2 yd of fabric, the least that is possible.",
    ]);
  });

  it("adds what a person should know of the whole, and names the cloth in every note", () => {
    const fewer = { code: "fewerTries", details: { pieces: "400", tries: "50" } } as const;
    expect(
      notes(
        layout([lies("Front"), lies("Cuff")], { proved: true, problems: [fewer] }),
        [cut("Front", 1)],
        "in",
        "Linen",
      ),
    ).toEqual([
      "Linen: By boxes: 2 1/2 yd of fabric, the least that is possible by boxes. 400 pieces are a lot: only 50 layouts were tried, so a shorter one may well be found by hand.",
      "Linen",
    ]);
  });

  it("says how each piece lies on folded cloth: on the fold, through both layers, or opened", () => {
    const folded = { layer: "folded" } as const;
    const whole = layout(
      [lies("Back", { ...folded, onFold: true }), lies("Front", { ...folded, x: 10 }), lies("Sash", { y: 20 })],
      { proved: true },
    );
    expect(notes(whole, [cut("Back", 1), cut("Front", 2), cut("Sash", 1)])).toEqual([
      "By boxes: 2 1/2 yd of fabric, the least that is possible by boxes. On the fold.",
      "Through both layers.",
      "On the opened fabric.",
    ]);
  });

  // Three cuffs: two cuts through both layers make four, so one is left over, the last.
  it("says which cut through both layers leaves one over", () => {
    const folded = { layer: "folded" } as const;
    const pair = lies("Cuff", { ...folded, y: 1 });
    const last = lies("Cuff", { ...folded, y: 5 });
    const words = (placements: Placement[], pieces: CutPiece[]) =>
      notes(layout([lies("Front", folded), ...placements]), [cut("Front", 2), ...pieces]).slice(1);
    const [both, odd] = ["Through both layers.", "Through both layers, one of which is left over."];
    expect(words([pair, last], [cut("Cuff", 3)])).toEqual([both, odd]);
    expect(words([pair, last], [cut("Cuff", 4)])).toEqual([both, both]);
    // One through both layers and one opened are three; two rows of one name count together.
    expect(words([pair, lies("Cuff", { y: 9 })], [cut("Cuff", 3)])).toEqual([both, "On the opened fabric."]);
    expect(words([pair, last], [cut("Cuff", 2), cut("Cuff", 2)])).toEqual([both, both]);
    expect(words([pair], [cut("Cuff", 1)])).toEqual([odd]);
    // What lies on the fold is whole, no pair.
    expect(words([lies("Yoke", { ...folded, onFold: true })], [cut("Yoke", 1)])).toEqual(["On the fold."]);
  });
});
