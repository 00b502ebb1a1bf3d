import { costChart, responseFormat, serverDocument, svgText } from "../../viz/index.ts";
import type { CurvePoint, Improvement } from "../improve/index.ts";
import { formatNumber, formatShare } from "../units/index.ts";

/** The trade-off curve as a picture: what is had along x, what it takes of the total along y. Null without a curve. */
export function tradeOffSvg({ curve, goal, allocated, confidence }: Improvement): string | null {
  const known = curve.filter((point) => point.goal !== null);
  if (known.length < 2) return null;
  const format = responseFormat(goal, 0, {
    value: Math.max(...known.map((point) => Math.abs(point.goal!.mean))),
    difference: 0,
  });
  const uses = { places: "Places", people: "People", budget: "Money spent" }[allocated.kind];
  const said = ({ uses: count, goal: found }: CurvePoint) =>
    `${formatNumber(count!)} ${allocated.unit}; ${format.value(found!.mean, found!.halfWidth)}`;
  const svg = costChart(
    {
      title: `${uses}, against ${lowerFirst(goal.label)}`,
      caption: "Filled: no other design gives as much for less (means compared; where bars overlap, chance may decide)",
      subtitle: `The best design tried for no more than each total; ${formatShare(confidence)} intervals over ${known[0]!.goal!.n} days`,
      description: known.map((point) => `${point.name}: ${said(point)}`).join("; "),
      gain: format.quantity,
      cost: { kind: "number", label: uses, unit: allocated.kind === "budget" ? allocated.unit : "" },
      points: known.map((point) => {
        const { mean, low, high } = point.goal!;
        const exact = { mean: point.uses!, low: null, high: null };
        const { undominated } = point;
        const name = point.keepsLimits ? point.name : `${point.name} (beyond a limit)`;
        return { name, gain: { mean, low, high }, cost: exact, undominated, base: point.isBase, text: said(point) };
      }),
    },
    { document: serverDocument(), theme: "light", idPrefix: "trade-off" },
  );
  return `${svgText(svg)}\n`;
}

function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
