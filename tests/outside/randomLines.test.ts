import { describe, expect, it } from "vitest";
import { uniformStream } from "../../sim/maths/random/index.ts";
import { bulkQueue } from "../oracle/bulkQueue.ts";
import { type ChainLine, type ChainStation, solveLine } from "../oracle/markovChain.ts";
import { erlangB, limitedQueue, presentWithBulks } from "../oracle/queueFormulas.ts";
import { chainPlan } from "../support/chainPlan.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { replicate, stateShare, throughput } from "../support/replicate.ts";
import { RANDOM_LINES } from "./register/randomLines.ts";

const checks = new OutsideChecks(RANDOM_LINES);

/** A line of 2 to 4 stations with 1 to 3 servers, 0 to 3 places and, every other line, failures. */
function randomLine(number: number): ChainLine {
  const uniforms = uniformStream("random lines", number, "line", "shape");
  const whole = (from: number, to: number) => from + Math.floor(uniforms.next() * (to - from + 1));
  const between = (from: number, to: number) => from + uniforms.next() * (to - from);
  const stations = Array.from({ length: whole(2, number % 2 === 0 ? 4 : 3) }, (): ChainStation => {
    const servers = whole(1, 3);
    const plain = { servers, rate: between(0.7, 1.4) / servers, places: whole(0, 3) };
    return number % 2 === 0 ? plain : { ...plain, failure: between(0.02, 0.1), repair: between(0.2, 0.5) };
  });
  return number % 5 === 4 ? { stations, arrivals: between(0.6, 0.9) } : { stations };
}

describe("random small lines: the engine against the exact chain", () => {
  it.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 9])(`${checks.title("R.4")}: line %i`, async (number) => {
    const line = randomLine(number);
    const solution = solveLine(line);
    const days = await replicate(chainPlan(line, 40_000), `R.4 ${number}`, { warmUpHeads: 1_000 });
    checks.simulated("R.4", `throughput ${number}`, days.map(throughput), solution.throughput);
    // The last station is always there, is never blocked and starves as often as the chain says.
    const last = line.stations.length - 1;
    const shares = (station: number, state: "blocked" | "starved") =>
      days.map((day) => stateShare(day, station, state));
    const precision = { absolute: 0.002 };
    checks.simulated("R.4", `blocked ${number}`, shares(0, "blocked"), solution.stations[0]!.blocked, precision);
    checks.simulated("R.4", `starved ${number}`, shares(last, "starved"), solution.stations[last]!.starved, precision);
    const present = days.map((day) => day.stages.slice(1).reduce((sum, stage) => sum + stage.queue.mean, 0));
    const waiting = solution.stations.slice(1).reduce((sum, station) => sum + station.waiting, 0);
    if (waiting > 0) checks.simulated("R.4", `waiting ${number}`, present, waiting, { relative: 0.008 });
    else expect(Math.max(...present)).toBe(0);
  });
});

describe("the chain solver itself", () => {
  it.each([
    [0.8, 5],
    [1.25, 3],
  ])(`${checks.title("R.5")}: M/M/1/K, load %d, K %i`, (load, places) => {
    const found = solveLine({ arrivals: load, stations: [{ rate: 1, places: places - 1 }] });
    checks.exact("R.5", "lost", found.lost, limitedQueue(load, places)[places]!, 1e-10);
  });

  it.each([
    [5, 3],
    [10, 7],
  ])(`${checks.title("R.5")}: Erlang B, %i servers, load %d`, (servers, load) => {
    const found = solveLine({ arrivals: load, stations: [{ rate: 1, servers }] });
    checks.exact("R.5", "lost", found.lost, erlangB(servers, load), 1e-10);
  });

  const SLOPES: [means: number[], places: number[], slopes: string[]][] = [
    [
      [1, 1, 1],
      [0, 0],
      ["-0.176200", "-0.211703", "-0.176200"],
    ],
    [
      [1, 1.25, 1 / 1.2],
      [1, 2],
      ["-0.208830", "-0.301208", "-0.073568"],
    ],
    [
      [1, 1, 1, 1],
      [1, 1, 1],
      ["-0.130910", "-0.184666", "-0.184666", "-0.130910"],
    ],
  ];

  it.each(SLOPES)(`${checks.title("R.6")}: means %j, places %j`, (means, places, slopes) => {
    const rate = (values: number[]) =>
      solveLine({ stations: values.map((mean, i) => ({ rate: 1 / mean, places: places[i - 1] ?? 0 })) }).throughput;
    const step = 1e-4;
    const found = means.map((_, i) => {
      const at = (shift: number) => rate(means.map((mean, j) => (i === j ? mean + shift : mean)));
      return (at(step) - at(-step)) / (2 * step);
    });
    found.forEach((slope, i) => {
      checks.printed("R.6", `slope ${i}`, slope, slopes[i]!);
    });
    // Throughput is homogeneous of degree -1 in the means (Euler).
    const sum = found.reduce((total, slope, i) => total + slope * means[i]!, 0);
    checks.exact("R.6", "Euler", sum, -rate(means), 1e-6);
  });

  it.each([
    [0.6, 4],
    [0.7, 5],
    [0.5, 10],
  ])(`${checks.title("R.7")}: load %d, bulks of %i`, (load, size) => {
    checks.exact("R.7", "L", bulkQueue(load, size), presentWithBulks(load, size), 1e-8);
  });
});

checks.close();
