import { closest, distance } from "fastest-levenshtein";

/** Closer than this share of the longer word counts as a slip of the keyboard. */
const ALIKE = 0.5;
/** No name is longer than 60 characters, and the work grows with the square of the length. */
const LONGEST = 120;

/** The name that was probably meant, or null when none is near (edit distance, Levenshtein 1966; case ignored). */
export function nearestName(written: string, names: readonly string[]): string | null {
  if (names.length === 0 || written.length > LONGEST) return null;
  const lower = names.map((name) => name.toLowerCase());
  const match = closest(written.toLowerCase(), lower);
  const longest = Math.max(written.length, match.length);
  if (distance(written.toLowerCase(), match) > ALIKE * longest) return null;
  return names[lower.indexOf(match)] as string;
}

/** "did you mean 'evisceration'?", or what to do when nothing is near. */
export function nearestWords(written: string, names: readonly string[], otherwise: string): string {
  const nearest = nearestName(written, names);
  return nearest === null ? otherwise : `did you mean '${nearest}'?`;
}
