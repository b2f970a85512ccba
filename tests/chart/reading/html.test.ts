import { describe, expect, it } from "vitest";
import { htmlRows } from "../../../src/chart/reading/html";

// A row as its line and its cells; ~ stands before a cell that another row or column began. All figures are invented.
const rows = (html: string): string[] =>
  htmlRows(html).rows.map(
    ({ line, cells }) =>
      `${line} ${cells.map((cell) => `${cell.repeated ? "~" : ""}${cell.text.replace(/\n/g, "¶")}`).join("|")}`,
  );
const table = (...lines: string[]): string => `<table>${lines.map((line) => `<tr>${line}</tr>`).join("")}</table>`;
const filled = (html: string): string[] => rows(html).filter((row) => !/^\d+ $/.test(row));

describe("htmlRows", () => {
  it("reads rows and cells, headings too, with or without end tags", () => {
    const wanted = ["1 Size|8|10", "2 Bust|31|32"];
    expect(filled(table("<th>Size</th><th>8</th><th>10</th>", "<th>Bust</th><td>31</td><td>32</td>"))).toEqual(wanted);
    expect(filled("<table><tr><td>Size<td>8<td>10<tr><td>Bust<td>31<td>32</table>")).toEqual(wanted);
    expect(filled("<table><td>Size<td>8<td>10<tr><td>Bust<td>31<td>32")).toEqual(wanted);
  });
  it("numbers columns from 1, blank cells too", () => {
    expect(htmlRows(table("<td>Bust</td><td></td><td>32</td>")).rows.flatMap(({ cells }) => cells)).toEqual([
      { text: "Bust", line: 1, column: 1 },
      { text: "", line: 1, column: 2 },
      { text: "32", line: 1, column: 3 },
    ]);
  });
  it("has a cell that spans columns stand in each of them", () => {
    expect(filled(table('<td colspan="2">Bust</td><td>31</td>', "<td>a</td><td>b</td><td>c</td>"))).toEqual([
      "1 Bust|~Bust|31",
      "2 a|b|c",
    ]);
  });
  it("has a cell that spans rows stand in each of them, and no further", () => {
    const spanning = '<td rowspan="2">A</td><td>45</td><td>2</td>';
    expect(filled(table(spanning, "<td>60</td><td>1</td>", "<td>B</td><td>45</td><td>3</td>"))).toEqual([
      "1 A|45|2",
      "2 ~A|60|1",
      "3 B|45|3",
    ]);
    expect(filled(table('<td>x</td><td rowspan="3">y</td>', "<td>1</td>", "<td>2</td>", "<td>3</td>"))).toEqual([
      "1 x|y",
      "2 1|~y",
      "3 2|~y",
      "4 3",
    ]);
    expect(filled(table('<td colspan="2" rowspan="2">A</td><td>1</td>', "<td>2</td>"))).toEqual([
      "1 A|~A|1",
      "2 ~A|~A|2",
    ]);
  });
  it.each(["0", "-3", "x", ""])("takes a span of %j for one cell", (span) => {
    expect(filled(table(`<td colspan="${span}" rowspan="${span}">A</td><td>1</td>`, "<td>B</td>"))).toEqual([
      "1 A|1",
      "2 B",
    ]);
  });
  it("cuts a span at a hundred columns", () => {
    expect(htmlRows(table('<td colspan="5000">A</td>')).rows.find(({ cells }) => cells.length)!.cells).toHaveLength(
      100,
    );
  });
  it("keeps a fraction with a raised numerator apart from its whole number, and drops a footnote's number", () => {
    expect(
      filled(table("<td>31<sup>1</sup>/2</td><td>31<sup>1</sup>⁄<sub>2</sub></td><td>Bust<sup>2</sup></td>")),
    ).toEqual(["1 31 1/2|31 1⁄2|Bust"]);
    expect(filled(table("<td>Bust<sup>*</sup></td>"))).toEqual(["1 Bust *"]);
    expect(filled(`<p>Bust<sup>1</sup></p>${table("<td>x</td>")}`)[0]).toBe("1 Bust");
  });
  it("reads nothing that isn't seen", () => {
    const unseen =
      "<script>1</script><style>2</style><template><table><tr><td>3</td></tr></table></template><noscript>4</noscript>";
    expect(
      filled(table(`<td>Bust${unseen}</td><td>31<select><option>5</option></select><svg><text>6</text></svg></td>`)),
    ).toEqual(["1 Bust|31"]);
    expect(filled(`<head><title>x</title></head>${table("<td>Bust</td>")}`)).toEqual(["1 Bust"]);
    expect(filled(table("<td>a</td></script><td>b</td>"))).toEqual(["1 a|b"]);
  });
  it("reads the lines around tables in their order, each with the number of the row below", () => {
    const html = `<h1>Body</h1><p>one<br>two</p>${table("<td>a</td>")}<div>Finished</div>${table("<td>b</td>")}<p>end</p>`;
    expect(filled(html)).toEqual(["1 Body", "1 one", "1 two", "1 a", "2 Finished", "2 b", "3 end"]);
    expect(htmlRows(html).hasTable).toBe(true);
  });
  it("parts two tables with a blank row", () => {
    expect(rows(`${table("<td>a</td>")}${table("<td>b</td>")}`).filter((row) => row !== "1 ")).toEqual([
      "1 a",
      "2 ",
      "2 b",
      "3 ",
    ]);
  });
  it("reads a caption as a row of its own", () => {
    expect(filled("<table><caption>Body (in)</caption><tr><td>a</td></tr></table>")).toEqual(["1 Body (in)", "2 a"]);
  });
  it("reads a table within a cell behind what stands before it in that cell, and goes on with the row", () => {
    const inner = table("<td>x</td>", "<td>y</td>");
    expect(filled(table(`<td>Bust ${inner}</td><td>z</td>`))).toEqual(["1 Bust", "1 x", "2 y", "3 |z"]);
  });
  it("reads cells that hold as many lines each as that many rows", () => {
    expect(filled(table("<td>Bust<br>Waist</td><td>31<br>24</td><td>32<br>25</td>"))).toEqual([
      "1 Bust|31|32",
      "1 Waist|24|25",
    ]);
    expect(filled(table("<td><p>Bust</p><p>Waist</p></td><td>31<br>24</td><td></td>"))).toEqual([
      "1 Bust|31|",
      "1 Waist|24|",
    ]);
    expect(filled(table("<td>Bust<br>Poitrine</td><td>31</td>"))).toEqual(["1 Bust¶Poitrine|31"]);
    expect(filled(table("<td>Bust<br>Poitrine</td>"))).toEqual(["1 Bust¶Poitrine"]);
  });
  it("has one space for white space, but keeps it where the page does", () => {
    expect(filled(table("<td>Back \n  waist</td><td> 31 </td>"))).toEqual(["1 Back waist|31"]);
    expect(htmlRows("<pre>Size  8  10\nBust  31  32</pre>")).toMatchObject({ hasTable: false });
    expect(htmlRows("<pre>Size  8  10\nBust  31  32</pre>").text).toContain("Size  8  10\nBust  31  32");
    expect(htmlRows("<p>Size   8</p>").text).toContain("Size 8");
  });
  it("gives the text of a page without a table, a line for each block", () => {
    const { text, hasTable, isCut } = htmlRows("<div>Size 8 10</div><p>Bust 31 32</p><ul><li>Hip 33 34</li></ul>");
    expect(text.split("\n").filter(Boolean)).toEqual(["Size 8 10", "Bust 31 32", "Hip 33 34"]);
    expect([hasTable, isCut]).toEqual([false, false]);
  });
  it("says when it stopped before the end", () => {
    expect(htmlRows(table(...Array.from({ length: 4000 }, () => "<td>1</td>"))).isCut).toBe(false);
    expect(htmlRows(table(...Array.from({ length: 4001 }, () => "<td>1</td>"))).isCut).toBe(true);
    expect(htmlRows("<div>".repeat(1001)).isCut).toBe(true);
    expect(htmlRows(table(...Array.from({ length: 700 }, () => '<td colspan="100">1</td>'))).isCut).toBe(true);
  });
});
