import { describe, expect, it } from "vitest";
import { flowWarnings, NO_FILES, parsePath, readPlan, resolvePath } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { askNew, NEW_QUESTIONS, newPlan } from "../../../../sim/questions/new/index.ts";

type Given = Record<string, string>;

/** What was asked with these answers, and the usual one to all other questions. */
async function asked(given: Given = {}) {
  return askNew({ answer: ({ key }) => given[key] ?? "", again: () => false });
}

async function planOf(given: Given = {}) {
  const found = await asked(given);
  expect(found.faults).toEqual([]);
  const json = newPlan(found);
  const { plan, faults } = readPlan(json, NO_FILES);
  expect(faults).toEqual([]);
  return { json, plan: plan! };
}

const EVERY_STEP =
  "hind-leg cutting, pre-loosening, skinning, four-leg cutting, abdomen opening, evisceration, inspection, final trim, chiller loading, chilling";

/** Small and large, by day and by night, by every way of handling crates, long lines and short ones. */
const PLANTS: Given[] = [
  {},
  { heads: "1" },
  { heads: "25", lorries: "2", breaks: "none", pay: "none" },
  { heads: "12 000", handling: "automatic" },
  { heads: "5,000", handling: "lift", breakdowns: "no" },
  { start: "22:00", end: "30:00", skinning: "hand" },
  { start: "0:00", end: "01:00", heads: "100" },
  { steps: "skinning", skinning: "hand", limits: "stun to stick none, arrival to stunning none" },
  { steps: EVERY_STEP, people: "evisceration 4, hanging=3", seconds: "four-leg cutting 3 s" },
  { steps: "chilling", lorries: "40", headsPerCrate: "1" },
];

describe("newPlan", () => {
  it.each(PLANTS)(
    "writes a plan that is sound, whose flow nothing warns of, and that runs to its end: %j",
    async (given) => {
      const { json, plan } = await planOf(given);
      expect(flowWarnings(plan, json)).toEqual([]);
      expect(runDay(compileLine(plan), { seed: "a plan that runs", replication: 0 }).status).toBe("finished");
    },
  );

  it.each(PLANTS)("names the source of figures that are there, each as asked or as a guess: %j", async (given) => {
    const { json } = await planOf(given);
    for (const { path, kind, note } of json.sources as { path: string; kind: string; note: string }[]) {
      if (path === "") continue;
      expect(resolvePath(json, parsePath(path)!).place, path).not.toBeNull();
      expect(note).toMatch({ assumed: /^Asked/, invented: /^Guess/, published: /Schlachtverordnung/ }[kind]!);
    }
  });

  it("says of single figures of one answer which were asked", async () => {
    const { json } = await planOf({ people: "evisceration 5", limits: "kill to chill 40 min", heads: "900" });
    const kinds = new Map((json.sources as { path: string; kind: string }[]).map(({ path, kind }) => [path, kind]));
    expect(kinds.get("crews.evisceration.people")).toBe("assumed");
    expect(kinds.get("crews.hanging.people")).toBe("invented");
    expect(kinds.get('limits["kill to chill"].max')).toBe("assumed");
    expect(kinds.get('limits["arrival to stunning"].max')).toBe("invented");
    expect(kinds.get('limits["stun to stick"].max')).toBe("published");
  });

  it("puts answers where they belong", async () => {
    const { json, plan } = await planOf({
      name: "Ridge",
      heads: "600",
      lorries: "2",
      every: "2 h",
      firstLorry: "5:30",
      headsPerCrate: "10",
      breaks: "10:00 20 min",
      bleeding: "3 min",
      people: "evisceration 5",
      seconds: "evisceration 20 s",
      pay: "20 CHF/h",
      limits: "kill to chill 1 h, arrival to stunning none",
    });
    expect(plan.name).toBe("Ridge");
    expect(json.supply).toMatchObject({
      loads: [{ at: "05:30", repeat: { every: "2 h", times: 2 }, crates: 30, headsPerCrate: 10 }],
    });
    expect(json.day).toMatchObject({ breaks: [{ at: "10:00", length: "20 min" }] });
    const stages = new Map((json.line as { name: string }[]).map((stage) => [stage.name, stage]));
    expect(stages.get("bleeding")).toMatchObject({ dwell: "3 min" });
    expect(stages.get("evisceration")).toMatchObject({ positions: 5, cycle: { lognormal: { mean: "20 s" } } });
    expect(plan.money?.currency).toBe("CHF");
    expect((json.limits as { name: string; max: string }[]).map(({ name, max }) => [name, max])).toEqual([
      ["stun to stick", "10 s"],
      ["stick to evisceration", "25 min"],
      ["kill to chill", "1 h"],
    ]);
  });

  it("has no machine break down where the answer is no, and nobody to repair", async () => {
    const { json, plan } = await planOf({ breakdowns: "no", handling: "automatic" });
    expect(JSON.stringify(json)).not.toContain("breakdowns");
    expect(plan.crews.map(({ name }) => name)).not.toContain("maintenance");
    const { json: breaking } = await planOf({ breakdowns: "yes", handling: "automatic" });
    expect(JSON.stringify(breaking).match(/"breakdowns"/g)!.length).toBeGreaterThan(1);
  });

  it("by the usual answers keeps every time limit and brings every head through in the shift, on five days", async () => {
    const { plan } = await planOf();
    const line = compileLine(plan);
    for (let replication = 0; replication < 5; replication++) {
      const values = measure(runDay(line, { seed: "the usual answers", replication }), plan);
      for (const { name } of plan.limits) expect([name, values[`beyond.${name}`]]).toEqual([name, 0]);
      expect([values.overtime, values.leftInLairage]).toEqual([0, 0]);
    }
  });
});

