import type { Improvement } from "../../sim/questions/improve/index.ts";
import type { OptionsResult } from "../../sim/questions/options/index.ts";

function estimate(mean: number, halfWidth = 2) {
  return { n: 10, mean, sd: 3, halfWidth, low: mean - halfWidth, high: mean + halfWidth, min: mean - 5, max: mean + 5 };
}

/** What a search found, made up: three crews, a limit, a curve of three points of which one takes more for less. */
export function inventedImprovement(changes: Partial<Improvement> = {}): Improvement {
  const goal = {
    key: "headsPerHour",
    label: "Throughput",
    unit: "carcasses/h",
    format: "number",
    better: "more",
  } as const;
  const found = (name: string, counts: number[], mean: number) => {
    return { name, counts, uses: counts.reduce((sum, count) => sum + count, 0), goal: estimate(mean) };
  };
  const [few, base, best] = [found("few", [1, 1], 300), found("as it is", [3, 2], 310), found("a 3, b 1", [3, 1], 330)];
  const tells = { harm: null, isBase: false, keepsLimits: true, allowed: true, finalist: true };
  return {
    ...{ format: 1, name: "People", question: "Where?", seed: "2027", confidence: 0.95, goal },
    allocated: {
      ...{ kind: "people", unit: "people", least: 2, most: 5 },
      elements: [
        { name: "a", from: 1, to: 4, base: 3 },
        { name: "b", from: 1, to: 4, base: 2 },
      ],
    },
    recommended: {
      ...best,
      ...{ set: {}, insert: [], remove: [], isBase: false, againstBase: null, ends: null, money: null },
      gain: { size: "gain", mean: 20, low: 15, high: 25 },
      limits: [{ name: "stun to stick", share: 0.01, found: estimate(0.004, 0.001), today: estimate(0.006, 0.001) }],
    },
    finalists: [
      { ...best, limits: "kept", harm: null, droppedAfter: null },
      { ...base, limits: "broken", harm: null, droppedAfter: null },
      { ...found("a 2, b 2", [2, 2], 320), limits: "kept", harm: null, droppedAfter: 10 },
    ],
    choice: { kind: "selected", probability: 0.95, difference: 4 },
    tried: [
      { ...best, ...tells },
      { ...base, ...tells, isBase: true, keepsLimits: false },
      { ...few, ...tells, finalist: false, allowed: false },
    ],
    curve: [
      { ...few, isBase: false, undominated: true, keepsLimits: false },
      { ...best, isBase: false, undominated: true, keepsLimits: true },
      { ...base, isBase: true, undominated: false, keepsLimits: true },
    ],
    effort: {
      ...{ designsTried: 3, designsAllowed: 12, searchDays: 15, choiceDays: 40, curveDays: 10, comparisonDays: 20 },
      fullEnumerationDays: 120,
    },
    ...{ matters: 4, answer: "yes", verdict: "Yes: take one person from b.", next: ["Ask the crews."] },
    words: ["Recommended: a 3, b 1."],
    ...changes,
  };
}

/** A line-up of two offers, made up: one that pays, one of which that is not known. */
export function inventedOptionsResult(): OptionsResult {
  const comparison = (mean: number) => ({ ...estimate(mean), familyLow: mean - 3, familyHigh: mean + 3 });
  const option = (name: string, mean: number, halfWidth: number, verdict: "pays" | "not decided") => {
    const ends = { mean, low: mean - halfWidth, high: mean + halfWidth };
    const years = { mean: 2, low: 1, high: Number.POSITIVE_INFINITY };
    return {
      ...{ name, price: 12_000, lifeYears: 10, servicePerYear: 300, cashPerDay: comparison(20), verdict },
      worth: {
        netPerYear: ends,
        presentValue: ends,
        perYear: ends,
        paybackYears: years,
        discountedPaybackYears: years,
      },
      ...{ againstBest: { mayBeBest: true }, harm: null },
      words: `About "${name}".`,
    };
  };
  const found = {
    ...{ currency: "EUR", interest: 0.06, daysPerYear: 250, confidence: 0.95, cashWords: "revenue less pay" },
    nothing: { mayBeBest: false },
    options: [option("a machine", 5000, 1000, "pays"), option("more places", 200, 900, "not decided")],
    ...{ answer: "yes", verdict: "Buy the machine.", next: ["Ask for a second offer."], buy: 0 },
    words: ['The best is "a machine".'],
  };
  return found as unknown as OptionsResult;
}
