import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { harmResponses } from "../../../../sim/days/results/index.ts";
import { readOptions } from "../../../../sim/questions/options/index.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { offersFile, PRICED_PLAN } from "../../../support/offers.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

const faultsOf = (changes: Record<string, unknown>) =>
  readOptions(offersFile(changes), NO_FILES).faults.map(formatFault);
const OFFER = { name: "o", price: "1 EUR", life: 5, set: { "line.skinning.buffer": 2 } };

describe("readOptions", () => {
  it("reads the example of experiments/options", () => {
    const folder = new URL("../../../../experiments/options/", import.meta.url);
    const files = { readText: (path: string) => readFileSync(new URL(path, folder), "utf8") };
    const { question, faults } = readOptions(JSON.parse(files.readText("ferncote-offers.json")), files);
    expect(faults).toEqual([]);
    expect(question!.offerCosts.map(({ price }) => price)).toEqual([9000, 4000, 48_000, 60_000]);
  });

  it("gives a study of the plan as it is and every option, people changed, and what each costs", () => {
    const { study, offerCosts, interest, currency } = readOptions(offersFile(), NO_FILES).question!;
    expect(study.variants.map(({ name }) => name)).toEqual(["as it is", "nothing new", "fewer people", "a fourth"]);
    expect(study.variants.map(({ plan }) => plan.crews[0]!.people[0])).toEqual([3, 3, 2, 4]);
    expect(offerCosts[2]).toEqual({ price: 500, lifeYears: 10, residual: 0, servicePerYear: 100 });
    expect([interest, currency]).toEqual([0.05, "EUR"]);
    expect(study.responses).toEqual([
      "margin",
      "cost.total",
      "headsPerHour",
      "finish",
      "overtime",
      ...harmResponses(study.variants[0]!.plan),
    ]);
  });

  it("looks at costs alone where the plan names no prices, and at capital where an option has some", () => {
    const plan = { ...PRICED_PLAN, money: { currency: "EUR" } };
    const capital = { price: "100 EUR", life: 5, daysPerYear: 250 };
    const options = [{ ...OFFER, set: { "line.hanging.capital": capital } }];
    expect(readOptions(offersFile({ plan, options }), NO_FILES).question!.study.responses.slice(0, 2)).toEqual([
      "cost.total",
      "cost.capital",
    ]);
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    [
      "a plan without money",
      { plan: SMALL_PLAN, options: [OFFER] },
      /^plan: the plan reckons no money; .*give the plan "money"/,
    ],
    [
      "another currency",
      { options: [{ ...OFFER, price: "9 CHF" }] },
      /^options\[0\]\.price: CHF, but the plan reckons in EUR/,
    ],
    [
      "a path to nowhere",
      { options: [{ ...OFFER, set: { "line.skining.buffer": 2 } }] },
      /^option 'o': line\.skining\.buffer: .*did you mean 'skinning'\?/,
    ],
    ["two of a name", { options: [OFFER, OFFER] }, /^options\[1\]\.name: /],
    ["an unknown key", { intrest: "5 %" }, /^intrest: unknown key; .*did you mean 'interest'\?/],
    [
      "an offer that changes nothing",
      { options: [{ ...OFFER, set: undefined }] },
      /^options\[0\]: it changes nothing; allowed: set, insert, remove or crew/,
    ],
    ["no life", { options: [{ ...OFFER, life: 0 }] }, /^options\[0\]\.life: 0 is too small; allowed: more than 0/],
    [
      "a crew of nobody's",
      { options: [{ ...OFFER, set: undefined, crew: { dresing: 1 } }] },
      /^options\[0\]\.crew\.dresing: 'dresing' is no crew/,
    ],
  ])("refuses %s", (_, changes, words) => {
    expect(faultsOf(changes)).toEqual([expect.stringMatching(words)]);
  });

  it("tells with a fault of shape what is wrong with the plan", () => {
    expect(faultsOf({ plan: SMALL_PLAN, intrest: "5 %", options: [] })).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^intrest: unknown key/),
        expect.stringMatching(/^plan: the plan reckons no money/),
      ]),
    );
  });

  it("tells all faults of all options at once", () => {
    const options = [
      { ...OFFER, crew: { dresing: 1 } },
      { ...OFFER, name: "p", set: { "line.skinning.buffer": -1 } },
    ];
    expect(faultsOf({ options })).toHaveLength(2);
  });
});
