import { describe, it } from "vitest";
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

checks.close();
