import type { Place } from "../chart/model";

/** Places that set the frame and are never blended. Common practice, no source. */
export const FRAME_PLACES: readonly Place[] = ["neck", "shoulder", "crossBack", "highBust"];

/** From the top of the body down: the order in which a blend is drawn. */
const DOWNWARD: readonly Place[] = [
  ...["neck", "shoulder", "crossBack", "highBust", "upperChest", "bust", "chest", "underbust", "waist", "hip"],
  ...["thigh", "knee", "calf"],
];

/** Measures along the body: a pattern is lengthened or shortened by them. */
export const LENGTHS: readonly Place[] = [
  ...["backWaistLength", "frontWaistLength", "waistToHip", "sleeveLength", "crotchDepth", "crotchLength"],
  ...["backLength", "insideLeg", "outsideLeg", "height"],
];

/** Places from the top down; one that isn't known here goes last. */
export function downward(places: readonly Place[]): readonly Place[] {
  const at = (place: Place) => (DOWNWARD.includes(place) ? DOWNWARD.indexOf(place) : DOWNWARD.length);
  return [...places].sort((one, other) => at(one) - at(other));
}
