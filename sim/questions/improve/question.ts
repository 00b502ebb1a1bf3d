import type { Plan, TextFiles } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Goal } from "./goal.ts";
import type { Space } from "./space.ts";

/** A checked question: what is to be shared out, to what end, and how much may be tried. */
export interface ImproveQuestion {
  name: string;
  question: string;
  seed: string;
  confidence: number;
  /** The plan as it is. */
  base: { name: string; json: unknown; files: TextFiles; plan: Plan };
  goal: Goal;
  /** The response of the goal. */
  response: ResponseInfo;
  space: Space;
  limits: AskedLimit[];
  /** Smallest difference worth finding, in the response's unit; null: 1 % of what the plan as it is does. */
  difference: number | null;
  /** Least probability of picking the best finalist. */
  probability: number;
  firstStage: number;
  atMost: number;
  search: { days: number; designs: number; finalists: number; curve: number };
  /** For what is bought; null where nothing is reckoned. */
  yearly: { interest: number; daysPerYear: number } | null;
}

export interface AskedLimit {
  /** Name of the plan's time limit, or "orders". */
  name: string;
  /** Key of the share of heads outside it, or of the orders that are met. */
  key: string;
  /** The share of heads outside it, or of orders that are late, has to stay below this. */
  share: number;
  of: "heads" | "orders";
}
