import { describe, expect, it } from "vitest";
import { steps } from "../../../../sim/day/line/index.ts";
import { EQUIPMENT_GROUPS, equipmentList } from "../../../../sim/questions/dossier/index.ts";
import { CHAINS, FERNCOTE, LARGE } from "../../../support/layoutCases.ts";

const { plan, layout, days } = FERNCOTE();
const list = equipmentList(plan, layout, days);
const named = (name: string) => list.find((row) => row.name === name)!;

describe("the equipment list", () => {
  it.each([FERNCOTE(), CHAINS(), LARGE()])("has everything that the plan names, once: $name", (each) => {
    const rows = equipmentList(each.plan, each.layout, each.days);
    for (const { name } of steps(each.plan))
      expect(rows.filter((row) => row.name === name && row.group !== "by-products")).toHaveLength(1);
    for (const row of rows) {
      expect(EQUIPMENT_GROUPS).toContain(row.group);
      expect(row.why, row.name).not.toBe("");
      expect(row.number, row.name).toBeGreaterThan(0);
    }
  });

  it("says what rate a machine needs and why, worked by hand: 600 x (1 - 0.15 %) heads/h, 4.733 s, repairs 65 s in 16 min and 14 min in 9 h", () => {
    const skinning = named("skinning");
    const repairs = 65 / (16 * 60) + 14 / (9 * 60);
    expect(skinning).toMatchObject({
      what: "machine",
      rateNeeded: "599 heads/h",
      number: 1,
      unit: "position",
      places: 4,
    });
    expect(repairs).toBeCloseTo(0.0936, 4);
    expect(skinning.why).toContain("9.36 % repairs");
    expect(skinning.why).toContain(`busy ${Math.round((100 * 600 * 0.9985 * 4.7333 * (1 + repairs)) / 3600)} %`);
    expect(skinning.metres).toBeCloseTo(4 * 0.3 + 1.8, 9);
    expect(skinning.connectedTo).toEqual(["electricity 3 kW", "cold water 0.4 L each", "drain", "skins into skin bin"]);
    expect(skinning.price).toEqual({ amount: 95_000, currency: "EUR" });
    expect(skinning.standBy).toMatch(/^one stands, all stand \(jam 1.08 min, drive 14 min\)/);
  });

  it("says what is left while one of several machines stands", () => {
    const large = LARGE();
    const row = equipmentList(large.plan, large.layout, large.days).find(({ name }) => name === "skinning")!;
    expect(row.standBy).toMatch(
      /^with one standing \(jam 1.08 min\) the others do \d+ heads\/h: (enough|\d+ % of what is needed)$/,
    );
  });

  it("takes the share of a stage that only the weight sends heads to from the simulated days", () => {
    const share =
      days.reduce((sum, day) => sum + day.stages.find(({ name }) => name === "hand skinning")!.processed, 0) /
      days.reduce((sum, day) => sum + day.heads.hung, 0);
    expect(share).toBeLessThan(0.05);
    expect(Number.parseFloat(named("hand skinning").rateNeeded)).toBeCloseTo(600 * share, 1);
  });

  it("hangs so many hooks, stands so many sterilisers, has a locker for each of all people", () => {
    expect(named("chilling")).toMatchObject({ number: 1100, unit: "hooks of 2" });
    const knives = layout.workPlaces.filter(({ machine, room }) => !machine && room !== "hanging").length;
    expect(named("tool sterilisers").number).toBe(knives);
    const people = plan.crews.reduce((sum, crew) => sum + crew.people[0]!, 0);
    expect(named("lockers, unclean side").number + named("lockers, clean side").number).toBe(people);
    expect(named("overhead rail").metres).toBeCloseTo(
      layout.rail.reduce((sum, { metres }) => sum + metres, 0),
      9,
    );
  });

  it("names a second way of stunning as stand-by", () => {
    expect(named("stunning").standBy).toMatch(/second way of stunning/);
  });

  it("names no prices that the plan does not give", () => {
    expect(list.filter(({ price }) => price !== null).map(({ name }) => name)).toEqual([
      "stunning",
      "skinning",
      "four-leg cutting",
      "chilling",
    ]);
  });

  it("needs a day", () => {
    expect(() => equipmentList(plan, layout, [])).toThrow(RangeError);
  });
});
