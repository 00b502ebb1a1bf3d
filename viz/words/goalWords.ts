import { formatDecimals } from "../../sim/text/units/index.ts";
import type { Found, Improvement } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type ResponseFormat, responseFormat } from "./responseFormat.ts";

/** How the goal of a search is written: in one unit wherever it stands. No goal is a time of day. */
export function goalFormat({ goal, tried, curve, recommended }: Improvement): ResponseFormat {
  const largest = (values: readonly (number | null | undefined)[]) =>
    Math.max(0, ...values.map((value) => Math.abs(value ?? 0)));
  return responseFormat(goal, 0, {
    value: largest([...tried, ...curve].flatMap((each) => [each.goal?.mean, each.goal?.high])),
    difference: largest([recommended?.againstBase?.low, recommended?.againstBase?.high]),
  });
}

/** "24 places"; a dash for the plan as it is where that cannot be counted. */
export function usesWords({ uses }: Pick<Found, "uses">, { allocated }: Pick<Improvement, "allocated">): string {
  return uses === null ? "\u2013" : `${formatDecimals(uses, 0)} ${isolated(allocated.unit)}`;
}
