import { describe, expect, it } from "vitest";
import { formatFault, readPlan } from "../../../../../sim/asked/plan/index.ts";
import { exampleFile } from "../../../../support/readExample.ts";

type Loose = Record<string, unknown>;
const JAMS = { name: "jams", paths: ["line.skinning.breakdowns.jam.repair"], guess: "a third" };

function faultsWith(...uncertain: Loose[]): string[] {
  return readPlan({ ...(exampleFile("parts/uncertain") as Loose), uncertain }).faults.map(formatFault);
}

describe("uncertain figures of a plan", () => {
  it("are read with their factors, a guess as a range about what is written", () => {
    const { plan, faults } = readPlan(exampleFile("parts/uncertain"));
    expect(faults).toEqual([]);
    expect(plan!.uncertain!.map(({ name, kind }) => `${name}: ${kind}`).slice(0, 3)).toEqual([
      "skinning's jams: guess",
      "cutter's cycle time: measured",
      "hanging's cycle time: measured",
    ]);
    expect(plan!.uncertain![0]!.factor).toEqual({ family: "uniform", min: 1 - 1 / 3, max: 1 + 1 / 3 });
  });

  it("are no key of a plan that names none, whose day stays the same", () => {
    const { uncertain: _, ...known } = exampleFile("parts/uncertain") as Loose;
    const plan = readPlan(known).plan!;
    expect("uncertain" in plan).toBe(false);
    const { uncertain: __, ...rest } = readPlan(exampleFile("parts/uncertain")).plan!;
    expect(rest).toEqual(plan);
  });

  it.each([
    [
      [{ ...JAMS, paths: ["line.skining.cycle"] }],
      /uncertain\[0\]\.paths\[0\]: 'skining' is not a name .* did you mean 'skinning'\?/,
    ],
    [[{ ...JAMS, paths: ["line..cycle"] }], /uncertain\[0\]\.paths\[0\]: "line\.\.cycle" is no path/],
    [[{ ...JAMS, paths: ["day.shifts.day.from"] }], /uncertain\[0\]\.paths\[0\]: .*06:00.* is a time of day/],
    [[{ ...JAMS, paths: ["line.skinning.positions"] }], /nothing is written there; .*write the figure there first/],
    [[JAMS, { ...JAMS, name: "again" }], /uncertain\[1\]\.paths\[0\]: .* stands here twice/],
    [
      [{ ...JAMS, paths: ["line.hanging.cycle", "line[0].cycle.lognormal.mean"] }],
      /uncertain\[0\]\.paths\[1\]: .* are one figure/,
    ],
    [[JAMS, { ...JAMS, paths: ["line.cutting.cycle"] }], /'jams' appears twice among the uncertain figures/],
    [[{ ...JAMS, guess: "a bit" }], /uncertain\[0\]\.guess: .*a bit/],
    [[{ name: "jams", paths: JAMS.paths }], /neither "guess" nor "factor"/],
    [[{ ...JAMS, factor: { uniform: { min: 0.5, max: 2 } }, kind: "guess" }], /both "guess" and "factor"/],
    [[{ ...JAMS, kind: "measured" }], /"measured" beside "guess"/],
    [[{ ...JAMS, readings: 20 }], /uncertain\[0\]\.readings: readings of a guess; .*"kind": "measured"/],
    [[{ name: "jams", paths: JAMS.paths, factor: { uniform: { min: 0.5, max: 2 } } }], /a "factor" without "kind"/],
    [
      [{ name: "jams", paths: JAMS.paths, factor: { uniform: { min: 2, max: 0.5 } }, kind: "guess" }],
      /min is not smaller than max/,
    ],
    [
      [{ name: "jams", paths: JAMS.paths, factor: { draws: [1, [1, 2]] }, kind: "guess" }],
      /a draw of 2 numbers for 1 paths/,
    ],
  ])("are refused, with the place and the remedy: %j", (uncertain, words) => {
    expect(faultsWith(...uncertain).join("\n")).toMatch(words);
  });

  it("leave the plan sound at their ends: a share of 1 % a hundredfold and more is told", () => {
    const share = { name: "condemned", paths: ["line.cutting.removals.condemned.share"], kind: "guess" };
    const faults = faultsWith(JAMS, { ...share, factor: { lognormal: { mean: 50, cv: 1 } } });
    expect(faults.join("\n")).toMatch(/uncertain, every factor at its highest: .*share: .* out of range/);
  });
});
