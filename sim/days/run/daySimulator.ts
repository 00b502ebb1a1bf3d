import { drawsOf } from "../../asked/study/index.ts";
import { type DayRecord, runDay } from "../../day/engine/index.ts";
import { type CompiledLine, compileLine } from "../../day/line/index.ts";
import { measurer, needsBinding, needsKillStops } from "../../day/observations/index.ts";
import type { Batch } from "./batch.ts";
import { type DaySource, recordedTraces } from "./daySource.ts";
import type { BatchResult, SimulatedDay } from "./simulatedDay.ts";

/** What the days of a variant have in common. */
interface Prepared {
  line: CompiledLine;
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
    const draws = drawsOf(this.#source, replication);
    const traces = traced ? recordedTraces(this.#source.traces) : "none";
    const recorded = { binding: this.#binding, killStops: replication === 0 || this.#killStops };
    return runDay(this.#preparedOf(variant).line, { seed, ...draws, traces, check, mostEvents, ...recorded });
  }

  #preparedOf(variant: number): Prepared {
    const { plans, keys } = this.#source;
    const plan = plans[variant]!;
    const prepared = this.#prepared.get(variant) ?? { line: compileLine(plan), valuesOf: measurer(plan, keys) };
    this.#prepared.delete(variant);
    this.#prepared.set(variant, prepared);
    if (this.#prepared.size > MAX_PREPARED) this.#prepared.delete(this.#prepared.keys().next().value!);
    return prepared;
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
