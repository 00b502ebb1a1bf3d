import { describe, expect, it } from "vitest";
import { readDemand } from "../../../../sim/questions/size/index.ts";
import { demandFaults, demandFile, demandOf, NO_FILES, weeklyDemand } from "../../../support/demands.ts";

describe("readDemand", () => {
  it("reads the example", () => {
    expect(readDemand(weeklyDemand(), NO_FILES).faults).toEqual([]);
  });

  it("fills in what is assumed, as the file would write it and in SI units", () => {
    const demand = demandOf({ animals: { condemned: "2 %" } });
    expect(demand.animals).toMatchObject({ condemned: 0.02, deadOnArrival: 0.0015, yield: 0.525 });
    expect(demand.written.animals).toMatchObject({ condemned: "2 %", deadOnArrival: "0.15 %" });
  });

  it("leaves the file's JSON as it was", () => {
    const json = Object.freeze(demandFile());
    readDemand(json, NO_FILES);
    expect(json).toEqual(demandFile());
  });

  it("tells every fault of shape at once, with the nearest name", () => {
    const { faults } = readDemand({ week: { heads: 5, days: 9 }, stpes: {} }, NO_FILES);
    expect(faults.map(({ path }) => path).toSorted()).toEqual(["day", "name", "stpes", "week.days"]);
    expect(faults.find(({ path }) => path === "stpes")!.remedy).toBe("did you mean 'steps'?");
  });

  it("tells with a fault of shape what the sound parts say by themselves", () => {
    const json = { stpes: {}, week: { days: 5 }, animals: { yield: "0 %" }, steps: { rinsing: { cycle: "4 s" } } };
    const paths = readDemand(json, NO_FILES).faults.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(["stpes", "week", "animals.yield", "steps.rinsing"]));
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ["no quantity", { week: { days: 5 } }, /^week: no quantity; allowed: exactly one of "heads"/],
    ["two quantities", { week: { days: 5, heads: 9, carcasses: 8 } }, /^week: "heads" and "carcasses"; .* keep one$/],
    ["a yield of nothing", { animals: { yield: 0 } }, /^animals\.yield: it is 0; allowed: more than 0/],
    [
      "nothing left",
      { animals: { condemned: "60 %", deadOnArrival: "40 %" } },
      /^animals: nothing is left of the heads/,
    ],
    [
      "more out of an animal than there is",
      { animals: { yield: "70 %" } },
      /^animals\.yield: carcass and by-products together are 1\d\d(\.\d+)? % of the live weight/,
    ],
    [
      "pallets where there are none",
      { crates: { handling: { lift: { palletsOut: { time: "9 s" } } } } },
      /^crates\.handling\.lift\.palletsOut: unknown key/,
    ],
    ["a plant of no kind", { alternative: "compact plnt" }, /^alternative: .*did you mean 'compact plant'/],
    ["a zone of no name", { steps: { hanging: { zone: "wet side" } } }, /^steps\.hanging\.zone: /],
    [
      "a step in no place",
      { steps: { rinsing: { work: "manual", cycle: "3 s" } } },
      /^steps\.rinsing: 'rinsing' is no usual step/,
    ],
    [
      "a step after nobody",
      { steps: { rinsing: { work: "manual", cycle: "3 s", after: "skining" } } },
      /did you mean 'skinning'\?$/,
    ],
    ["a usual step moved", { steps: { skinning: { after: "hanging" } } }, /^steps\.skinning\.after: .* has its place/],
    ["a step of no kind", { steps: { rinsing: { cycle: "3 s", after: "skinning" } } }, /what kind of work/],
    [
      "a step without a time",
      { steps: { rinsing: { work: "machine", after: "skinning" } } },
      /it has no time; allowed: exactly one: cycle or rate/,
    ],
    [
      "a dwell with a cycle",
      { steps: { bleeding: { cycle: "3 s" } } },
      /its times do not suit its work; allowed: exactly one: dwell/,
    ],
    ["a time for chilling", { steps: { chilling: { dwell: "3 h" } } }, /that of chilling is computed/],
  ])("refuses %s", (_, changes, words) => {
    expect(demandFaults(changes)).toEqual([expect.stringMatching(words)]);
  });
});
