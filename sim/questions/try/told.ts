import { type Reading, read, refused } from "../../text/units/index.ts";

/** What an option changed. */
export interface Told {
  /** "two ill at evisceration": for the name of the try. */
  words: string;
  /** What a reader has to know beyond that, whole sentences. */
  notes: string[];
}

export function told(words: string, notes: string[] = []): Reading<Told> {
  return read({ words, notes });
}

/** Of a plan that has nothing of the kind. */
export function cannot(found: string, remedy = ""): Reading<never> {
  return refused(found, "", remedy);
}

const SMALL = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** "two", "13". */
export function inWords(count: number): string {
  return SMALL[count] ?? String(count);
}
