import type { ResponseInfo, StudyResults } from "../../days/results/index.ts";
import { type Estimate, estimate } from "../../maths/statistics/index.ts";
import type { SeasonEntry, SeasonQuestion } from "./readSeason.ts";
import {
  SEASON_KEYS,
  type Season,
  type SeasonFindings,
  type SeasonKey,
  type SeasonKind,
  YEAR_KEYS,
  type YearKey,
} from "./season.ts";
import { seasonWords } from "./seasonWords.ts";

/** What is looked at week by week, off a week's own responses. */
const OF_YEAR: Record<YearKey, string> = {
  ...{ made: "week.made", carcassKg: "week.carcassKg", overtimeHours: "week.overtimeHours", late: "ordersMet" },
  ...{ cost: "week.cost.processing", margin: "week.margin" },
};

type Values = readonly (number | null)[];
type Variant = StudyResults["variants"][number];

/**
 * The weeks of a season as a year. The study has as many weeks of each kind, the same luck befalling all kinds; a year's sum is taken week by
 * week of that luck, so its interval is that of the mean year. Weeks do not go on from one to the next: each begins as the plan's week does.
 */
export function seasonOf({ name, question, begins, entries, study }: SeasonQuestion, results: StudyResults): Season {
  const { plan } = study.variants[0]!;
  const orders = plan.week!.orders.length;
  const inShift = plan.day.shifts.map((_, shift) =>
    plan.crews.reduce((sum, { people }) => sum + (people[shift] ?? 0), 0),
  );
  const people = Math.max(0, ...inShift);
  const kinds = entries.map(({ variant, ...entry }, row): SeasonKind => {
    const from = 1 + entries.slice(0, row).reduce((sum, { times }) => sum + times, 0);
    return { ...entry, from, ...kindFigures(results.variants[variant]!, { orders, people }, results) };
  });
  const found: SeasonFindings = {
    ...{ format: 1, name, question, seed: study.seed, confidence: study.confidence, runs: study.replications, begins },
    ...{ currency: plan.money?.currency ?? null, startClockSeconds: plan.day.startClockSeconds },
    ...{ people, orders, kinds },
    year: Object.fromEntries(YEAR_KEYS.map((key) => [key, yearOf(key, entries, results, orders)])) as Season["year"],
    lacking: cutBy("cutShort.", results),
    full: cutBy("cutShortFull.", results),
  };
  return { ...found, ...seasonWords(found) };
}

function kindFigures(
  variant: Variant,
  { orders, people }: { orders: number; people: number },
  { study: { confidence }, responses }: StudyResults,
): Pick<SeasonKind, "latestDay" | "figures" | "cut"> {
  const { values } = variant;
  const ends = responses
    .filter(isDayEnd)
    .map(({ key }) => ({ day: key.slice(0, -".finish".length), values: values[key] ?? [] }));
  const latest = latestOf(ends, variant);
  const weeks = values.unfinished ?? [];
  const figures: Record<SeasonKey, Values> = {
    end: weeks.map((_, week) => most(ends.map((day) => day.values[week] ?? null))),
    overtimeHours: values["week.overtimeHours"] ?? [],
    late: lateOrders(values.ordersMet ?? [], orders),
    people: peopleNeeded(variant, people, weeks.length),
  };
  return {
    latestDay: latest ?? null,
    figures: Object.fromEntries(
      SEASON_KEYS.map((key) => [key, estimateOf(figures[key], confidence)]),
    ) as SeasonKind["figures"],
    cut: weeks.filter((value) => value === 1).length,
  };
}

function isDayEnd({ key, format }: ResponseInfo): boolean {
  return format === "clock" && key.endsWith(".finish");
}

function latestOf(ends: readonly { day: string }[], { estimates }: Variant): string | undefined {
  const known = ends.filter(({ day }) => estimates[`${day}.finish`] !== undefined);
  return known.toSorted((a, b) => estimates[`${b.day}.finish`]!.mean - estimates[`${a.day}.finish`]!.mean)[0]?.day;
}

function most(values: Values): number | null {
  return values.includes(null) || values.length === 0 ? null : Math.max(...(values as number[]));
}

function lateOrders(met: Values, orders: number): Values {
  return met.map((share) => (share === null ? null : (1 - share) * orders));
}

/** The plan's people, times what is paid with overtime over what is paid without: never fewer than the plan has. */
function peopleNeeded({ values }: Variant, people: number, weeks: number): Values {
  const [paid, over] = [values["week.paidHours"] ?? [], values["week.overtimeHours"] ?? []];
  return Array.from({ length: weeks }, (_, week) => {
    const [all, extra] = [paid[week] ?? null, over[week] ?? null];
    return all === null || extra === null || all - extra <= 0 ? null : (people * all) / (all - extra);
  });
}

function estimateOf(values: Values, confidence: number): Estimate | null {
  return estimate([...values], confidence);
}

function yearOf(key: YearKey, entries: readonly SeasonEntry[], results: StudyResults, orders: number): Estimate | null {
  const { confidence } = results.study;
  const ofKinds = entries.map(({ variant, times }) => {
    const values = results.variants[variant]!.values[OF_YEAR[key]] ?? [];
    return { times, values: key === "late" ? lateOrders(values, orders) : values };
  });
  const isWhole = ofKinds.every(({ values }) => values.length > 1 && !values.includes(null));
  const found = isWhole ? sumByLuck(ofKinds, confidence) : sumOfMeans(ofKinds, confidence);
  return found === null || key === "margin"
    ? found
    : { ...found, low: found.low === null ? null : Math.max(0, found.low) };
}

interface KindValues {
  times: number;
  values: Values;
}

function sumByLuck(ofKinds: readonly KindValues[], confidence: number): Estimate | null {
  const weeks = ofKinds[0]!.values.map((_, week) =>
    ofKinds.reduce((sum, { times, values }) => sum + times * values[week]!, 0),
  );
  return estimate(weeks, confidence);
}

/** Where weeks were cut short: the half-widths of the kinds are added, which is wide enough however their luck goes together. */
function sumOfMeans(ofKinds: readonly KindValues[], confidence: number): Estimate | null {
  const found = ofKinds.map(({ times, values }) => ({ times, own: estimate([...values], confidence) }));
  if (found.some(({ own }) => own === null)) return null;
  const mean = found.reduce((sum, { times, own }) => sum + times * own!.mean, 0);
  const halves = found.map(({ times, own }) => (own!.halfWidth === null ? Number.NaN : times * own!.halfWidth));
  const half = halves.reduce((sum, each) => sum + each, 0);
  const first = found[0]!.own!;
  if (Number.isNaN(half)) return { ...first, mean, low: null, high: null, halfWidth: null };
  return { ...first, mean, low: mean - half, high: mean + half, halfWidth: half };
}

function cutBy(prefix: string, { variants }: StudyResults): string[] {
  const keys = variants.flatMap(({ values }) =>
    Object.keys(values).filter((key) => key.startsWith(prefix) && values[key]!.some((value) => value === 1)),
  );
  return [...new Set(keys)].map((key) => key.slice(prefix.length));
}
