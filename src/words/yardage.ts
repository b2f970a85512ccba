import type { YardageProblems } from "../problem";
import type { Sentences } from "./sentences";

const viewText = (view: string): string => (view === "" ? "" : ` for view ${view}`);

export const yardageSentences: Sentences<YardageProblems> = {
  unknownView: ({ text, known }) => `"${text}" is not a view of this table (${known}).`,
  unknownPart: ({ text, view, known }) => `This table has no ${text}${viewText(view)}. It has ${known}.`,
  unknownNap: ({ text }) => `"${text}" doesn't say which nap. Write with, without or either.`,
  napNotPrinted: ({ view, width }) =>
    `Only an amount without nap is printed${viewText(view)} on ${width}: with nap it needs more, and how much isn't said.`,
  noAmount: ({ view, width, size }) =>
    `No amount is printed${viewText(view)} on ${width} in size ${size}: choose another width or size.`,
  widthNotPrinted: ({ width, known, enough, estimateFrom }) =>
    `${width} is not printed here (${known}). ${
      enough === null
        ? `No narrower width is printed whose amount would be enough${
            estimateFrom === null ? "" : `; TRUE as the estimate works one out from the ${estimateFrom}`
          }.`
        : `The ${enough} is always enough; for an estimate write TRUE as the estimate.`
    }`,
};
