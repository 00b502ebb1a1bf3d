import type { Plan } from "../../asked/plan/index.ts";
import { type Change, planWith, type Variant } from "../../asked/study/index.ts";
import { appraise } from "../options/index.ts";
import type { ImproveQuestion } from "./question.ts";
import { type Counts, spent } from "./space.ts";

/** One way to share out the total. */
export interface CandidateDesign {
  /** The same text for the same counts; "base" for the plan as it is. */
  key: string;
  name: string;
  /** Null of the plan as it is where that has more of something than can be counted. */
  counts: Counts | null;
  /** Of the total; null with the counts. */
  spent: number | null;
  change: Change;
  plan: Plan;
  /** What its purchases cost a day, in the plan's currency; 0 where that is not reckoned. */
  chargePerDay: number;
}

const NOTHING: Change = { set: {}, insert: [], remove: [] };

/** Designs by their counts, each read once. */
export class Designs {
  readonly base: CandidateDesign;
  readonly #question: ImproveQuestion;
  readonly #known = new Map<string, CandidateDesign | null>();

  constructor(question: ImproveQuestion) {
    this.#question = question;
    const { base, space } = question;
    const known = space.base.every((count) => count !== null);
    const counts = known ? (space.base as Counts) : null;
    this.base = {
      ...{ key: "base", name: base.name, change: NOTHING, plan: base.plan, chargePerDay: 0, counts },
      spent: counts === null ? null : spent(space, counts),
    };
    if (counts !== null) this.#known.set(counts.join(), this.base);
  }

  /** Null where its parts do not go together in one plan. */
  of(counts: Counts): CandidateDesign | null {
    const key = counts.join();
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const design = this.#read(counts, key);
    this.#known.set(key, design);
    return design;
  }

  #read(counts: Counts, key: string): CandidateDesign | null {
    const { base, space } = this.#question;
    const change = space.changeOf(counts);
    const { plan } = planWith(base, change);
    if (plan === null) return null;
    return {
      ...{ key, name: space.nameOf(counts), counts, change, plan },
      spent: spent(space, counts),
      chargePerDay: this.#chargeOf(counts),
    };
  }

  #chargeOf(counts: Counts): number {
    const { yearly, space } = this.#question;
    if (yearly === null) return 0;
    const bought = space.offerCosts.filter((_, option) => counts[option] === 1);
    const perYear = bought.reduce((sum, cost) => sum + appraise(cost, 0, yearly.interest).perYear, 0);
    return -perYear / yearly.daysPerYear;
  }
}

/** The design as a study has its variants. */
export function variantOf({ name, change, plan }: CandidateDesign): Variant {
  return { name, levels: [], ...change, plan };
}
