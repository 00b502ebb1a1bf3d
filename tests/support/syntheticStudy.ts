import seedrandom from "seedrandom";
import type { DayRecord } from "../../sim/day/engine/dayRecord.ts";
import type { Difference } from "../../sim/days/results/figures.ts";
import type { Estimate, ResponseInfo, StudyResults, VariantResults } from "../../sim/days/results/studyResults.ts";
import { levelSteps } from "../../sim/maths/statistics/index.ts";
import { SYNTHETIC_BASE, SYNTHETIC_BREAKS, type SyntheticPlant, syntheticDay } from "./syntheticDay.ts";

/** Student-t quantile 0.975 for n - 1 = 19 degrees of freedom (any table of the t distribution). */
const T_19 = 2.093;
const N = 20;

const RESPONSES: ResponseInfo[] = [
  { key: "throughput", label: "Throughput while hanging", unit: "heads/h", format: "number", better: "more" },
  { key: "finish", label: "End of the day", unit: "", format: "clock", better: "less" },
  { key: "stunToStickBeyond", label: "Stun to stick beyond 10 s", unit: "", format: "share", better: "less" },
  { key: "lairageWait", label: "Mean wait of a crate in lairage", unit: "", format: "duration", better: "less" },
  { key: "eviscerationWorking", label: "Evisceration, share of time working", unit: "", format: "share", better: null },
];

type Means = Record<string, number>;

