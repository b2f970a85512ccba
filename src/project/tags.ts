import { answer, refuse, type Result } from "../problem";

/**
 * Search words under which people post what they have sewn from a pattern: the maker's name and the number, and the
 * maker's initials and the number. Capitals, spaces and marks are left out, as such words have none.
 *
 * Common practice, no source.
 *
 * @example tags("Maker", "4821") //=> { ok: true, value: "#maker4821 #m4821" }
 */
export function tags(maker: string, number: string): Result<string> {
  const words = maker
    .toLowerCase()
    .normalize("NFC")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  const digits = wordOf(number);
  if (words.length === 0) return refuse("unreadableName", { text: maker, what: "the maker's name" });
  if (digits === "") return refuse("unreadableName", { text: number, what: "the pattern's number" });
  const name = words.join("");
  const initials = words.map((word) => [...word][0]).join("");
  // A number that is printed with the maker's letters ("M4821") has them already.
  const bare =
    digits.startsWith(initials) && /^\d/.test(digits.slice(initials.length)) ? digits.slice(initials.length) : digits;
  const found = [...new Set([`#${name}${bare}`, `#${initials}${bare}`])];
  return answer(found.join(" "));
}

const wordOf = (text: string): string =>
  text
    .toLowerCase()
    .normalize("NFC")
    .replace(/[^\p{L}\p{N}]/gu, "");
