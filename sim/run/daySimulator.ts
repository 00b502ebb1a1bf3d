import { runDay } from "../engine/index.ts";
import { type CompiledLine, compileLine } from "../line/index.ts";
import { measure, needsBinding } from "../observations/index.ts";
import { drawsOf } from "../study/index.ts";
import type { Batch } from "./batch.ts";
import type { DaySource } from "./daySource.ts";
import type { BatchResult, SimulatedDay } from "./simulatedDay.ts";

/**
 * Simulates days of a study; each variant's line is compiled when it is first met, and once. A replication has the same
 * random numbers in every variant: differences are of the variants, not of the luck (common random numbers).
 */
export class DaySimulator {
  readonly #source: DaySource;
  readonly #lines: (CompiledLine | undefined)[] = [];

  constructor(source: DaySource) {
    this.#source = source;
  }

  simulate(variant: number, replication: number): SimulatedDay {
    const { plans, seed, keys, check, mostEvents } = this.#source;
    const plan = plans[variant]!;
    this.#lines[variant] ??= compileLine(plan);
    const keep = replication === 0;
    const traces = keep ? this.#source.traces : "none";
    const draws = drawsOf(this.#source, replication);
    const binding = keys.some(needsBinding);
    const day = runDay(this.#lines[variant], { seed, ...draws, traces, check, mostEvents, binding });
    const measured = measure(day, plan);
    return { variant, replication, values: keys.map((key) => measured[key] ?? null), day: keep ? day : null };
  }

  /** A day that fails does so alone: the others of its batch are simulated. Ends early once `stopped` says so. */
  simulateBatch({ variant, first, count }: Batch, stopped: () => boolean = () => false): BatchResult {
    const result: BatchResult = { days: [], failed: [] };
    for (let replication = first; replication < first + count && !stopped(); replication++) {
      try {
        result.days.push(this.simulate(variant, replication));
      } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        result.failed.push({ variant, replication, message });
      }
    }
    return result;
  }
}
