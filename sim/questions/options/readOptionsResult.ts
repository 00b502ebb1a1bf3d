import { z } from "zod";
import type { OptionsResult } from "./compareOffers.ts";

/** A payback can be infinite, which JSON has no word for. */
const RANGED = z.looseObject({ mean: z.number().nullable(), low: z.number().nullable(), high: z.number().nullable() });

/** What the report walks through. */
const SHAPE = z.looseObject({
  currency: z.string(),
  interest: z.number(),
  daysPerYear: z.number(),
  confidence: z.number(),
  cashWords: z.string(),
  words: z.array(z.string()),
  verdict: z.string(),
  next: z.array(z.string()),
  buy: z.number().nullable(),
  options: z.array(
    z.looseObject({
      name: z.string(),
      price: z.number(),
      lifeYears: z.number(),
      servicePerYear: z.number(),
      cashPerDay: RANGED,
      worth: z.looseObject({
        presentValue: RANGED,
        perYear: RANGED,
        paybackYears: RANGED,
        discountedPaybackYears: RANGED,
      }),
    }),
  ),
});

/** What was found, from the JSON in a line-up.json; null where that holds nothing a report can be drawn from. */
export function readOptionsResult(json: unknown): OptionsResult | null {
  if (!SHAPE.safeParse(json).success) return null;
  const found = json as OptionsResult;
  const options = found.options.map((option) => {
    const { paybackYears, discountedPaybackYears, ...rest } = option.worth;
    const worth = {
      ...rest,
      paybackYears: endless(paybackYears),
      discountedPaybackYears: endless(discountedPaybackYears),
    };
    return { ...option, worth };
  });
  const { inWorlds } = found;
  if (inWorlds === undefined) return { ...found, options };
  const fared = inWorlds.options.map(({ paybackYears, ...rest }) => {
    return { ...rest, paybackYears: { low: years(paybackYears.low), high: years(paybackYears.high) } };
  });
  return { ...found, options, inWorlds: { ...inWorlds, options: fared } };
}

function years(value: number | null): number {
  return value ?? Number.POSITIVE_INFINITY;
}

function endless({ mean, low, high }: { mean: number | null; low: number | null; high: number | null }) {
  return { mean: years(mean), low: years(low), high: years(high) };
}
