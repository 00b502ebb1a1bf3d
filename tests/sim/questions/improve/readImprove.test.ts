import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { readImprove } from "../../../../sim/questions/improve/index.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { improveFileOf } from "../../../support/improveCases.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

const faultsOf = (changes: Record<string, unknown>, index = 0) =>
  readImprove(improveFileOf(changes, index), NO_FILES).faults.map(formatFault);

const places = (changes: Record<string, unknown>) => ({
  allocate: { places: { total: 5, among: [{ station: "stunning", to: 9 }], ...changes } },
});
const people = (element: Record<string, unknown>, total = 5) => ({
  allocate: { people: { total, among: [{ crew: "hanging", to: 4, ...element }] } },
});
const OPTION = { name: "o", price: "1 EUR", life: 5, set: { "line.stunning.buffer": 4 } };
const budget = (options: Record<string, unknown>[], total = "5 EUR") => ({ allocate: { budget: { total, options } } });

describe("readImprove", () => {
  it.each(["sallowfield-people", "ferncote-places"])("reads %s of experiments/improve", (name) => {
    const folder = new URL("../../../../experiments/improve/", import.meta.url);
    const files = { readText: (path: string) => readFileSync(new URL(path, folder), "utf8") };
    const { question, faults } = readImprove(JSON.parse(files.readText(`${name}.json`)), files);
    expect(faults).toEqual([]);
    expect(question!.space.elements.length).toBeGreaterThan(3);
  });

  it("takes what the elements allow as the bounds of the total", () => {
    const { space } = readImprove(improveFileOf({}, 6), NO_FILES).question!;
    expect([space.least, space.most]).toEqual([8, 11]);
    const all = readImprove(improveFileOf(people({ from: 2 })), NO_FILES);
    expect(all.faults.map(formatFault)[0]).toMatch(/'hanging' is no crew of the plan/);
    const wide = readImprove(improveFileOf(people({ from: 2 }, 99), 5), NO_FILES).question!.space;
    expect([wide.least, wide.most]).toEqual([2, 4]);
  });

  it("tells what one part says of the plan beside a fault of another", () => {
    const station = places({ among: [{ station: "stuning", to: 4 }] });
    expect(faultsOf({ ...station, goal: "profit", limits: [{ limit: "stun to stik", beyond: "1 %" }] })).toEqual([
      expect.stringMatching(/^goal: "profit" is not one of the choices/),
      expect.stringMatching(/^allocate\.places\.among\[0\]\.station: 'stuning' is no station/),
      expect.stringMatching(/^limits\[0\]\.limit: 'stun to stik' is no limit of the plan/),
    ]);
  });

  it("asks for a difference of 2 min of overtime, or 1 % of what the plan does", () => {
    const overtime = readImprove(improveFileOf({ difference: undefined }, 3), NO_FILES).question!;
    expect(overtime.difference).toBe(120);
    expect(readImprove(improveFileOf(), NO_FILES).question!.difference).toBeNull();
  });

  it.each<[string, string[], RegExp]>([
    ["an unknown key", faultsOf({ gaol: "throughput" }), /^gaol: unknown key; .*did you mean 'goal'\?/],
    ["a goal of nobody's", faultsOf({ goal: "profit" }), /^goal: "profit" is not one of the choices/],
    [
      "no allocation",
      faultsOf({ allocate: {} }),
      /^allocate: an empty object; allowed: exactly one of places, people, budget/,
    ],
    [
      "a station that is none",
      faultsOf(places({ among: [{ station: "stuning", to: 4 }] })),
      /^allocate\.places\.among\[0\]\.station: 'stuning' is no station of the line; .*did you mean 'stunning'\?/,
    ],
    [
      "bounds the wrong way round",
      faultsOf(places({ among: [{ station: "stunning", from: 5, to: 4 }] })),
      /among\[0\]\.from: 5, more than to, which is 4/,
    ],
    [
      "a least above the total",
      faultsOf(places({ least: 6 })),
      /^allocate\.places\.least: 6, more than total, which is 5/,
    ],
    [
      "a least that cannot be reached",
      faultsOf(places({ total: 50, least: 12 })),
      /least: 12, more than the elements can take; allowed: 9 or less/,
    ],
    [
      "a total below the fewest",
      faultsOf(places({ total: 2, among: [{ station: "stunning", from: 3, to: 4 }] })),
      /^allocate\.places\.total: 2, fewer than the elements take; allowed: 3 or more/,
    ],
    [
      "a crew that is none",
      faultsOf(people({ crew: "hangin" }), 5),
      /among\[0\]\.crew: 'hangin' is no crew of the plan; .*did you mean 'hanging'\?/,
    ],
    [
      "positions of no station",
      faultsOf(people({ positions: ["hangin"] }), 5),
      /positions\[0\]: 'hangin' is no place of work/,
    ],
    [
      "a limit that is none",
      faultsOf({ limits: [{ limit: "stun", beyond: "1 %" }] }, 4),
      /^limits\[0\]\.limit: 'stun' is no limit of the plan/,
    ],
    [
      "a limit that nothing can show",
      faultsOf({ limits: [{ limit: "stun to skinning", beyond: "0 %" }] }, 4),
      /^limits\[0\]\.beyond: 0; allowed: more than 0/,
    ],
    ["a margin without money", faultsOf({ goal: "margin" }), /^goal: 'margin', but the plan reckons no margin/],
    ["a time for carcasses", faultsOf({ difference: "2 min" }), /^difference: "?2 min"? does not suit 'headsPerHour'/],
    [
      "a first stage beyond the most days",
      faultsOf({ firstStage: 300 }),
      /^firstStage: 300, more than atMost, which is 20/,
    ],
    [
      "a budget for margin without interest",
      faultsOf({ interest: undefined }, 9),
      /^interest: missing, and margin is the goal of a budget/,
    ],
    [
      "an option that changes nothing",
      faultsOf(budget([{ ...OPTION, set: undefined }])),
      /^allocate\.budget\.options\[0\]: it changes nothing/,
    ],
    [
      "an option to nowhere",
      faultsOf(budget([{ ...OPTION, set: { "line.stuning.buffer": 2 } }])),
      /^option 'o': line\.stuning\.buffer: .*did you mean 'stunning'\?/,
    ],
    ["two of a name", faultsOf(budget([OPTION, OPTION])), /options\[1\]\.name: 'o' stands twice/],
    ["another currency", faultsOf(budget([OPTION], "5 CHF")), /options\[0\]\.price: EUR, but the budget is in CHF/],
    [
      "a crew of nobody's",
      faultsOf(budget([{ ...OPTION, set: undefined, crew: { dresing: 1 } }])),
      /options\[0\]\.crew\.dresing: 'dresing' is no crew/,
    ],
    ["a plan that is not there", faultsOf({ plan: "nowhere.json" }), /^plan: 'nowhere\.json' cannot be read/],
    ["a plan with faults", faultsOf({ plan: { ...SMALL_PLAN, limits: [], line: [] } }), /^plan\.line: /],
  ])("refuses %s", (_, faults, words) => {
    expect(faults).toEqual([expect.stringMatching(words)]);
  });

  it("tells faults of file, allocation and limits at once", () => {
    expect(
      faultsOf({ ...places({ least: 6 }), limits: [{ limit: "stun", beyond: "1 %" }], firstStage: 300 }, 4),
    ).toHaveLength(3);
  });
});
