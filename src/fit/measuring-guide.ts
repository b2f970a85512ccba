import { placeName } from "../chart/places";
import type { Place } from "../chart/model";

/** How far a description can be trusted. */
export type GuideStatus = "read" | "from memory" | "common practice, no source";

/** Where the tape goes for one place. */
export interface TapeGuide {
  readonly place: Place;
  /** As a sheet or a sentence names it. */
  readonly name: string;
  /** Our own words, after the standard's definition where one is named. */
  readonly where: string;
  readonly standard: string | null;
  readonly status: GuideStatus;
  /** The same word is used for other tapes too: write down which one was taken. */
  readonly otherWays: readonly string[];
}

type Row = readonly [place: Place, standard: string | null, status: GuideStatus, where: string];

/**
 * Source: EN 13402-1 (bust, chest, head, neck) and ISO 8559-1 (waist) as described on public pages (read) and in
 * Anthropometry, Apparel Sizing and Design, p. 52 (read); hip, leg, arm and height of ISO 8559-1 from memory.
 */
const GUIDE: readonly Row[] = [
  ["bust", "EN 13402-1", "read", "Level round the fullest part of the bust and under the arms, over the bra the garment is worn with, best an unpadded one. Breathe normally."],
  ["highBust", null, "common practice, no source", "Round the body high under the arms, above the bust: the tape runs over the shoulder blades and slopes up a little at the front."],
  ["underbust", null, "common practice, no source", "Level round the ribs, right under the bust."],
  ["chest", "EN 13402-1", "read", "Standing, level round the widest part of the chest: over the shoulder blades and under the arms. Breathe normally."],
  ["waist", "ISO 8559-1", "read", "Level round the body, half way between the lowest rib and the top of the hip bone."],
  ["hip", "ISO 8559-1", "from memory", "Level round the body where the seat stands out furthest."],
  ["neck", "EN 13402-1", "read", "Round the neck: 2 cm (about 3/4 in) below the Adam's apple in front, over the bone at the bottom of the neck behind."],
  ["shoulder", null, "common practice, no source", "From the side of the neck to the end of the shoulder bone, on one side."],
  ["crossBack", null, "common practice, no source", "Straight across the shoulder blades, from arm crease to arm crease."],
  ["backWaistLength", null, "common practice, no source", "Down the middle of the back, from the bone at the bottom of the neck to the waist."],
  ["frontWaistLength", null, "common practice, no source", "From the side of the neck over the fullest part of the bust down to the waist."],
  ["waistToHip", null, "common practice, no source", "At the side, from the waist down to the level where the hip was taken."],
  ["upperArm", null, "common practice, no source", "Round the fullest part of the upper arm, the arm hanging."],
  ["sleeveLength", "ISO 8559-1", "from memory", "From the end of the shoulder bone over the bent elbow to the wrist bone."],
  ["wrist", null, "common practice, no source", "Round the wrist, over the wrist bone."],
  ["thigh", null, "common practice, no source", "Level round the fullest part of the thigh, just below the seat."],
  ["knee", null, "common practice, no source", "Level round the middle of the knee, the leg straight."],
  ["calf", null, "common practice, no source", "Level round the fullest part of the calf."],
  ["crotchDepth", null, "common practice, no source", "Sitting upright on a flat chair: at the side, from the waist down to the seat of the chair."],
  ["crotchLength", null, "common practice, no source", "From the front waist between the legs to the back waist."],
  ["insideLeg", "ISO 8559-1", "from memory", "From the crotch straight down to the floor, without shoes."],
  ["outsideLeg", null, "common practice, no source", "At the side, from the waist down to the floor, without shoes."],
  ["height", "ISO 8559-1", "from memory", "Standing without shoes against a wall, from the crown of the head to the floor."],
  ["head", "EN 13402-1", "read", "Level round the widest part of the head, above the ears."],
]; // prettier-ignore

/** Three waists are in use, and two hips. The letters are those of the drawing. */
const OTHER_WAYS: Readonly<Record<Place, readonly string[]>> = {
  waist: [
    "Three waists are in use. Take the one that the pattern means, the same one for every length that begins at the waist, and write down which:",
    "a: half way between the lowest rib and the hip bone, as above;",
    "b: where a belt or a tied string settles by itself, which need not be level: the natural waist, which most sewing patterns mean (from memory);",
    "c: level with the navel, usually larger than the other two.",
  ],
  highBust: [
    "It is not the bust: both tapes go under the arms, this one above the fullness and that one over it. What lies between the two figures is the bust itself.",
  ],
  hip: [
    "Skirt patterns of a century ago take the hip 7 in below the waist for women, and the fullest part for misses and small women. Waist to hip says how far down yours was taken.",
  ],
};

/** Where each tape goes, from the top of the body down, for a measuring table and its drawing. */
export const measuringGuide: readonly TapeGuide[] = GUIDE.map(([place, standard, status, where]) => ({
  place,
  name: placeName(place),
  where,
  standard,
  status,
  otherWays: OTHER_WAYS[place] ?? [],
}));
