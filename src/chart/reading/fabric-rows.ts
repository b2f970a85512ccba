/** Rows of fabric amounts. */
import { convert, clean, type LengthUnit } from "../../length";
import { doubts } from "../../words/reading";
import type { Figure, Nap } from "../model";
import { plainWords } from "../vocabulary/words";
import type { Cell, Row } from "./cell";
import { isNotion, readFabricLabel, withBehind, type FabricLabel } from "./fabric-label";
import { isPartly } from "./fabric-sentence";
import { highOf, middle, readFigure } from "./figures";
import { unitAlone, unitsIn, type Kind } from "./headings";
import type { Header } from "./header";
import type { Doubts, FabricRecord, Reading } from "./record";
import type { Fit } from "./rows";
import { agrees, nameBlocks, ratioOf, streamsOf, textOf, type Stream } from "./streams";
import { isSameCloth, otherWidths, readWidths, type PrintedWidths } from "./widths";

export interface FabricState {
  kind: Kind | null;
  unit: LengthUnit | null;
  header: Header | null;
  views: readonly string[] | "all" | null;
  part: string | null;
  nap: Nap | null;
  widths: PrintedWidths | null;
  stars: ReadonlyMap<string, Nap>;
  previous: Reading | null;
  viewsNamed: Set<string>;
  readings: Reading[];
  found: Doubts;
}

const NAP_WORD: Readonly<Record<string, Nap>> = { with: "with", without: "without", either: "either" };

/** A row of amounts as readings, one for each unit. */
export function fabricReadings(row: Row, fit: Fit, label: string, state: FabricState): Reading[] | null {
  const { found } = state;
  const header = state.header!;
  const previous = state.previous?.sort === "fabric" && state.previous.header === header ? state.previous : null;
  // Without a label: the row above in the other unit, when the row says its unit; else it has lost its label.
  if (label === "" && state.widths === null && !isOtherNamed(fit, previous)) return null;
  if (fit.single && (isNotion(label) || isWidthText(fit.values[0]!.text) || isPartly(label))) return null;
  const front = labelOf(fit, label);
  const said = withBehind(front, fit.trailing);
  const streams = streamsOf(fit.values, header, previous, null, found);
  const naming = { ...said, widths: said.widths ?? (label === "" ? (previous?.widths ?? null) : null) };
  const isPair = isOtherUnit(streams, naming, previous);
  const widths = naming.widths ?? state.widths;
  // Views behind the figures are this row's only.
  if (front.views) state.views = front.views;
  if (said.views && said.views !== "all") said.views.forEach((view) => state.viewsNamed.add(view));
  const views = said.views ?? (isPair ? previous!.views : (state.views ?? [""]));
  const nap = napOf(row, said, isPair ? previous : null, state);
  const part = partOf(row, said, fit, { views, widths, nap, isPair }, previous, state);
  if (!said.partKnown && said.part) found.warn(row.line, doubts.unknownPart(said.part));
  const unit = unitOf(fit, label, widths, streams, isPair ? previous : null, state);
  if (fit.doubt === "placed") {
    const blank = header.columns.filter((_, index) => fit.values[index]!.text === "");
    found.warn(
      row.line,
      doubts.placed(
        label,
        blank.map((column) => header.sizes[column.size]!),
      ),
    );
  }
  if (fit.doubt === "ditto") found.warn(row.line, doubts.dittoUnsure());
  if (fit.single && header.sizes.length === 2 && !/\ball\b|alle|tou[st]|tod[ao]s|tutt/i.test(row.text))
    found.warn(row.line, doubts.single(header.sizes[1]!));
  const records = streams.map((stream): FabricRecord => {
    const inCloth = inClothUnit({ ...stream, unit: stream.unit ?? unit }, row, found);
    return { sort: "fabric", header, label: label || row.text, line: row.line, views, part, widths, nap, ...inCloth };
  });
  if (isPair && previous && records[0]) compare(previous, records[0], found);
  const others = said.widths ? otherWidths(label) : [];
  if (others.length === 0) return records;
  found.warn(row.line, doubts.twoWidths([said.widths!, ...others].map(widthText)));
  return [...records, ...others.flatMap((other) => records.map((record) => ({ ...record, widths: other })))];
}

const widthText = (width: PrintedWidths): string => (width.in !== null ? `${width.in} in` : `${width.cm} cm`);

/** `25"`: no amount of cloth, but how wide it is. */
const isWidthText = (text: string): boolean => {
  const reading = readFigure(text);
  return reading.kind === "figure" && (reading.unit === "in" || reading.unit === "cm");
};

function isOtherNamed(fit: Fit, previous: FabricRecord | null): boolean {
  const named = fit.values
    .map((cell) => readFigure(cell.text))
    .find((figure) => figure.kind === "figure" && figure.unit !== null);
  const unit =
    (named?.kind === "figure" ? named.unit : null) ?? unitAlone(fit.trailing) ?? unitAlone(fit.roles.get("unit") ?? "");
  return unit !== null && previous?.unit !== unit;
}

/** What the row says of itself: by headed columns, else by its label. */
function labelOf(fit: Fit, label: string): FabricLabel {
  const roles = fit.roles;
  if (!["view", "part", "width", "nap"].some((role) => roles.has(role as never))) return readFabricLabel(label);
  const view = roles.get("view")?.trim();
  const part = roles.get("part")?.trim();
  const width = [roles.get("width") ?? "", roles.get("widthUnit") ?? ""].join(" ").trim();
  const rest = readFabricLabel([part ?? "", width, roles.get("nap") ?? ""].join(" "));
  const whole = roles.has("width") && (roles.has("part") || roles.has("view")) ? rest : readFabricLabel(label);
  const named = view ? readFabricLabel(view) : null;
  const views = view === undefined ? whole.views : view === "" ? null : (named?.views ?? [view]);
  const nap = NAP_WORD[plainWords(roles.get("nap") ?? "")] ?? whole.nap;
  return { ...whole, views, nap, widths: whole.widths ?? (width ? readWidths(width) : null) };
}

