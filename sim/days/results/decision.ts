import type { QuestionKind } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Estimate } from "../../maths/statistics/index.ts";
import type { Difference, MeanEstimate } from "./figures.ts";

/** What a study's answer comes to. `told`: the question was how much, where or when, and the sentence says it. */
export type VerdictKind = "yes" | "no" | "too small" | "undecided" | "told";

/** The answer to a study's question, and the table that somebody decides by. */
export interface Decision {
  kind: QuestionKind;
  /** The study file named no kind of question, and it was taken from what the study varies and asks for. */
  inferred: boolean;
  answer: VerdictKind;
  /** The answer in one sentence. */
  verdict: string;
  /** What it rests on, each sentence true by itself. */
  words: string[];
  /** What to do next. */
  next: string[];
  /** Key of the response that decides. */
  deciding: string;
  /** The least difference in it that matters, in its own unit, and whether the asker set it. */
  matters: { size: number; asked: boolean };
  /** Of the table, in this order. */
  columns: ResponseInfo[];
  /** One for each variant, today's plan first. */
  rows: DecisionRow[];
  /** Index of the variant to take; 0 is today's plan, null where none can be named. */
  best: number | null;
}

export interface DecisionRow {
  name: string;
  /** Most people on the plan at once; null without crews. */
  people: number | null;
  /** By key of the column; absent where the variant has no value. */
  estimates: Record<string, MeanEstimate>;
  /** To today's plan, on the same days; absent for today's plan itself. */
  differences: Record<string, Difference>;
  /** Why it must not be chosen, whatever it gains; null where nothing speaks against it. */
  harm: string | null;
  /** How its difference in the deciding response compares with the least that matters; null for today's plan. */
  gain: Gain | null;
  /** What it brings or costs beside today's plan; null for today's plan and without money. */
  money: NetMoney | null;
}

/** A difference the wanted way round: above 0 is better. In the response's unit; for clock times in seconds. */
export interface Gain {
  /**
   * `gain`: shown, and as large as matters. `too small`: shown to be better, but by less. `no difference`: none that
   * matters is left possible. `open`: the days cannot tell. `loss`: shown to be worse.
   */
  size: "gain" | "too small" | "no difference" | "open" | "loss";
  mean: number;
  low: number;
  high: number;
}

/** In the plan's currency; above 0 is money that stays. */
export interface NetMoney {
  currency: string;
  /** What is reckoned: the margin where the plan has prices, else the cost saved at today's number of heads. */
  by: "margin" | "cost";
  /** A working day, or all of a week, all costs of the plan included. */
  perDay: Estimate;
  /** How many working days that is; left out: one. */
  daysTogether?: number;
  size: Gain["size"];
  daysPerYear: number;
  /** Neither the plan's plant costs nor its machines say how many days it works a year. */
  daysAssumed: boolean;
  /** Price of the machines that today's plan has not, less those that it no longer has. */
  price: number;
  /** Of that price by what is earned before its own straight-line charge; null without a price or without a gain. */
  paybackYears: number | null;
}
