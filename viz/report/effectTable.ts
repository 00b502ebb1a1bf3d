import type { StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type DecisionTable, rankedEffects, responseFormat, responseHeading } from "../words/index.ts";

/** Factors that the first pages have a row for. */
const MAX_FACTORS = 12;
/** Results that they have a column for. */
const MAX_RESULTS = 4;

/** Of a screening: what each factor does to each result, the one that moves the first result most first; no plan is chosen. */
export function effectTable(results: StudyResults): DecisionTable {
  const responses = results.responses.slice(0, MAX_RESULTS);
  const ranked = rankedEffects(results, responses[0]!);
  // All effects on a result in one unit, that of the largest.
  const formats = responses.map((info) => {
    const largest = Math.max(0, ...rankedEffects(results, info).map(({ effects }) => effects.muStar));
    return responseFormat(info, 0, { value: largest, difference: largest });
  });
  return {
    rowsAre: "Factor",
    columns: responses.map(responseHeading),
    rows: ranked.slice(0, MAX_FACTORS).map(({ name }) => ({
      name,
      cells: responses.map((info, column) => {
        const found = rankedEffects(results, info).find((effect) => effect.name === name)?.effects;
        if (found === undefined) return { value: "no value", range: "", shown: null };
        const size = (value: number) => formats[column]!.size(value, found.muStarHalfWidth);
        const half = found.muStarHalfWidth;
        return { value: size(found.muStar), range: half === null ? "" : `\u00B1 ${size(half)}`, shown: null };
      }),
      best: false,
      harm: null,
    })),
    more: Math.max(0, ranked.length - MAX_FACTORS),
    left: results.responses.slice(MAX_RESULTS).map(({ label }) => isolated(label)),
  };
}
