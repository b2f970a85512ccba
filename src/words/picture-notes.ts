/** What the drawings say in words. Figures come as text with their unit. */
import { capital, inARow } from "./sentences";

/** The whole drawing of a body on a chart; `cut` is null where no size will do. */
export const fitDescription = (frame: string, cut: string | null, places: readonly string[]): string =>
  inARow(
    `Frame size ${frame}, ${cut === null ? "no size will do in one piece" : `size to cut in one piece ${cut}`}.`,
    ...places,
  );
/** One place of it, and its ease in the size to cut where that is known; `word` is the fit word or "". */
export function placeInSize(
  name: string,
  measure: string,
  size: string,
  cut: { readonly size: string; readonly ease: string; readonly word: string } | null,
): string {
  const own = `${capital(name)} ${measure}: size ${size}`;
  if (cut === null) return `${own}.`;
  return `${own}; in size ${cut.size} ${cut.ease}${cut.word === "" ? "" : `, which is ${cut.word}`}.`;
}

/** The figures of the measuring guide. */
export const tapeViews = {
  front: "From the front",
  back: "From behind",
  seated: "Sitting, from the side",
} as const;
export const tapeDescription = (view: string, lines: readonly string[]): string =>
  `A plain body, ${view.charAt(0).toLowerCase()}${view.slice(1)}, with the tape lines ${lines.join(", ")}.`;
export const tapeLine = (mark: string, name: string): string => `${mark} ${name}`;
