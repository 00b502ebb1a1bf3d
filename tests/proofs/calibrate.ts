/**
 * Measures how often `calibrate` finds a figure that is as far out as it prints, on plans and seeds other than those its
 * margin was chosen on. Run: npx tsx tests/proofs/calibrate.ts [seeds] [studies]
 */

import type { Plan } from "../../sim/asked/plan/index.ts";
import { compare } from "../../sim/questions/calibrate/compare.ts";
import {
  type CalibrationOptions,
  calibrate,
  type NoticeableFigure,
  parametersOf,
  simulatedValues,
} from "../../sim/questions/calibrate/index.ts";
import { breakdown } from "../support/breakdowns.ts";
import { observedOf, quantitiesOf, simulationOf } from "../support/calibrationPlan.ts";
import { crew, dwell, exponential, manual, planOf, station, stream } from "../support/plans.ts";

const [SEEDS, STUDIES] = [Number(process.argv[2] ?? 4), Number(process.argv[3] ?? 100)];
const [OBSERVED_DAYS, DAYS, CONFIDENCE] = [6, 40, 0.95];

/** A machine that jams often and is the bottleneck; a bench with time to spare. */
const JAMMING = planOf(
  stream(exponential(7), 1500, "wait"),
  [
    manual("bench", { family: "lognormal", mean: 12, cv: 0.4 }, "bench", { positions: 2, buffer: 40 }),
    station(
      "machine",
      { family: "lognormal", mean: 5.5, cv: 0.2 },
      {
        buffer: Number.POSITIVE_INFINITY,
        breakdowns: [breakdown(0, 0, { uptimeSeconds: exponential(500), repairSeconds: exponential(120) })],
      },
    ),
    dwell("cold room", 60, 10_000),
  ],
  { crews: [crew("bench", 2)] },
);

/** Rare long stops, little room between the stages. */
const RARE_STOPS = planOf(
  stream(exponential(5), 1800, "wait"),
  [
    manual("bench", { family: "lognormal", mean: 21, cv: 0.2 }, "bench", { positions: 4, buffer: 60 }),
    station(
      "machine",
      { family: "lognormal", mean: 4.8, cv: 0.1 },
      {
        buffer: 10,
        breakdowns: [breakdown(0, 0, { uptimeSeconds: exponential(3600), repairSeconds: exponential(300) })],
      },
    ),
    dwell("cold room", 60, 10_000),
  ],
  { crews: [crew("bench", 4)] },
);

async function noticeable(plan: Plan, seed: string): Promise<NoticeableFigure[]> {
  const { quantities: _, ...rest } = simulationOf(seed);
  const options: CalibrationOptions = { ...rest, days: DAYS, confidence: CONFIDENCE, progress: () => {} };
  return (await calibrate(plan, await observedOf(plan, OBSERVED_DAYS, `${seed} seen`), options)).noticeable ?? [];
}

/** Share of new studies, observed and simulated days both fresh, that show a difference when the line is as `figure` says. */
async function shareFound(plan: Plan, { kind, path, from, to }: NoticeableFigure, seed: string): Promise<number> {
  const quantities = quantitiesOf(plan);
  const parameter = parametersOf(plan).find((each) => each.path === path)!;
  const line = parameter.moved(plan, kind === "people" ? to! - from : to! / from);
  const seen = await simulatedValues(line, STUDIES * OBSERVED_DAYS, simulationOf(`${seed} new line`, quantities));
  const drawn = await simulatedValues(plan, STUDIES * DAYS, simulationOf(`${seed} new plan`, quantities));
  const part = (days: readonly (number | null)[], study: number, count: number) =>
    days.slice(study * count, (study + 1) * count);
  const found = Array.from({ length: STUDIES }).filter((_, study) =>
    quantities.some(
      (_, i) =>
        compare(part(seen[i]!, study, OBSERVED_DAYS), part(drawn[i]!, study, DAYS), quantities.length, CONFIDENCE)
          ?.shown,
    ),
  );
  return found.length / STUDIES;
}

const all: number[] = [];
for (const [name, plan] of Object.entries({ JAMMING, RARE_STOPS })) {
  for (let k = 1; k <= SEEDS; k++) {
    const seed = `proof ${name} ${k}`;
    // Crews come in whole people, so that the first size found may be found far more often: not a measure of the aim.
    const sized = (await noticeable(plan, seed)).filter(({ kind, to }) => to !== null && kind !== "people");
    for (const figure of sized) {
      const share = await shareFound(plan, figure, seed);
      all.push(share);
      const times = (figure.to! / figure.from).toFixed(3);
      console.log(`${name}, seed ${k}: ${figure.path} x ${times}: found in ${share.toFixed(2)} of ${STUDIES}`);
    }
  }
}
const mean = all.reduce((sum, share) => sum + share, 0) / all.length;
const sd = Math.sqrt(all.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (all.length - 1));
console.log(`all ${all.length} sizes: mean ${mean.toFixed(3)}, standard deviation of a size ${sd.toFixed(3)}`);
console.log(`binomial standard error of one share at 0.8: ${Math.sqrt((0.8 * 0.2) / STUDIES).toFixed(3)}`);
