import type { Plan } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind } from "../../text/kinds/index.ts";
import { type DayRecord, STATES, type State } from "../engine/index.ts";
import { type Step, steps } from "../line/index.ts";
import { type Oee, type OeeElements, oee } from "./oee.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { workingSeconds } from "./workingTime.ts";

/** OEE and its factors for every machine, and for every station of one position. */
export function oeeResponses(plan: Plan): Response[] {
  return steps(plan)
    .filter(isEquipment)
    .flatMap((step) => FACTORS.map(([factor, key, words]) => factorRow(step, plan, factor, key, words)));
}

type Equipment = Extract<Step, { kind: "station" | "chain station" }>;

const FACTORS: [factor: keyof Oee, key: string, words: string][] = [
  ["oee", "oee", "OEE index"],
  ["availability", "availability", "availability (time worked / planned busy time)"],
  ["effectiveness", "effectiveness", "effectiveness (planned run time of its output / time worked)"],
  ["quality", "qualityRatio", "quality ratio (good / all heads)"],
];

function isEquipment(step: Step): step is Equipment {
  return byKind(step, {
    crates: () => false,
    station: ({ of }) => of.work === "machine" || of.positions === 1,
    dwell: () => false,
    chain: () => false,
    "chain station": ({ of }) => of.crews.length === 0 || of.positions === 1,
  });
}

function factorRow(step: Equipment, plan: Plan, factor: keyof Oee, key: string, words: string): Response {
  const of: Response["of"] = (day) => {
    const elements = elementsOf(step, day, plan);
    return elements === null ? null : oee(elements)[factor];
  };
  const label = `${step.name}: ${words}`;
  return row(`${key}.${step.name}`, label, "ratio, after ISO 22400-2", of, { format: "share", better: "more" });
}

/**
 * Planned operation time is that of the shifts up to the end of work, with overtime, on all positions; the planned run time
 * of an item is the mean cycle at the reference weight. Heads that left a chain's window unfinished or were sent to another
 * stage are produced but not good; those condemned are: the finding is about the animal.
 */
function elementsOf(step: Equipment, day: DayRecord, plan: Plan): OeeElements | null {
  const record = stageRecordOf(day, step.name);
  if (record === undefined) return null;
  const seconds = (state: State) => record.stateSeconds[STATES.indexOf(state)] ?? 0;
  const produced = record.processed + record.unfinished;
  return {
    plannedBusySeconds: workingSeconds(day, plan) * step.of.positions - seconds("on break"),
    productionSeconds: seconds("working"),
    itemSeconds: meanOf(step.of.cycleSeconds),
    produced,
    good: Math.max(0, produced - record.unfinished - record.diverted),
  };
}
