/**
 * Some names, as a sentence lists them.
 *
 * @example namesText(["Ada", "Ben"]) //=> "Ada, Ben"
 */
export function namesText(names: readonly string[]): string {
  if (names.length === 0) return "none";
  return names.length <= 6 ? names.join(", ") : `${names.slice(0, 6).join(", ")} … ${names.length} in all`;
}
