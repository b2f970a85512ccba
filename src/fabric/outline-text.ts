import { cellText, isMissing, type Cell } from "../chart/cell";
import { readLength } from "../length";
import { answer, refuse, type Result } from "../problem";
import type { Point } from "./layout/types";

/**
 * Reads an outline as it is typed into a cell: points with a semicolon or a line end between them, each across and along
 * from the piece's own corner, "0 0; 30 1/2 0; 24 60; 0 62". A last point that repeats the first is left out. A blank cell
 * is no outline.
 *
 * @param own makes a bare number one of the wanted unit
 * @example readOutline("0 0; 30 0; 0 62", "Gore", (n) => n) //=> { ok: true, value: [{ x: 0, y: 0 }, { x: 30, y: 0 }, { x: 0, y: 62 }] }
 */
export function readOutline(
  cell: Cell,
  piece: string,
  own: (value: number) => number,
): Result<readonly Point[] | undefined> {
  if (isMissing(cell)) return answer(undefined);
  const text = typeof cell === "string" ? cell : cellText(cell);
  const points: Point[] = [];
  for (const part of text.split(/[;\n]/)) {
    if (part.trim() === "") continue;
    const numbers = readPair(part);
    if (!numbers) return refuse("badOutline", { piece, what: "text", text: part.trim().slice(0, 40) });
    points.push({ x: own(numbers[0]), y: own(numbers[1]) });
  }
  const [first, last] = [points[0], points.at(-1)];
  if (points.length > 3 && first && last && first.x === last.x && first.y === last.y) points.pop();
  return answer(points);
}

/** Two numbers; a fraction belongs to the whole number before it. */
function readPair(text: string): readonly [number, number] | undefined {
  const written = text.trim().split(/\s+/);
  const words: string[] = [];
  for (const word of written) {
    const fraction = written.length > 2 && /^\d+[/⁄]\d+$/.test(word) && /^-?\d+$/.test(words.at(-1) ?? "");
    if (fraction) words[words.length - 1] += ` ${word}`;
    else words.push(word);
  }
  if (words.length !== 2) return undefined;
  const [x, y] = words.map((word) => readLength(word));
  if (!x?.ok || !y?.ok || x.value.unit || y.value.unit) return undefined;
  return [x.value.value, y.value.value];
}

/**
 * An outline as it is typed into a cell, to a ten-thousandth.
 *
 * @example formatOutline([{ x: 0, y: 0 }, { x: 30.5, y: 0 }, { x: 0, y: 62 }]) //=> "0 0; 30.5 0; 0 62"
 */
export function formatOutline(outline: readonly Point[]): string {
  const figure = (value: number): string => String(Number(value.toFixed(4)));
  return outline.map(({ x, y }) => `${figure(x)} ${figure(y)}`).join("; ");
}