function estimate(values: readonly (number | null)[]): Estimate {
  const known = values.filter((value) => value !== null);
  const n = known.length;
  const mean = known.reduce((sum, value) => sum + value, 0) / n;
  const sd = n < 2 ? 0 : Math.sqrt(known.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  const halfWidth = n < 2 ? null : (T_19 * sd) / Math.sqrt(n);
  const low = halfWidth === null ? null : mean - halfWidth;
  const high = halfWidth === null ? null : mean + halfWidth;
  return { n, mean, sd, halfWidth, low, high, min: Math.min(...known), max: Math.max(...known) };
}

function difference(
  values: readonly (number | null)[],
  base: readonly (number | null)[],
  baseMean: number,
): Difference {
  const paired = values.map((value, i) => (value === null || base[i] === null ? null : value - base[i]!));
  const e = estimate(paired);
  const shown = e.low !== null && (e.low > 0 || e.high! < 0);
  const relative = (value: number | null) => (value === null || baseMean === 0 ? null : value / baseMean);
  const bare = { ...e, relativeLow: relative(e.low), relativeHigh: relative(e.high), shown, words: "" };
  return { ...bare, ...BY_ITSELF };
}

/** A single comparison: nothing is adjusted. */
const BY_ITSELF = {
  ...{ p: null, holmP: null, bonferroniP: null, benjaminiHochbergP: null },
  ...{ familyLow: null, familyHigh: null, comparisons: 1, joint: false },
};

function plainProcedure(): StudyResults["procedure"] {
  return { observation: "day", errorRate: "per comparison", stopping: null, selection: null, controls: [] };
}

/** Values per replication: common noise (same seeds in every variant) and a little of the variant's own. */
function replicated(means: Means, name: string, n: number): Record<string, number[]> {
  const common = seedrandom.alea("common");
  const own = seedrandom.alea(`own/${name}`);
  const spread: Means = {
    throughput: 9,
    finish: 420,
    stunToStickBeyond: 0.004,
    lairageWait: 150,
    eviscerationWorking: 0.008,
  };
  const values: Record<string, number[]> = {};
  for (const key of Object.keys(means)) {
    values[key] = Array.from(
      { length: n },
      () => means[key]! + spread[key]! * (2 * common() - 1 + 0.35 * (2 * own() - 1)),
    );
  }
  return values;
}

function variantOf(name: string, means: Means, day: DayRecord, n: number, levels: number[] = []): VariantResults {
  const values = replicated(means, name, n);
  const estimates = Object.fromEntries(Object.entries(values).map(([key, list]) => [key, estimate(list)]));
  return { name, days: n, levels, set: {}, estimates, differences: null, againstBest: null, values, why: null, day };
}

function withDifferences(variants: VariantResults[]): VariantResults[] {
  const base = variants[0]!;
  for (const variant of variants.slice(1)) {
    variant.differences = Object.fromEntries(
      RESPONSES.map(({ key }) => [key, difference(variant.values[key]!, base.values[key]!, base.estimates[key]!.mean)]),
    );
  }
  return variants;
}

const PLAN: StudyResults["plan"] = {
  name: "Gable Farm (invented)",
  notes: "An invented plant for rabbits, one line, one shift, four lorries a day. No real plant is meant.",
  sources: [
    { path: "", kind: "invented", note: "Every figure not named below was made up for this example." },
    { path: "line[8].cycle", kind: "measured", note: "Stopwatch, 120 cycles on two mornings (invented data)." },
    { path: "limits[0]", kind: "published", note: "Tierschutz-Schlachtverordnung 2012, Anlage 2: 10 s lying." },
  ],
  targetHeadsPerHour: 600,
  breaks: SYNTHETIC_BREAKS,
  shifts: [{ name: "early", fromSeconds: 0, toSeconds: 28_800 }],
  cleaningSeconds: 0,
  limitSources: {
    "Stun to stick": "Tierschutz-Schlachtverordnung 2012, Anlage 2 (10 s lying); the site's own law decides",
    "Stick to evisceration": "house rule (invented)",
  },
};

function studyOf(
  question: string,
  replications: number,
  name = "Where is the next head to be won?",
): StudyResults["study"] {
  return {
    name,
    question,
    reader: "owner, official veterinarian and crew of Gable Farm (invented)",
    seed: "gable-2025",
    replications,
    confidence: 0.95,
    command: "gambrel run experiments/studies/gable.study.json",
  };
}

const BASE_MEANS: Means = {
  throughput: 588,
  finish: 42_500,
  stunToStickBeyond: 0.021,
  lairageWait: 2640,
  eviscerationWorking: 0.86,
};

/** A study of four variants, 20 replications, days with binned traces. */
export function syntheticStudy(): StudyResults {
  const plants: [string, Means, Partial<SyntheticPlant>][] = [
    ["As it is", BASE_MEANS, {}],
    [
      "One more at evisceration",
      { ...BASE_MEANS, throughput: 624, finish: 41_100, eviscerationWorking: 0.68 },
      { eviscerationPositions: 4 },
    ],
    [
      "Twelve more places before evisceration",
      { ...BASE_MEANS, throughput: 589.2, finish: 42_480 },
      { eviscerationPlaces: 20 },
    ],
    [
      "Lorries 20 minutes later, so that crates do not wait so long",
      { ...BASE_MEANS, throughput: 583.5, finish: 42_900, lairageWait: 1800 },
      { firstLoadSeconds: 1200 },
    ],
  ];
  const variants = plants.map(([name, means, change]) =>
    variantOf(name, means, syntheticDay({ ...SYNTHETIC_BASE, ...change }), N),
  );
  return {
    format: 1,
    gambrel: "0.1.0",
    study: studyOf(
      "Which single change gets the day done earlier: one more pair of hands at evisceration, more places before it, or later lorries?",
      N,
    ),
    plan: structuredClone(PLAN),
    responses: structuredClone(RESPONSES),
    factors: [],
    procedure: plainProcedure(),
    screening: null,
    levelSteps: null,
    capacity: null,
    advice: null,
    variants: withDifferences(variants),
  };
}

function stepsOf(variants: readonly VariantResults[]): StudyResults["levelSteps"] {
  const levels = variants.map((variant) => variant.levels);
  const steps = (key: string) =>
    levelSteps(
      levels,
      variants.map(({ values }) => values[key]!),
      0.95,
    );
  return Object.fromEntries(RESPONSES.map(({ key }) => [key, steps(key)]));
}

/** One numeric factor, five levels. */
export function syntheticCurve(): StudyResults {
  const day = syntheticDay();
  const levels = ["2", "4", "8", "16", "32"];
  const variants = levels.map((level, i) =>
    variantOf(`${level} places`, { ...BASE_MEANS, throughput: 600 - 60 / (Number(level) + 1) }, day, N, [i]),
  );
  return {
    ...syntheticStudy(),
    study: studyOf("How many places does evisceration need before it?", N, "Places before evisceration"),
    factors: [{ name: "places before evisceration", path: "line[8].buffer", levels }],
    levelSteps: stepsOf(variants),
    variants: withDifferences(variants),
  };
}

/** Two numeric factors, 4 x 3 levels. */
export function syntheticFactorial(): StudyResults {
  const day = syntheticDay();
  const places = ["4", "8", "16", "32"];
  const cycles = ["4.8 s", "5.4 s", "6.0 s"];
  const variants = cycles.flatMap((cycle, c) =>
    places.map((place, p) => {
      const throughput = 3500 / Number.parseFloat(cycle) - 90 / (Number(place) + 2);
      return variantOf(`${place} places, ${cycle}`, { ...BASE_MEANS, throughput }, day, N, [p, c]);
    }),
  );
  return {
    ...syntheticStudy(),
    study: studyOf("Do more places make up for a slower skinner?", N, "Places and skinning time"),
    factors: [
      { name: "places before skinning", path: "line[5].buffer", levels: places },
      { name: "skinning cycle time", path: "line[5].cycle", levels: cycles },
    ],
    levelSteps: stepsOf(variants),
    variants: withDifferences(variants),
  };
}

/** One variant, one replication: a single day. */
export function syntheticSingleDay(): StudyResults {
  const day = variantOf("As it is", BASE_MEANS, syntheticDay(), 1);
  return { ...syntheticStudy(), study: studyOf("How does an ordinary day go?", 1, "An ordinary day"), variants: [day] };
}