describe("a bad answer", () => {
  it.each([
    ["name", "x".repeat(61), /1 to 60 characters/],
    ["heads", "12x", /'12x' is not a whole number from 1 to/],
    ["heads", "1.5", /not a whole number/],
    ["start", "6", /not a time of day/],
    ["start", "25:00", /next day/],
    ["end", "05:00", /is not 1 to 24 hours/],
    ["breaks", "9 am", /'9 am' is not the start and length/],
    ["breaks", "14:20 15 min", /does not lie inside the shift/],
    ["breaks", "09:00 1 h, 09:30 15 min", /begins before the one before it is over/],
    ["lorries", "0", /from 1 to 200/],
    ["firstLorry", "15:00", /the shift is over/],
    ["every", "5 h", /the last of 3 lorries would come at 15:20/],
    ["crates", "20", /would bring 720 heads, not 1\D?600; 45 crates on a lorry would do/],
    ["handling", "lft", /did you mean 'lift'/],
    ["steps", "skining", /did you mean 'skinning'/],
    ["steps", ",", /names no step/],
    ["bleeding", "150", /not a time with its unit/],
    ["bleeding", "0 s", /not above 0/],
    ["seconds", "evisceration", /gives no figure for evisceration/],
    ["people", "evicseration 4", /did you mean 'evisceration'/],
    ["people", "skinning 2", /'skinning' is not asked for here/],
    ["people", "hanging 2, hanging 3", /stands there twice/],
    ["breakdowns", "perhaps", /not one of yes, no/],
    ["pay", "18", /not money an hour/],
    ["limits", "kill to chill soon", /kill to chill: 'soon' is not a time with its unit/],
  ])("to %s, %s, is told in one message", async (key, text, words) => {
    const { faults } = await asked({ [key]: text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ key, words: expect.stringMatching(words) });
  });

  it("is asked for again until it can be taken", async () => {
    const answers = ["many", "0", "700"];
    const told: string[] = [];
    const found = await askNew({
      answer: ({ key }) => (key === "heads" ? answers.shift()! : ""),
      again: ({ words }) => told.push(words) > 0,
    });
    expect(told).toHaveLength(2);
    expect([found.answers.heads, found.faults, [...found.given]]).toEqual([700, [], ["heads"]]);
  });
});

it("asks no question whose key stands there twice, and every one in words of its own", () => {
  expect(new Set(NEW_QUESTIONS.map(({ key }) => key)).size).toBe(NEW_QUESTIONS.length);
  expect(new Set(NEW_QUESTIONS.map(({ words }) => words)).size).toBe(NEW_QUESTIONS.length);
});
