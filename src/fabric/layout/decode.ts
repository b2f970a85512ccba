import { clearSkyline, coverStretch, emptySkyline, lowestStretch, putLeft, putRight, raiseStretch } from "./skyline";
import { NEVER, type Strip } from "./strip";

/**
 * How a box is chosen for the lowest stretch: the one with the most points, the first in order of several. Whole points;
 * found by trying them out on published instances.
 */
export interface Taste {
  /** Fills the stretch's width. */
  readonly fills: number;
  /** Fills it and ends level with a neighbour, for each of the two. */
  readonly fillsLevel: number;
  /** Fills it and ends at the wanted end of the cloth. */
  readonly fillsEnd: number;
  /** Ends level with a neighbour. */
  readonly level: number;
  /** Ends at the wanted end of the cloth. */
  readonly atEnd: number;
  /** Taken off when no box is narrow enough for what is left beside it. */
  readonly waste: number;
  /** Another box fills what is left beside it. */
  readonly partner: number;
  /** Ends above both neighbours. */
  readonly tower: number;
  /** Taken off when it ends below both neighbours. */
  readonly pit: number;
  /** Belongs on the fold. */
  readonly fold: number;
}

export interface Decoder {
  /** The boxes in the order they were laid, then those that did not fit below the target. */
  readonly order: Int32Array;
  /** How each place of `order` was laid: 1 when turned, and 2 for each stretch that was given up just before. */
  readonly laying: Uint8Array;
  /** Of each box, in the strip's steps. */
  readonly x: Int32Array;
  readonly y: Int32Array;
  /** Where the layout ends; NEVER when it was cut short, being no better than `best`. */
  end: number;
  /** How many boxes lie below the target. */
  laid: number;
  /**
   * Lays the boxes: the first `keep` of `order` as they were laid before, as `laying` says, then the box at `forced` (or
   * the nearest to it that fits there and isn't of the kind of the next; past the last box: the stretch is given up), then
   * by taste. Below the target first, then up to `best` if the rest may still end before it.
   *
   * @returns the area that did not fit below the target; -1 when the kept beginning can't be laid again
   */
  decode(
    order: Int32Array,
    laying: Uint8Array,
    keep: number,
    forced: number,
    target: number,
    taste: Taste,
    best: number,
  ): number;
}

/** More stretches given up in a row than are remembered can't be laid again. */
const MOST_RAISES = 127;
/** Above this many steps of width the boxes' partners aren't looked up. */
const LOOK_UP = 1 << 20;

