import type { Plan } from "../../asked/plan/index.ts";
import { byKind } from "../../text/kinds/index.ts";
import { type OwnTime, STATES, type StageRecord, type State } from "../engine/index.ts";
import { type Step, steps } from "../line/index.ts";
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

/** What a state is called where it stands by itself. */
const STATE_WORDS: Record<State, string> = {
  working: "working",
  blocked: "cannot pass its head on",
  starved: "waits for heads",
  "no crew": "waits for people",
  down: "broken down",
  "on break": "on break",
};

/** Queues and state shares of every stage, crate steps first, then the line in its order. */
export function stageResponses(plan: Plan): Response[] {
  return steps(plan).flatMap(ofStep);
}

function ofStep(step: Step): Response[] {
  const { name } = step;
  const worked = () => [...statesOf(name, STATES), stopsOf(name)];
  return byKind(step, {
    crates: () => [...queueOf(name, "Crates"), ...worked()],
    station: () => [...queueOf(name, "Heads"), ...worked()],
    // It has no people and no repairs; without a limit on its places it has no shares at all.
    dwell: ({ of }) => {
      const shares = Number.isFinite(of.places) ? statesOf(name, ["working", "blocked", "starved"]) : [];
      return [...presentIn(name, `Heads in ${name}`), ...shares];
    },
    chain: () => presentIn(name, `Heads on ${name}`),
    "chain station": worked,
  });
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
  return [row("mean", "average"), row("max", "most at once")];
}

/** What a station's shares are taken over. */
export const OWN_TIME =
  "Own time: from a station's first head to its last, without its breaks and the hours without its crew.";
const BETWEEN_HEADS =
  "Breaks and hours without its crew, as a share of the time from a station's first head to its last.";
const CLOCK = "By the clock: the whole day, also the hours before a station's first head and after its last.";

/** Of its own time, then of the whole day by the clock. */
function statesOf(stage: string, states: readonly State[]): Response[] {
  return [...states.map((state) => ofOwnTime(stage, state)), ...states.map((state) => ofClock(stage, state))];
}

function ofOwnTime(stage: string, state: State): Response {
  const isBreak = state === "on break";
  return {
    key: `${STATE_KEYS[state]}.${stage}`,
    label: `${stage}: ${STATE_WORDS[state]}, share of ${isBreak ? "the time from its first head to its last" : "its own time"}`,
    meaning: isBreak ? BETWEEN_HEADS : OWN_TIME,
    unit: isBreak ? "share of position time from first to last head" : "share of own position time",
    format: "share",
    better: null,
    of: ({ stages }) => ownShare(recordOf(stages, stage)?.ownTime ?? null, state),
  };
}

function ofClock(stage: string, state: State): Response {
  return {
    key: `${STATE_KEYS[state]}.${stage}.byClock`,
    label: `${stage}: ${STATE_WORDS[state]}, share of the day by the clock`,
    meaning: CLOCK,
    unit: "share of position time",
    format: "share",
    better: null,
    of: ({ stages }) => shareOf(recordOf(stages, stage)?.stateSeconds ?? [], state),
  };
}

/**
 * Share of a stage's own time in the state: of its position-seconds between its first head and its last without those on
 * break; time on break itself of all of them. Null for a stage that no head could reach, or that was on break throughout.
 */
export function ownShare(own: OwnTime | null, state: State): number | null {
  if (own === null) return null;
  if (state === "on break") return shareOf(own.stateSeconds, state);
  return shareOf(
    own.stateSeconds.map((seconds, index) => (STATES[index] === "on break" ? 0 : seconds)),
    state,
  );
}

function shareOf(stateSeconds: readonly number[], state: State): number | null {
  const total = stateSeconds.reduce((sum, seconds) => sum + seconds, 0);
  return total > 0 ? stateSeconds[STATES.indexOf(state)]! / total : null;
}

function stopsOf(stage: string): Response {
  return {
    key: `stops.${stage}`,
    label: `${stage}: breakdowns`,
    unit: "stops",
    format: "number",
    better: "less",
    of: ({ stages }) => recordOf(stages, stage)?.stops ?? null,
  };
}

function recordOf(stages: readonly StageRecord[], name: string): StageRecord | undefined {
  return stages.find((stage) => stage.name === name);
}
