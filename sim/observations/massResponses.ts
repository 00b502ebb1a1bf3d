import type { DayRecord } from "../engine/index.ts";
import { CARCASS, steps } from "../line/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";

/** Live weight, carcass weight, dressing percentage, by-products, and whether all mass is accounted for. */
export function massResponses(plan: Plan): Response[] {
  const names = byProductNames(plan);
  const live = row("liveKg", "Live weight hung", "kg", ({ masses }) => masses.liveKg);
  const balance = row(
    "massBalanceError",
    "Mass not accounted for (rounding only)",
    "share of live weight",
    balanceError,
    { format: "share", better: "less" },
  );
  const carcass = row("carcassKg", "Carcass weight out", "kg", carcassKg, { better: "more" });
  return names.length === 0
    ? [live, carcass, balance]
    : [live, carcass, dressing(plan), balance, ...names.map((name) => byProduct(name))];
}

/** In line order, each once. */
function byProductNames(plan: Plan): string[] {
  const taken = steps(plan).flatMap((step) => (step.kind === "crates" ? [] : step.of.byProducts));
  return [...new Set(taken.map(({ name }) => name))];
}

function carcassKg({ masses }: DayRecord): number {
  return masses.outKg[CARCASS] ?? 0;
}

/** Of the heads that left as carcasses; what cut-up took off them is not carcass any more. */
function dressing(plan: Plan): Response {
  const words = plan.dressing === "" ? "" : ` (${plan.dressing})`;
  return row(
    "dressingPercentage",
    `Dressing percentage${words}`,
    "share of live weight",
    (day) => per(carcassKg(day), day.masses.carcassLiveKg),
    { format: "share", better: "more" },
  );
}

function byProduct(name: string): Response {
  return row(`byProduct.${name}`, `By-product: ${name}`, "kg", ({ masses }) => masses.byProductsKg[name] ?? 0);
}

function balanceError({ masses }: DayRecord): number | null {
  const sum = (kilograms: Record<string, number>) => Object.values(kilograms).reduce((total, kg) => total + kg, 0);
  const known = sum(masses.byProductsKg) + sum(masses.outKg) + masses.onLineKg;
  return per(Math.abs(masses.liveKg - known), masses.liveKg);
}