/** A decoder for one strip; it allocates nothing while it works. */
export function makeDecoder(strip: Strip): Decoder {
  const { n, width, across, advance, end, turns, onFold, kind } = strip;
  const sky = emptySkyline(n);
  const { x: skyX, y: skyY, width: skyWidth } = sky;
  const narrowest = Int32Array.from({ length: n }, (_, i) => Math.min(across[i]!, across[n + i]!));
  const byWidth = Int32Array.from({ length: n }, (_, i) => i).sort((a, b) => narrowest[a]! - narrowest[b]! || a - b);
  /** Of each width up to the strip's: how many boxes of it are left. Index 0 takes the widths beyond. */
  const partners = new Int16Array(width < LOOK_UP ? width + 1 : 1);
  const slot = Int32Array.from(across, (wide) => (wide < partners.length ? wide : 0));
  const next = new Int32Array(n + 1);
  const gone = new Uint8Array(n);

  const put = (box: number, at: number, turned: number, target: number): void => {
    const way = turned === 1 ? n + box : box;
    const boxWidth = across[way]!;
    const from = skyY[at]!;
    const room = skyWidth[at]!;
    const level = from + advance[way]!;
    const left = at > 0 ? skyY[at - 1]! : target;
    const right = at < sky.count - 1 ? skyY[at + 1]! : target;
    const atLeft = onFold[box] === 1 || level === left || (level !== right && left >= right);
    if (from + end[way]! > decoder.end) decoder.end = from + end[way]!;
    decoder.x[box] = atLeft ? skyX[at]! : skyX[at]! + room - boxWidth;
    decoder.y[box] = from;
    gone[box] = 1;
    partners[slot[box]!]!--;
    if (turns[box] === 1) partners[slot[n + box]!]!--;
    if (boxWidth === room) coverStretch(sky, at, level);
    else if (atLeft) putLeft(sky, at, boxWidth, level);
    else putRight(sky, at, boxWidth, level);
  };

  const decoder: Decoder = {
    order: new Int32Array(n),
    laying: new Uint8Array(n),
    x: new Int32Array(n),
    y: new Int32Array(n),
    end: 0,
    laid: 0,
    decode(order, laying, keep, forced, target, taste, best) {
      const { fills, fillsLevel, fillsEnd, level, atEnd, waste, partner, tower, pit, fold } = taste;
      const { order: laidOrder, laying: laidAs } = decoder;
      clearSkyline(sky, width);
      decoder.end = 0;
      for (let i = 0; i < n; i++) {
        gone[i] = 0;
        partners[slot[i]!] = 0;
        partners[slot[n + i]!] = 0;
      }
      for (let i = 0; i < n; i++) {
        partners[slot[i]!]!++;
        if (turns[i] === 1) partners[slot[n + i]!]!++;
      }
      let laid = 0;
      for (; laid < keep; laid++) {
        const box = order[laid]!;
        const way = (laying[laid]! & 1) === 1 ? n + box : box;
        for (let raise = laying[laid]! >> 1; raise > 0; raise--) {
          if (sky.count === 1) return -1;
          raiseStretch(sky, lowestStretch(sky));
        }
        const at = lowestStretch(sky);
        if (across[way]! > skyWidth[at]! || end[way]! > target - skyY[at]! || (onFold[box] === 1 && at > 0)) return -1;
        put(box, at, way > box ? 1 : 0, target);
        laidOrder[laid] = box;
        laidAs[laid] = laying[laid]!;
      }
      // The boxes still to be laid, as a chain through the places of `order`.
      let head = keep;
      for (let i = keep; i < n; i++) next[i] = i + 1;
      let smallest = 0;
      let raised = 0;
      let missing = 0;
      let limit = target;
      for (;;) {
        while (laid < n) {
          const at = lowestStretch(sky);
          const from = skyY[at]!;
          if (from >= limit) break;
          const room = skyWidth[at]!;
          const toEnd = limit - from;
          const left = (at > 0 ? skyY[at - 1]! : target) - from;
          const right = (at < sky.count - 1 ? skyY[at + 1]! : target) - from;
          const lower = left < right ? left : right;
          const higher = left < right ? right : left;
          while (gone[byWidth[smallest]!] === 1) smallest++;
          const least = narrowest[byWidth[smallest]!]!;
          let found = -1;
          let before = -1;
          let foundTurned = 0;
          if (least <= room) {
            if (forced === n && sky.count > 1) {
              forced = -1;
              raiseStretch(sky, at);
              raised++;
              continue;
            }
            if (forced >= 0) {
              const usual = kind[order[keep]!]!;
              for (let i = head, last = -1; i < n; last = i, i = next[i]!) {
                const box = order[i]!;
                if ((onFold[box] === 1 && at > 0) || kind[box] === usual) continue;
                const straight = across[box]! <= room && end[box]! <= toEnd;
                const across2 = across[n + box]! <= room && end[n + box]! <= toEnd;
                if (!straight && !across2) continue;
                found = i;
                before = last;
                foundTurned = straight && across2 ? (i + forced) & 1 : straight ? 0 : 1;
                if (i >= forced) break;
              }
              forced = -1;
            }
            if (found < 0) {
              let most = -NEVER;
              for (let i = head, last = -1; i < n; last = i, i = next[i]!) {
                const box = order[i]!;
                const isFold = onFold[box]!;
                if (isFold === 1 && at > 0) continue;
                const ways = turns[box]!;
                for (let way = box, turn = 0; turn <= ways; turn++, way += n) {
                  const boxWidth = across[way]!;
                  if (boxWidth > room || end[way]! > toEnd) continue;
                  const rest = room - boxWidth;
                  const up = advance[way]!;
                  let points = isFold === 1 ? fold : 0;
                  if (rest === 0) {
                    points += fills;
                    if (up === left) points += fillsLevel;
                    if (up === right) points += fillsLevel;
                    if (end[way] === toEnd) points += fillsEnd;
                  } else {
                    if (up === left || up === right) points += level;
                    if (end[way] === toEnd) points += atEnd;
                    if (rest < least) points -= waste;
                    else if (rest < partners.length && partners[rest]! > (rest === boxWidth ? 1 : 0)) points += partner;
                  }
                  if (up > higher) points += tower;
                  else if (up < lower) points -= pit;
                  if (points > most) {
                    most = points;
                    found = i;
                    before = last;
                    foundTurned = turn;
                  }
                }
              }
            }
          }
          if (found < 0) {
            if (sky.count === 1) break;
            raiseStretch(sky, at);
            raised++;
            continue;
          }
          if (before < 0) head = next[found]!;
          else next[before] = next[found]!;
          laidOrder[laid] = order[found]!;
          laidAs[laid++] = foundTurned | (Math.min(raised, MOST_RAISES) << 1);
          raised = 0;
          put(order[found]!, at, foundTurned, target);
        }
        if (limit !== target) break;
        decoder.laid = laid;
        if (laid === n || target === best - 1) break;
        limit = best - 1;
        forced = -1;
        let shortest = 0;
        for (let i = head; i < n; i = next[i]!) {
          const box = order[i]!;
          missing += across[box]! * advance[box]!;
          shortest = Math.max(shortest, Math.min(end[box]!, end[n + box]!));
        }
        if (skyY[lowestStretch(sky)]! + shortest >= best) break;
      }
      if (laid < n) {
        const known = missing > 0;
        for (let i = head; i < n; i = next[i]!) {
          const box = order[i]!;
          if (!known) missing += across[box]! * advance[box]!;
          laidAs[laid] = 0;
          laidOrder[laid++] = box;
        }
        decoder.end = NEVER;
      }
      return missing;
    },
  };
  return decoder;
}
