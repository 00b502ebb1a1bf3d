import { STATES, type StageRecord, type State } from "../engine/index.ts";
import { type Step, steps } from "../line/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";

/** Key of each state share; `working.skinning` and so on. */
const STATE_KEYS: Record<State, string> = {
  working: "working",
  blocked: "blocked",
  starved: "starved",
  "no crew": "noCrew",
  down: "down",
  "on break": "onBreak",
};

/** Queues and state shares of every stage, crate steps first, then the line in its order. */
export function stageResponses(plan: Plan): Response[] {
  return steps(plan).flatMap(ofStep);
}

function ofStep(step: Step): Response[] {
  const { name } = step;
  switch (step.kind) {
    case "crates":
      return [...queueOf(name, "Crates"), ...statesOf(name, STATES), stopsOf(name)];
    case "station":
      return [...queueOf(name, "Heads"), ...statesOf(name, STATES), stopsOf(name)];
    case "chain station":
      return [...statesOf(name, STATES), stopsOf(name)];
    case "chain":
      return presentIn(name, `Heads on ${name}`);
    case "dwell": {
      // A dwell stage has no people and no repairs; without a limit on its places it has no shares at all.
      const shares = Number.isFinite(step.of.places) ? statesOf(name, ["working", "blocked", "starved"]) : [];
      return [...presentIn(name, `Heads in ${name}`), ...shares];
    }
  }
}

function queueOf(stage: string, things: "Heads" | "Crates"): Response[] {
  return levelOf(stage, `${things} waiting before ${stage}`, things.toLowerCase());
}

function presentIn(stage: string, label: string): Response[] {
  return levelOf(stage, label, "heads");
}

function levelOf(stage: string, label: string, unit: string): Response[] {
  const row = (key: "mean" | "max", words: string): Response => ({
    key: `queue.${stage}.${key}`,
    label: `${label}, ${words}`,
    unit,
    format: "number",
    better: null,
    of: ({ stages }) => recordOf(stages, stage)?.queue[key] ?? null,
  });
  return [row("mean", "time average"), row("max", "most at once")];
}

function statesOf(stage: string, states: readonly State[]): Response[] {
  return states.map((state) => ({
    key: `${STATE_KEYS[state]}.${stage}`,
    label: `${stage}: ${state}`,
    unit: "share of position time",
    format: "share",
    better: null,
    of: ({ stages }) => stateShare(recordOf(stages, stage), state),
  }));
}

/** Share of the stage's position-seconds in the state; null when none were watched. */
function stateShare(record: StageRecord | undefined, state: State): number | null {
  if (record === undefined) return null;
  const total = record.stateSeconds.reduce((sum, seconds) => sum + seconds, 0);
  return total > 0 ? record.stateSeconds[STATES.indexOf(state)]! / total : null;
}

function stopsOf(stage: string): Response {
  return {
    key: `stops.${stage}`,
    label: `${stage}: stops for repair`,
    unit: "stops",
    format: "number",
    better: "less",
    of: ({ stages }) => recordOf(stages, stage)?.stops ?? null,
  };
}

function recordOf(stages: readonly StageRecord[], name: string): StageRecord | undefined {
  return stages.find((stage) => stage.name === name);
}
