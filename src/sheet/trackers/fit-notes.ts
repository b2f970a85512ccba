import type { Tracker } from "../tracker";

/** What was learnt, for the next time. */
export const fitNotes: Tracker = {
  key: "fitNotes",
  sheet: "Fit notes",
  table: "FitNotes",
  intro: ["What was cut, what was changed and how it turned out: the next one starts from here."],
  totals: [],
  columns: [
    { heading: "Date", format: "date", width: 12 },
    { heading: "Pattern", format: "text", width: 22 },
    { heading: "Person", format: "text", width: 12 },
    { heading: "Size cut", format: "text", note: "A size, or a blend such as 12-16.", width: 11 },
    { heading: "Changed", format: "text", note: "What was altered, where and by how much.", width: 34 },
    { heading: "How it fits", format: "text", width: 34 },
    { heading: "Next time", format: "text", width: 34 },
  ],
  needs: [],
  print: "lying",
};
