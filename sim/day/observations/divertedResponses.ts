import type { Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { StageRecord } from "../engine/index.ts";
import { stageOf, steps } from "../line/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";

/** Heads that a stage sent elsewhere or let pass because of their weight, for each stage that can. */
export function divertedResponses(plan: Plan): Response[] {
  return steps(plan).flatMap((step) => {
    const { name } = step;
    const stage = stageOf(step);
    if (stage === null) return [];
    const outside = does(stage, "work") && stage.weights !== null;
    return [
      ...(outside ? [share(name, "outsideWeights", "passed unworked, outside the machine's weights", "unworked")] : []),
      ...(stage.diversions.length > 0 ? [share(name, "diverted", "sent to another stage", "diverted")] : []),
    ];
  });
}

/** Of all heads that came: those worked on and those that passed. */
function share(stage: string, key: string, words: string, count: "unworked" | "diverted"): Response {
  const of = (record: StageRecord) => per(record[count], record.processed + record.unworked);
  return row(
    `${key}.${stage}`,
    `${stage}: heads ${words}`,
    "share of heads",
    (day) => {
      const record = stageRecordOf(day, stage);
      return record === undefined ? null : of(record);
    },
    { format: "share" },
  );
}
