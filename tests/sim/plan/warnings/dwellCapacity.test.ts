import { describe, expect, it } from "vitest";
import { stageOf, wholeWarnings } from "../wholeMessages.ts";

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

  it("is not warned of where the slowest station sends no more than it takes", () => {
    const warnings = wholeWarnings((plan) => {
      Object.assign(plan, { target: null, sources: [], limits: [], gates: [], vessels: [] });
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
