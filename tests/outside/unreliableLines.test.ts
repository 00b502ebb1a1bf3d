import { describe, expect, it } from "vitest";
import type { Breakdown } from "../../sim/asked/plan/index.ts";
import { expectedMaximum, repairTimeBelow } from "../oracle/expectedMaximum.ts";
import { type ChainLine, solveLine } from "../oracle/markovChain.ts";
import { momentsOf } from "../support/agreesWith.ts";
import { chainPlan, failures } from "../support/chainPlan.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { planOf, saturated, station } from "../support/plans.ts";
import { replicate, stateShare, throughput, watchedSeconds } from "../support/replicate.ts";
import { UNRELIABLE_LINES } from "./register/unreliableLines.ts";

const checks = new OutsideChecks(UNRELIABLE_LINES);

interface Printed {
  throughput: string;
  working: string[];
  blocked: string[];
  starved: string[];
  down: string[];
  waiting: string[];
}

const EQUAL = { rate: 1, failure: 0.01, repair: 0.1 };

/** Two equal stations with so many places; the table prints one figure for both. */
function equalPair(places: number): ChainLine {
  return { stations: [EQUAL, { ...EQUAL, places }] };
}

function equalFigures(rate: string, held: string, down: string, waiting: string): Printed {
  return {
    throughput: rate,
    working: [rate, rate],
    blocked: [held, "0"],
    starved: ["0", held],
    down: [down, down],
    waiting: ["0", waiting],
  };
}

const THIRD = { rate: 1, failure: 0.02, repair: 0.2 };

/*
 * With 20 replications of row 4.3 the first station's blocked share came out 4.4 standard errors low. 400 further days under
 * two other seeds (24 million heads, 0.5 and 0.7 standard errors low) showed chance, not a fault. The row keeps its seed and
 * those 20 days and runs 20 more.
 */
const REPLICATIONS: Record<string, number> = { "4.3": 40 };

const ROWS: [id: string, line: ChainLine, heads: number, printed: Printed][] = [
  ["4.1", equalPair(0), 60_000, equalFigures("0.589955", "0.351050", "0.058995", "0")],
  ["4.2", equalPair(5), 100_000, equalFigures("0.756197", "0.168184", "0.075620", "2.500000")],
  ["4.3", equalPair(20), 160_000, equalFigures("0.834997", "0.081503", "0.083500", "10.000000")],
  [
    "4.4",
    {
      stations: [
        { rate: 2, failure: 0.1, repair: 0.5 },
        { rate: 2, failure: 0.05, repair: 0.2, places: 4 },
      ],
    },
    70_000,
    {
      throughput: "1.285302",
      working: ["0.642651", "0.642651"],
      blocked: ["0.228819", "0"],
      starved: ["0", "0.196686"],
      down: ["0.128530", "0.160663"],
      waiting: ["0", "2.035837"],
    },
  ],
  [
    "4.5",
    { stations: [THIRD, { ...THIRD, places: 3 }, { ...THIRD, places: 3 }] },
    70_000,
    {
      throughput: "0.658382",
      working: ["0.658382", "0.658382", "0.658382"],
      blocked: ["0.275780", "0.140943", "0"],
      starved: ["0", "0.134837", "0.275780"],
      down: ["0.065838", "0.065838", "0.065838"],
      waiting: ["0", "1.832155", "1.193953"],
    },
  ],
  [
    "4.6",
    {
      stations: [
        { rate: 1, servers: 2, failure: 0.05, repair: 0.25 },
        { rate: 2, places: 3, failure: 0.1, repair: 0.5 },
      ],
    },
    60_000,
    {
      throughput: "1.339127",
      working: ["0.669564", "0.669564"],
      blocked: ["0.196524", "0"],
      starved: ["0", "0.196524"],
      down: ["0.133913", "0.133913"],
      waiting: ["0", "1.580827"],
    },
  ],
];

describe("exponential stations that fail on running time, work resumed", () => {
  it.each(ROWS)(
    "%s against the exact chain (model of Gershwin and Berman 1981; V-chain)",
    async (id, line, heads, printed) => {
      const solution = solveLine(line);
      const days = await replicate(chainPlan(line, heads), id, {
        warmUpHeads: 2_000,
        replications: REPLICATIONS[id] ?? 20,
      });
      checks.printed(id, "throughput", solution.throughput, printed.throughput);
      checks.simulated(id, "throughput", days.map(throughput), solution.throughput);
      solution.stations.forEach((expected, i) => {
        for (const state of ["working", "blocked", "starved", "down"] as const) {
          checks.printed(id, `${state} ${i}`, expected[state], printed[state][i]!);
          const shares = days.map((day) => stateShare(day, i, state));
          // Shares of time: 0.2 points of standard error tell every state from its neighbours.
          if (expected[state] > 0) checks.simulated(id, `${state} ${i}`, shares, expected[state], { absolute: 0.002 });
          else expect(Math.max(...shares)).toBe(0);
        }
        checks.printed(id, `waiting ${i}`, expected.waiting, printed.waiting[i]!);
        const waiting = days.map((day) => day.stages[i]!.queue.mean);
        if (expected.waiting > 0) checks.simulated(id, `waiting ${i}`, waiting, expected.waiting);
      });
    },
  );
});

