import { meanOf, squaredCvOf, type Varying } from "../../../maths/random/index.ts";
import { type PathStep, parsePath } from "../parsePath.ts";
import { resolvePath } from "../resolvePath.ts";
import { varyingQuantities } from "../schema/varying.ts";
import { NO_FILES } from "../textFiles.ts";

/** How single readings of a figure vary, as the plan has it. */
export interface FigureSpread {
  /** Standard deviation / mean of readings; 0 where the figure is always the same. */
  cv: number;
  /** Mean of one reading in seconds; null of what is no time. */
  meanSeconds: number | null;
}

/** Keys of a distribution that a path may lead into: its family, and a parameter of it. */
const MAX_INSIDE = 2;

/**
 * Of the distribution (or the time, the mass that is always the same) where the path leads to, or into one; null elsewhere:
 * nobody reads a share or a number of people off a stopwatch. `json` is a sound plan.
 */
export function spreadAt(json: unknown, path: string): FigureSpread | null {
  const steps = parsePath(path) ?? [];
  const ways = Array.from({ length: Math.min(MAX_INSIDE + 1, steps.length) }, (_, up) => steps.length - up);
  const found = ways.map((length) => readSpread(writtenAt(json, steps.slice(0, length))));
  return found.find((spread) => spread !== null && spread.cv > 0) ?? found[0] ?? null;
}

function writtenAt(json: unknown, steps: readonly PathStep[]): unknown {
  const { place } = resolvePath(json, steps);
  return place === null ? undefined : (place.parent as Record<PropertyKey, unknown>)[place.key];
}

function readSpread(written: unknown): FigureSpread | null {
  const { time, massAboveZero } = varyingQuantities(NO_FILES);
  const asTime = time.safeParse(written);
  if (asTime.success) return { cv: cvOf(asTime.data), meanSeconds: meanOf(asTime.data) };
  const asMass = massAboveZero.safeParse(written);
  return asMass.success ? { cv: cvOf(asMass.data), meanSeconds: null } : null;
}

function cvOf(varying: Varying): number {
  return Math.sqrt(squaredCvOf(varying));
}
