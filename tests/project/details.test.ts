import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hasDetails, splitDetails } from "../../src/project/details";

const has = (details: string, wanted: string, all?: boolean): boolean | string => {
  const result = hasDetails(details, wanted, all);
  return result.ok ? result.value : result.problem.code;
};

describe("splitDetails", () => {
  it("splits at commas, semicolons and line ends, and nowhere else", () => {
    expect(splitDetails("Fitted, patch  pockets;collar\r\nback yoke\n")).toEqual([
      "fitted",
      "patch pockets",
      "collar",
      "back yoke",
    ]);
  });
});

describe("hasDetails", () => {
  it("finds whole words inside a listed detail", () => {
    expect(has("Fitted, patch pockets, stand collar", "pockets")).toBe(true);
    expect(has("Fitted, patch pockets, stand collar", "Patch Pockets")).toBe(true);
    expect(has("Fitted, patch pockets, stand collar", "pocket")).toBe(false);
    expect(has("pocketless", "pocket")).toBe(false);
  });
  it("doesn't put words of two details together", () => {
    expect(has("wide collar, patch pockets", "collar patch")).toBe(false);
    expect(has("patch and welt pockets", "patch pockets")).toBe(false);
  });
  it("keeps fitted apart from semi-fitted and unfitted", () => {
    expect(has("semi-fitted", "fitted")).toBe(false);
    expect(has("unfitted", "fitted")).toBe(false);
    expect(has("semi‑fitted", "Semi-fitted")).toBe(true);
  });
  it("wants one of several, or with all every one", () => {
    expect(has("fitted; collar", "collar, pockets")).toBe(true);
    expect(has("fitted; collar", "collar, pockets", true)).toBe(false);
    expect(has("fitted; collar; pockets", "collar\npockets", true)).toBe(true);
  });
  it("reads signs as words' company, not as words", () => {
    expect(has("3/4 sleeve", "3/4 sleeve")).toBe(true);
    expect(has("wrap (left over right)", "wrap left")).toBe(true);
    expect(has("hook & eye", "hook & eye")).toBe(true);
    expect(has("Bündchen", "bu\u0308ndchen")).toBe(true);
  });
  it("refuses blanks", () => {
    expect(has("", "collar")).toBe("blank");
    expect(has(" ; , ", "collar")).toBe("blank");
    expect(has("collar", " ")).toBe("blank");
  });
  it("finds every listed detail itself, and all of a list in the list", () => {
    const word = fc.constantFrom("fitted", "wrap", "patch pockets", "collar", "yoke", "semi-fitted", "long sleeve");
    fc.assert(
      fc.property(fc.uniqueArray(word, { minLength: 1 }), fc.constantFrom(", ", ";", "\n"), (list, between) => {
        expect(has(list.join(between), list.join(","), true)).toBe(true);
        for (const detail of list) expect(has(list.join(between), detail)).toBe(true);
      }),
    );
  });
  it("never throws, whatever is pasted", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), fc.string(), (a, b) => void hasDetails(a, b)));
  });
});
