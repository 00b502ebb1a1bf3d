import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Improvement } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { goalFormat, usesWords } from "../words/index.ts";
import type { CostColumns } from "./cost.ts";

/** What is had along x, what it takes of the total along y; null without a curve. */
export function tradeOffView(found: Improvement): CostColumns | null {
  const { curve, allocated, confidence } = found;
  const known = curve.filter((point) => point.goal !== null && point.uses !== null);
  if (known.length < 2) return null;
  const format = goalFormat(found);
  const label = { places: "Places", people: "People", budget: "Money spent" }[allocated.kind];
  const points = known.map((point) => {
    const { mean, low, high, halfWidth } = point.goal!;
    const name = isolated(point.isBase ? "as it is" : usesWords(point, found));
    return {
      ...{ name: point.keepsLimits ? name : `${name} (beyond a limit)`, gain: { mean, low, high } },
      ...{ cost: { mean: point.uses!, low: null, high: null }, undominated: point.undominated, base: point.isBase },
      text: `${isolated(point.name)}, ${usesWords(point, found)}: ${format.value(mean, halfWidth)}`,
    };
  });
  return {
    title: `${label}, against ${lowerFirst(isolated(found.goal.label))}`,
    caption: `${format.quantity.kind === "duration" ? "Left and down" : "Right and down"} is better; an open dot takes more for less than some filled one`,
    subtitle: `The best design tried for no more than each total; ${formatConfidence(confidence)} intervals over ${known[0]!.goal!.n} days. Filled: no other design gives as much for less (means compared; where bars overlap, chance may decide)`,
    description: `${points.map(({ text }) => text).join("; ")}.`,
    gain: format.quantity,
    cost: { kind: "number", label, unit: allocated.kind === "budget" ? isolated(allocated.unit) : "" },
    points,
  };
}

function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
