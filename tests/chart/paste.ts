import type { Figure } from "../../src/chart/model";
import { readCharts } from "../../src/chart/read-charts";

const figureText = (figure: Figure): string =>
  figure === null ? "-" : typeof figure === "number" ? String(figure) : `${figure.low}-${figure.high}`;

/**
 * A reading as short lines: each table's head ("body in | 8 10") and rows ("bust: Bust | 31.5 -"), and each issue
 * ("3:5 warning …", with its place, view and size in brackets).
 */
export function paste(text: string): { readonly tables: string[][]; readonly issues: string[] } {
  const { tables, issues } = readCharts(text);
  return {
    tables: tables.map((table) => [
      `${table.kind} ${table.unit} | ${table.sizes.join(" ")}`,
      ...(table.kind === "fabric"
        ? table.rows.map(
            ({ view, part, width, widthUnit, nap, values }) =>
              `${view || "no view"}, ${part}, ${width ?? "no width"} ${widthUnit}, ${nap ?? "nap?"} | ${values.map(figureText).join(" ")}`,
          )
        : [
            ...(table.aliases ?? []).map(({ label, sizes }) => `also ${label}: ${sizes.join(" ")}`),
            ...table.rows.map(
              ({ place, view, label, values }) =>
                `${place}${view ? ` ${view}` : ""}: ${label} | ${values.map(figureText).join(" ")}`,
            ),
          ]),
    ]),
    issues: issues.map(({ line, column, severity, place, view, size, message }) => {
      const about = [place, view, size].filter((word) => word !== undefined).join(", ");
      return `${line}${column === undefined ? "" : `:${column}`} ${severity}${about ? ` (${about})` : ""} ${message}`;
    }),
  };
}

/** Lines of a paste, cells parted by tabs where a bar stands. */
export const sheet = (...lines: string[]): string => lines.join("\n").replaceAll("|", "\t");
export const page = (...lines: string[]): string => lines.join("\n");
