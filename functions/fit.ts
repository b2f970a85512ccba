import {
  answer,
  blend as blendRows,
  easePlan as easeRows,
  noteCutter,
  placeName,
  refuse,
  sizeCell,
  sizeCutter,
} from "../src/index";
import { plan } from "./cells";
import { need } from "./errors";
import { forBodies, isFilled, oneFitting, type FitArguments } from "./fit-arguments";

/**
 * Says which one size to cut for a body and a garment: the frame size, or a larger one where the ease is too small.
 * @customfunction CUTSIZE CUTSIZE
 * @param chart The body chart of the pattern with its headings, or the pattern index.
 * @param body The measurements, with the places beside them; for many people a row each.
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param [finished] The finished garment measurements with their headings, or the pattern index.
 * @param [person] The heading of one person, where there are several.
 * @param [pattern] The pattern's name, where the chart is the pattern index.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns The size to cut; for many bodies a column of sizes.
 */
export function cutSize(
  chart: any[][],
  body: any[][],
  garment: any[][],
  finished?: any[][],
  person?: any[][],
  pattern?: any[][],
  settings?: any[][],
): any[][] {
  const args: FitArguments = { chart, body, garment, finished, person, pattern, settings };
  return forBodies(args, (chart, garment, options) => {
    const cut = sizeCutter(chart, garment, options);
    if (!cut.ok) return cut;
    return answer((body) => {
      const size = cut.value(body);
      return size.ok ? answer(sizeCell(size.value.size)) : size;
    });
  });
}

/**
 * Says in words why that size, what was checked, what is not known, and whether a blend of sizes fits better.
 * @customfunction CUTNOTE CUTNOTE
 * @param chart The body chart of the pattern with its headings, or the pattern index.
 * @param body The measurements, with the places beside them; for many people a row each.
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param [finished] The finished garment measurements with their headings, or the pattern index.
 * @param [person] The heading of one person, where there are several.
 * @param [pattern] The pattern's name, where the chart is the pattern index.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns The note that goes with CUTSIZE; for many bodies a column of notes.
 */
export function cutNote(
  chart: any[][],
  body: any[][],
  garment: any[][],
  finished?: any[][],
  person?: any[][],
  pattern?: any[][],
  settings?: any[][],
): any[][] {
  return forBodies({ chart, body, garment, finished, person, pattern, settings }, noteCutter);
}

/**
 * Plans a blend of sizes: place, size, change in girth from the frame size, change for each seam edge, lengthen or shorten, note.
 * @customfunction BLEND BLEND
 * @param chart The body chart of the pattern with its headings, or the pattern index.
 * @param body The measurements of one person, with the places beside them.
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param [finished] The finished garment measurements with their headings, or the pattern index.
 * @param [person] The heading of one person, where there are several.
 * @param [pattern] The pattern's name, where the chart is the pattern index.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns A row for each place, from the top of the body down, then a row for each length.
 */
export function blend(
  chart: any[][],
  body: any[][],
  garment: any[][],
  finished?: any[][],
  person?: any[][],
  pattern?: any[][],
  settings?: any[][],
): any[][] {
  return plan(() => {
    const fit = oneFitting({ chart, body, garment, finished, person, pattern, settings });
    const rows = need(blendRows(fit.chart, fit.body, fit.garment, fit.options));
    return rows.map(({ place, size, girthChange, edgeChange, lengthChange, note }) => [
      placeName(place),
      size === null ? null : sizeCell(size),
      girthChange,
      edgeChange,
      lengthChange,
      note,
    ]);
  });
}

/**
 * Shows how loose each size near the frame size would be: size, place, ease, fit word, enough or tight, note.
 * @customfunction EASEPLAN EASEPLAN
 * @param chart The body chart of the pattern with its headings, or the pattern index.
 * @param body The measurements of one person, with the places beside them.
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param finished The finished garment measurements with their headings, or the pattern index.
 * @param [person] The heading of one person, where there are several.
 * @param [pattern] The pattern's name, where the chart is the pattern index.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns A row for each size and place, from two sizes below to two above the frame size.
 */
export function easePlan(
  chart: any[][],
  body: any[][],
  garment: any[][],
  finished: any[][],
  person?: any[][],
  pattern?: any[][],
  settings?: any[][],
): any[][] {
  return plan(() => {
    if (!isFilled(finished)) need(refuse("blank", { wanted: "a table of finished garment measurements" }));
    const fit = oneFitting({ chart, body, garment, finished, person, pattern, settings });
    const { finished: garments } = fit.options;
    if (!garments) return need(refuse("noTable", { pattern: String(pattern), kind: "finished measurements" }));
    const rows = need(easeRows(fit.chart, fit.body, fit.garment, garments, fit.options));
    if (rows.length === 0) need(refuse("nothingToCompare", {}));
    return rows.map(({ size, place, ease, term, enough, note }) => [
      sizeCell(size),
      placeName(place),
      ease,
      term,
      enough,
      note,
    ]);
  });
}
