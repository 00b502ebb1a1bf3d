import type { Doubt, DoubtEstimate, DoubtFigure, ResponseInfo } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** Plans that a picture or a table of what is not known has room for. */
const MAX_SHOWN = 8;

/** The variants that are shown, in their order: today's plan and, of more than there is room for, those most surely the best. */
export function variantsShown({ variants, decision }: Doubt): number[] {
  const all = variants.map((_, variant) => variant);
  if (all.length <= MAX_SHOWN) return all;
  const worth = (variant: number) =>
    variant === 0 ? Number.POSITIVE_INFINITY : (decision?.variants[variant]?.chanceBest ?? Number.NEGATIVE_INFINITY);
  return all
    .sort((a, b) => worth(b) - worth(a))
    .slice(0, MAX_SHOWN)
    .sort((a, b) => a - b);
}

/** The variant whose figures are told: the best one where there is a choice, else today's plan. */
export function variantTold({ decision }: Doubt): number {
  return decision?.best ?? 0;
}

/** A figure's name; one that nobody measured is called a guess. */
export function doubtName({ name, kind }: DoubtFigure): string {
  return isolated(kind === "guess" ? `${name} (a guess)` : name);
}

/** "13:20 to 14:25", and what luck alone would leave of it. */
export function figuresWanted({ days, luck }: DoubtEstimate, format: ResponseFormat): { days: string; luck: string } {
  const fine = (days.high - days.low) / 2;
  const ends = ({ low, high }: typeof days) => (low === high ? format.value(low, null) : format.range(low, high, fine));
  return { days: ends(days), luck: ends(luck) };
}

/** A plan's name; today's is said to be that. */
export function planName({ variants }: Doubt, variant: number): string {
  const name = isolated(variants[variant]!);
  if (variant > 0 || /today's plan/i.test(name)) return name;
  return variants.length === 1 ? "today's plan" : `${name} (today's plan)`;
}

/** "67 of 100 worlds": some worlds never make sure of all. */
export function worldsText(chance: number): string {
  const worlds = Math.round(100 * chance);
  const count = worlds === 0 ? "fewer than 1" : worlds === 100 ? "more than 99" : String(worlds);
  return `${count} of 100 worlds`;
}

/** What a response is called, without what its label defines after a comma. */
export function shortLabel({ label }: ResponseInfo): string {
  return isolated(label.split(",")[0]!);
}

/** Per hour or in per cent: nothing that adds up over a day. */
export function isRate({ unit, format }: ResponseInfo): boolean {
  return format === "share" || unit.includes("/");
}
