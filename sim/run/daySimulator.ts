import { type DayRecord, runDay } from "../engine/index.ts";
import { type CompiledLine, compileLine } from "../line/index.ts";
import { measure } from "../observations/index.ts";
import type { Plan } from "../plan/index.ts";
import type { DayTask } from "./dayTasks.ts";

/** What is kept of a simulated day: its measures, and the day itself where the task says so. */
export interface DayOutcome {
  values: Record<string, number | null>;
  day: DayRecord | null;
}

/** Simulates one day after another; each variant's line is compiled once. */
export class DaySimulator {
  readonly #plans: readonly Plan[];
  readonly #seed: string;
  readonly #check: boolean;
  readonly #lines: (CompiledLine | undefined)[] = [];

  constructor(plans: readonly Plan[], seed: string, check: boolean) {
    this.#plans = plans;
    this.#seed = seed;
    this.#check = check;
  }

  simulate({ variant, replication, traces, keepDay }: DayTask): DayOutcome {
    const plan = this.#plans[variant]!;
    this.#lines[variant] ??= compileLine(plan);
    const day = runDay(this.#lines[variant], { seed: this.#seed, replication, traces, check: this.#check });
    return { values: measure(day, plan), day: keepDay ? day : null };
  }
}
