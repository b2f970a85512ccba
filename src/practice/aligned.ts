/** Cells as aligned text. */

/** Words to the left, figures to the right; a row with one cell stands by itself. */
export function aligned(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows) {
    if (isTitle(row)) continue;
    row.forEach((text, column) => (widths[column] = Math.max(widths[column] ?? 0, width(text))));
  }
  const lines = rows.map((row) => {
    if (isTitle(row)) return row[0] ?? "";
    return row.map((text, column) => pad(text, widths[column] ?? 0)).join("  ");
  });
  return lines.map((line) => line.trimEnd()).join("\n");
}

const isTitle = (row: readonly string[]) => row.slice(1).every((text) => text === "");
const isFigure = (text: string) => /^-?[\d$#.,]/.test(text) && /\d/.test(text);
const width = (text: string) => [...text].length;

function pad(text: string, to: number): string {
  const space = " ".repeat(to - width(text));
  return isFigure(text) ? space + text : text + space;
}
