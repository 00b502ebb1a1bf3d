import { type Plan, presentationWords } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { byProductsOf, steps } from "../line/index.ts";
import { carcassOutKg, carcassSoldKg, weighedLiveKg } from "./carcassKg.ts";
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
  const carcass = row("carcassKg", "Carcass weight out", "kg", carcassOutKg, { better: "more" });
  return names.length === 0
    ? [live, carcass, balance]
    : [live, carcass, dressing(plan), balance, ...names.map((name) => byProduct(name))];
}

/** In line order, each once. */
function byProductNames(plan: Plan): string[] {
  const taken = steps(plan).flatMap(byProductsOf);
  return [...new Set(taken.map(({ name }) => name))];
}

/**
 * Of the heads that left as carcasses; what cut-up took off them is not carcass any more. Hot or cold, of the live weight at the
 * farm or at slaughter, as the plan's presentation says.
 */
function dressing(plan: Plan): Response {
  return row(
    "dressingPercentage",
    `Dressing percentage${dressingWords(plan)}`,
    `share of live weight${plan.presentation === null ? "" : ` at ${plan.presentation.liveWeight === "farm" ? "the farm" : "slaughter"}`}`,
    (day) => per(carcassSoldKg(day, plan), weighedLiveKg(day.masses.carcassLiveKg, plan)),
    { format: "share", better: "more" },
  );
}

function dressingWords({ presentation, dressing: words }: Plan): string {
  if (presentation !== null) return ` (${presentationWords(presentation)})`;
  return words === "" ? "" : ` (${words})`;
}

function byProduct(name: string): Response {
  return row(`byProduct.${name}`, `By-product: ${name}`, "kg", ({ masses }) => masses.byProductsKg[name] ?? 0);
}

function balanceError({ masses }: DayRecord): number | null {
  const sum = (kilograms: Record<string, number>) => Object.values(kilograms).reduce((total, kg) => total + kg, 0);
  const known = sum(masses.byProductsKg) + sum(masses.outKg) + masses.onLineKg;
  return per(Math.abs(masses.liveKg + (masses.fromBeforeKg ?? 0) - known), masses.liveKg);
}
