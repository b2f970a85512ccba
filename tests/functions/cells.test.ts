import { beforeAll, describe, expect, test } from "vitest";
import { cellsOf, isGiven, lookUp, lookUpColumns, oneCell, plan, readCell, single } from "../../functions/cells";
import { errorValue, guarded, need, problemValue } from "../../functions/errors";
import { chartIn } from "../../functions/remember";
import { refuse, type Cell } from "../../src/index";
import { startFunctions } from "../practice/custom-functions";
import { misses } from "./call";

beforeAll(() => void startFunctions());

const message = (run: () => unknown): string => {
  try {
    return `answered ${JSON.stringify(run())}`;
  } catch (thrown) {
    expect(thrown).toBeInstanceOf(CustomFunctions.Error);
    const { code, message: text } = thrown as CustomFunctions.Error;
    return `${code} ${text}`;
  }
};

describe("readCell", () => {
  test("takes plain values as they are", () => {
    for (const cell of ["", "x", 0, 1.5, true, null]) expect(readCell(cell)).toBe(cell);
    expect(readCell(undefined)).toBe(null);
  });
  test("takes the basic value of a rich one", () => {
    expect(readCell({ type: "FormattedNumber", basicType: "Double", basicValue: 30.5 })).toBe(30.5);
    expect(readCell({ type: "String", basicType: "String", basicValue: "bust" })).toBe("bust");
    expect(readCell({ type: "Empty", basicType: "Empty", basicValue: "" })).toBe(null);
    expect(readCell({ type: "Entity", basicType: "Error", basicValue: "#VALUE!", text: "Bust" })).toBe("Bust");
  });
  test("takes errors, and what no cell holds, as errors", () => {
    expect(readCell({ type: "Error", basicValue: "#DIV/0!" })).toEqual({ error: "#DIV/0!" });
    expect(readCell(NaN)).toEqual({ error: "#NUM!" });
    expect(readCell(Symbol("x"))).toEqual({ error: "#VALUE!" });
    expect(readCell({})).toEqual({ error: "#VALUE!" });
  });
});

describe("cellsOf", () => {
  test("makes rows of whatever arrives, ragged rows filled up", () => {
    expect(cellsOf(3)).toEqual([[3]]);
    expect(cellsOf(null)).toEqual([[null]]);
    expect(cellsOf([])).toEqual([[null]]);
    expect(cellsOf([[1, 2], [3]])).toEqual([
      [1, 2],
      [3, null],
    ]);
    expect(cellsOf([1, 2])).toEqual([[1], [2]]);
  });
});

describe("oneCell", () => {
  test("refuses a range", () => {
    expect(oneCell([["x"]], "The person")).toBe("x");
    expect(message(() => guarded(() => oneCell([[1, 2]], "The person")))).toBe(
      "#VALUE! The person must be one cell here, and this is a range: choose one cell.",
    );
  });
});

describe("isGiven", () => {
  test("knows what was left out", () => {
    expect(isGiven(null)).toBe(false);
    expect(isGiven([[null, ""]])).toBe(false);
    expect(isGiven([[0]])).toBe(true);
  });
});

