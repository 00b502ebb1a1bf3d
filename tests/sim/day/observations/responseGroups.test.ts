import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { NO_FILES, readPlan } from "../../../../sim/asked/plan/index.ts";
import { responseGroups, responsesOf } from "../../../../sim/day/observations/index.ts";

function planIn(path: string) {
  const text = readFileSync(resolve(import.meta.dirname, "../../../../experiments", path), "utf8");
  return readPlan(JSON.parse(text), NO_FILES).plan!;
}

const FERNCOTE = planIn("plans/ferncote.json");
const GROUPS = responseGroups(FERNCOTE);

describe("responseGroups", () => {
  it("hold every response once, in the order of a report", () => {
    const listed = GROUPS.flatMap(({ responses }) => responses.map(({ key }) => key));
    expect(listed).toEqual(responsesOf(FERNCOTE).map(({ key }) => key));
  });

  it("leave out what a plan has nothing of", () => {
    const names = responseGroups(planIn("plans/parts/capacity.json")).map(({ name }) => name);
    expect(names).toContain("The day");
    expect(names).not.toContain("Money");
  });

  it("know those that ask the same of another station, crew or limit", () => {
    const families = new Map(GROUPS.flatMap(({ responses }) => responses.map(({ key, family }) => [key, family])));
    expect(families.get("working.skinning.byClock")).toBe("working.*.byClock");
    expect(families.get("working.hand skinning")).toBe("working.*");
    expect(families.get("crew.hanging.hours.hanging")).toBe("crew.*.hours.*");
    expect(families.get("beyond.kill to chill")).toBe("beyond.*");
    expect(families.get("bound.load.load 1")).toBe("bound.load.*");
    expect(families.get("costPerHead")).toBe("costPerHead");
  });

  it("do not take posts of an account for stations of the same name", () => {
    const money = GROUPS.find(({ name }) => name === "Money")!.responses;
    expect(money.map(({ family }) => family)).toEqual(money.map(({ key }) => key));
  });
});
