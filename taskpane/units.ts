/** Where cloth is sold by the yard a person measures in inches. Common practice, no source. */
const BY_THE_YARD = /-(?:US|LR|MM)$/i;

/** Inches or centimetres to begin with, by the region of the workbook's language; each section lets her choose. */
export function usualUnits(): "in" | "cm" {
  const language = Office.context.contentLanguage || navigator.language;
  return BY_THE_YARD.test(language) || language === "en" ? "in" : "cm";
}