describe("lookUp", () => {
  const double = (cell: Cell): number =>
    cell === null || cell === "" || cell === 0
      ? need(refuse("blank", { wanted: "a number" }))
      : typeof cell === "number"
        ? cell * 2
        : need(refuse("notANumber", { text: String(cell), wanted: "a number" }));

  test("answers one cell for single cells, however they arrive", () => {
    expect(lookUp([[[4]]], double)).toBe(8);
    expect(lookUp([4], double)).toBe(8);
    expect(message(() => lookUp([null], double))).toBe("#VALUE! This is blank: a number is needed here.");
  });
  test("answers a range in its shape, each element for itself", () => {
    const error = { type: "Error", basicType: "Error", basicValue: "#REF!" };
    const found = lookUp([[[1, null, "x", error]]], double);
    expect(found[0].slice(0, 2)).toEqual([2, ""]);
    expect(found[0][2]).toBeInstanceOf(CustomFunctions.Error);
    expect(found[0][2].message).toBe('"x" is not a number.');
    expect(found[0][3]).toBe(error);
  });
  test("repeats single cells beside ranges, and says so when the blank is theirs", () => {
    const add = (one: Cell, other: Cell) =>
      other === null ? need(refuse("blank", { wanted: "b" })) : Number(one) + Number(other);
    expect(lookUp([[[1], [2]], 10], add)).toEqual([[11], [12]]);
    const blank = lookUp([[[1], [2]], null], add);
    expect(blank[0][0].message).toBe("This is blank: b is needed here.");
  });
  test("keeps a fault of ours in its own cell", () => {
    const found = lookUp([[[1], [2]]], (cell) => {
      if (cell === 1) throw new RangeError("too deep");
      return 2;
    });
    expect(found[0][0].message).toBe(
      "Unexpected trouble in this function, which is our fault and not yours (too deep).",
    );
    expect(found[1][0]).toBe(2);
  });
  test("never gives Excel a figure that it would show as 0", () => {
    expect(lookUp([[[1], [2]]], () => NaN)[0][0]).toBeInstanceOf(CustomFunctions.Error);
    expect(
      Object.is(
        lookUp([1], () => -0),
        0,
      ),
    ).toBe(true);
    expect(lookUp([1], () => null)).toBe("");
  });
});

describe("lookUpColumns", () => {
  test("lays columns beside each other and fills them up", () => {
    const column = (cell: Cell): number[] => Array.from({ length: Number(cell) }, (_, at) => at);
    expect(lookUpColumns([3], column)).toEqual([[0], [1], [2]]);
    expect(lookUpColumns([[[1, 2]]], column)).toEqual([
      [0, 0],
      ["", 1],
    ]);
  });
});

describe("plan", () => {
  test("gives empty cells for null, errors in their place, one empty cell for nothing", () => {
    const fault = { fault: refuse("errorCell", { error: "#N/A" }).problem, error: "#N/A" };
    expect(plan(() => [["a", null, fault]])).toEqual([["a", "", errorValue("#N/A")]]);
    expect(plan(() => [])).toEqual([[""]]);
  });
  test("refuses rows of different lengths", () => {
    expect(message(() => plan(() => [["a"], ["a", "b"]]))).toContain("#VALUE! Unexpected trouble");
  });
});

describe("single", () => {
  test("ends with the error that a problem stands for", () => {
    expect(single(() => "x")).toBe("x");
    expect(message(() => single(() => need(refuse("sizeNotOnChart", { size: "3x", known: "8 to 22" }))))).toBe(
      '#N/A "3x" is not a size on this chart (8 to 22).',
    );
    expect(single(() => need(refuse("errorCell", { error: "#DIV/0!" })))).toEqual(errorValue("#DIV/0!"));
  });
});

describe("guarded", () => {
  test("lets nothing out without a sentence", () => {
    expect(message(() => guarded(() => need(refuse("blank", { wanted: "a size" }))))).toBe(
      "#VALUE! This is blank: a size is needed here.",
    );
    expect(message(() => guarded(() => [][0]!["x"]))).toContain("#VALUE! Unexpected trouble in this function");
    expect(
      message(() =>
        guarded(() => {
          throw "text";
        }),
      ),
    ).toContain("(no more is known).");
  });
});

describe("problemValue", () => {
  test("is #N/A for what a range doesn't have and #VALUE! for what can't be read", () => {
    const code = (problem: Parameters<typeof problemValue>[0]) => (problemValue(problem) as CustomFunctions.Error).code;
    expect(code(refuse("unknownPattern", { text: "x", known: "y" }).problem)).toBe("#N/A");
    expect(code(refuse("unreadableLength", { text: "x" }).problem)).toBe("#VALUE!");
  });
});

describe("chartIn", () => {
  test("reads a range once, and again when a cell changes", () => {
    const first = chartIn(cellsOf(misses()));
    expect(chartIn(cellsOf(misses()))).toBe(first);
    const changed = misses();
    changed[1]![2] = 28;
    expect(chartIn(cellsOf(changed))).not.toBe(first);
    for (let at = 0; at < 8; at++) chartIn([[`other ${at}`]]);
    expect(chartIn(cellsOf(misses()))).not.toBe(first);
  });
});