/** Whether a row repeats the one above in the other unit: the same cloth in centimetres, or a blank label. */
function isOtherUnit(streams: readonly Stream[], said: FabricLabel, previous: FabricRecord | null): boolean {
  const [stream] = streams;
  if (!previous || !stream || said.views || said.part) return false;
  const [before, now] = [previous.widths, said.widths];
  const isCloth =
    (before?.in !== null && before?.in !== undefined && now?.cm != null && now.in === null && isSameCloth(before.in, now.cm)) ||
    (before?.cm != null && before.in === null && now?.in != null && now.cm === null && isSameCloth(now.in, before.cm)) ||
    (now !== null && before !== null && now === before) || (before?.in != null && before.in === now?.in && now.cm === null && stream.unit !== null && stream.unit !== previous.unit);
  const ratio = ratioOf(previous.figures, stream.figures);
  // A metre is 1.09 yards; amounts are rounded up.
  return isCloth && ratio !== null && ratio > 0.8 && ratio < 1.25;
} // prettier-ignore

function napOf(row: Row, said: FabricLabel, pair: FabricRecord | null, state: FabricState): Nap | null {
  if (said.nap) return said.nap;
  if (said.stars) {
    const noted = state.stars.get(said.stars);
    if (noted) return noted;
    state.found.warn(row.line, doubts.starUnknown(said.stars));
  }
  return pair?.nap ?? state.nap;
}

interface Named {
  readonly views: readonly string[] | "all";
  readonly widths: PrintedWidths | null;
  readonly nap: Nap | null;
  readonly isPair: boolean;
}

/** The part a row is for. One that names none is main, but for the second unit of a row and for a cloth main has already. */
function partOf(
  row: Row,
  said: FabricLabel,
  fit: Fit,
  named: Named,
  previous: FabricRecord | null,
  state: FabricState,
): string {
  if (said.part) return said.part;
  if (named.isPair) return previous!.part;
  if (state.part) return state.part;
  const isAfterPart = previous !== null && previous.part !== "main" && said.views === null && fit.roles.size === 0;
  if (!isAfterPart) return "main";
  const key = (record: Named | FabricRecord): string =>
    `${String(record.views)} ${record.widths?.in} ${record.widths?.cm} ${record.nap}`;
  const isTaken = state.readings.some(
    (record) =>
      record.sort === "fabric" &&
      record.part === "main" &&
      record.header === state.header &&
      key(record) === key(named),
  );
  if (isTaken) return previous.part;
  state.found.warn(row.line, doubts.partCarried(previous.part));
  return "main";
}

function unitOf(
  fit: Fit,
  label: string,
  widths: PrintedWidths | null,
  streams: readonly Stream[],
  pair: FabricRecord | null,
  state: FabricState,
): LengthUnit | null {
  const cloth = (unit: LengthUnit | null): LengthUnit | null => (unit === "yd" || unit === "m" ? unit : null);
  const role = unitAlone(fit.roles.get("unit") ?? "");
  const own = role ?? unitAlone(fit.trailing) ?? cloth(unitsIn(fit.trailing).unit) ?? cloth(unitsIn(label).unit);
  if (own) return own;
  if (pair && pair.unit && streams.length === 1) {
    const second: Stream = { unit: null, figures: streams[0]!.figures, cells: [] };
    nameBlocks([{ unit: pair.unit, figures: pair.figures, cells: [] }, second]);
    return second.unit;
  }
  if (cloth(state.unit)) return state.unit;
  if (cloth(state.header!.unit)) return state.header!.unit;
  if (state.unit === "cm" && isInCentimetres(streams)) return "cm";
  if (widths && widths.in === null && widths.cm !== null) return isInCentimetres(streams) ? "cm" : "m";
  return widths && widths.cm === null && widths.in !== null ? "yd" : null;
}

/** Amounts such as 190 and 210 are centimetres of cloth, not metres. */
const isInCentimetres = (streams: readonly Stream[]): boolean => {
  const figures = streams[0]!.figures.filter((figure) => figure !== null);
  return figures.length > 0 && figures.every((figure) => middle(figure) >= 20);
};

/** Cloth is bought in yards or metres: inches and centimetres are turned, a range is its larger end. */
function inClothUnit(
  stream: Stream,
  row: Row,
  found: Doubts,
): { unit: LengthUnit | null; figures: Figure[]; cells: readonly Cell[] } {
  const from = stream.unit;
  const target: LengthUnit | null = from === "in" ? "yd" : from === "cm" ? "m" : from;
  if (from !== null && target !== from) found.warn(row.line, doubts.converted(from, target!));
  const figures = stream.figures.map((figure) => {
    const amount = highOf(figure);
    return amount === null || from === null || target === null || target === from
      ? amount
      : clean(convert(amount, from, target));
  });
  return { unit: target, figures, cells: stream.cells };
}

function compare(previous: FabricRecord, record: FabricRecord, found: Doubts): void {
  if (!previous.unit || !record.unit || previous.unit === record.unit) return;
  record.figures.forEach((figure, index) => {
    const above = previous.figures[index] ?? null;
    if (figure === null || above === null || agrees(above, previous.unit!, figure, record.unit!)) return;
    found.warn(record.line, doubts.unitsApart(textOf(above, previous.unit), textOf(figure, record.unit)), {
      column: record.cells[index]!.column, size: record.header.sizes[index]!,
    });
  });
} // prettier-ignore
