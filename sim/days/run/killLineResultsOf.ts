import { type Plan, stunnedProtection, type TimeLimit } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { killLineOf, stunToStickLimits } from "../../day/line/index.ts";
import { killStopResponses, supportOf } from "../../day/observations/index.ts";
import type { KillLineResults, StunToStick } from "../results/index.ts";
import { meanEstimate } from "./meanEstimate.ts";
import type { VariantDays } from "./variantDays.ts";

type Days = Pick<VariantDays, "valuesOf">;
type Rules = Pick<Study, "procedure" | "confidence">;

/** How stunned heads fared over a variant's days; null where the plan does not say where heads are stunned. */
export function killLineResultsOf(plan: Plan, days: Days, study: Rules): KillLineResults | null {
  const line = killLineOf(plan);
  if (line === null) return null;
  const { stunning, sticking, bleeding } = line;
  const protection = stunnedProtection(plan);
  // Controls are chosen for the responses that the study reports.
  const plain = { ...study, procedure: { ...study.procedure, controls: [] } };
  return {
    ...{ stunning, sticking, bleeding },
    hasGate: protection?.hasGate ?? true,
    breaksAreSafe: protection?.breaksAreSafe ?? true,
    limits: stunToStickLimits(plan, line).map((limit) => stunToStick(limit, days, plain)),
    stops: killStopResponses(plan).flatMap(({ of: _, ...info }) => {
      const estimate = meanEstimate(valuesOf(days, info.key), info.key, plain, supportOf(info));
      return estimate === null ? [] : [{ info, estimate }];
    }),
  };
}

function stunToStick({ name, maxSeconds }: TimeLimit, days: Days, study: Rules): StunToStick {
  const key = `beyond.${name}`;
  const shares = numbers(days, key);
  const worst = numbers(days, `worst.${name}`);
  const share = meanEstimate(valuesOf(days, key), key, study, "share");
  return {
    name,
    maxSeconds: maxSeconds!,
    daysBeyond: shares.filter((each) => each > 0).length,
    days: shares.length,
    ...(share === null ? {} : { share }),
    worstSeconds: worst.length === 0 ? null : Math.max(...worst),
  };
}

function valuesOf(days: Days, key: string): Record<string, (number | null)[]> {
  return { [key]: days.valuesOf(key) };
}

function numbers(days: Days, key: string): number[] {
  return days.valuesOf(key).filter((value) => value !== null);
}
