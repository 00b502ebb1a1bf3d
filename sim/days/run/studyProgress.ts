import type { Study } from "../../asked/study/index.ts";
import { type ResponseInfo, supportOf } from "../../day/observations/index.ts";
import {
  estimate,
  pairMeans,
  type SequentialRule,
  type SequentialState,
  sequentialState,
} from "../../maths/statistics/index.ts";
import { formatSpan } from "../../text/units/index.ts";

/** How precise one variant is, with one sentence that says it. */
export interface PrecisionState extends SequentialState {
  words: string;
}

/** Where a study with a stopping rule stands. */
export interface StudyProgress {
  kind: SequentialState["kind"];
  /** Days of every variant at which to look again; those run when the answer stands. Even for antithetic days. */
  nextDays: number;
  /** One per variant; the base is null where differences are looked at. */
  variants: (PrecisionState | null)[];
}

/**
 * Whether every variant of a study has the precision its stopping rule asks for; all variants get as many days, so that
 * they can be compared pair by pair. `days[variant][day]` for the rule's response, which `info` describes. A study
 * without a stopping rule is refused with an Error.
 */
export function studyProgress(
  days: readonly (readonly (number | null)[])[],
  { procedure, confidence }: Pick<Study, "procedure" | "confidence">,
  info: ResponseInfo,
): StudyProgress {
  const { stopping, antithetic } = procedure;
  if (stopping === null) throw new Error("studyProgress: the study has no stopping rule");
  const perObservation = antithetic ? 2 : 1;
  const observed = antithetic ? days.map(pairMeans) : days;
  const { halfWidth, of, atLeast, atMost } = stopping;
  const rule: SequentialRule = {
    halfWidth,
    atLeast: Math.ceil(atLeast / perObservation),
    atMost: Math.floor(atMost / perObservation),
  };
  const base = observed[0]!;
  const baseMean = estimate(base, confidence)?.mean ?? null;
  const variants = observed.map((values, variant) => {
    if (of === "mean") return inWords(sequentialState(values, rule, confidence, supportOf(info)), info);
    if (variant === 0) return null;
    return inWords(sequentialState(minus(values, base), rule, confidence, "any", baseMean), info);
  });
  const states = variants.filter((state) => state !== null);
  const more = states.filter(({ kind }) => kind === "more");
  const nextDays = perObservation * Math.max(base.length, ...more.map(({ next }) => next));
  if (more.length > 0) return { kind: "more", nextDays, variants };
  return { kind: states.some(({ kind }) => kind === "ceiling") ? "ceiling" : "enough", nextDays, variants };
}

function inWords(state: SequentialState, info: ResponseInfo): PrecisionState {
  return { ...state, words: precisionWords(state, info) };
}

function minus(values: readonly (number | null)[], base: readonly (number | null)[]): (number | null)[] {
  return values.map((value, index) => {
    const other = base[index] ?? null;
    return value === null || other === null ? null : value - other;
  });
}

/** The sentence that says whether enough was observed, how precise the mean is, and what was wanted. */
export function precisionWords({ kind, n, halfWidth, wanted, next }: SequentialState, info: ResponseInfo): string {
  const span = (value: number): string => formatSpan(value, info, "plain");
  const reached = halfWidth === null ? "no interval yet" : `half-width ${span(halfWidth)}`;
  const goal = wanted === null ? "" : `, wanted ${span(wanted)}`;
  const ends = {
    enough: `Precise enough after ${n} observations: ${reached}${goal}.`,
    more: `Not precise enough after ${n} observations: ${reached}${goal}; ${next} in all come next.`,
    ceiling: `Stopped at the most observations allowed, ${next}, before the wanted precision: ${reached}${goal}.`,
  };
  return ends[kind];
}
