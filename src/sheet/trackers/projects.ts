import { garmentNames } from "../../fit/read-garment";
import { SETTLED } from "../../project/shop-rows";
import { cautionSentences } from "../../words/project";
import { quotedText } from "../names";
import type { Tracker } from "../tracker";
import { decided, INDEX, indexColumn, isBlankRow, sizeFormula, sumOf, uncounted, unlessBlank } from "./formulas";

const inIndex = (unit: string): string => `COUNTIFS(${indexColumn(1)},[@Pattern],${indexColumn(3)},"${unit}")`;

/**
 * The unit of the pattern's fabric amounts: what its chart has, and where it has both what the width is in. Nothing
 * while the pattern has no fabric chart.
 */
const unitFormula = unlessBlank(
  ["Pattern"],
  `IF(${inIndex("yd")}=0,IF(${inIndex("m")}=0,"","m"),IF(${inIndex("m")}=0,"yd",IF([@Width]>80,"m","yd")))`,
);

/** A project whose cloth is still to be bought. */
const WANTED = SETTLED.map((word) => `(Projects[Status]<>"${word}")`).join("*");
const KNOWN = decided("Projects[Status]");
const toBuy = (unit: string): string => sumOf("Projects[To buy]", `(Projects[Unit]="${unit}")*${WANTED}*${KNOWN}`);
const IN_USE = ["Projects[Project]", "Projects[Pattern]", "Projects[Fabric]"];
/** An amount without its unit, or one that may be bought, is in neither total. */
const toBuyRemark = uncounted(
  IN_USE,
  `ISNUMBER(Projects[To buy])*((Projects[Unit]="yd")+(Projects[Unit]="m"))*${KNOWN}`,
  WANTED,
);

/**
 * One line for every project that is begun, with a pattern or without one, so that silence never reads as "safe". A few
 * words more than `cautionLine` knows are taken for a child's or for nightwear: a caution too many harms nobody.
 */
const cautionFormula = (() => {
  const { lineSleepwear, lineChild, lineAdult, lineAsk } = cautionSentences;
  const says = (...words: string[]): string =>
    `OR(${words.map((word) => `ISNUMBER(SEARCH("${word}",[@Garment]))`).join(",")})`;
  const child = `OR([@[For a child]]="yes",AND([@[For a child]]="",${says("child", "baby", "infant", "toddler")}))`;
  const nightwear = says("night", "sleep", "yjama", "ajama", "robe", "dressing gown");
  const notBegun = ["Project", "Pattern", "Garment", "For a child"].map((heading) => isBlankRow(heading)).join(",");
  const lines = [lineSleepwear, lineChild, lineAdult, lineAsk].map(quotedText);
  return `=IF(AND(${notBegun}),"",IF(${child},IF(${nightwear},${lines[0]},${lines[1]}),IF([@[For a child]]="no",${lines[2]},${lines[3]})))`;
})();

