import { listWords, nearestName } from "../../asked/plan/index.ts";
import { type Reading, read, refused } from "../../text/units/index.ts";

/** What `what` (say "a crew") has this name: in any case of letters, or by the beginning that only one has. */
export function namedOne(written: string, names: readonly string[], what: string): Reading<string> {
  const found = findName(written, names);
  if (found !== null) return read(found);
  const list = [...new Set(names)];
  const near = nearestName(written, list) ?? byFirstWord(written, list);
  const remedy = near === null ? "write one of these" : `did you mean '${near}'?`;
  return refused(`'${written}' is not ${what}`, listWords(list), remedy);
}

/** "lunsh" is near to "lunch", the first word of "lunch break". */
function byFirstWord(written: string, names: readonly string[]): string | null {
  const words = names.map((name) => name.split(" ")[0]!);
  const near = nearestName(written, words);
  return near === null ? null : names[words.indexOf(near)]!;
}

export function findName(written: string, names: readonly string[]): string | null {
  if (names.includes(written)) return written;
  const lower = written.toLowerCase();
  const same = names.filter((name) => name.toLowerCase() === lower);
  if (same.length === 1) return same[0]!;
  const begun = names.filter((name) => name.toLowerCase().startsWith(`${lower} `));
  return begun.length === 1 && written !== "" ? begun[0]! : null;
}

/** "skinning=09:00-10:00" -> ["skinning", "09:00-10:00"]; the last "=" counts. */
export function assigned(written: string, example: string): Reading<[name: string, value: string]> {
  const at = written.lastIndexOf("=");
  const [name, value] = [written.slice(0, at).trim(), written.slice(at + 1).trim()];
  if (at < 1 || name === "" || value === "")
    return refused(`'${written}' has no name and value`, "a name, '=' and a value", `write for example ${example}`);
  return read([name, value]);
}

/** A whole number from 1 on. */
export function countOf(written: string, most: number, example: string): Reading<number> {
  const count = Number(written);
  if (/^\d+$/.test(written) && count >= 1 && count <= most) return read(count);
  return refused(
    `'${written}' is not a number here`,
    `a whole number from 1 to ${most}`,
    `write for example ${example}`,
  );
}
