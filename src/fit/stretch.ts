import { formatLength } from "../length/format";
import { TOLERANCE } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";

/** A stretch above this is a percentage typed without its sign: the widest knits stretch to about twice their length. */
const MOST = 5;

/**
 * How far a knit stretches, as a fraction: from 4 in to 5 in is 0.25 (25 %). Both in one unit, measured on the cloth.
 * Refuses a stretched length below the one at rest, and lengths of zero or less.
 *
 * Source: stretch percentage of knits, two sewing-education pages, 2022 and undated (read): (stretched - rest) / rest.
 *
 * @example stretch(4, 5) //=> { ok: true, value: 0.25 }
 */
export function stretch(rest: number, stretched: number): Result<number> {
  if (!Number.isFinite(rest) || !Number.isFinite(stretched))
    return refuse("notANumber", {
      text: String(Number.isFinite(rest) ? stretched : rest),
      wanted: "a length of cloth",
    });
  if (rest <= 0) return refuse("notAboveZero", { text: formatLength(rest, null), what: "The length at rest" });
  if (stretched < rest - TOLERANCE)
    return refuse("stretchedShorter", { rest: formatLength(rest, null), stretched: formatLength(stretched, null) });
  return answer(Math.max(0, (stretched - rest) / rest));
}

/**
 * Whether a knit stretches enough for what the pattern asks, both as fractions; equal is enough. The size stays the
 * pattern's own either way: a cloth that stretches too little wants another pattern, not another size.
 * Refuses a fraction below zero or above 5 (25 typed for 25 %).
 *
 * Common practice, no source; classes of stretch vary by author and are left to her.
 *
 * @example knitCheck(0.25, 0.25) //=> { ok: true, value: true }
 */
export function knitCheck(own: number, required: number): Result<boolean> {
  for (const share of [own, required])
    if (!Number.isFinite(share) || share < 0 || share > MOST) return refuse("badStretch", { text: String(share) });
  return answer(own >= required - TOLERANCE);
}
