import { describe, expect, test } from "vitest";
import { BLANK, errorCell, formattedCell, startFunctions } from "./custom-functions";

const runtime = startFunctions();
runtime.associate("ECHO", (...args: unknown[]) => JSON.stringify(args.slice(0, -1)));
runtime.associate("FAIL", (code: string, message: string) => {
  throw new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message);
});
runtime.associate("THROW", () => {
  throw new Error("not for the reader");
});
runtime.associate("SLOW", (name: string) => {
  const end = Date.now() + 600;
  while (Date.now() < end);
  return name;
});
runtime.associate("COLUMN", (values: unknown[][]) =>
  values.map(([value]) => [
    typeof value === "number"
      ? value * 2
      : new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, `no ${String(value)}`),
  ]),
);
runtime.associate(
  "GIVE",
  (what: string) => ({ nan: [[NaN]], ragged: [[1, 2], [3]], nothing: undefined, date: [[{}]] })[what],
);

describe("startFunctions", () => {
  test("sends null for what was left out at the end", async () => {
    expect(await runtime.call("ECHO", ["a"], { parameters: 3 })).toBe('["a",null,null]');
    expect(await runtime.call("ECHO", ["a", undefined, 2])).toBe('["a",null,2]');
  });

  test("sends blank cells as null or as 0", async () => {
    const range = [
      [1, BLANK],
      [BLANK, "x"],
    ];
    expect(await runtime.call("ECHO", [range])).toBe('[[[1,null],[null,"x"]]]');
    expect(await runtime.call("ECHO", [range], { blanks: 0 })).toBe('[[[1,0],[0,"x"]]]');
  });

  test("sends error cells and formatted numbers as the objects that Excel sends", async () => {
    const [error] = JSON.parse(String(await runtime.call("ECHO", [errorCell("#DIV/0!")]))) as [object];
    expect(error).toMatchObject({ type: "Error", basicValue: "#DIV/0!" });
    const [number] = JSON.parse(String(await runtime.call("ECHO", [formattedCell(30.5, "# ?/?")]))) as [object];
    expect(number).toMatchObject({ type: "FormattedNumber", basicValue: 30.5 });
    const both = await runtime.call("ECHO", [[[errorCell("#N/A"), formattedCell(1, "0")]]]);
    expect(JSON.parse(String(both))).toMatchObject([[[{ type: "Error", basicValue: "#N/A" }, { basicValue: 1 }]]]);
  });

  test("shows messages of #VALUE! and #N/A, and no others", async () => {
    expect(await runtime.call("FAIL", ["#VALUE!", "why"])).toEqual({ error: "#VALUE!", message: "why" });
    expect(await runtime.call("FAIL", ["#N/A", "why"])).toEqual({ error: "#N/A", message: "why" });
    expect(await runtime.call("THROW", [])).toEqual({ error: "#VALUE!" });
  });

  test("keeps an error inside an array in its own cell, with its message", async () => {
    expect(await runtime.call("COLUMN", [[[1], ["x"], [3]]])).toEqual([[2], [{ error: "#N/A", message: "no x" }], [6]]);
  });

  test("rejects what no cell can hold", async () => {
    await expect(runtime.call("GIVE", ["nan"])).rejects.toThrow("null in a cell");
    await expect(runtime.call("GIVE", ["ragged"])).rejects.toThrow("not a rectangle");
    await expect(runtime.call("GIVE", ["nothing"])).rejects.toThrow("in a cell");
    await expect(runtime.call("GIVE", ["date"])).rejects.toThrow("in a cell");
  });

  test("rejects an id that no function has", async () => {
    await expect(runtime.call("NOBODY", [])).rejects.toThrow("NOBODY");
  });

  test("goes on in a later turn after the client's second for one message, on a slow machine too", async () => {
    // The client gives one message a second of calls, then sets a clock for the calls that are left.
    const calls = ["first", "second", "third"].map((name) => ({ id: "SLOW", args: [name] }));
    expect(await runtime.callMany(calls)).toEqual(["first", "second", "third"]);
  });

  test("takes 10,000 calls in one message", async () => {
    const calls = Array.from({ length: 10_000 }, (_, n) => ({ id: "COLUMN", args: [[[n]]] }));
    const answers = await runtime.callMany(calls);
    expect(answers).toHaveLength(10_000);
    expect(answers[9_999]).toEqual([[19_998]]);
  });
});
