import { answer, refuse, type Result } from "../problem";

/** Figures nearer than this are the same figure: (0.1 + 0.2) * 10 must not be "a little over 3". */
export const TOLERANCE = 1e-9;

export const sameFigure = (a: number, b: number): boolean => Math.abs(a - b) <= TOLERANCE;

/** Takes off the binary dust of a product such as 3 * 0.1. Twelve digits are far finer than any tape. */
export function clean(value: number): number {
  return Number(value.toPrecision(12));
}

/**
 * A length rounded up to whole steps: what the shop cuts. Never a step too many: a length that is whole steps but for
 * binary dust stays as it is.
 *
 * @throws RangeError when the length is not a finite number
 * @example roundUp(0.1 + 0.2, 0.1) //=> { ok: true, value: 0.3 }
 */
export function roundUp(length: number, step: number): Result<number> {
  if (!Number.isFinite(length)) throw new RangeError("roundUp wants a finite length");
  if (!Number.isFinite(step) || step <= 0) return refuse("badStep", { text: String(step) });
  const steps = Math.ceil(length / step - TOLERANCE * Math.max(1, Math.abs(length / step)));
  if (!Number.isFinite(steps)) return refuse("badStep", { text: String(step) });
  return answer(clean(steps * step) + 0);
}