function stops(mtbf: number, mttr: number, name = "failure"): Breakdown {
  return { ...failures(1 / mtbf, 1 / mttr), name };
}

function transferLine(places: number, heads: number, breakdowns: Breakdown[][]) {
  return planOf(
    saturated(heads),
    breakdowns.map((list, i) => station(`s${i}`, 1, { buffer: i === 0 ? 0 : places, breakdowns: list })),
  );
}

const CASES: [words: string, machines: [mttr: number, mtbf: number][], together: string][] = [
  [
    "two machines",
    [
      [10, 100],
      [10, 100],
    ],
    "0.833333",
  ],
  [
    "three machines",
    [
      [20, 200],
      [5, 100],
      [8, 400],
    ],
    "0.854701",
  ],
];

describe("transfer line: constant cycles, exponential failures on running time and repairs", () => {
  // Everything stops together: one station that carries the breakdowns of all machines.
  it.each(CASES)(`${checks.title("4.10")}: %s`, async (words, machines, printed) => {
    const expected = 1 / (1 + machines.reduce((sum, [mttr, mtbf]) => sum + mttr / mtbf, 0));
    checks.printed("4.10", "efficiency", expected, printed);
    const all = machines.map(([mttr, mtbf], i) => stops(mtbf, mttr, `machine ${i}`));
    const days = await replicate(transferLine(0, 60_000, [all]), `4.10 ${words}`);
    checks.simulated("4.10", "throughput", days.map(throughput), expected);
  });

  it.each(CASES)(`${checks.title("4.11")}: %s`, async (words, machines) => {
    const plan = transferLine(
      Infinity,
      60_000,
      machines.map(([mttr, mtbf]) => [stops(mtbf, mttr)]),
    );
    const days = await replicate(plan, `4.11 ${words}`);
    // The first machine is the weakest or one of them, and nothing ever holds it up.
    const first = days.map((day) => day.stages[0]!.processed / watchedSeconds(day));
    checks.simulated("4.11", "first machine", first, 1 / 1.1);
    if (words === "three machines") checks.simulated("4.11", "throughput", days.map(throughput), 1 / 1.1);
    checks.printed("4.11", "efficiency", 1 / 1.1, "0.909091");
  });

  const pairWith = (places: number, heads: number) => transferLine(places, heads, [[stops(100, 10)], [stops(100, 10)]]);

  it(checks.title("4.12"), async () => {
    const below = (x: number) => repairTimeBelow(x, 0.01, 10);
    const expected = 1 / (1 + expectedMaximum(below, below, 10));
    checks.printed("4.12", "1 / E[max]", expected, "0.833679");
    const days = await replicate(pairWith(0, 120_000), "4.12");
    checks.simulated("4.12", "throughput", days.map(throughput), expected, { relative: 0.001 });
  });

  it.each([
    [1, 0.83764],
    [5, 0.84916],
    [10, 0.8592],
    [20, 0.87175],
    [50, 0.88787],
    [100, 0.89672],
  ])(`${checks.title("4.13")}: %d places`, async (places, figure) => {
    const days = await replicate(pairWith(places, 70_000), `4.13 ${places}`, { warmUpHeads: 5_000 });
    const { mean, standardError } = momentsOf(days.map(throughput));
    expect(standardError).toBeLessThan(0.002 * figure);
    // The figure itself has a standard error of 0.0003; four joint standard errors, so a false alarm in 16,000.
    checks.chance("4.13", `throughput ${mean}`, Math.abs(mean - figure), 4 * Math.hypot(0.0003, standardError));
  });

  it(checks.title("4.14"), async () => {
    // Same seed, hence the same failures and repairs: each further place can only help.
    const days = [0, 20, 100, 400, 2_000, Infinity].map((places) =>
      replicate(pairWith(places, 100_000), "4.14", { replications: 1 }),
    );
    const found = (await Promise.all(days)).map(([day]) => throughput(day!));
    for (let i = 1; i < found.length; i++)
      checks.exact("4.14", `loss ${i}`, Math.max(0, found[i - 1]! - found[i]!), 0, 0);
    expect(found[5]! / found[0]!).toBeGreaterThan(1.08);
    checks.exact("4.14", "2,000 places against unlimited", found[4]!, found[5]!, 0.002);
  });
});

checks.close();
