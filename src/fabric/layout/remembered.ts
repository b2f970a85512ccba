import { cuttingLayout } from "./cutting-layout";
import type { Cloth, CutPiece, Effort, Layout } from "./types";

/**
 * The same as `cuttingLayout`, with the last layouts kept: a workbook asks for the same one again whenever anything in it
 * changes. What counts is what is asked, not where it stands; the one not asked for longest goes first.
 *
 * @param most how many layouts are kept
 */
export function rememberedLayouts(most: number): typeof cuttingLayout {
  const known = new Map<string, Layout>();
  return (pieces: readonly CutPiece[], cloth: Cloth, effort: Effort): Layout => {
    const asked = JSON.stringify([pieces, cloth, effort]);
    const layout = known.get(asked) ?? cuttingLayout(pieces, cloth, effort);
    known.delete(asked);
    known.set(asked, layout);
    if (known.size > most) known.delete(known.keys().next().value!);
    return layout;
  };
}
