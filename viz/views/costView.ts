import { formatConfidence } from "../../sim/text/units/index.ts";
import type { CostColumns, CostEnds, CostPoint } from "../charts/index.ts";
import type { Estimate, ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { estimateWords, observationNoun, observationsWords, quoted, studyFormat } from "../words/index.ts";

/** What a variant gives and what it costs, by response key. */
const GAIN = "headsPerHour";
const COST = "costPerHead";

/** Cost per head against throughput over the variants; null unless the study asks for both and compares something. */
export function costView(results: StudyResults): CostColumns | null {
  const gain = results.responses.find(({ key }) => key === GAIN);
  const cost = results.responses.find(({ key }) => key === COST);
  if (!gain || !cost || results.variants.length < 2) return null;
  const points = pointsOf(results, gain, cost);
  if (points.length < 2) return null;
  const front = points.filter(({ undominated }) => undominated);
  return {
    title: `${isolated(cost.label)}, against throughput`,
    caption: "Down and to the right is better; an open dot pays more for less than some filled one",
    subtitle: `Means over ${observationsWords(results)} with their ${formatConfidence(results.study.confidence)} intervals. Filled: no other variant gives as much for as little (means compared; where bars overlap, chance may decide)`,
    description: `${front.length} of ${points.length} variants are undominated: ${front.map(({ name, text }) => `${quoted(name)} ${text}`).join("; ")}.`,
    gain: studyFormat(results, gain).quantity,
    cost: studyFormat(results, cost).quantity,
    points,
  };
}

function pointsOf(results: StudyResults, gain: ResponseInfo, cost: ResponseInfo): CostPoint[] {
  const known = results.variants.flatMap((variant, index) => {
    const [given, paid] = [variant.estimates[gain.key], variant.estimates[cost.key]];
    if (!given || !paid || given.n === 0 || paid.n === 0) return [];
    const words = (info: ResponseInfo, estimate: Estimate) =>
      estimateWords(estimate, studyFormat(results, info), results.study.confidence, observationNoun(results)).phrase;
    return [
      {
        name: isolated(variant.name),
        gain: endsOf(given),
        cost: endsOf(paid),
        base: index === 0,
        text: `${words(gain, given)}; ${words(cost, paid)}`,
      },
    ];
  });
  return known.map((point) => ({ ...point, undominated: !known.some((other) => dominates(other, point)) }));
}

type Means = Pick<CostPoint, "gain" | "cost">;

/** Gives at least as much for no more, and is better in one of the two. */
function dominates(a: Means, b: Means): boolean {
  const [more, cheaper] = [a.gain.mean - b.gain.mean, b.cost.mean - a.cost.mean];
  return more >= 0 && cheaper >= 0 && more + cheaper > 0;
}

function endsOf({ mean, low, high }: Estimate): CostEnds {
  return { mean, low, high };
}
