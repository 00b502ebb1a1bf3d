import { describe, expect, it } from "vitest";
import { screeningTable, studySummary } from "../../../sim/cli/studySummary.ts";
import { handMadeResults } from "../../support/handMadeResults.ts";
import { killLinePlan, killLineStudy, smoothPlan } from "../../support/killStopResults.ts";
import { screeningResults } from "../../support/screeningResults.ts";

describe("studySummary", () => {
  it("shows every variant's headline with its interval, each difference in words, and the next results in brief", () => {
    expect(studySummary(handMadeResults())).toEqual([
      '2 variants, 3 simulated days of each, seed "rabbit", 95 % intervals',
      "Throughput, from the start of the shift to the end of work:",
      "  base                 480 carcasses/h  (405 to 555 carcasses/h)",
      "  +1 person, skinning  510 carcasses/h  (435 to 585 carcasses/h)",
      "      30 carcasses/h more than today's plan (30 to 30 carcasses/h at 95 %; on the same 3 days).",
      "End of work on the line:",
      "  base                 08:30  (the same on every day)",
      "  +1 person, skinning  08:30  (the same on every day)",
      "chilling time: heads outside the limit:",
      "  base                 no value  ",
      "  +1 person, skinning  no value  ",
    ]);
  });

  it("says where the results are that it leaves out", () => {
    const results = handMadeResults();
    const [first] = results.responses;
    const responses = Array.from({ length: 6 }, (_, index) => ({ ...first!, label: `Result ${index}` }));
    const lines = studySummary({ ...results, responses });
    expect(lines.filter((line) => /^Result \d:$/.test(line))).toHaveLength(4);
    expect(lines.at(-1)).toBe("2 more results are in report.html and summary.csv; --out FOLDER writes them.");
  });

  it("leads with stunned heads that waited too long in any variant", async () => {
    const lines = studySummary(await killLineStudy({ base: smoothPlan(), jam: killLinePlan() }));
    expect(lines[0]).toMatch(/^Animal welfare first\. With “jam” .* of stunned heads waited longer for sticking/u);
    expect(lines[1]).toMatch(/^2 variants/u);
  });

  it("says that a value has no interval, or that there is no value", () => {
    const results = handMadeResults();
    const [base, other] = results.variants as [(typeof results.variants)[0], (typeof results.variants)[0]];
    const one = { ...base.estimates.headsPerHour!, n: 1, low: null, high: null, halfWidth: null };
    const variants = [
      { ...base, estimates: { headsPerHour: one } },
      { ...other, estimates: {}, differences: {} },
    ];
    const text = studySummary({ ...results, variants }).join("\n");
    expect(text).toMatch(/base +480 carcasses\/h +\(one value, no interval\)/);
    expect(text).toMatch(/skinning +no value/);
  });

  it("says how many differences chance alone would show once there is more than one comparison", () => {
    const results = handMadeResults();
    const procedure = { ...results.procedure, errorRate: "per comparison" as const };
    const more = { ...results, procedure, variants: [...results.variants, results.variants[1]!] };
    expect(studySummary(more).join("\n")).toMatch(/of 2 comparisons, chance alone shows about 0\.1 on average/);
    expect(studySummary(results).join("\n")).not.toMatch(/chance/);
  });

  it("warns of days that did not end by themselves", () => {
    const results = handMadeResults();
    const variants = results.variants.map((variant, index) =>
      index === 0 ? variant : { ...variant, values: { ...variant.values, unfinished: [0, 1, 1] } },
    );
    expect(studySummary({ ...results, variants }).at(-1)).toMatch(/"\+1 person, skinning": 2 of 3 days did not end/);
    const stuck = variants.map((variant): typeof variant => ({
      ...variant,
      dayNotes: ["5 heads at 'trim' stay unworked: nobody is there."],
      day: { ...variant.day, status: "stuck" },
    }));
    expect(studySummary({ ...results, variants: stuck }).at(-1)).toMatch(
      /On the first day: 5 heads at 'trim' stay unworked: nobody is there\.$/,
    );
  });
});

it("lists the factors of a screening, the one that matters most first, in place of its variants", () => {
  const results = screeningResults();
  const lines = screeningTable(results, results.responses[0]!);
  expect(lines[2]).toMatch(/^ {2}time per head +46 heads\/h +2 heads\/h +\u221246 heads\/h +34 heads\/h$/);
  expect(lines[3]).toMatch(/^ {2}walking/);
  expect(lines[5]).toMatch(/^ {2}an unused factor +no value/);
  const text = studySummary(results).join("\n");
  expect(text).toContain(lines.join("\n"));
  expect(text).not.toContain("than today's plan");
});
