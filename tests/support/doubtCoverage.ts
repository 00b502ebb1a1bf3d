import { inThisThread, runStudy } from "../../sim/days/run/index.ts";
import { uniformStream } from "../../sim/maths/random/index.ts";
import { normalQuantile } from "../../sim/maths/statistics/index.ts";
import { analyse } from "../../sim/questions/doubt/index.ts";
import { doubtStudy, readDoubt } from "./doubtCase.ts";

/** The plant as it truly is; nobody knows the two means. Seconds. */
const TRUE_MEANS = { hanging: 9, skinning: 10 };
const CV = 0.3;
const HEADS = 60;
/** Stopwatch readings of each station. */
const READINGS = 20;
/** As many worlds as readings, so that t has their degrees of freedom. */
const COUNTS = { worlds: 20, days: 2 };

type Station = keyof typeof TRUE_MEANS;
const STATIONS = Object.keys(TRUE_MEANS) as Station[];

function plan(means: Record<Station, number>, uncertain: Record<string, unknown>[]) {
  return {
    name: "Two stations",
    ...(uncertain.length === 0 ? {} : { uncertain }),
    day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
    supply: { stream: { interarrival: "1 s", heads: HEADS } },
    line: STATIONS.map((name) => ({
      ...{ name, kind: "station", buffer: name === "hanging" ? HEADS : 5 },
      cycle: { gamma: { mean: `${means[name]} s`, cv: CV } },
    })),
  };
}

/** What the stopwatch gives: a mean and its standard error as a share of it. Readings are normal, as of a gamma nearly. */
function timed(name: Station, seed: string): { mean: number; error: number } {
  const uniforms = uniformStream(seed, 0, name, "readings");
  const readings = Array.from(
    { length: READINGS },
    () => TRUE_MEANS[name] * (1 + CV * normalQuantile(uniforms.next())),
  );
  const mean = readings.reduce((sum, value) => sum + value, 0) / READINGS;
  const squares = readings.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, error: Math.sqrt(squares / (READINGS - 1) / READINGS) / mean };
}

function question(means: Record<Station, number>, uncertain: Record<string, unknown>[], seed: string) {
  const study = doubtStudy(plan(means, uncertain), [], { responses: ["finish"] });
  return readDoubt(study, { ...COUNTS, seed });
}

async function found(means: Record<Station, number>, uncertain: Record<string, unknown>[], seed: string) {
  const asked = question(means, uncertain, seed).question!;
  const options = { gambrel: "proof", command: "", traces: "none", runner: inThisThread() } as const;
  return analyse(asked, await runStudy(asked.study, options)).estimates[0]![0]!;
}

/** End of work of the plant as it truly is, in seconds: the mean of so many days. */
export async function trueEnd(days: number): Promise<number> {
  const nothing = {
    name: "nothing",
    paths: ["line.skinning.buffer"],
    factor: { uniform: { min: 0.999, max: 1.001 } },
    kind: "guess",
  };
  const asked = question(TRUE_MEANS, [nothing], "truth").question!;
  const study = { ...asked.study, variants: asked.study.variants.slice(0, 1), replications: days };
  const { variants } = await runStudy(study, { gambrel: "proof", command: "", traces: "none", runner: inThisThread() });
  return variants[0]!.estimates.finish!.mean;
}

export interface Coverage {
  times: number;
  /** How often the interval with what is not known held the truth, and how often the one with luck alone did. */
  full: number;
  plain: number;
}

/** Times the plant anew so many times, each time with its own readings, and asks where the mean end of work may lie. */
export async function coverage(times: number, truth: number, seed: string): Promise<Coverage> {
  const result = { times, full: 0, plain: 0 };
  for (let time = 0; time < times; time++) {
    const own = `${seed} ${time}`;
    const known = STATIONS.map((name) => ({ name, ...timed(name, own) }));
    const means = Object.fromEntries(known.map(({ name, mean }) => [name, mean])) as Record<Station, number>;
    const uncertain = known.map(({ name, error }) => ({
      ...{ name, paths: [`line.${name}.cycle`], kind: "measured" },
      factor: { normal: { mean: 1, sd: error } },
    }));
    const { plain, full } = await found(means, uncertain, own);
    if (plain.low <= truth && truth <= plain.high) result.plain++;
    if (full.low <= truth && truth <= full.high) result.full++;
  }
  return result;
}
