import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cents, readMoney } from "../../src/project/money";
import { salePrice } from "../../src/project/sale-price";
import { sentence } from "../../src/words";
import type { Result } from "../../src/problem";

const said = (result: Result<unknown>): string => (result.ok ? "no problem" : sentence(result.problem));

describe("cents", () => {
  it("goes to the nearest cent, half a cent upward, binary dust or not", () => {
    expect([12.95 * 0.6, 5.025, 1.005, 0.145, 0].map(cents)).toEqual([777, 503, 101, 15, 0]);
  });
  it("throws on what is no amount", () => {
    expect(() => cents(NaN)).toThrow(RangeError);
    expect(() => cents(-1)).toThrow(RangeError);
  });
});

describe("readMoney", () => {
  it("reads prices as people type them", () => {
    const typed = ["12.95", "12,95", "$12.95", "12,95 €", "US$ 5", "1,250.00", "1.250,00", "1 250,50", "1,250,000"];
    expect(typed.map((text) => readMoney(text))).toEqual(
      [12.95, 12.95, 12.95, 12.95, 5, 1250, 1250, 1250.5, 1250000].map((value) => ({ ok: true, value })),
    );
  });
  it("guesses nothing: 1,250 may be a thousand or one and a quarter", () => {
    for (const text of ["1,250", "1.250", "about 12", "12.95.1", "", "12 95", "€", "1.2.3", "9".repeat(40)])
      expect(readMoney(text).ok, text).toBe(false);
    expect(said(readMoney("about 12"))).toBe(`"about 12" can't be read as a price. Write it like 12.95.`);
  });
  it("refuses what is below zero or no number", () => {
    expect(said(readMoney(-1))).toBe("A price can't be below zero, and this is -1.");
    expect(readMoney("-1").ok || readMoney("$-5").ok || readMoney(NaN).ok || readMoney(true).ok).toBe(false);
    expect([Infinity, -Infinity, 1.8e306, 1e13].some((price) => readMoney(price).ok)).toBe(false);
    expect(["99999999999", "99,999,999,999.00"].some((price) => readMoney(price).ok)).toBe(false);
    expect(readMoney(1e10).ok && readMoney("9999999999.99").ok).toBe(true);
  });
  it("keeps every cent of the dearest there is", () => {
    expect(cents(9_999_999_999.99)).toBe(999_999_999_999);
    expect(cents(9_999_999_999.01)).toBe(999_999_999_901);
  });
  it("reads every amount of cents back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (amount) => {
        expect(readMoney((amount / 100).toFixed(2))).toEqual({ ok: true, value: amount / 100 });
      }),
    );
  });
});

describe("salePrice", () => {
  it("is the price when nothing is off", () => {
    expect(salePrice(12.95)).toEqual({ ok: true, value: 12.95 });
    expect(salePrice(12.95, null, "")).toEqual({ ok: true, value: 12.95 });
  });
  // By hand: 12.95 less 40 % is 7.77; 19.99 less a third off is 13.3933; half of 10.05 is 5.025, a tie.
  it("takes the percentage off in whole cents, half a cent upward", () => {
    expect(salePrice(12.95, 0.4)).toEqual({ ok: true, value: 7.77 });
    expect(salePrice(19.99, 0.33)).toEqual({ ok: true, value: 13.39 });
    expect(salePrice(10.05, 0.5)).toEqual({ ok: true, value: 5.03 });
    expect(salePrice(12.95, "40%")).toEqual({ ok: true, value: 7.77 });
    expect(salePrice(12.95, "0,4")).toEqual({ ok: true, value: 7.77 });
  });
  it("is the lower of the two offers, and never above the price", () => {
    expect(salePrice(12.95, 0.4, 8)).toEqual({ ok: true, value: 7.77 });
    expect(salePrice(12.95, 0.4, 6.5)).toEqual({ ok: true, value: 6.5 });
    expect(salePrice(12.95, undefined, 20)).toEqual({ ok: true, value: 12.95 });
  });
  it("takes a sale price or a percentage of 0 for an empty cell", () => {
    expect(salePrice(12.95, 0, 0)).toEqual({ ok: true, value: 12.95 });
  });
  it("knows free patterns and everything off", () => {
    expect(salePrice(0)).toEqual({ ok: true, value: 0 });
    expect(salePrice(12.95, 1)).toEqual({ ok: true, value: 0 });
  });
  it("refuses 40 for 40%, and says what to write", () => {
    expect(said(salePrice(12.95, 40))).toBe("40 would be more than the whole price off: write 40%.");
    expect(said(salePrice(12.95, "40"))).toContain("write 40%");
    expect(said(salePrice(12.95, "140%"))).toContain("140");
    expect(said(salePrice(12.95, -0.4))).toContain("below zero");
    expect(said(salePrice(12.95, "much"))).toBe(`"much" is not a percentage such as 40%.`);
  });
  it("refuses a blank price and an unreadable sale price", () => {
    for (const blank of [null, undefined, "", " "])
      expect(said(salePrice(blank))).toBe("This is blank: a price is needed here.");
    expect(said(salePrice(12, null, "soon"))).toContain(`"soon"`);
  });
  it("stays between nothing and the price, and a larger percentage never costs more", () => {
    const amount = fc.integer({ min: 0, max: 100_000 }).map((value) => value / 100);
    const share = fc.integer({ min: 0, max: 1000 }).map((value) => value / 1000);
    fc.assert(
      fc.property(amount, share, share, (price, one, other) => {
        const [less, more] = [salePrice(price, Math.max(one, other)), salePrice(price, Math.min(one, other))];
        if (!less.ok || !more.ok) throw new Error("no answer");
        expect(less.value).toBeLessThanOrEqual(more.value);
        expect(more.value).toBeLessThanOrEqual(price);
        expect(less.value).toBeGreaterThanOrEqual(0);
        expect(less.value).toBe(Number(less.value.toFixed(2)));
      }),
    );
  });
});