/** What is to be made: the size, the fabric and what it costs follow from measurements, charts and prices. */
export const projects: Tracker = {
  key: "projects",
  sheet: "Projects",
  table: "Projects",
  intro: [
    "One row for each fabric of a project. Type the plain columns; size, needed, to buy and cost follow. A size or an amount typed over its formula stays.",
  ],
  totals: [
    {
      label: "Cost if all of it is bought",
      formula: sumOf("Projects[Cost]"),
      format: "money",
      remark: uncounted(IN_USE, "ISNUMBER(Projects[Cost])"),
    },
    { label: "Yards to buy", formula: toBuy("yd"), format: "cloth", remark: toBuyRemark },
    { label: "Metres to buy", formula: toBuy("m"), format: "cloth", remark: toBuyRemark },
  ],
  columns: [
    { heading: "Project", format: "text", width: 30 },
    { heading: "Pattern", format: "text", note: "The name of its sheet, as the pattern index has it.", width: 20 },
    { heading: "Person", format: "text", note: "A heading of the Measurements sheet.", width: 12 },
    { heading: "Garment", format: "text", validation: { list: garmentNames(), open: true }, width: 20 },
    { heading: "View", format: "text", width: 8 },
    {
      heading: "Part",
      format: "text",
      note: "Nothing is the main fabric; or contrast, lining, interfacing …",
      width: 12,
    },
    { heading: "Fabric", format: "text", note: "The same words as in the stash: they are compared.", width: 20 },
    {
      heading: "Width",
      format: "general",
      note: "From selvedge to selvedge: up to 80 is inches, more is centimetres.",
      validation: { from: 1, to: 400 },
      width: 9,
    },
    {
      heading: "Nap",
      format: "text",
      note: "Nothing takes the larger amount.",
      validation: { list: ["with", "without"] },
      width: 10,
    },
    {
      heading: "Size",
      format: "text",
      note: "The size to cut. A blend typed over it is bought for its largest size: write 12+16, because Excel makes a date of 12-16.",
      formula: sizeFormula,
      width: 12,
    },
    {
      heading: "Estimate",
      format: "text",
      note: "yes: where the width is not printed, the amount is worked out from a printed one.",
      validation: { list: ["yes", "no"] },
      width: 11,
    },
    {
      heading: "Printed",
      format: "cloth",
      note: "What the pattern prints for this view, width and size.",
      formula: unlessBlank(
        ["Pattern", "Width", "Size"],
        `SEW.YARDAGE(${INDEX},[@View],[@Width],[@Size],[@Part],[@Nap],[@Estimate]="yes",[@Pattern])`,
      ),
      width: 11,
    },
    {
      heading: "Unit",
      format: "text",
      note: "yd or m, as the pattern prints it. Type it where you type the amount yourself.",
      formula: unitFormula,
      validation: { list: ["yd", "m"] },
      width: 7,
    },
    {
      heading: "Shrinkage",
      format: "percent",
      note: "What the cloth loses in the wash: 5%.",
      validation: { from: 0, to: 0.3 },
      width: 12,
    },
    {
      heading: "Repeat",
      format: "length",
      note: "One repeat of the print: inches beside yards, centimetres beside metres.",
      width: 10,
    },
    { heading: "Lengths", format: "general", note: "How many lengths of cloth are matched; nothing is 1.", width: 10 },
    {
      heading: "Needed",
      format: "cloth",
      note: "The printed amount with repeats to match and shrinkage.",
      formula: unlessBlank(
        ["Printed"],
        `SEW.EXTRAYARDAGE([@Printed],[@Unit],[@Shrinkage],[@Repeat],IF([@Unit]="m","cm","in"),[@Lengths])`,
      ),
      width: 11,
    },
    {
      heading: "To buy",
      format: "cloth",
      note: "Rounded up to what the shop cuts by: see the settings.",
      formula: unlessBlank(["Needed"], "SEW.BUYLENGTH([@Needed],XLOOKUP([@Unit],ShopSteps[Unit],ShopSteps[Cuts by]))"),
      width: 11,
    },
    { heading: "Price", format: "money", note: "For one yard or metre.", width: 10 },
    {
      heading: "Cost",
      format: "money",
      formula: unlessBlank(["To buy", "Price"], "ROUND([@[To buy]]*[@Price],2)"),
      width: 11,
    },
    {
      heading: "Status",
      format: "text",
      note: "From fabric bought onward the project is off the shopping list.",
      validation: { list: ["planned", "to buy", ...SETTLED] },
      emphasis: { when: `=OR([@Status]="finished",[@Status]="dropped")`, tone: "quiet" },
      width: 15,
    },
    { heading: "For a child", format: "text", validation: { list: ["yes", "no"] }, width: 11 },
    {
      heading: "Caution",
      format: "general",
      note: "For children's garments: the rules are on the Cautions sheet. It is a reminder, never a certificate.",
      formula: cautionFormula,
      emphasis: { when: `=LEFT([@Caution],5)="Child"`, tone: "attention" },
      width: 42,
    },
    { heading: "Notions", format: "text", note: "Seven 1/2 in buttons, 20 cm zip, thread.", width: 28 },
    { heading: "Note", format: "text", width: 28 },
  ],
  needs: ["measurements", "settings"],
  needsIndex: true,
  print: "lying",
};
