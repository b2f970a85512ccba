/** Charts written in the layouts that people paste. */
import type { FabricTable, Figure, MeasureTable } from "../../src/chart/model";

export type Table = MeasureTable | FabricTable;
export type Cells = readonly (readonly string[])[];
export type Join = (cells: Cells) => string;

const eighths = (value: number, glyphs: boolean, hyphen = false): string => {
  const whole = Math.floor(value);
  const parts = Math.round((value - whole) * 8);
  const fraction = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"][parts]!;
  const glyph = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"][parts]!;
  if (!parts) return String(whole);
  if (glyphs) return (whole || "") + glyph;
  return whole ? `${whole}${hyphen ? "-" : " "}${fraction}` : fraction;
};

export type Numbers = "spaced" | "glyphs" | "hyphen" | "decimal" | "comma";
export function figureText(figure: Figure, unit: string, numbers: Numbers): string {
  if (figure === null) return "–";
  if (typeof figure !== "number")
    return `${figureText(figure.low, unit, numbers)}-${figureText(figure.high, unit, numbers)}`;
  const isImperial = unit === "in" || unit === "yd";
  if (isImperial && (numbers === "spaced" || numbers === "glyphs" || numbers === "hyphen"))
    return eighths(figure, numbers === "glyphs", numbers === "hyphen");
  return numbers === "comma" ? String(figure).replace(".", ",") : String(figure);
}

/** A table as cells, a row of sizes first. */
export function cellsOf(table: Table, numbers: Numbers): Cells {
  const rows = table.rows.map((row) => [
    row.label,
    ...row.values.map((value) => figureText(value, table.unit, numbers)),
  ]);
  return [["Size", ...table.sizes], ...rows];
}

export const turned = (cells: Cells): Cells => cells[0]!.map((_, column) => cells.map((row) => row[column]!));

const widths = (cells: Cells): number[] => {
  const columns = Math.max(...cells.map((row) => row.length));
  return Array.from({ length: columns }, (_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
};

export const joins: Readonly<Record<string, Join>> = {
  tabs: (cells) => cells.map((row) => row.join("\t")).join("\n"),
  semicolons: (cells) => cells.map((row) => row.join(";")).join("\n"),
  quoted: (cells) => cells.map((row) => row.map((cell) => `"${cell.replace(/"/g, '""')}"`).join(",")).join("\n"),
  pipes: (cells) => cells.map((row) => `| ${row.join(" | ")} |`).join("\n"),
  markdown: (cells) => {
    const [head, ...rows] = cells.map((row) => `| ${row.join(" | ")} |`);
    return [head, `|${cells[0]!.map(() => "---").join("|")}|`, ...rows].join("\n");
  },
  left: (cells) => {
    const wide = widths(cells);
    return cells
      .map((row) =>
        row
          .map((cell, column) => cell.padEnd(wide[column]! + 3))
          .join("")
          .trimEnd(),
      )
      .join("\n");
  },
  right: (cells) => {
    const wide = widths(cells);
    return cells
      .map((row) =>
        row.map((cell, column) => (column ? cell.padStart(wide[column]! + 3) : cell.padEnd(wide[0]!))).join(""),
      )
      .join("\n");
  },
  spaces: (cells) => cells.map((row) => row.join(" ")).join("\n"),
  nbsp: (cells) => cells.map((row) => row.join("\u00A0\u00A0")).join("\r\n"),
  dots: (cells) => cells.map(([label, ...rest]) => `${label} ........ ${rest.join("  ")}`).join("\n"),
  colons: (cells) => cells.map(([label, ...rest]) => `${label}: ${rest.join(" ")}`).join("\n"),
  html: (cells) =>
    `<table>${cells.map((row) => `<tr>${row.map((cell) => `<td>${cell.replace(/"/g, "&quot;")}</td>`).join("")}</tr>`).join("\n")}</table>`,
  clipboard: (cells) =>
    `<html><body><!--StartFragment--><table border=0><colgroup><col width=64></colgroup>${cells.map((row) => `<tr height=20>${row.map((cell, column) => (column ? `<td align=right><span style='color:black'>${cell}</span></td>` : `<th scope="row"><b>${cell}</b></th>`)).join("\n")}</tr>`).join("")}</table><!--EndFragment--></body></html>`,
  onePerLine: (cells) => cells.map((row) => row.join("\n")).join("\n"),
};

/** The heading over a table. */
export function headingOf(table: Table): string {
  const words = { body: "Body measurements", finished: "Finished garment measurements", fabric: "Fabric required" };
  const units = { in: "inches", cm: "cm", yd: "yards", m: "metres" };
  return `${words[table.kind]} (${units[table.unit]})`;
}

export function written(table: Table, join: Join, numbers: Numbers, isTurned = false): string {
  const cells = cellsOf(table, numbers);
  const text = join(isTurned ? turned(cells) : cells);
  return text.startsWith("<")
    ? `<p>${headingOf(table)}</p>${text}<!--StartFragment-->`
    : `${headingOf(table)}\n${text}`;
}
