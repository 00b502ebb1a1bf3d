import type { Plan } from "../../asked/plan/index.ts";
import { drawsOf } from "../../asked/study/index.ts";
import { compileWeek, type DayOptions, type DayRecord, runDay, runWeek } from "../../day/engine/index.ts";
import { compileLine } from "../../day/line/index.ts";
import {
  countedRecords,
  measurer,
  needsBinding,
  needsKillStops,
  weekMeasurer,
  weekNeedsBinding,
} from "../../day/observations/index.ts";
import type { Batch } from "./batch.ts";
import { type DaySource, recordedTraces } from "./daySource.ts";
import type { BatchResult, SimulatedDay } from "./simulatedDay.ts";

/** What the days of a variant have in common. */
interface Prepared {
  run(options: DayOptions): DayRecord;
  valuesOf(day: DayRecord): (number | null)[];
}

/** A full plant takes half a megabyte, in each thread; compiling it again some hundredths of a day's time. */
const MAX_PREPARED = 64;

/**
 * Simulates days of a study; each variant's line is compiled when it is met, and kept while it is one of the last 64. A replication has the same
 * random numbers in every variant: differences are of the variants, not of the luck (common random numbers).
 */
export class DaySimulator {
  readonly #source: DaySource;
  /** By variant, the one that was asked for last at the end. */
  readonly #prepared = new Map<number, Prepared>();
  readonly #binding: boolean;
  readonly #killStops: boolean;

  constructor(source: DaySource) {
    this.#source = source;
    this.#binding = source.keys.some(needsBinding);
    this.#killStops = source.keys.some(needsKillStops);
  }

  simulate(variant: number, replication: number): SimulatedDay {
    const keep = replication === 0;
    // Which other variant is drawn is known only when all days are: its first day is then simulated once more.
    const traced = keep && (variant === 0 || this.#source.traces === "all");
    const day = this.#day(variant, replication, traced);
    return { variant, replication, values: this.#preparedOf(variant).valuesOf(day), day: keep ? day : null };
  }

  /** The first day of a variant as it is drawn, with its traces. */
  drawnDay(variant: number): DayRecord {
    return this.#day(variant, 0, true);
  }

  #day(variant: number, replication: number, traced: boolean): DayRecord {
    const { seed, check, mostEvents } = this.#source;
    const draws = drawsOf(this.#source, variant, replication);
    const traces = traced ? recordedTraces(this.#source.traces) : "none";
    const recorded = { binding: this.#binding, killStops: replication === 0 || this.#killStops };
    return this.#preparedOf(variant).run({ seed, ...draws, traces, check, mostEvents, ...recorded });
  }

  #preparedOf(variant: number): Prepared {
    const { plans, keys } = this.#source;
    const found = this.#prepared.get(variant) ?? prepared(plans[variant]!, keys);
    this.#prepared.delete(variant);
    this.#prepared.set(variant, found);
    if (this.#prepared.size > MAX_PREPARED) this.#prepared.delete(this.#prepared.keys().next().value!);
    return found;
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

function prepared(plan: Plan, keys: readonly string[]): Prepared {
  if (plan.week !== undefined) return preparedWeek(plan, keys);
  const line = compileLine(plan);
  return { run: (options) => runDay(line, options), valuesOf: measurer(plan, keys) };
}

/** A week stands for a day: its record is that of the first day that counts, or of one that did not end, with the week. */
function preparedWeek(plan: Plan, keys: readonly string[]): Prepared {
  const compiled = compileWeek(plan);
  const valuesOf = weekMeasurer(plan, keys);
  const binding = weekNeedsBinding(plan, keys);
  return {
    run: (options) => {
      const week = runWeek(compiled, { ...options, binding });
      if (week.status === "finished") return { ...countedRecords(plan, week)[0]!, week };
      // The day that did not end tells why.
      return { ...week.days.at(-1)!, status: week.status === "overrun" ? "ceiling" : week.status, week };
    },
    valuesOf: ({ week }) => valuesOf(week!),
  };
}
