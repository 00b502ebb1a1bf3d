import type { Plan } from "../../../sim/asked/plan/index.ts";
import type { Study } from "../../../sim/asked/study/index.ts";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import type { Batch, BatchResult, DaySource, SimulatedDay } from "../../../sim/days/run/index.ts";

/** A plan as a person wrote it: its text, what to call it in messages, and the CSV files it may name. */
export interface PlanText {
  name: string;
  text: string;
  files: Record<string, string>;
}

/** What is asked of the plan: the base, what is changed in the variant, and which days are run. */
export interface Question {
  plan: PlanText;
  /** Path -> value, as a study file sets them. */
  set: Record<string, unknown>;
  seed: string;
  replications: number;
  /** Each day is also wanted in a world of its own, whose uncertain figures are drawn anew. */
  inWorlds?: boolean;
}

/** What a worker is asked to do. */
export type Task =
  | { kind: "read"; question: Question }
  | { kind: "course"; plan: Plan; seed: string; replication: number }
  /** Days of a study; `source` is left out when the worker has it already under this number. */
  | { kind: "days"; number: number; source: DaySource | null; batch: Batch }
  | { kind: "results"; study: Study; days: SimulatedDay[] };

export type Answer<Kind extends Task["kind"]> = Kind extends "read"
  ? QuestionReading
  : Kind extends "course"
    ? DayCourse
    : Kind extends "days"
      ? BatchResult
      : StudyResults;

/** What reading found: the study to run, or the faults in the CLI's own words, and warnings. */
export interface QuestionReading {
  study: Study | null;
  /** What workers need to simulate its days. */
  source: DaySource | null;
  faults: PlanFault[];
  /** Where worlds are wanted: the plans of each of them, those of a world side by side. */
  worldPlans: Plan[] | null;
  /** Faults that only the variant's changes bring in. */
  variantFaults: PlanFault[];
  warnings: PlanFault[];
}

/** A fault with its place, so that text and form can point at it. `line` is what the command line would say. */
export interface PlanFault {
  /** Path into the plan ("line[4].crew"), or "line 3, column 4" for text that is no JSON. */
  path: string;
  /** Without the path. */
  words: string;
  line: string;
}

/** Without a task: the answer to the one with this number is not wanted any more. */
export type Outgoing = { id: number; task: Task | null };
export type Incoming = { id: number; answer: unknown } | { id: number; error: string; name: string };

/** A task that was given up because nobody wants its answer any more; its name tells it apart among a worker's errors. */
export class TaskCancelled extends Error {
  override name = "TaskCancelled";
}
