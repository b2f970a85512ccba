import { sameLabel } from "../chart/size-label";
import { answer, type Result } from "../problem";
import { envelopes } from "./envelope";
import * as say from "../words/figure-notes";

/** Which size groups of a pattern to buy. */
export interface GroupsNote {
  /** The groups that hold every size of the blend. */
  readonly blend: readonly string[];
  /** The group that holds the one size to cut. */
  readonly single: string;
  readonly note: string;
}

/**
 * Which size groups a pattern must be bought in: the fewest that hold every size of the blend, and the one that the
 * single size needs. Refuses a size that no group holds, and groups that can't be read.
 *
 * @param blend the sizes of a blend, from the top down; the same size twice counts once
 * @example groupsNote(["6-12", "14-20"], ["12", "14", "16"], "16")
 * //=> { ok: true, value: { blend: ["6-12", "14-20"], single: "14-20", note: "The blend of 12, 14 and 16 needs …" } }
 */
export function groupsNote(groups: readonly string[], blend: readonly string[], cut: string): Result<GroupsNote> {
  const one = envelopes(groups, [cut]);
  if (!one.ok) return one;
  const all = envelopes(groups, blend.length === 0 ? [cut] : blend);
  if (!all.ok) return all;
  const single = one.value[0]!;
  const sizes = blend.filter((size, at) => blend.findIndex((other) => sameLabel(size, other)) === at);
  const words =
    sizes.length < 2
      ? say.inGroup(cut, single)
      : all.value.length === 1
        ? say.blendInGroup(sizes, all.value[0]!, cut, single)
        : say.blendInGroups(sizes, all.value, cut, single);
  return answer({ blend: all.value, single, note: words });
}
