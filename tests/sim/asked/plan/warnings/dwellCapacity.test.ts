import { describe, expect, it } from "vitest";
import { chillingOf } from "../../../../../sim/maths/chilling/index.ts";
import { stageOf, wholeWarnings } from "../wholeMessages.ts";

/** The whole plan's chiller in SI units. */
const WHOLE_CHILLER = {
  startCelsius: 37,
  airCelsius: 0,
  coreCelsius: 4,
  airMetresPerSecond: 2,
  carcassLengthMetres: 0.36,
  carcassShare: 0.56,
  conductivity: 0.5,
  density: 1060,
  specificHeat: 3400,
};

describe("a dwell with too few places", () => {
  it("is told with the rate it allows, against the target", () => {
    expect(wholeWarnings((plan) => (stageOf(plan, "bleeding").places = 20))).toEqual([
      "line[3].places: 20 places with a mean dwell of 2 min 30 s allow no more than 480 /h, less than the target of 600 /h; 25 places would allow it",
    ]);
  });

  it("is told against the slowest station where the plan has no target", () => {
    const warnings = wholeWarnings((plan) => {
      plan.target = null;
      stageOf(plan, "bleeding").places = 20;
    });
    // Evisceration: 3 positions of 16 s are 675 heads an hour; inspection, stunning and the chain are faster.
    expect(warnings).toEqual([
      "line[3].places: 20 places with a mean dwell of 2 min 30 s allow no more than 480 /h, less than the 675 /h of the slowest station, 'evisceration'; 29 places would allow it",
    ]);
  });

  it("takes the chain for the slowest when it brings heads more slowly than any station works", () => {
    const warnings = wholeWarnings((plan) => {
      plan.target = null;
      stageOf(plan, "kill chain").speed = "3 m/min";
      stageOf(plan, "bleeding").places = 20;
    });
    expect(warnings[0]).toMatch(/less than the 600 \/h of the slowest station, 'kill chain'; 25 places/u);
  });

  it("is measured by the mean of a dwell that varies", () => {
    const dwell = { uniform: { min: "100 s", max: "300 s" } };
    expect(wholeWarnings((plan) => Object.assign(stageOf(plan, "bleeding"), { places: 30, dwell }))[0]).toMatch(
      /^line\[3\]\.places: 30 places with a mean dwell of 3 min 20 s allow no more than 540 \/h/u,
    );
  });

  it("keeps its path when a stage before it is left out", () => {
    const warnings = wholeWarnings((plan) => {
      plan.line.splice(1, 0, { name: "spare", kind: "station", cycle: "1 h", leftOut: true });
      stageOf(plan, "bleeding").places = 20;
    });
    expect(warnings[0]).toMatch(/^line\[4\]\.places: 20 places/u);
  });

  it.each([
    ["just enough places", { places: 25 }],
    ["no limit of places", { places: null }],
    ["no time to stay", { places: 1, dwell: "0 s" }],
  ])("is not warned of with %s", (_, change) => {
    expect(wholeWarnings((plan) => Object.assign(stageOf(plan, "bleeding"), change))).toEqual([]);
  });

  it("is told of a chiller whose time is computed, as of one whose time is given, by a carcass of mean weight", () => {
    const warnings = wholeWarnings((plan) => (stageOf(plan, "chilling").places = 400));
    // 2.5 kg x 56 %, by the chilling room itself, which is held to outside values in its own tests.
    const { seconds } = chillingOf(WHOLE_CHILLER, 2.5 * 0.56);
    const found =
      /^line\[\d+\]\.places: 400 places with a chilling time \(computed, mean weight\) of (.+) allow no more than (\d+) \/h, less than the target of 600 \/h; (\d+) places would allow it$/u.exec(
        warnings.find((warning) => warning.includes("computed"))!,
      )!;
    expect(Number(found[2])).toBe(Math.round((400 / seconds) * 3600));
    expect(Number(found[3])).toBe(Math.ceil((600 / 3600) * seconds));
  });

  it("is large enough where it holds all heads that come", () => {
    const small = (places: number) =>
      wholeWarnings((plan) => {
        plan.supply.loads[0].repeat.times = 1;
        stageOf(plan, "chilling").places = places;
      });
    expect(small(60 * 12)).toEqual([]);
    expect(small(60 * 12 - 4)).toHaveLength(1);
  });

  it("is not warned of where the slowest station sends no more than it takes", () => {
    const warnings = wholeWarnings((plan) => {
      Object.assign(plan, { target: null, sources: [], limits: [], gates: [], vessels: [], sharedBreakdowns: [] });
      plan.day = { start: "05:00", shifts: plan.day.shifts };
      plan.money = { currency: "EUR" };
      plan.line = [
        { name: "hanging", kind: "station", cycle: "2 h" },
        { name: "hall", kind: "dwell", places: 1, dwell: "1 h" },
      ];
    });
    expect(warnings).toEqual([]);
  });
});
