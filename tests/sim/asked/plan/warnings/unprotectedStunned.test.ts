import { describe, expect, it } from "vitest";
import { stageOf, wholeWarnings } from "../wholeMessages.ts";

describe("a stunned head that nothing protects", () => {
  it("is warned of where no gate holds stunning back", () => {
    const [warning, ...others] = wholeWarnings((plan) => (plan.gates = []));
    expect(others).toEqual([]);
    expect(warning).toMatch(
      /nothing keeps a head from being stunned while '.+' has no room: it may wait and wake; add "stunned" from "stunning"/u,
    );
  });

  it("is warned of where the gates are elsewhere, and not where one begins before stunning", () => {
    const gate = (from: string, to: string) =>
      wholeWarnings((plan) => (plan.gates = [{ name: "g", from, to, atMost: 3 }]));
    expect(gate("start of evisceration", "start of inspection")).toHaveLength(1);
    expect(gate("start of hanging", "start of stunning")).toHaveLength(1);
    expect(gate("start of hanging", "exit from bleeding")).toEqual([]);
    expect(gate("start of stunning", "leaving the line")).toEqual([]);
  });

  it("is warned of where breaks come without an emptied stretch", () => {
    const without = (breaks: unknown[]) =>
      wholeWarnings((plan) => {
        delete plan.day.safeStop;
        plan.day.breaks = breaks;
      });
    expect(without([{ name: "lunch", at: "10:00", length: "20 min" }])).toEqual([
      expect.stringMatching(/^day: a break may begin while a stunned head waits/u),
    ]);
    expect(without([])).toEqual([]);
  });

  it("is not warned of where a hold protects it, breaks or not", () => {
    const held = (hold: boolean) =>
      wholeWarnings((plan) => {
        plan.gates = [];
        delete plan.day.safeStop;
        plan.stunned = {
          from: "stunning",
          to: "sticking",
          hold,
          late: { after: "8 s", help: "stick there", takes: "4 s" },
        };
      });
    expect(held(true)).toEqual([]);
    expect(held(false)).toHaveLength(2);
  });

  it("is warned of where a breakdown may catch it and nobody is called", () => {
    const breakdowns = [{ name: "jam", uptime: "1 h", repair: "2 min" }];
    const warnings = (late: unknown, broken: string) =>
      wholeWarnings((plan) => {
        const chain = stageOf(plan, "kill chain");
        const stations = [stageOf(plan, "stunning"), ...chain.stations];
        stations.find(({ name }: { name: string }) => name === broken)!.breakdowns = breakdowns;
        plan.stunned = { from: "stunning", to: "sticking", late };
      });
    expect(warnings(null, "sticking")).toEqual([
      `stunned: a breakdown at 'sticking' may leave a stunned head waiting: nobody is called to it; add "late": who stuns it again, or sticks it where it is`,
    ]);
    expect(warnings({ after: "8 s", help: "stun again", takes: "3 s" }, "sticking")).toEqual([]);
    expect(warnings(null, "stunning")).toEqual([]);
  });

  it("is not looked for where nothing stuns", () => {
    const warnings = wholeWarnings((plan) => {
      const text = JSON.stringify(plan).replaceAll("stunning", "first step");
      Object.assign(plan, JSON.parse(text), { gates: [] });
      stageOf(plan, "first step").name = "first step";
    });
    expect(warnings).toEqual([]);
  });
});
