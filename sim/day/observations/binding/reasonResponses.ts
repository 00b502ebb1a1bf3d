import type { Plan } from "../../../asked/plan/index.ts";
import type { Cause, PathCell } from "../../engine/index.ts";
import { steps } from "../../line/index.ts";
import type { Response } from "../response.ts";
import { row } from "../row.ts";
import { BOTTLENECK, BOUND, reasonKey } from "./bindingKeys.ts";
import { reasonCells } from "./reasonCells.ts";
import { accountedSeconds, reasonSeconds } from "./reasonSeconds.ts";

export const TOTAL_KEY = `${BOUND}.total`;

export function shareKey(stage: string): string {
  return `${BOUND}.share.${stage}`;
}

export function bottleneckKey(kind: "sole" | "shifting", stage: string): string {
  return `${BOTTLENECK}.${kind}.${stage}`;
}

/** What the line waited for up to the end of work: seconds by cause at each stage, and each stage's share; then bottleneck shares. */
export function reasonResponses(plan: Plan): Response[] {
  const names = steps(plan).map(({ name }) => name);
  return [
    row(
      TOTAL_KEY,
      "End of work, from the day's start or the end of the warm-up",
      "s",
      (day) => (day.binding === null ? null : accountedSeconds(day)),
      {
        format: "duration",
        better: "less",
      },
    ),
    ...reasonCells(plan).map(reasonFor),
    ...names.map(shareOf),
    ...names.flatMap(bottleneckOf),
  ];
}

function reasonFor(cell: PathCell): Response {
  const isIt = (other: PathCell) =>
    other.cause === cell.cause && other.stage === cell.stage && other.detail === cell.detail;
  return row(reasonKey(cell), reasonLabel(cell), "s", (day) => reasonSeconds(day, isIt), {
    format: "duration",
    better: "less",
  });
}

function shareOf(stage: string): Response {
  return row(
    shareKey(stage),
    `${stage}: share of the day that the line waited for it`,
    "share of the day",
    (day) => {
      const seconds = reasonSeconds(day, (cell) => cell.stage === stage);
      const total = accountedSeconds(day);
      // A day on which nothing was worked has no time to share out.
      return seconds === null || total === 0 ? null : seconds / total;
    },
    { format: "share" },
  );
}

function bottleneckOf(stage: string): Response[] {
  const share = (key: "sole" | "shifting", words: string) =>
    row(
      bottleneckKey(key, stage),
      `${stage}: ${words}`,
      "share of the day",
      (day) => day.binding?.bottleneck.shares.find((each) => each.stage === stage)?.[key] ?? null,
      { format: "share" },
    );
  return [
    share("sole", "share of the day as the only bottleneck"),
    share("shifting", "share of the day while the bottleneck was moving to it or from it"),
  ];
}

const WORDS: Record<Cause, string> = {
  work: "its work",
  place: "its work, while it was full and heads before it waited",
  people: "its work, while its people were busy elsewhere",
  absent: "its work, while people were absent",
  "few people": "its work, with fewer people than positions",
  hold: "its work, while heads were held back",
  walking: "people walking there",
  repair: "repairs",
  repairer: "waiting for somebody to repair it",
  "shared breakdown": "repairs of",
  "shared repairer": "somebody to repair",
  dwell: "the time heads stay in it",
  travel: "the way to the next stage",
  chain: "the ride on it",
  "planned stop": "planned stops",
  help: "help for stunned heads that waited too long",
  emptying: "emptying of",
  load: "the arrival of",
  arrivals: "heads that arrive one by one",
  "lorry away": "crates that were under way",
  "left over": "what was left over from the day before",
};

/** "skinning: repairs (jam)", "the arrival of the first lorry". */
export function reasonLabel({ cause, stage, detail }: PathCell): string {
  const words = WORDS[cause];
  if (stage !== "") return `The line waited for ${stage}: ${words}${detail === "" ? "" : ` (${detail})`}`;
  return `The line waited for ${words}${detail === "" ? "" : ` ${detail}`}`;
}
