/** Rows of body and finished measurements. */
import type { LengthUnit } from "../../length";
import { doubts } from "../../words/reading";
import { isBustOrChest, readPlace } from "../places";
import { plainWords, trimMarks } from "../vocabulary/words";
import type { Figure } from "../model";
import type { Row } from "./cell";
import { readViews, viewsBehind } from "./fabric-label";
import { convertFigure } from "./figures";
import { kindOf, unitAlone, unitsIn, type Kind } from "./headings";
import type { Header } from "./header";
import type { Doubts, MeasureRecord, Reading } from "./record";
import type { Fit } from "./rows";
import { areHeights } from "./sizes";
import { agrees, nameBlocks, ratioOf, streamsOf, textOf, tidy, type Stream } from "./streams";

export interface MeasureState {
  kind: Kind | null;
  measureKind: "body" | "finished" | null;
  unit: LengthUnit | null;
  header: Header | null;
  view: string | null;
  views: readonly string[] | "all" | null;
  chest: boolean;
  noHeadingSaid: boolean;
  /** The row above, when nothing stands between. */
  previous: Reading | null;
  found: Doubts;
}

const NOT_LENGTHS = /\b(?:weight|gewicht|poids|peso|waga|kg|kgs|lb|lbs|pounds?|cup|cups|cupgrosse)\b/;
/** Places that only a garment has. */
const GARMENT_ONLY = /^(?:hemWidth|legWidth|backLength|frontLength|skirtLength|neckToHem|waistToHem|armhole)$/;
/** Rows that are finished measurements below a heading of body measurements too. */
const FINISHED_ROW = /^\W*(?:finished|garment|fertig|fini)|[\s,(](?:finished|garment|fertige?|finie?s?)(?![\p{L}-])/iu;

/** One row as readings, a second for a second unit; empty when it was named and left out, null when it is no such row. */
export function measureReadings(row: Row, fit: Fit, label: string, state: MeasureState): Reading[] | null {
  const { found } = state;
  const header = state.header!;
  const wordy = fit.roles.get("measurement") || label;
  if (NOT_LENGTHS.test(plainWords(wordy))) {
    found.warn(row.line, doubts.notALength(label));
    return [];
  }
  const kind = kindHere(row, wordy, state);
  const previous = state.previous?.sort === "measure" && state.previous.header === header ? state.previous : null;
  const seen = placeHere(wordy, fit.trailing, kind, previous, state);
  const above = previous;
  const streams = streamsOf(fit.values, header, above, seen?.place ?? null, found);
  if (seen === null) return unlabelled(row, streams, previous, state);
  if (!seen.known) found.warn(row.line, doubts.unknownPlace(seen.place), { place: seen.place });
  const unit = rowUnit(fit, wordy, label, state);
  const records = streams.map((stream): MeasureRecord => {
    const inLengths = inBodyUnit({ ...stream, unit: stream.unit ?? unit });
    return {
      sort: "measure", kind, place: seen.place, known: seen.known, header, label: label || wordy || trimMarks(fit.trailing, "\"″”"), line: row.line,
      view: seen.views[0] ?? null, figures: inLengths.figures, cells: stream.cells, unit: inLengths.unit,
    };
  }); // prettier-ignore
  const [first] = records;
  if (
    first &&
    records.length === 1 &&
    previous?.place === seen.place &&
    previous.view === first.view &&
    previous.kind === kind
  )
    pairUnits(previous, first, unitsIn(label).unit !== null || streams[0]!.unit !== null, found);
  if (fit.doubt === "ditto") found.warn(row.line, doubts.dittoUnsure(), { place: seen.place });
  if (fit.doubt === "placed") warnPlaced(row, fit, seen.place, state);
  const role = fit.roles.get("view");
  const views = role ? viewsOf(role) : seen.views;
  return views.length ? records.flatMap((record) => views.map((view) => ({ ...record, view }))) : records;
}

function warnPlaced(row: Row, fit: Fit, place: string, state: MeasureState): void {
  const sizes = fit.values.flatMap((cell, index) =>
    cell.text === "" ? [state.header!.sizes[state.header!.columns[index]!.size]!] : [],
  );
  state.found.warn(row.line, doubts.placed(fit.label, sizes), { place, size: sizes[0]! });
}

/** The kind of a row: its own words, its heading's, or body with a warning. */
function kindHere(row: Row, label: string, state: MeasureState): "body" | "finished" {
  if (kindOf(label) === "finished" && state.kind !== "body") return "finished";
  if (FINISHED_ROW.test(label)) return "finished";
  if (state.kind === "body" || state.kind === "finished") return state.kind;
  const place = readPlace(readViews(label).rest, null);
  const isGarment = place !== null && GARMENT_ONLY.test(place);
  const isFabric = state.kind === "fabric";
  const kind = isFabric && isGarment ? "finished" : (state.measureKind ?? "body");
  if (!state.noHeadingSaid) {
    state.noHeadingSaid = true;
    state.found.warn(
      isFabric ? row.line : state.header!.line,
      isFabric ? doubts.kindGuessed(kind) : doubts.noHeading(),
    );
  }
  if (isFabric) {
    state.kind = kind;
    state.unit = null;
    state.view = null;
    state.views = null;
  }
  state.measureKind = kind;
  return kind;
}

interface Seen {
  readonly place: string;
  readonly known: boolean;
  /** None: the row is for every view. */
  readonly views: readonly string[];
}

const viewsOf = (text: string): readonly string[] => {
  const { views } = readViews(text);
  return views === "all" || /^(?:all|alle|tous|toutes)$/i.test(text) ? [] : (views ?? [text]);
};

/** The place and view of a label; null when it has no words but for a unit. */
function placeHere(
  label: string,
  trailing: string,
  kind: "body" | "finished",
  previous: MeasureRecord | null,
  state: MeasureState,
): Seen | null {
  const stateViews =
    kind === "finished" && state.views !== "all" ? (state.views ?? (state.view ? [state.view] : [])) : [];
  const plain = trimMarks(label, ":.…·_=|,;*†‡- ");
  if (plain === "" || unitAlone(plain) !== null) {
    const place = plain === "" ? readPlace(trailing, kind) : null;
    return place ? { place, known: true, views: stateViews } : null;
  }
  const { views, rest } = kind === "finished" ? readViews(plain) : { views: null, rest: plain };
  const named = views ?? (kind === "finished" ? viewsBehind(trailing) : null);
  const own = named === "all" ? [] : (named ?? stateViews);
  if (views && trimMarks(rest, ":,.- ") === "" && previous)
    return { place: previous.place, known: previous.known, views: own };
  const found = readPlace(views ? trimMarks(rest, ",:- ") : plain, kind) ?? readPlace(plain, kind);
  const translated = found ?? readPlace(trailing, kind);
  if (!translated) {
    const place = trimMarks(views ? rest : label, ":,.… ");
    // A view alone, with no row above whose place it could have.
    return place === "" ? null : { place, known: false, views: own };
  }
  const isChest = translated === "bust" && (state.chest || areHeights(state.header!.sizes)) && isBustOrChest(plain);
  return { place: isChest ? "chest" : translated, known: true, views: own };
}

/** Figures without a label: the row above in another unit, or nothing that can be used. */
function unlabelled(
  row: Row,
  streams: readonly Stream[],
  previous: MeasureRecord | null,
  state: MeasureState,
): Reading[] {
  const [stream] = streams;
  const ratio = previous && stream ? ratioOf(previous.figures, stream.figures) : null;
  const isOther =
    ratio !== null &&
    ((ratio > 2.4 && ratio < 2.7) || (ratio > 0.37 && ratio < 0.42)) &&
    // Against the unit that is printed only when every figure says so.
    (previous!.unit !== (ratio > 1 ? "cm" : "in") || areSame(previous!.figures, stream!.figures, ratio));
  const named = unitAlone(trimMarks(row.cells[0]!.text, ":. "));
  if (!previous || !stream || !(isOther || named !== null)) {
    state.found.error(row.line, doubts.noLabel());
    return [];
  }
  const record: MeasureRecord = {
    ...previous,
    line: row.line,
    figures: stream.figures,
    cells: stream.cells,
    unit: stream.unit ?? named,
  };
  pairUnits(previous, record, record.unit !== null, state.found);
  // The heading names one unit only: a row that lost its label may stand in this proportion too.
  if (named === null && stream.unit === null && state.unit !== null) state.found.warn(row.line, doubts.namelessPair());
  return [record];
}

const areSame = (above: readonly Figure[], below: readonly Figure[], ratio: number): boolean =>
  above.every((figure, index) =>
    agrees(figure, ratio > 1 ? "in" : "cm", below[index] ?? null, ratio > 1 ? "cm" : "in"),
  );

/** Two rows of one place, one above the other, in two units: the numbers tell which is which. */
function pairUnits(previous: MeasureRecord, record: MeasureRecord, isUnitSaid: boolean, found: Doubts): void {
  const ratio = ratioOf(previous.figures, record.figures);
  const isPair = ratio !== null && ((ratio > 2.3 && ratio < 2.8) || (ratio > 0.36 && ratio < 0.43));
  if (isPair && (!isUnitSaid || record.unit === previous.unit)) {
    const [first, second]: [Stream, Stream] = [{ ...previous }, { ...record, unit: null }];
    if (previous.unit === (ratio > 1 ? "cm" : "in")) first.unit = null;
    nameBlocks([first, second]);
    previous.unit = first.unit;
    record.unit = second.unit;
  }
  if (!previous.unit || !record.unit || previous.unit === record.unit) return;
  record.figures.forEach((figure, index) => {
    const above = previous.figures[index] ?? null;
    if (figure === null || above === null || agrees(above, previous.unit!, figure, record.unit!)) return;
    found.warn(record.line, doubts.unitsApart(textOf(above, previous.unit), textOf(figure, record.unit)), {
      column: record.cells[index]!.column, place: record.place, size: record.header.sizes[index]!,
    });
  }); // prettier-ignore
}

function rowUnit(fit: Fit, wordy: string, label: string, state: MeasureState): LengthUnit | null {
  const role = unitAlone(fit.roles.get("unit") ?? "");
  const own = role ?? labelUnit(wordy) ?? labelUnit(label) ?? unitAlone(fit.trailing) ?? unitsIn(fit.trailing).unit;
  const headed = state.unit ?? state.header!.unit;
  // Yards and metres above are those of cloth, unless a heading of measurements names metres.
  const isCloth = headed === "yd" || (headed === "m" && (state.kind === "fabric" || state.unit === null));
  return own ?? (isCloth ? null : headed);
}

/** The unit in a label; in "Hip 9\" below waist" the inches are no unit of the row. */
const labelUnit = (label: string): LengthUnit | null =>
  unitsIn(label.replace(/\d[½¼¾]? ?(?:["″”']{1,2}|cm|in\b|inch(?:es)?)/gi, " ")).unit;

/** Body measurements stand in inches or centimetres: metres of height and yards of hem are turned. */
function inBodyUnit(stream: Stream): Stream {
  const target = stream.unit === "m" ? "cm" : stream.unit === "yd" ? "in" : null;
  if (!target || !stream.unit) return stream;
  const from = stream.unit;
  return {
    ...stream,
    unit: target,
    figures: stream.figures.map((figure): Figure =>
      figure === null ? null : tidy(convertFigure(figure, from, target)),
    ),
  };
}
