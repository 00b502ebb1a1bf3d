import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { NO_FILES, readPlan } from "../../../../sim/asked/plan/index.ts";
import { MEANT, nearestResponses } from "../../../../sim/asked/study/nearestResponses.ts";
import { responsesOf } from "../../../../sim/day/observations/index.ts";

function knownOf(plan: string) {
  const text = readFileSync(resolve(import.meta.dirname, "../../../../experiments/plans", plan), "utf8");
  const reading = readPlan(JSON.parse(text), NO_FILES);
  if (reading.plan === null) throw new Error(`${plan} is not sound`);
  return responsesOf(reading.plan);
}

const FERNCOTE = knownOf("ferncote.json");
const nearest = (written: string) => nearestResponses(written, FERNCOTE);

describe("nearestResponses", () => {
  it("has a meaning for no word that comes to a key which no plan has", () => {
    const keys = FERNCOTE.map(({ key }) => key);
    const missing = Object.entries(MEANT).flatMap(([word, meant]) =>
      meant
        .filter((key) => !keys.some((each) => (key.endsWith(".") ? each.startsWith(key) : each === key)))
        .map((key) => `${word}: ${key}`),
    );
    expect(missing).toEqual([]);
  });

  it.each([
    ["cost", ["costPerHead", "margin"]],
    ["money", ["margin", "costPerHead"]],
    ["people", ["personHours", "carcassesPerPersonHour", "crew.live animals.occupation"]],
    ["waiting", ["timeInSystem.mean", "lorry.emptied.max", "queue.unloading.mean"]],
    ["late", ["finish", "overtime", "beyond.stun to stick"]],
    ["Throughput", ["headsPerHour", "carcasses"]],
  ])("goes by what %s means", (word, keys) => {
    expect(nearest(word)).toEqual(keys);
  });

  it.each([
    ["headPerHour", "headsPerHour"],
    ["overtme", "overtime"],
    ["costperhead", "costPerHead"],
    ["beyond.stun to stik", "beyond.stun to stick"],
  ])("takes %s for a slip of the keyboard", (word, key) => {
    expect(nearest(word)).toEqual([key]);
  });

  it("looks for words in labels too, the whole plant before one station", () => {
    expect(nearest("dressing")[0]).toBe("dressingPercentage");
    expect(nearest("fresh water")[0]).toBe("water");
    expect(nearest("unloaded")).toEqual(["lorry.unloading.max"]);
  });

  it("names what there is: no money where the plan has none", () => {
    const plain = FERNCOTE.filter(({ key }) => !/cost|margin|revenue/i.test(key));
    expect(nearestResponses("profit", plain)).toEqual([]);
  });

  it.each(["", "zzzz", "x".repeat(100_000)])("has nothing to offer for what is like nothing", (word) => {
    expect(nearest(word)).toEqual([]);
  });
});
