/**
 * Lengths as whole steps inside the layout: every 1/64 and every 0.01 of the unit is exact. Pieces round up, cloth down,
 * so that a layout is never tighter than the pieces allow.
 */
export const STEPS = 1600;
/** Takes off binary dust before rounding: a millionth of a step. */
const DUST = 1e-6;

export const stepsUp = (value: number): number => Math.ceil(value * STEPS - DUST);
export const stepsDown = (value: number): number => Math.floor(value * STEPS + DUST);

/** Back to the caller's unit. */
export const fromSteps = (steps: number): number => steps / STEPS;
