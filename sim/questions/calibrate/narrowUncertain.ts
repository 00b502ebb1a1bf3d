import { factorsAt, inWorld, isRecord, type Plan, readPlan, type TextFiles } from "../../asked/plan/index.ts";
import { latinHypercube } from "../../asked/study/index.ts";
import { standardNormalBelow } from "../../maths/random/index.ts";
import { normalQuantile, posteriorDraws } from "../../maths/statistics/index.ts";
import type { Observed } from "./observed.ts";
import { type Simulation, simulatedValues } from "./simulatedValues.ts";

/** What a plan may say of its uncertain figures after days were observed. */
export interface NarrowedUncertain {
  /** Entries of the plan's file: those that the days tell something of together in one, the others as they were. */
  uncertain: unknown[];
  /** Of each figure: where its range lies now, and what part of its standard deviation is left. */
  figures: { name: string; low: number; high: number; left: number; narrowed: boolean }[];
}

export interface NarrowingOptions extends Pick<Simulation, "seed" | "countedAt" | "mostEvents" | "beforeDay"> {
  /** Worlds of two days each. */
  worlds: number;
  progress: (words: string) => void;
}

const DAYS_OF_WORLD = 2;
const DRAWS = 60;
/** A figure of which more than this is left, and whose middle hardly moved, is told as it was. */
const LEFT = 0.9;
const MOVED = 0.3;
const DIGITS = 4;

/**
 * Narrows the uncertain figures of a plan by observed days: worlds are drawn (Latin hypercube) and simulated, and what the figures
 * do to each observed quantity says how likely each of their values still is (`posteriorDraws`). Figures of which the days tell
 * something are written as draws of one entry, since what was observed ties them together. `json`: the plan as its file
 * says it. Null where a world has no value of any quantity that was observed.
 */
export async function narrowUncertain(
  plan: Plan,
  { json, files }: { json: unknown; files: TextFiles },
  observed: Observed,
  { worlds, progress, ...options }: NarrowingOptions,
): Promise<NarrowedUncertain | null> {
  const figures = plan.uncertain ?? [];
  const shares = latinHypercube(figures.length, worlds, options.seed);
  const list = observed.quantities;
  const simulation = { ...options, quantities: list.map(({ quantity }) => quantity) };
  const found: (number | null)[][][] = list.map(() => []);
  for (let world = 0; world < worlds; world++) {
    progress(`what the figures may be: ${world + 1} of ${worlds}`);
    const factored = figures.map((figure, index) => ({
      paths: figure.paths,
      factors: factorsAt(figure, inside(shares[index]![world]!)),
    }));
    const reading = readPlan(inWorld(json as Record<string, unknown>, factored).json, files);
    if (reading.plan === null) return null;
    const values = await simulatedValues(reading.plan, DAYS_OF_WORLD, simulation, world * DAYS_OF_WORLD);
    for (const [quantity, days] of values.entries()) found[quantity]!.push(days);
  }
  const told = list.flatMap(({ values }, quantity) => {
    const worldsOfIt = found[quantity]!;
    const seen = values.filter((value) => value !== null);
    const isWhole = worldsOfIt.every((days) => days.every((value) => value !== null));
    return isWhole && seen.length > 0 ? [{ values: worldsOfIt as number[][], seen }] : [];
  });
  if (told.length === 0) return null;
  const draws = posteriorDraws({
    scores: shares.map((column) => column.map((share) => normalQuantile(inside(share)))),
    values: told.map(({ values }) => values),
    observed: told.map(({ seen }) => ({
      mean: seen.reduce((sum, value) => sum + value, 0) / seen.length,
      days: seen.length,
    })),
    draws: DRAWS,
    seed: options.seed,
  });
  return written(plan, json, draws, observed.lines.length);
}

/** Quantiles at 0 and 1 have no end. */
function inside(share: number): number {
  return Math.min(1 - 1e-9, Math.max(1e-9, share));
}

function written(plan: Plan, json: unknown, draws: readonly number[][], days: number): NarrowedUncertain {
  const entries = isRecord(json) && Array.isArray(json.uncertain) ? (json.uncertain as unknown[]) : [];
  const all = plan.uncertain ?? [];
  const found = all.map((figure, index) => {
    const scores = draws.map((draw) => draw[index]!);
    const mean = scores.reduce((sum, value) => sum + value, 0) / scores.length;
    const left = Math.sqrt(scores.reduce((sum, value) => sum + (value - mean) ** 2, 0) / scores.length);
    const rows = scores.map((score) => factorsAt(figure, inside(standardNormalBelow(score))));
    const first = rows.map((row) => row[0]!).sort((a, b) => a - b);
    const narrowed = left < LEFT || Math.abs(mean) > MOVED;
    return { figure, rows, narrowed, left, low: first[1]!, high: first.at(-2)! };
  });
  const narrowed = found.filter((each) => each.narrowed);
  const joined = {
    name: [...narrowed.map(({ figure }) => figure.name).join(" and ")].slice(0, 60).join("").trim(),
    paths: narrowed.flatMap(({ figure }) => figure.paths),
    factor: {
      draws: draws.map((_, draw) =>
        narrowed.flatMap(({ rows }) => rows[draw]!.map((factor) => Number(factor.toPrecision(DIGITS)))),
      ),
    },
    kind: narrowed.every(({ figure }) => figure.kind === "measured") ? "measured" : "guess",
    note: `Narrowed by ${days} observed ${days === 1 ? "day" : "days"}; before: ${narrowed.map(({ figure }) => `${figure.name} (${figure.kind})`).join(", ")}`,
  };
  return {
    uncertain: [
      ...(narrowed.length === 0 ? [] : [joined]),
      ...entries.filter((_, index) => found[index]?.narrowed === false),
    ],
    figures: found.map(({ figure, low, high, left, narrowed }) => ({ name: figure.name, low, high, left, narrowed })),
  };
}
