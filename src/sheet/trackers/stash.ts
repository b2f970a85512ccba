import { USED_UP } from "../../project/shop-rows";
import type { Tracker } from "../tracker";
import { decided, sumOf, uncounted } from "./formulas";

const THERE = `(Stash[Status]<>"${USED_UP}")`;
const KNOWN = decided("Stash[Status]");
/** A length whose unit is missing, or a piece that may be used up, is in neither total. */
const remark = uncounted(
  ["Stash[Piece]", "Stash[Fabric]", "Stash[Length]"],
  `ISNUMBER(Stash[Length])*((Stash[Unit]="yd")+(Stash[Unit]="m"))*${KNOWN}`,
  THERE,
);

/** Fabric at home, a piece a row: two pieces of one cloth are two rows, because pieces are never added together. */
export const stash: Tracker = {
  key: "stash",
  sheet: "Stash",
  table: "Stash",
  intro: [
    "Fabric at home, one piece a row. The shopping list cuts projects from it where one piece is long and wide enough.",
  ],
  totals: [
    {
      label: "Yards",
      formula: sumOf("Stash[Length]", `(Stash[Unit]="yd")*${THERE}*${KNOWN}`),
      format: "cloth",
      remark,
    },
    {
      label: "Metres",
      formula: sumOf("Stash[Length]", `(Stash[Unit]="m")*${THERE}*${KNOWN}`),
      format: "cloth",
    },
  ],
  columns: [
    { heading: "Piece", format: "text", note: "A name that you know it by.", width: 24 },
    { heading: "Fabric", format: "text", note: "The same words as on the project: they are compared.", width: 22 },
    {
      heading: "Width",
      format: "general",
      note: "From selvedge to selvedge: up to 80 is inches, more is centimetres.",
      validation: { from: 1, to: 400 },
      width: 9,
    },
    { heading: "Length", format: "cloth", note: "What is left of it.", width: 10 },
    { heading: "Unit", format: "text", validation: { list: ["yd", "m"] }, width: 7 },
    { heading: "Washed", format: "text", validation: { list: ["yes", "no"] }, width: 10 },
    {
      heading: "Status",
      format: "text",
      note: "Nothing while it is there; used up leaves it out of the shopping list.",
      validation: { list: ["there", USED_UP] },
      emphasis: { when: `=[@Status]="${USED_UP}"`, tone: "quiet" },
      width: 11,
    },
    { heading: "Where it is", format: "text", width: 18 },
    { heading: "Note", format: "text", width: 26 },
  ],
  needs: [],
  print: "lying",
};
