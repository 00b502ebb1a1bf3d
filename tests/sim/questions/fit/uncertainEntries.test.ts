import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { fitColumn, planFragment, readTimes, uncertainEntries } from "../../../../sim/questions/fit/index.ts";

const uniforms = uniformStream("uncertain", 0, "test", "times");
const exponential = (mean: number) => -mean * Math.log(1 - uniforms.next());

function fitsOf(heading: string, cells: readonly string[]) {
  const { columns } = readTimes(`"${heading}"\n${cells.join("\n")}\n`, { unit: null, by: null });
  return columns!.map((column) => fitColumn(column, { seed: "1", samples: 99 }));
}

describe("uncertainEntries", () => {
  it("gives the mean's standard error as a share of it, and what the plan takes as it stands", () => {
    const times = Array.from({ length: 20 }, () => 5 + exponential(2));
    const fits = fitsOf(
      "skinning (s)",
      times.map((time) => time.toFixed(2)),
    );
    const [entry] = uncertainEntries(fits, "times.csv", "1");
    const { mean, sd } = fits[0]!.summary!;
    expect(entry!.factor.lognormal.cv / (sd! / Math.sqrt(20) / mean)).toBeCloseTo(1, 2);
    expect(entry).toMatchObject({
      name: "skinning's cycle time",
      paths: ["line.skinning.cycle"],
      kind: "measured",
      readings: 20,
    });
    const plan = {
      name: "timed",
      day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
      supply: { stream: { interarrival: "6 s", heads: 100 } },
      line: [{ kind: "station", ...planFragment(fits, "times.csv").line[0] }],
      uncertain: [entry],
    };
    expect(readPlan(plan).faults).toEqual([]);
  });

  it("reckons with times that are still open: an exponential's mean is known to 1 / root of the number seen to their end", () => {
    // Watched until a fixed time the mean's estimate has that coefficient of variation, about (Lawless 2003, section 4.1).
    const seen = Array.from({ length: 120 }, () => exponential(10));
    const fits = fitsOf(
      "skinning: jam uptime (min)",
      seen.map((time) => (time < 15 ? time.toFixed(3) : ">15")),
    );
    const { ended, advice } = fits[0]!;
    expect(advice.family).toBe("exponential");
    expect(ended.length).toBeLessThan(110);
    const [entry] = uncertainEntries(fits, "stops.csv", "1");
    expect(entry!.paths).toEqual(["line.skinning.breakdowns.jam.uptime"]);
    expect(entry!.note).toBe("standard error of the mean of 120 times of stops.csv");
    // 200 samples tell a standard deviation to 5 % (false alarm 0.001 at 3.29 of that).
    expect(Math.abs(entry!.factor.lognormal.cv * Math.sqrt(ended.length) - 1)).toBeLessThan(0.1645);
  });

  it("says nothing of times that are all alike", () => {
    expect(uncertainEntries(fitsOf("skinning (s)", ["5", "5", "5"]), "times.csv", "1")).toEqual([]);
  });
});
