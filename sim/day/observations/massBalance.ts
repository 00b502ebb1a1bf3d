import { chillLossNames, type Plan, presentationWords, publishedName } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import { carcassOutKg } from "./carcassKg.ts";

/** One line of the balance. */
export interface MassLine {
  /** What came in, or what became of it. "unaccounted" is rounding and nothing else. */
  kind:
    | "at the farm"
    | "hung"
    | "from before"
    | "carcass"
    | "chill loss"
    | "by-product"
    | "way out"
    | "left on the line"
    | "unaccounted";
  name: string;
  kilograms: number;
  /** Of the live weight hung. */
  share: number;
}

/** What went in and what came out of one day. */
export interface MassBalance {
  /** "cold carcass without head and paws, with ..."; the plan's own words, or "" where it says nothing. */
  presentation: string;
  /** A published definition that it fits, or null. */
  publishedAs: string | null;
  lines: MassLine[];
}

/** Live weight in, carcasses, by-products and all else out; null when nothing was hung, or the plan takes nothing off. */
export function massBalance(day: DayRecord, plan: Plan): MassBalance | null {
  const { masses } = day;
  const byProducts = Object.entries(masses.byProductsKg);
  if (!(masses.liveKg > 0) || byProducts.length === 0) return null;
  const line = (kind: MassLine["kind"], name: string, kilograms: number): MassLine => {
    return { kind, name, kilograms, share: kilograms / masses.liveKg };
  };
  const drips = new Set(chillLossNames(plan.line));
  const out = [
    line("carcass", CARCASS, carcassOutKg(day)),
    ...byProducts.map(([name, kg]) => line(drips.has(name) ? "chill loss" : "by-product", name, kg)),
    ...Object.entries(masses.outKg).flatMap(([name, kg]) => (name === CARCASS ? [] : [line("way out", name, kg)])),
    line("left on the line", "left on the line", masses.onLineKg),
  ];
  const before = masses.fromBeforeKg ?? 0;
  const known = out.reduce((sum, { kilograms }) => sum + kilograms, 0);
  const { presentation } = plan;
  const lost = presentation?.journeyLossShare ?? null;
  const farm = lost === null ? [] : [masses.liveKg / (1 - lost)];
  return {
    presentation: presentation === null ? plan.dressing : presentationWords(presentation),
    publishedAs: presentation === null ? null : publishedName(presentation),
    lines: [
      ...farm.map((kg) => line("at the farm", "live weight at the farm", kg)),
      line("hung", "live weight hung", masses.liveKg),
      ...(before === 0 ? [] : [line("from before", "on the line when the day began", before)]),
      ...out,
      line("unaccounted", "not accounted for", masses.liveKg + before - known),
    ],
  };
}
