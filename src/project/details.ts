import { answer, refuse, type Result } from "../problem";

/**
 * Whether a pattern's design details include those wanted: "fitted, patch pockets; collar" has pockets, and has patch
 * pockets, but not fit. Both lists are split at , ; and the ends of lines. A wanted detail is found when its words stand
 * together, whole, inside one listed detail; case, accents' spelling and spaces don't matter. A hyphen joins: fitted is
 * not found in semi-fitted, which is another fit.
 *
 * @param all true: every wanted detail must be there; otherwise one is enough
 * @example hasDetails("Fitted, patch pockets", "pockets") //=> { ok: true, value: true }
 */
export function hasDetails(details: string, wanted: string, all = false): Result<boolean> {
  const listed = splitDetails(details);
  if (listed.length === 0) return refuse("blank", { wanted: "a list of design details" });
  const asked = splitDetails(wanted);
  if (asked.length === 0) return refuse("blank", { wanted: "a detail to look for" });
  const has = (detail: string): boolean => listed.some((one) => ` ${one} `.includes(` ${detail} `));
  return answer(all ? asked.every(has) : asked.some(has));
}

/**
 * The details of a list, each as its words with one space between them, lower case.
 *
 * @example splitDetails("Fitted;  Patch pockets") //=> ["fitted", "patch pockets"]
 */
export function splitDetails(list: string): string[] {
  return list
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[‘’]/g, "'")
    .split(/[,;\n\r\u2028\u2029]/)
    .map((detail) => (detail.match(/[\p{L}\p{N}&][\p{L}\p{M}\p{N}'-]*/gu) ?? []).join(" "))
    .filter((detail) => detail !== "");
}
