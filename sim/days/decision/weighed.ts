import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { AgainstBest } from "../../maths/statistics/index.ts";
import type { Decision, ElementaryEffects, Why } from "../results/index.ts";

/** VariantValues of one variant: by response, one for each day; null where a day has none. */
export type VariantValues = Readonly<Record<string, (number | null)[]>>;

/** What else was found out about the variants. */
export interface Findings {
  /** One for each variant; null where a study does without. */
  whys: readonly (Why | null)[];
  /** Of a screening: what each factor does to the deciding response, in the order of the study's factors. */
  effects: readonly (ElementaryEffects | null)[] | null;
}

/** A decision before it is put into words. */
export interface Weighed extends Omit<Decision, "answer" | "verdict" | "words" | "next" | "best"> {
  info: ResponseInfo;
  /** Against the best of those that do no harm, by variant; null where the days cannot rank them, undefined for harm. */
  againstBest: readonly (AgainstBest | undefined)[] | null;
  findings: Findings;
  study: Study;
  /** On how many of its simulated days each variant ran into overtime; null where a plan has no end of a shift. */
  overtimeDays: readonly ({ days: number; of: number } | null)[];
}
