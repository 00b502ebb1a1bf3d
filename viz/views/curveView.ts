import { formatConfidence } from "../../sim/text/units/index.ts";
import type { CurveColumns, CurvePoint } from "../charts/index.ts";
import type { Factor, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { studyFormat } from "../words/index.ts";
import { describeVariants } from "./describeVariants.ts";
import { endsOf } from "./responseView.ts";

/**
 * One response over one or two factors as curves; null where that makes no picture (no factor, more than two, or none
 * whose levels are three or more numbers of one unit): then the rows of `responseView` show the variants.
 */
export function curveView(results: StudyResults, info: ResponseInfo): CurveColumns | null {
  const along = alongFactor(results.factors);
  if (!along) return null;
  const { index, levels, unit } = along;
  const factor = results.factors[index]!;
  const other = results.factors.length === 2 ? 1 - index : null;
  const format = studyFormat(results, info);
  const groups = other === null ? [null] : results.factors[other]!.levels.map((_, level) => level);
  const lines = groups.map((group) => ({
    label: group === null ? "" : isolated(results.factors[other!]!.levels[group]!),
    points: pointsOf(results.variants, info.key, levels, index, other, group),
  }));
  return {
    title: `${isolated(info.label)} by ${isolated(factor.name)}`,
    caption:
      other === null
        ? "Look where the line flattens: a level beyond that point adds little"
        : "Lines far apart: the second factor matters; lines that are not parallel: the two act on each other",
    subtitle: subtitle(results, other === null),
    description: describeVariants(results, info),
    quantity: format.quantity,
    xLabel: unit === "" ? isolated(factor.name) : `${isolated(factor.name)}, ${isolated(unit)}`,
    xLevels: levels.map((x, level) => ({ x, text: numberText(factor.levels[level]!) })),
    lines: lines.filter((line) => line.points.length > 0),
    lineLabel: other === null ? "" : isolated(results.factors[other]!.name),
  };
}

function subtitle(results: StudyResults, single: boolean): string {
  const { replications, confidence } = results.study;
  if (replications < 2) return "One day each, no interval";
  return `Mean over ${replications} days, ${single ? "bars and band" : "bars"}: ${formatConfidence(confidence)} interval`;
}

const NUMBER = /^\s*([-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?)\s*(.*?)\s*$/i;

/** The first factor whose levels are at least three different numbers of one unit, out of one or two factors. */
function alongFactor(factors: readonly Factor[]): { index: number; levels: number[]; unit: string } | null {
  if (factors.length === 0 || factors.length > 2) return null;
  for (const [index, factor] of factors.entries()) {
    const parts = factor.levels.map((level) => NUMBER.exec(level));
    if (parts.length < 3 || parts.some((part) => part === null)) continue;
    const units = new Set(parts.map((part) => part![2]));
    const levels = parts.map((part) => Number(part![1]));
    if (units.size === 1 && new Set(levels).size === levels.length) return { index, levels, unit: parts[0]![2]! };
  }
  return null;
}

function numberText(level: string): string {
  return NUMBER.exec(level)?.[1] ?? level;
}

function pointsOf(
  variants: readonly VariantResults[],
  key: string,
  levels: readonly number[],
  index: number,
  other: number | null,
  group: number | null,
): CurvePoint[] {
  const points: CurvePoint[] = [];
  for (const variant of variants) {
    const x = levels[variant.levels[index] ?? -1];
    const { mean, low, high } = endsOf(variant.estimates[key]);
    if (x === undefined || mean === null) continue;
    if (other === null || variant.levels[other] === group) points.push({ x, mean, low, high });
  }
  return points.sort((a, b) => a.x - b.x);
}
