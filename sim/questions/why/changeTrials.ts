import type { Plan } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study, type Variant } from "../../asked/study/index.ts";
import type { StudyResults } from "../../days/results/index.ts";
import { type DayJournal, DaysFailed, type Simulate, type SimulatedDay } from "../../days/run/index.ts";
import type { PlanChange } from "./change.ts";

export interface TrialsQuestion {
  plan: Plan;
  name: string;
  seed: string;
  confidence: number;
  /** Kept of each day, the one that tells the worth first. */
  responses: string[];
  traces: "none" | "binned";
}

/** Values by response, one for each day; null where a day has none. */
export type Values = Readonly<Record<string, (number | null)[]>>;

const BASE = "base";

/**
 * Days of a plan and of changes to it on one seed, so that a day of one has the random numbers of the same day of every
 * other. No day is simulated twice.
 */
export class ChangeTrials {
  /** Days simulated so far. */
  simulated = 0;
  readonly #question: TrialsQuestion;
  readonly #simulate: Simulate;
  /** By name of the variant. */
  readonly #days = new Map<string, SimulatedDay[]>();
  readonly #values = new Map<string, Values>();
  readonly #failed = new Set<string>();

  constructor(question: TrialsQuestion, simulate: Simulate) {
    this.#question = question;
    this.#simulate = simulate;
  }

  /** Days of the change (null: of the plan as it is) that are known. */
  daysOf(change: PlanChange | null): number {
    return this.#days.get(change?.label ?? BASE)?.length ?? 0;
  }

  /** The values of those days. */
  valuesOf(change: PlanChange | null): Values {
    return this.#values.get(change?.label ?? BASE)!;
  }

  /** Whether a day with it could not be simulated. */
  hasFailed(change: PlanChange): boolean {
    return this.#failed.has(change.label);
  }

  /** Simulates so many days of the plan and of each change. A change of which a day fails is left out and marked; the plan's own failure is thrown. */
  async run(changes: readonly PlanChange[], days: number): Promise<StudyResults> {
    const tried = changes.filter((change) => !this.hasFailed(change));
    try {
      return await this.#ran(tried, days);
    } catch (error) {
      const short = tried.filter((change) => this.daysOf(change) < days);
      if (!(error instanceof DaysFailed) || this.daysOf(null) < days || short.length === 0) throw error;
      for (const { label } of short) this.#failed.add(label);
      return this.run(changes, days);
    }
  }

  async #ran(changes: readonly PlanChange[], days: number): Promise<StudyResults> {
    const study = this.#study(changes, days);
    const results = await this.#simulate(study, this.#journal(study), this.#question.traces);
    for (const { name, values } of results.variants) this.#values.set(name, values);
    return results;
  }

  #study(changes: readonly PlanChange[], replications: number): Study {
    const { plan, name, seed, confidence, responses } = this.#question;
    return {
      ...{ name, seed, confidence, responses, replications },
      ...{ question: "What should be changed first?", reader: "process engineer" },
      ...{ why: false, factors: [], design: { kind: "list" }, procedure: PLAIN_PROCEDURE },
      variants: [variant(BASE, plan, {}), ...changes.map((change) => changedVariant(change, plan))],
    };
  }

  #journal({ variants }: Study): DayJournal {
    const daysOf = (variant: number) => this.#days.get(variants[variant]!.name) ?? [];
    return {
      known: variants.flatMap((_, variant) => daysOf(variant).map((day) => ({ ...day, variant }))),
      note: (day) => {
        this.simulated++;
        this.#days.set(variants[day.variant]!.name, [...daysOf(day.variant), day]);
      },
    };
  }
}

function changedVariant(change: PlanChange, base: Plan): Variant {
  const { plan, set } = change.on(base);
  return variant(change.label, plan, set);
}

function variant(name: string, plan: Plan, set: Record<string, unknown>): Variant {
  return { name, levels: [], set, insert: [], remove: [], plan };
}
