/** The plain bodies of the measuring guide: closed curves, as points to draw a smooth line through. */

/** Across from the middle of the figure, and down from the top. */
export type Point = readonly [x: number, y: number];

export interface BodyOutline {
  /** Closed curves, the ones behind first. */
  readonly outlines: readonly (readonly Point[])[];
  /** Straight lines: the floor, a chair. */
  readonly ground: readonly (readonly Point[])[];
}

const mirrored = (points: readonly Point[]): readonly Point[] => points.map(([x, y]) => [-x, y]);

/** A half outline and its mirror image as one closed curve. */
const whole = (half: readonly Point[]): readonly Point[] => [...half, ...[...mirrored(half)].reverse()];

const ellipse = (x: number, y: number, across: number, down: number): readonly Point[] =>
  ([[0, -1], [0.71, -0.71], [1, 0], [0.71, 0.71], [0, 1], [-0.71, 0.71], [-1, 0], [-0.71, -0.71]] as const) // prettier-ignore
    .map(([dx, dy]) => [x + dx * across, y + dy * down]);

const HEAD = ellipse(0, 33, 15, 23);

/** Neck, trunk and legs: the right half, from the chin down the side and up the inside of the leg. */
const TRUNK = whole([
  [7.5, 50], [8, 61], [12, 67], [22, 70.5], [31, 74], [33, 82], [26, 92], [25.5, 104], [22.5, 117], [20, 134],
  [22, 150], [27, 165], [28.5, 178], [27.5, 203], [22, 235], [19.5, 256], [20, 278], [15, 320], [14, 338], [17, 347],
  [15, 350], [6, 350], [5, 338], [5, 320], [4.5, 281], [4.5, 256], [3, 220], [1.2, 192],
]); // prettier-ignore

/** The left arm, hanging a little away from the body. */
const HANGING: readonly Point[] = mirrored([
  [27, 74], [34, 76], [39, 88], [42, 112], [45, 134], [49, 158], [50, 178], [52, 190], [49, 201], [44, 197], [42, 178],
  [37, 156], [32, 132], [28.5, 110], [24, 90],
]); // prettier-ignore

/** The left arm with the elbow out and the hand on the hip. */
const BENT: readonly Point[] = mirrored([
  [27, 74], [34, 76], [41, 90], [48, 106], [54, 122], [50, 131], [38, 143], [29, 153], [22, 156], [21, 150], [27, 142],
  [35, 133], [42, 122], [35, 109], [24, 90],
]); // prettier-ignore

const FLOOR: readonly Point[] = [[-34, 350.5], [34, 350.5]]; // prettier-ignore

export const frontBody: BodyOutline = {
  outlines: [HANGING, mirrored(HANGING), TRUNK, HEAD],
  ground: [FLOOR],
};

export const backBody: BodyOutline = {
  outlines: [mirrored(HANGING), TRUNK, HEAD, BENT],
  ground: [FLOOR],
};

/** On a flat seat, looking to the right, a hand on the knee. */
export const seatedBody: BodyOutline = {
  outlines: [
    [
      [-17, 34], [-19, 44], [-25, 58], [-22, 80], [-21, 92], [-27, 110], [-27, 124], [-20, 129], [0, 129.5], [22, 129],
      [30, 133], [32, 150], [30, 172], [29, 186], [34, 189.5], [52, 189.5], [53, 186], [42, 179], [43, 160], [46, 140],
      [47, 122], [40, 112], [20, 110], [2, 108], [0, 92], [3, 72], [0, 56], [-6, 45], [-6, 34],
    ],
    ellipse(-10, 24, 12, 16),
    [
      [-14, 50], [-6, 52], [3, 78], [20, 92], [38, 104], [42, 111], [36, 113], [16, 99], [-3, 84], [-13, 62],
    ],
  ],
  ground: [
    [[-36, 130], [22, 130], [22, 134], [-36, 134], [-36, 130]],
    [[-30, 134], [-30, 190]],
    [[16, 134], [16, 190]],
    [[-42, 190], [60, 190]],
  ],
}; // prettier-ignore
