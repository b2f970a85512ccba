import { readUnit, type PrintedUnit } from "../length/units";
import { plainText } from "../length/read";
import { labelKey } from "./size-label";

/** What a column of a chart holds when its heading is known; any other heading is a size. */
export type ColumnRole = "label" | "view" | "part" | "width" | "widthUnit" | "nap" | "unit";

/** Headings as keys: lower case, no spaces. Common practice in eight languages, no source. */
const HEADINGS: Readonly<Record<ColumnRole, string>> = {
  label:
    "size sizes measurement measurements measure place bodymeasurement bodymeasurements finishedmeasurement " +
    "finishedmeasurements finishedgarmentmeasurements größe größen groesse maß maße körpermaß mesure mesures tailles talla " +
    "tallas medida medidas taglia taglie misura misure maat maten rozmiar rozmiary wymiar wymiary tamanho tamanhos",
  view: "view views style version variante modell ansicht modèle vista veduta model wersja versão",
  part: "part parts piece fabric use teil partie parte deel część",
  width:
    "width fabricwidth clothwidth breite stoffbreite largeur laize ancho larghezza altezza breedte szerokość largura",
  widthUnit: "widthunit unitofwidth",
  nap: "nap withnap strich sens pelo vleug meszek",
  unit: "unit units in/cm cm/in einheit unité unidad unità eenheid jednostka unidade",
};
const ROLES = new Map(
  Object.entries(HEADINGS).flatMap(([role, words]) =>
    words.split(" ").map((word) => [word, role as ColumnRole] as const),
  ),
);

/** What a heading says its column holds; undefined when it is a size. */
export const columnRole = (heading: string): ColumnRole | undefined =>
  ROLES.get(labelKey(heading).replace(/[.:]$/, ""));

/** Words that can only be a unit: a size may be called M. */
const UNIT_ONLY: ReadonlySet<string> = new Set(["in", "in.", "inch", "inches", "ins", "cm", "cms", "yd", "yds", "yard", "yards", '"']); // prettier-ignore

/** Whether a cell of a heading row is a unit, so that the row is no heading row. */
export const isUnitWord = (text: string): boolean => UNIT_ONLY.has(plainText(text).toLowerCase());

/**
 * The unit that a label or a title names in brackets or at its end: "Bust (cm)", "Hip, in", "Body measurements in inches".
 *
 * @example unitInLabel("Bust (cm)") //=> { unit: "cm" }
 */
export function unitInLabel(label: string): PrintedUnit | undefined {
  const plain = plainText(label.slice(0, 200));
  const bracketed = /\(([^()]{1,20})\)\s*$/.exec(plain)?.[1];
  const last = bracketed ?? /[\s,]([^\s,]{1,20})$/.exec(plain)?.[1];
  return last === undefined || /^m\.?$/i.test(last) ? undefined : readUnit(last);
}
