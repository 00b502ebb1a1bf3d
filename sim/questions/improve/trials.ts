import type { Plan } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study, type Variant } from "../../asked/study/index.ts";
import { countedDays } from "../../day/observations/index.ts";
import { decisionKeys } from "../../days/decision/index.ts";
import { harmResponses, type Why } from "../../days/results/index.ts";
import type { DayJournal, Simulate, SimulatedDay } from "../../days/run/index.ts";
import { does } from "../../text/kinds/index.ts";
import { type CandidateDesign, variantOf } from "./designs.ts";
import type { ImproveQuestion } from "./question.ts";

/** Some days of one design. */
export interface Trial {
  design: CandidateDesign;
  /** The goal's value of each day, purchases charged. */
  values: (number | null)[];
  /** Of each response, a value for each day. */
  responses: Readonly<Record<string, (number | null)[]>>;
  /** Where the time to the end of work went; null where that was not asked, or cannot be told. */
  why: Why | null;
}

/** Days of designs on one seed, so that a day of one has the random numbers of the same day of every other. */
export class Trials {
  /** Days simulated so far; none is simulated twice. */
  simulated = 0;
  readonly #question: ImproveQuestion;
  readonly #simulate: Simulate;
  readonly #seed: string;
  readonly #why: boolean;
  readonly #keys: string[];
  /** By design: its days as a journal knows them, and what was read of them. */
  readonly #days = new Map<string, SimulatedDay[]>();
  readonly #trials = new Map<string, Trial>();

  constructor(question: ImproveQuestion, simulate: Simulate, seed: string, why: boolean) {
    this.#question = question;
    this.#simulate = simulate;
    this.#seed = seed;
    this.#why = why;
    this.#keys = responsesFor(question);
  }

  /** Days of the design that were simulated. */
  known({ key }: CandidateDesign): number {
    return this.#days.get(key)?.length ?? 0;
  }

  /** So many days of each of these designs. */
  async of(designs: readonly CandidateDesign[], days: number): Promise<Trial[]> {
    const short = designs.filter(({ key }) => (this.#trials.get(key)?.values.length ?? 0) < days);
    if (short.length > 0) {
      const { variants } = await this.#simulate(this.#study(short, days), this.#journal(short), "none");
      for (const [index, { values, why }] of variants.entries()) {
        const design = short[index]!;
        this.#trials.set(design.key, { design, values: this.#goalOf(design, values), responses: values, why });
      }
    }
    return designs.map(({ key }) => firstDays(this.#trials.get(key)!, days));
  }

  #study(designs: readonly CandidateDesign[], replications: number): Study {
    const { name, question, confidence } = this.#question;
    return {
      ...{ name, question, reader: "process engineer", confidence, seed: this.#seed, replications },
      ...{ responses: this.#keys, why: this.#why, factors: [] },
      variants: designs.map((design) => this.#variant(design)),
      design: { kind: "list" },
      procedure: PLAIN_PROCEDURE,
    };
  }

  #variant(design: CandidateDesign): Variant {
    const variant = variantOf(design);
    return this.#question.yearly === null ? variant : { ...variant, plan: withoutCapital(variant.plan) };
  }

  /** With what tells why, the values of a day depend on the designs that it is simulated with: then none is kept. */
  #journal(designs: readonly CandidateDesign[]): DayJournal {
    const daysOf = ({ key }: CandidateDesign) => this.#days.get(key) ?? [];
    return {
      known: this.#why ? [] : designs.flatMap((design, variant) => daysOf(design).map((day) => ({ ...day, variant }))),
      note: (day) => {
        const design = designs[day.variant]!;
        this.simulated++;
        this.#days.set(design.key, [...daysOf(design), day]);
      },
    };
  }

  #goalOf({ chargePerDay }: CandidateDesign, responses: Trial["responses"]): (number | null)[] {
    const values = responses[this.#question.response.key]!;
    const { response, base } = this.#question;
    const days = base.plan.week === undefined ? 1 : countedDays(base.plan).length;
    const charge = (response.better === "less" ? -1 : 1) * chargePerDay * days;
    return charge === 0 ? values : values.map((value) => (value === null ? null : value - charge));
  }
}

/** The same with its first days alone. */
export function firstDays({ design, values, responses, why }: Trial, days: number): Trial {
  const first = Object.entries(responses).map(([key, list]) => [key, list.slice(0, days)] as const);
  return { design, values: values.slice(0, days), responses: Object.fromEntries(first), why };
}

/** What is read of each day: the goal, the limits, and what everyone looks at. */
function responsesFor({ response, limits, base }: ImproveQuestion): string[] {
  const asked = [response.key, ...limits.map(({ key }) => key), "headsPerHour", "carcasses", "finish", "overtime"];
  const ofOrders = (base.plan.week?.orders.length ?? 0) > 0 ? ["ordersMet"] : [];
  return [...new Set([...asked, ...harmResponses(base.plan), ...decisionKeys(base.plan), ...ofOrders])];
}

/** A purchase is charged at its average yearly cost; the plan's own capital would charge it twice. */
function withoutCapital(plan: Plan): Plan {
  const line = plan.line.map((stage) => {
    if (!does(stage, "carry stations")) return { ...stage, capital: null };
    return { ...stage, capital: null, stations: stage.stations.map((station) => ({ ...station, capital: null })) };
  });
  const week = plan.week && {
    ...plan.week,
    days: plan.week.days.map((day) => ({ ...day, plan: day.plan && withoutCapital(day.plan) })),
  };
  return { ...plan, line, ...(week === undefined ? {} : { week }) };
}
