import { describe, expect, it } from "vitest";
import { renderReport } from "../../../viz/report/index.ts";
import { inventedImprovement } from "../../support/invented.ts";
import { syntheticFactorial } from "../../support/syntheticStudy.ts";

function text(improvement = inventedImprovement()): string {
  const page = renderReport(syntheticFactorial(), { improvement });
  return page
    .replace(/<(style|script)[^>]*>.*?<\/\1>/gs, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ");
}

describe("the report of a search", () => {
  it("answers first, then tells the choice, the limits, the curve and every design tried", () => {
    const told = text();
    expect(told).toMatch(/Answer Yes: take one person from b\. Recommended: a 3, b 1\./);
    expect(told).toMatch(/What to do next Ask the crews\. Cautions /);
    expect(told).toMatch(/Today Recommended a 3 3 b 2 1 of 5 people 5 4/);
    expect(told).toMatch(/best of them with a probability of 95 % or more/);
    expect(told).toMatch(/a 3, b 1 4 people 330 carcasses\/h 328 to 332 10 kept recommended/);
    expect(told).toMatch(/a 2, b 2 4 people .*? kept dropped after 10 days/);
    expect(told).toMatch(/stun to stick below 1 % 0\.40 % 0\.30 to 0\.50 % kept/);
    expect(told).toMatch(/5 people as it is 310 .*? another choice gives as much for less/);
    expect(told).toMatch(/tried 3 of 12 allowed arrangements, .* Seeds: search 2027, search/);
    expect(told).toMatch(/few 2 people .*? outside the allowed totals, tried for the curve/);
    expect(told).toMatch(/as it is 5 people .*? finalist, breaks a time limit/);
  });

  it("states no probability where none was reached, and draws no shares where nothing is recommended", () => {
    const choice = { kind: "ceiling", probability: 0.95, difference: 4 } as const;
    expect(text(inventedImprovement({ choice }))).toMatch(/No probability is stated; the answer says why/);
    const none = text(inventedImprovement({ recommended: null, words: ["None."] }));
    expect(none).toMatch(/Answer Yes: take one person from b\. None\./);
    expect(none).not.toMatch(/What is shared out/);
  });

  it("escapes what comes from files", () => {
    const [first] = inventedImprovement().tried;
    const page = renderReport(syntheticFactorial(), {
      improvement: inventedImprovement({ tried: [{ ...first!, name: "<img src=x>" }], words: ["<b>a</b>"] }),
    });
    expect(page).not.toMatch(/<img|<b>a/);
  });
});
