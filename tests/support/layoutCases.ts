import type { Plan } from "../../sim/asked/plan/index.ts";
import { type DayRecord, runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { type PlantLayout, plantLayout } from "../../sim/questions/dossier/index.ts";
import { designOf } from "./demands.ts";
import { readExample } from "./readExample.ts";

export interface LayoutCase {
  name: string;
  plan: Plan;
  days: DayRecord[];
  layout: PlantLayout;
}

const made = new Map<string, LayoutCase>();

/** A plan with two simulated days and its layout, made once for a file of tests. */
function caseOf(name: string, planOf: () => Plan): LayoutCase {
  const known = made.get(name);
  if (known !== undefined) return known;
  const plan = planOf();
  const line = compileLine(plan);
  const days = [0, 1].map((replication) => runDay(line, { seed: "layout", replication, traces: "binned" }));
  const found = { name, plan, days, layout: plantLayout(plan, days) };
  made.set(name, found);
  return found;
}

const sized = (heads: number, alternative: string) => () =>
  designOf({ week: { heads, days: 5 }, alternative, animals: { condemned: "0.9 %" } }).plan;

export const SMALL = () => caseOf("150 heads an hour", sized(4800, "compact plant"));
export const USUAL = () => caseOf("600 heads an hour", sized(20_000, "full line with lift"));
export const LARGE = () => caseOf("6000 heads an hour", sized(200_000, "full line automatic"));
export const FERNCOTE = () => caseOf("a plan with services of its own", () => readExample("ferncote").plan);
export const CHAINS = () => caseOf("a plan with chains", () => readExample("tavelmoss-chains").plan);
