import { clean, convert, formatLength, roundUp, TOLERANCE, type LengthUnit } from "../length";
import { sentence } from "../words";
import { shopNotes, type NoStash } from "../words/project";
import { inARow } from "../words/sentences";
import type { ClothLength } from "./cloth";
import { sameWords } from "./headed-rows";
import { cents, DEAREST } from "./money";
import { shareStash } from "./share-stash";
import type { ShopRow } from "./shop-list";
import type { ShopPiece, ShopProject } from "./shop-rows";
import { widthSuffices } from "./width-suffices";

/** A project's piece, and whether every way was tried when it got it. */
interface Served {
  readonly piece: number | null;
  readonly proved: boolean;
}

/** A line for each project, in their order: cut from a stash piece, or bought. */
export function serveProjects(projects: readonly ShopProject[], pieces: readonly ShopPiece[]): ShopRow[] {
  const served: Served[] = projects.map(() => ({ piece: null, proved: true }));
  const fabrics = new Set(projects.map(({ fabric }) => sameWords(fabric)));
  fabrics.delete("");
  for (const fabric of fabrics) {
    const group = projects.flatMap((project, index) => (sameWords(project.fabric) === fabric ? [index] : []));
    const stash = pieces.flatMap((piece, index) => (sameWords(piece.fabric) === fabric ? [index] : []));
    const sharing = shareStash(
      group.map((index) => {
        const project = projects[index]!;
        return {
          needed: comparable(project.needed),
          toBuy: comparable({ value: project.toBuy, unit: project.needed.unit }),
          pieces: stash.flatMap((at, number) => (isRightCloth(pieces[at]!, project) ? [number] : [])),
        };
      }),
      stash.map((at) => comparable(pieces[at]!.length)),
    );
    group.forEach((index, at) => {
      const number = sharing.pieces[at] ?? null;
      served[index] = { piece: number === null ? null : stash[number]!, proved: sharing.proved };
    });
  }
  return projects.map((project, index) => shopRow(project, index, projects, pieces, served));
}

/** Lengths in metres, so that yards and metres meet; bare numbers, which are then all bare, as they stand. */
const comparable = ({ value, unit }: ClothLength): number => (unit ? convert(value, unit, "m") : value);

/** Wide enough; without a width nothing is known to be. Beside a width each length has its unit. */
function isRightCloth(piece: ShopPiece, project: ShopProject): boolean {
  return !!piece.width && !!project.width && widthSuffices(piece.width, project.width);
}

function shopRow(
  project: ShopProject,
  index: number,
  projects: readonly ShopProject[],
  pieces: readonly ShopPiece[],
  served: readonly Served[],
): ShopRow {
  const { fabric, widthCell: width, needed, label, price } = project;
  const row = { fabric, width, needed: needed.value };
  const { piece: number, proved } = served[index]!;
  const doubt = proved ? "" : shopNotes.notEveryWay;
  if (number === null) {
    const amount = atLeast(project.toBuy, needed.unit);
    const [cost, money] = costOf(project.toBuy, price);
    const said = shopNotes.buy({ project: label, amount }, whyNoStash(project, pieces));
    return { ...row, from: "", toBuy: project.toBuy, cost, note: inARow(said, money, doubt) };
  }
  const piece = pieces[number]!;
  const sharers = projects.filter((_, at) => served[at]!.piece === number);
  const used = sharers.reduce((sum, sharer) => sum + comparable(sharer.needed), 0);
  const rest = Math.max(0, clean(comparable(piece.length) - used));
  const { unit } = piece.length;
  const left = rest <= TOLERANCE ? shopNotes.nothingLeft : atMost(unit ? clean(convert(rest, "m", unit)) : rest, unit);
  const others = sharers.filter((sharer) => sharer !== project).map((sharer) => sharer.label);
  const amount = atLeast(needed.value, needed.unit);
  const said = shopNotes.fromStash({ project: label, amount }, others, left);
  return { ...row, from: piece.label, toBuy: 0, cost: 0, note: inARow(said, doubt) };
}

/** What a length costs in whole cents; or no cost, and why. */
function costOf(length: number, price: ShopProject["price"]): readonly [cost: number | "", why: string] {
  if (price === undefined) return ["", shopNotes.noPrice];
  if (typeof price !== "number") return ["", sentence(price)];
  const cost = length * price;
  return cost <= DEAREST ? [cents(cost) / 100, ""] : ["", shopNotes.tooDear];
}

/** A sentence shows hundredths: what is cut or bought is never said too short, what is left never too long. */
const atLeast = (value: number, unit: LengthUnit | null): string => formatLength(hundredthsUp(value), unit);
const atMost = (value: number, unit: LengthUnit | null): string => formatLength(-hundredthsUp(-value), unit);
function hundredthsUp(value: number): number {
  const rounded = roundUp(value, 0.01);
  return rounded.ok && !Number.isInteger(clean(value * 16)) ? rounded.value : value;
}

/** Why none of the stash serves a project that is bought. */
function whyNoStash(project: ShopProject, pieces: readonly ShopPiece[]): NoStash {
  if (pieces.length === 0) return "none";
  if (project.fabric === "") return "noFabric";
  const same = pieces.filter((piece) => sameWords(piece.fabric) === sameWords(project.fabric));
  if (same.length === 0) return "none";
  if (!project.width) return "noWidth";
  if (same.every((piece) => !piece.width)) return "noPieceWidth";
  const wide = same.filter((piece) => isRightCloth(piece, project));
  if (wide.length === 0) return same.some((piece) => !piece.width) ? "narrowOrNoWidth" : "narrow";
  const long = wide.some((piece) => comparable(piece.length) >= comparable(project.needed) - TOLERANCE);
  return long ? "given" : "short";
}
