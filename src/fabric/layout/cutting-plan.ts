import type { Problem } from "../../problem";
import { clothProblems, fitProblems, pieceProblems, problem } from "./check";
import { checkedEffort, cuttingLayout } from "./cutting-layout";
import { layoutSearch } from "./layout-search";
import { sortPieces } from "./parts";
import { seededRandom } from "./random";
import { shareOut, type Share } from "./share-out";
import type { Effort, FabricPiece, Layout, NamedCloth } from "./types";

/** What is cut from one cloth of a plan. */
export interface PlannedCloth {
  readonly name: string;
  /** Null when nothing is cut from it. */
  readonly layout: Layout | null;
  /** What is left of her own cloth, along its length; null for cloth that is still to be bought. */
  readonly left: number | null;
}
export interface CuttingPlan {
  /** One for each cloth, in the order given. */
  readonly cloths: readonly PlannedCloth[];
  /** Pieces that no cloth has room for; empty when everything is placed. */
  readonly leftOver: readonly FabricPiece[];
  /** How many layouts were tried. */
  readonly tries: number;
  /** Why there is no plan, or what is left over; with a complete plan, what a person should know. */
  readonly problems: readonly Problem[];
}

/** Layouts tried for the question what a share of the pieces takes on a cloth. */
const QUICK = 40;

/**
 * Shares the pieces out over several cloths, hers (with a length) and such as are still to be bought, and lays each out.
 * A piece that names its fabric goes there; one that names several or none goes where it saves cloth: first nothing is
 * left over, then as little as possible is bought (by area), then as little of her own is used. All of one piece is cut
 * from one cloth, and cloths are never added together. The order in which pieces are listed changes nothing.
 *
 * @throws RangeError when the effort is not a whole number of tries, at least 1
 * @example
 * cuttingPlan([{ name: "Cuff", width: 10, length: 20, count: 2 }], [{ name: "linen", width: 60 }], { tries: 100 })
 *   .cloths[0].layout.length //=> 20
 */
export function cuttingPlan(
  pieces: readonly FabricPiece[],
  cloths: readonly NamedCloth[],
  effort: Effort,
): CuttingPlan {
  const { tries, seed } = checkedEffort(effort);
  const sorted = sortPieces(pieces);
  const choices = sorted.map((piece) => clothsFor(piece, cloths));
  const problems = planProblems(sorted, cloths, choices);
  if (problems.length > 0) {
    const none = cloths.map(({ name, length }) => ({ name, layout: null, left: length ?? null }));
    return { cloths: none, leftOver: sorted, tries: 0, problems };
  }

  let tried = 0;
  const known = new Map<string, number>();
  /** How long a share is on a cloth, by a quick look; each share is looked at once. */
  const quickLength = (cloth: number, share: readonly number[]): number => {
    const key = `${cloth}:${share.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const search = layoutSearch(
      share.map((i) => sorted[i]!),
      cloths[cloth]!,
      seed,
    );
    search.run(QUICK);
    tried += search.tries;
    const length = search.layout().length ?? Infinity;
    known.set(key, length);
    return length;
  };
  const share = shareOut(sorted, cloths, choices, {
    lengthOf: quickLength,
    random: seededRandom(seed),
    // Half of the effort goes into sharing out, half into the layouts.
    goOn: () => tried < tries / 2,
  });
  return planned(sorted, cloths, share, { tries: Math.max(1, tries - tried), seed }, tried);
}

function planned(
  pieces: readonly FabricPiece[],
  cloths: readonly NamedCloth[],
  share: Share,
  effort: Effort,
  tried: number,
): CuttingPlan {
  const used = new Set(share.filter((cloth) => cloth >= 0)).size;
  const problems: Problem[] = [];
  let tries = tried;
  const result = cloths.map((cloth, at): PlannedCloth => {
    const mine = pieces.filter((_, i) => share[i] === at);
    if (mine.length === 0) return { name: cloth.name, layout: null, left: cloth.length ?? null };
    const each = Math.max(QUICK, Math.ceil(effort.tries / used));
    const layout = cuttingLayout(mine, cloth, { ...effort, tries: each });
    tries += layout.tries;
    problems.push(...layout.problems);
    return { name: cloth.name, layout, left: cloth.length === undefined ? null : cloth.length - layout.length! };
  });
  const leftOver = pieces.filter((_, i) => share[i]! < 0);
  for (const piece of leftOver) {
    const names = clothsFor(piece, cloths).map((at) => `"${cloths[at]!.name}"`);
    const where = names.join(" or ");
    problems.unshift(problem("pieceLeftOver", { piece: piece.name, count: String(piece.count), cloths: where }));
  }
  return { cloths: result, leftOver, tries, problems };
}

/** The cloths that a piece may be cut from, wide enough or not. */
function clothsFor({ fabric }: FabricPiece, cloths: readonly NamedCloth[]): number[] {
  const wanted = fabric === undefined ? undefined : typeof fabric === "string" ? [fabric] : fabric;
  return cloths.flatMap(({ name }, at) => (!wanted || wanted.some((word) => sameName(word, name)) ? [at] : []));
}

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

function planProblems(
  pieces: readonly FabricPiece[],
  cloths: readonly NamedCloth[],
  choices: number[][],
): readonly Problem[] {
  const problems = [...cloths.flatMap(clothProblems), ...cloths.flatMap(lengthProblems), ...pieceProblems(pieces)];
  if (problems.length > 0) return problems;
  const known = cloths.map(({ name }) => `"${name}"`).join(", ") || "none";
  pieces.forEach((piece, i) => {
    const cloth = typeof piece.fabric === "string" ? piece.fabric : (piece.fabric ?? []).join(" or ");
    if (choices[i]!.length === 0) problems.push(problem("unknownCloth", { piece: piece.name, cloth, known }));
  });
  if (problems.length > 0) return problems;
  pieces.forEach((piece, i) => {
    const tooWide = choices[i]!.map((at) => fitProblems([piece], plain(cloths[at]!)));
    choices[i] = choices[i]!.filter((_, at) => tooWide[at]!.length === 0);
    if (choices[i]!.length === 0) problems.push(...tooWide.flat().slice(0, 1));
  });
  return problems;
}

/** Whether one piece is wide enough has nothing to do with the repeat. */
const plain = ({ repeat: _, ...cloth }: NamedCloth): NamedCloth => cloth;

function lengthProblems({ length, repeat }: NamedCloth): Problem[] {
  if (length === undefined) return [];
  if (!Number.isFinite(length)) return [problem("notANumber", { text: String(length), wanted: "a length of fabric" })];
  if (length < 0) return [problem("negative", { text: String(length), what: "A length of fabric" })];
  if (repeat === undefined || repeat <= length) return [];
  return [problem("repeatTooLong", { repeat: String(repeat), length: String(length) })];
}
