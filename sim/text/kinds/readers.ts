/** For whom a study is written, as far as the words that it uses for them tell. */
export type Reader = "veterinarian" | "owner" | "planner" | "engineer" | "trainer";

/** A word settles it; the first row that has one counts. */
const WORDS: readonly [word: RegExp, reader: Reader][] = [
  [/veterinar|welfare|hygien|inspect/i, "veterinarian"],
  [/owner|director|financ|invest|account|controller|bank/i, "owner"],
  [/plann|schedul|supervis|foreman|shift/i, "planner"],
  [/trainer|training|teach|student|trainee|lesson/i, "trainer"],
  [/engineer|technic|maintenance/i, "engineer"],
];

/** "official veterinarian" -> "veterinarian"; null for whoever is none of them. */
export function readerOf(written: string): Reader | null {
  return WORDS.find(([word]) => word.test(written))?.[1] ?? null;
}
