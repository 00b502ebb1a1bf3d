import { describe, it } from "vitest";
import type { Plan, ShareBy } from "../../sim/asked/plan/index.ts";
import type { DayRecord } from "../../sim/day/engine/index.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { exponential, planOf, station, stream } from "../support/plans.ts";
import { replicate } from "../support/replicate.ts";
import { REMOVALS } from "./register/removals.ts";

const checks = new OutsideChecks(REMOVALS);
const ARRIVALS = 0.6;
const SHARES = [0.25, 0.1];

describe("heads taken off between stations", () => {
  it(checks.title("1.18"), async () => {
    const line = [
      station("first", exponential(1), { removals: [{ as: "trim", share: SHARES[0]! }] }),
      station("second", exponential(1 / 0.8), { removals: [{ as: "condemned", share: SHARES[1]! }] }),
      station("third", exponential(1 / 0.7)),
    ].map((stage) => ({ ...stage, buffer: Infinity, section: stage.name }));
    const days = await replicate(planOf(stream(exponential(1 / ARRIVALS), 110_000), line), "1.18", {
      warmUpHeads: 2_000,
    });
    const kept = [1, 1 - SHARES[0]!, (1 - SHARES[0]!) * (1 - SHARES[1]!)];
    [1, 0.8, 0.7].forEach((rate, i) => {
      const arrivals = ARRIVALS * kept[i]!;
      checks.simulated(
        "1.18",
        `L of ${i}`,
        days.map((day) => day.sections[i]!.wip.mean),
        arrivals / (rate - arrivals),
      );
    });
    const outOf = (name: string) =>
      days.map(({ heads }) => heads.out[name]! / (heads.out.carcass! + heads.out.trim! + heads.out.condemned!));
    checks.simulated("1.18", "to trim", outOf("trim"), SHARES[0]!);
    checks.simulated("1.18", "condemned", outOf("condemned"), kept[1]! * SHARES[1]!);
  });
});

describe("shares that depend on the head", () => {
  const taken = (shareBy: ShareBy) => [{ as: "damaged", share: 1, shareBy }];
  const shareOut = (day: DayRecord) => day.heads.out.damaged! / (day.heads.out.damaged! + day.heads.out.carcass!);

  it(checks.title("1.22"), async () => {
    // 0 at 2 kg to 0.4 at 3 kg: 0.2 of all, whose weights have the density 2 (w - 2): mean 2 + 2/3.
    const shareBy: ShareBy = {
      of: { kind: "live weight" },
      between: "a line",
      points: [
        { at: 2, share: 0 },
        { at: 3, share: 0.4 },
      ],
    };
    const line = [station("sorting", exponential(1), { buffer: Infinity, removals: taken(shareBy) })];
    const supply = {
      ...stream(exponential(2), 20_000),
      liveWeightKg: { family: "uniform", min: 2, max: 3 },
    } as Plan["supply"];
    const days = await replicate(planOf(supply, line), "1.22");
    checks.simulated("1.22", "share", days.map(shareOut), 0.2);
    const weights = days.map(({ masses, heads }) => masses.outKg.damaged! / heads.out.damaged!);
    checks.simulated("1.22", "mean weight", weights, 2 + 2 / 3);
  });

  it(checks.title("1.23"), async () => {
    const [lambda, mu, full] = [0.6, 1, 5];
    const shareBy: ShareBy = {
      of: { kind: "time", from: { stage: "server", moment: "entry" }, to: { stage: "server", moment: "start" } },
      between: "a line",
      points: [
        { at: 0, share: 0 },
        { at: full, share: 1 },
      ],
    };
    const line = [station("server", exponential(1 / mu), { buffer: Infinity, removals: taken(shareBy) })];
    const days = await replicate(planOf(stream(exponential(1 / lambda), 100_000), line), "1.23");
    const spare = mu - lambda;
    const expected = ((lambda / mu) * (1 - Math.exp(-spare * full))) / (spare * full);
    checks.simulated("1.23", "share", days.map(shareOut), expected);
  });
});

checks.close();
