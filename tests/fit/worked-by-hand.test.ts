/** The three examples of tests/figures/fit-worked-by-hand.json, where each step stands. */
import { describe, expect, it } from "vitest";
import hand from "../figures/fit-worked-by-hand.json";
import { blend } from "../../src/fit/blend";
import { bustAdjust } from "../../src/fit/bust-adjust";
import { cutNote } from "../../src/fit/cut-note";
import { cutSize } from "../../src/fit/cut-size";
import { easePlan } from "../../src/fit/ease-plan";
import { bodyOf, chartOf, finishedFrom, got, missesChart, settingsOf } from "./bodies";

describe("a shirt-dress with a full bust", () => {
  const { body, finishedIsChartPlus, out } = hand.shirtDress;
  const settings = settingsOf(["Frame", "", "high bust", "", ""]);
  const options = { settings, finished: finishedFrom(missesChart, finishedIsChartPlus) };
  const her = bodyOf(body);

  it("has its frame, its adjustment and its one size", () => {
    expect(got(bustAdjust(missesChart, body.bust, body.highBust))).toMatchObject({
      size: out.frame,
      adjustment: out.adjustment,
      half: out.half,
      patternCup: out.cup,
    });
    expect(got(cutSize(missesChart, her, "dress", options))).toEqual({ size: out.cut, frame: out.frame });
  });

  it("is blended at waist and hip and shortened in the back", () => {
    const rows = got(blend(missesChart, her, "dress", options));
    expect(rows.slice(0, 4)).toMatchObject(out.blend);
    expect(rows.slice(4)).toMatchObject([{ place: "backWaistLength", lengthChange: out.backWaistLength }]);
  });

  it("has the pattern's own ease at the bust", () => {
    const plan = got(easePlan(missesChart, her, "dress", options.finished, { settings }));
    const row = plan.find(({ size, place }) => size === out.frame && place === "bust");
    expect(row).toMatchObject({ ease: out.bustEase, term: out.bustTerm, enough: "enough" });
  });

  it("reads well", () => {
    expect(got(cutNote(missesChart, her, "dress", options))).toBe(
      "A blend fits better: 16 at the bust and 18 at the waist and the hip. In one piece cut size 18. The frame size by the high bust is 16; 18 is the first with enough ease: 1 1/2 inches at the waist and 2 1/2 inches at the hip. In size 16 it wants a full-bust adjustment of 2 inches, 1 inch on the half front piece. In size 18 the bust needs no adjustment. So the bust has the pattern's own 4 inches of ease. Between two sizes the closest is taken, and of two as close the larger.",
    );
  });
});

describe("a child's trousers between height and girth", () => {
  const { sizes, chart, finished, body, growth, out } = hand.childsTrousers;
  const printed = chartOf("body", "cm", sizes, chart);
  const child = bodyOf(body, "Mina");
  const options = {
    finished: chartOf("finished", "cm", sizes, finished),
    settings: settingsOf(["Growth", "child's trousers", "inside leg", growth, "cm"]),
  };

  it("are cut by the height without finished measurements, by the hip with them", () => {
    expect(got(cutSize(printed, child, "child's trousers")).size).toBe(out.withoutFinished);
    expect(got(cutSize(printed, child, "child's trousers", options))).toEqual({ size: out.cut, frame: out.frame });
  });

  it("are lengthened, with something to grow", () => {
    const rows = got(blend(printed, child, "child's trousers", options));
    expect(rows.find(({ place }) => place === "waist")?.size).toBe(out.waist);
    expect(rows.find(({ place }) => place === "insideLeg")).toMatchObject({ lengthChange: out.insideLeg });
    expect(rows.find(({ place }) => place === "insideLeg")?.note).toMatch(/4 centimetres of it to grow/);
    expect(rows.find(({ place }) => place === "height")).toMatchObject({ lengthChange: out.height });
  });

  it("say that the height isn't checked", () => {
    expect(got(cutNote(printed, child, "child's trousers", options))).toMatch(
      /The height is not checked: the finished measurements don't print it; by the body chart it is a 116\./,
    );
  });
});

describe("a man's shirt with its chest in a gap", () => {
  const { sizes, chest, neck, finishedChest, body, out } = hand.mansShirt;
  const spans = (pairs: number[][]) => pairs.map(([low, high]) => ({ low: low!, high: high! }));
  const printed = chartOf("body", "in", sizes, { chest: spans(chest), neck: spans(neck) });
  const finished = chartOf("finished", "in", sizes, { chest: finishedChest });

  it("is cut by the neck", () => {
    expect(got(cutSize(printed, bodyOf(body), "men's shirt", { finished }))).toEqual({
      size: out.cut,
      frame: out.frame,
    });
    expect(got(cutSize(printed, bodyOf(body), "men's shirt")).size).toBe(out.cut);
  });

  it("keeps chest and neck in the frame size and says what the chest is by itself", () => {
    const rows = got(blend(printed, bodyOf(body), "men's shirt", { finished }));
    expect(rows).toMatchObject([
      { place: "neck", size: out.frame, girthChange: 0 },
      { place: "chest", size: out.frame, girthChange: 0 },
    ]);
    expect(rows[1]!.note).toContain(`by itself it is an ${out.chestAlone}`);
  });
});
