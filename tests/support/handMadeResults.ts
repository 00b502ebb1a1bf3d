import { PLAIN_PROCEDURE, type Study } from "../../sim/asked/study/study.ts";
import type { DayRecord } from "../../sim/day/engine/dayRecord.ts";
import { measure } from "../../sim/day/observations/index.ts";
import type { StudyResults } from "../../sim/days/results/index.ts";
import { assembleResults } from "../../sim/days/run/assembleResults.ts";
import { variantDays } from "../../sim/days/run/variantDays.ts";
import { HAND_MADE_PLAN, handMadeDay } from "./handMadeDay.ts";

/** A study of two variants over the hand-made plan; the second one's name begins like a spreadsheet formula on purpose. */
export const HAND_MADE_STUDY: Study = {
  name: "Hand-made study",
  question: "Is one more knife worth it?",
  reader: "tests",
  seed: "rabbit",
  replications: 3,
  confidence: 0.95,
  responses: ["headsPerHour", "finish", "beyond.chilling time"],
  why: false,
  factors: [{ name: "people", path: "crews[0].people", levels: ["4", "5"] }],
  variants: [
    { name: "base", levels: [0], set: {}, insert: [], remove: [], plan: HAND_MADE_PLAN },
    {
      name: "+1 person, skinning",
      levels: [1],
      set: { "crews[0].people": [5] },
      insert: [],
      remove: [],
      plan: HAND_MADE_PLAN,
    },
  ],
  design: { kind: "factorial" },
  procedure: PLAIN_PROCEDURE,
};

/** Days that differ in their number of carcasses only: 900, 960, 1020 for the base, 60 more each for the variant. */
export function handMadeResults(): StudyResults {
  const outcomes = [0, 60].map((more) =>
    variantDays(
      [900, 960, 1020].map((carcass, replication) => {
        const day = dayWith(carcass + more, replication);
        return { values: measure(day, HAND_MADE_PLAN), day: replication === 0 ? day : null };
      }),
    ),
  );
  return assembleResults(HAND_MADE_STUDY, outcomes, { gambrel: "1.2.3", command: "gambrel study hand-made.json" });
}

function dayWith(carcass: number, replication: number): DayRecord {
  const day = handMadeDay(replication);
  return { ...day, heads: { ...day.heads, out: { ...day.heads.out, carcass } }, traces: smallTraces() };
}

function smallTraces(): NonNullable<DayRecord["traces"]> {
  const bins = { kind: "binned" as const, endSeconds: 120, binSeconds: 60 };
  return {
    queues: [{ ...bins, name: "skinning", low: [0, 1], high: [2, 5], mean: [1, 3.5] }],
    wip: [{ kind: "exact", name: "dressing", endSeconds: 120, times: [0, 12.5], values: [0, 1] }],
    out: { ...bins, name: "out", low: [0, 4], high: [4, 9], mean: [2, 6.5] },
    arrived: { ...bins, name: "arrived", low: [0, 20], high: [20, 20], mean: [10, 20] },
    hung: { ...bins, name: "heads hung", low: [0, 6], high: [6, 12], mean: [3, 9] },
    entered: [{ ...bins, name: "chilling", low: [0, 5], high: [5, 10], mean: [2, 7.5] }],
    crews: [
      {
        name: "hanging",
        busy: { ...bins, name: "hanging", low: [0, 1], high: [1, 2], mean: [0.5, 1.5] },
        present: { ...bins, name: "hanging", low: [2, 2], high: [2, 2], mean: [2, 2] },
      },
    ],
    states: [{ name: "skinning", endSeconds: 120, binSeconds: 60, seconds: [60, 0, 60, 0, 0, 0, 90, 30, 0, 0, 0, 0] }],
  };
}
