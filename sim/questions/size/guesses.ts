import { calledFigure, formatPath, isRecord, readPlan, spreadAt, type TextFiles } from "../../asked/plan/index.ts";

/** A figure of a plan that nobody measured, as its file names it. */
export interface GuessEntry {
  name: string;
  paths: string[];
  guess: "a third";
  note: string;
}

/** A plan's ceiling of uncertain figures. */
const MAX_GUESSES = 100;
const NOTE = "Assumed by gambrel size; time it, or ask who knows the machine";

/**
 * The cycle times and breakdowns of a sized plan that its demand left to be assumed, each as a guess that may be a third off:
 * named as `gambrel fit --uncertain` names what was timed, so that this can take its place. Those with which the plan would not
 * be sound are left out.
 */
export function guessesOf(plan: Record<string, unknown>, demand: unknown, files: TextFiles): GuessEntry[] {
  const given = isRecord(demand) && isRecord(demand.steps) ? demand.steps : {};
  const stages = Array.isArray(plan.line) ? plan.line.filter(isRecord) : [];
  const entries = stages
    .flatMap((stage) =>
      entriesOf(stage, isRecord(given[String(stage.name)]) ? (given[String(stage.name)] as object) : {}),
    )
    .filter(({ paths }) => spreadAt(plan, paths[0]!) !== null)
    .slice(0, MAX_GUESSES);
  const isSound = (uncertain: GuessEntry[]) => readPlan({ ...plan, uncertain }, files).faults.length === 0;
  return isSound(entries) ? entries : entries.filter((entry) => isSound([entry]));
}

function entriesOf(stage: Record<string, unknown>, given: object): GuessEntry[] {
  const name = String(stage.name);
  const breakdowns = Array.isArray(stage.breakdowns) ? stage.breakdowns.filter(isRecord) : [];
  const cycle = "cycle" in given || "rate" in given ? [] : [entry(name, "cycle", null)];
  const stops =
    "breakdowns" in given
      ? []
      : breakdowns.flatMap((breakdown) =>
          (["uptime", "repair"] as const).map((key) => entry(name, key, String(breakdown.name))),
        );
  return [...cycle, ...stops];
}

function entry(stage: string, figure: "cycle" | "uptime" | "repair", breakdown: string | null): GuessEntry {
  const path = ["line", stage, ...(breakdown === null ? [] : ["breakdowns", breakdown]), figure];
  const name = calledFigure({ stage, figure, breakdown });
  return { name, paths: [formatPath(path)], guess: "a third", note: NOTE };
}
