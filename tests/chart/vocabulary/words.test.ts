import { describe, expect, test } from "vitest";
import { plainWords, remembered, spelledOut, trimMarks, wordSet } from "../../../src/chart/vocabulary/words";

describe("plainWords", () => {
  test.each([
    ["Back-waist LENGTH:", "back waist length"], ["backWaistLength", "back waist length"], ["BUST", "bust"],
    ["Rückenlänge", "ruckenlange"], ["Maß", "mass"], ["Długość", "dlugosc"], ["Cœur", "coeur"], ["Fu\u00ADß", "fuss"],
    ['9" below', "9 below"], ["UB", "ub"], ["size8To10", "size8to10"], ["S. Bust/Hip", "s bust hip"], ["  ", ""],
  ])("of %j are %j", (text, words) => expect(plainWords(text)).toBe(words)); // prettier-ignore
});

describe("spelledOut", () => {
  test("takes the e off a German vowel that is written out", () => {
    expect(spelledOut("hueftweite")).toBe("huftweite");
    expect(spelledOut("koerpergroesse")).toBe("korpergrosse");
    expect(spelledOut("aermellaenge")).toBe("armellange");
  });
});

describe("remembered", () => {
  const counted = () => {
    const asked: string[] = [];
    const read = remembered((text) => {
      asked.push(text);
      return text.length;
    });
    return { asked, read };
  };
  test("reads a text once, whatever is asked between", () => {
    const { asked, read } = counted();
    expect(["bust", "hip", "bust", "hip"].map(read)).toEqual([4, 3, 4, 3]);
    expect(asked).toEqual(["bust", "hip"]);
  });
  test("doesn't keep a text of more than 200 letters", () => {
    const { asked, read } = counted();
    const [kept, long] = ["x".repeat(200), "x".repeat(201)];
    expect([kept, kept, long, long].map(read)).toEqual([200, 200, 201, 201]);
    expect(asked).toEqual([kept, long, long]);
  });
  test("forgets all after a thousand texts", () => {
    const { asked, read } = counted();
    for (let at = 0; at < 1000; at++) read(`row ${at}`);
    read("row 0");
    expect(asked).toHaveLength(1000);
    read("one more");
    read("row 0");
    read("one more");
    expect(asked.slice(1000)).toEqual(["one more", "row 0"]);
  });
});

describe("wordSet", () => {
  test("holds each word once, plain, and no blank one", () => {
    expect([...wordSet(" Maß  über\n  MASS ")]).toEqual(["mass", "uber"]);
  });
});

describe("trimMarks", () => {
  test("takes marks and spaces off both ends, and none between", () => {
    expect(trimMarks(" - : Bust - front : ", "-:")).toBe("Bust - front");
    expect(trimMarks("\t* ", "*")).toBe("");
    expect(trimMarks("", "*")).toBe("");
    expect(trimMarks("Bust", "")).toBe("Bust");
  });
});
