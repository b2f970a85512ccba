import { describe, expect, it } from "vitest";
import { refusalSentence } from "../../src/index";
import { decode, openFile, pastedText } from "../../taskpane/chart/files";
import { sparkPoints } from "../../taskpane/chart/sparkline";
import { asText, columnLetters, holds, isFormulaCell, restored, slices } from "../../taskpane/excel/cells";
import { refusalOf } from "../../taskpane/excel/refusal";
import { found, signature, typed, type HelpFunction } from "../../taskpane/help/functions";

const file = (name: string, content: string | Uint8Array<ArrayBuffer>, type = "") =>
  new File([content], name, { type });

describe("openFile", () => {
  it("reads text, whatever it was written in", async () => {
    expect(await openFile(file("a.txt", "Bust 34"))).toEqual({ ok: true, value: { kind: "text", text: "Bust 34" } });
    const utf16 = new Uint8Array([0xff, 0xfe, 0x42, 0, 0xfc, 0]);
    expect(await openFile(file("a.csv", utf16))).toEqual({ ok: true, value: { kind: "text", text: "Bü" } });
    expect(decode(new Uint8Array([0x42, 0xfc]))).toBe("Bü");
  });
  it("knows a PDF by its first letters", async () => {
    expect(await openFile(file("odd.txt", "%PDF-1.7 …"))).toMatchObject({ ok: true, value: { kind: "pdf" } });
  });
  it.each([
    ["photo.jpg", "x", "picture"],
    ["chart.xlsx", "x", "workbook"],
    ["a.bin", "a\0b", "not a text"],
    ["a.txt", "", "nothing"],
    ["a.txt", "  \n", "nothing"],
  ])("says what to do with %s", async (name, content, word) => {
    const opened = await openFile(file(name, content));
    expect(!opened.ok && opened.message).toContain(word);
  });
});

describe("pastedText", () => {
  const clipboard = (html: string, text: string, types: readonly string[] = []) => ({
    getData: (type: string) => (type === "text/html" ? html : text),
    types: [],
    files: types.map((type) => ({ type })) as unknown as FileList,
  });
  it("takes a table of a web page, else plain text", () => {
    expect(pastedText(clipboard("<table><tr><td>1</td></tr></table>", "1"))).toMatchObject({
      value: expect.stringContaining("<table>"),
    });
    expect(pastedText(clipboard("<p>Bust 34</p>", "Bust 34"))).toEqual({ ok: true, value: "Bust 34" });
  });
  it("says that a picture holds no figures, and that nothing is nothing", () => {
    const picture = pastedText(clipboard("", "", ["image/png"]));
    expect(!picture.ok && picture.message).toContain("picture");
    const nothing = pastedText(clipboard("", " "));
    expect(!nothing.ok && nothing.message).toContain("no text");
  });
});

describe("sparkPoints", () => {
  it("goes from the smallest figure at the bottom to the largest at the top, and leaves a gap", () => {
    const points = sparkPoints([1, null, 3]);
    expect(points.map(({ index }) => index)).toEqual([0, 2]);
    expect(points[0]!.y).toBeGreaterThan(points[1]!.y);
    expect(points[0]!.x).toBeLessThan(points[1]!.x);
  });
  it("takes the middle of a range, and the middle of the drawing for figures that are all the same", () => {
    const [low, range, high] = sparkPoints([1, { low: 1, high: 3 }, 3]);
    expect(range!.y).toBeCloseTo((low!.y + high!.y) / 2, 9);
    expect(new Set(sparkPoints([5, 5]).map(({ y }) => y)).size).toBe(1);
    expect(sparkPoints([null])).toEqual([]);
  });
});

describe("asText", () => {
  it("guards what Excel would read, and leaves the rest alone in cells of the text format", () => {
    expect(asText("Bust", "@")).toBe("Bust");
    expect(asText("6-12", "@")).toBe("6-12");
    expect(asText("=1+1", "@")).toBe("'=1+1");
    expect(asText("'x", "@")).toBe("''x");
    expect(asText("6-12", "General")).toBe("'6-12");
    expect(asText("", "General")).toBe("");
  });
});

