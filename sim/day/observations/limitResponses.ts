import type { Plan, TimeLimit } from "../../asked/plan/index.ts";
import type { LimitRecord, Tally } from "../engine/index.ts";
import type { Response } from "./response.ts";

/**
 * What is watched about each time limit: the share outside it, the tail next to it and the worst case. A limit that no
 * head passed has no value. With a maximum the tail is the 95 % quantile and the worst the longest time; with a minimum
 * alone, the 5 % quantile and the shortest; with both, the shortest is added under a key of its own.
 */
export function limitResponses(plan: Plan): Response[] {
  return plan.limits.flatMap((limit) => [beyond(limit), ...tails(limit)]);
}

function beyond({ name }: TimeLimit): Response {
  return {
    key: `beyond.${name}`,
    label: `${name}: heads outside the limit`,
    unit: "share of heads",
    format: "share",
    better: "less",
    of: ({ limits }) => fromLimit(limits, name, (limit) => limit.beyond / limit.tally.count),
  };
}

function tails({ name, minSeconds, maxSeconds }: TimeLimit): Response[] {
  const rows: Response[] = [];
  if (maxSeconds !== null) {
    rows.push(
      timeRow(`p95.${name}`, `${name}: 95 % of heads stay below`, "less", name, (tally) => tally.quantiles.p95),
    );
    rows.push(timeRow(`worst.${name}`, `${name}: longest time`, "less", name, (tally) => tally.max));
  }
  if (minSeconds !== null) {
    rows.push(
      timeRow(`p05.${name}`, `${name}: 95 % of heads stay above`, "more", name, (tally) => tally.quantiles.p05),
    );
    const key = maxSeconds === null ? "worst" : "shortest";
    rows.push(timeRow(`${key}.${name}`, `${name}: shortest time`, "more", name, (tally) => tally.min));
  }
  return rows;
}

function timeRow(
  key: string,
  label: string,
  better: "more" | "less",
  name: string,
  of: (tally: Tally) => number,
): Response {
  const read = (limit: LimitRecord): number => of(limit.tally);
  return { key, label, unit: "s", format: "duration", better, of: ({ limits }) => fromLimit(limits, name, read) };
}

function fromLimit(limits: readonly LimitRecord[], name: string, of: (limit: LimitRecord) => number): number | null {
  const limit = limits.find((record) => record.name === name);
  return limit === undefined || limit.tally.count === 0 ? null : of(limit);
}