describe("restored", () => {
  it("gives a formula back as a formula, and a text that looks like one as text", () => {
    expect(restored("=A1", 5, "General")).toBe("=A1");
    expect(restored("=A1", "=A1", "General")).toBe("'=A1");
    expect(isFormulaCell("=A1", "=A1")).toBe(false);
    expect(restored(7, 7, "General")).toBe(7);
  });
});

describe("holds", () => {
  it("compares what was planned with what is there", () => {
    expect(holds("05", 5)).toBe(false);
    expect(holds(0.1 + 0.2, 0.3)).toBe(true);
    expect(holds({ formula: "=1" }, "#N/A")).toBe(true);
  });
});

describe("slices", () => {
  it("cuts rows into requests that are small enough, and never a row", () => {
    expect(slices(["aaaa", "bbbb", "c"], 14)).toEqual([["aaaa", "bbbb"], ["c"]]);
    expect(slices(["a".repeat(50)], 10)).toEqual([["a".repeat(50)]]);
    expect(slices([])).toEqual([]);
  });
});

describe("columnLetters", () => {
  // Source: Excel's own columns: Z is the 26th, AA the 27th, XFD the last, the 16,384th.
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [701, "ZZ"],
    [702, "AAA"],
    [16383, "XFD"],
  ] as const)("%i is %s", (at, letters) => {
    expect(columnLetters(at)).toBe(letters);
  });
});

describe("refusalOf", () => {
  // Source: error codes of the Office JavaScript API, Office Add-ins documentation.
  it.each([
    ["AccessDenied", "protected"],
    ["InvalidOperationInCellEditMode", "cellBeingEdited"],
    ["RequestPayloadSizeLimitExceeded", "tooLarge"],
    ["ApiNotFound", "tooOld"],
    ["Conflict", "shared"],
    ["UnsupportedOperation", "unsupported"],
    ["UnsupportedSheet", "unsupported"],
    ["GeneralException", "failed"],
  ])("understands %s", (code, meaning) => {
    expect(refusalOf(Object.assign(new Error("x"), { code })).code).toBe(meaning);
  });
});

describe("refusalSentence", () => {
  it("says what Excel can't hold as one sentence, and what to do", () => {
    const refusal = refusalOf(
      Object.assign(new Error("This sheet type does not support it."), { code: "UnsupportedSheet" }),
    );
    expect(refusalSentence(refusal)).toMatch(
      /can't hold that \(This sheet type does not support it\)\. Nothing was written\./,
    );
  });
  it("says that somebody else is at work, and to wait", () =>
    expect(refusalSentence({ code: "shared", details: {} })).toMatch(/Somebody else .+ Nothing was written\. Wait/));
});

const ease: HelpFunction = {
  id: "EASE",
  name: "EASE",
  description: "Total ease: finished less body.",
  parameters: [
    { name: "finished", description: "The finished measurement." },
    { name: "body", description: "The body.", optional: true },
  ],
};
const band: HelpFunction = { ...ease, id: "EASEBAND", description: "From which ease to which a word goes." };

describe("found", () => {
  it("looks for every word everywhere, and puts names that begin with it first", () => {
    expect(found([band, ease], "less finished")).toEqual([ease]);
    expect(found([band, ease], "=SEW.EASEB")).toEqual([band]);
    expect(found([band, ease], "")).toEqual([band, ease]);
    expect(found([band, ease], "zip")).toEqual([]);
  });
});

describe("signature", () => {
  it("writes arguments with the workbook's separator", () => {
    expect(signature(ease, ";")).toBe("SEW.EASE(finished; [body])");
  });
});

describe("typed", () => {
  it("writes a formula as a workbook with decimal commas wants it, texts untouched", () => {
    expect(typed('=SEW.X(A1,0.125,"1,5 or 2.5")', ";")).toBe('=SEW.X(A1;0,125;"1,5 or 2.5")');
    expect(typed("=SEW.X(A1,0.125)", ",")).toBe("=SEW.X(A1,0.125)");
  });
});
