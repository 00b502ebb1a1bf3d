import { describe, expect, it } from "vitest";
import type { OfferWorth } from "../../../../sim/questions/options/index.ts";
import { optionsVerdict } from "../../../../sim/questions/options/optionsVerdict.ts";
import { handMadeDecision } from "../../../support/handMadeDecision.ts";

const ranged = (mean: number, half: number) => ({ mean, low: mean - half, high: mean + half });

function offer(
  name: string,
  verdict: OfferWorth["verdict"],
  more: Partial<OfferWorth> = {},
  perYear = 5000,
): OfferWorth {
  return {
    ...{ name, verdict, price: 20_000, harm: null, againstBest: null },
    worth: {
      perYear: ranged(perYear, 1000),
      presentValue: ranged(8 * perYear, 8000),
      paybackYears: { mean: 3, low: 2.1, high: 6 },
    },
    ...more,
  } as unknown as OfferWorth;
}

const of = (options: OfferWorth[], finish?: { mean: number; low: number; high: number }) => {
  const rows = options.map(({ name }) => ({
    name,
    differences: finish === undefined ? {} : { finish: finish as never },
  }));
  const names = ["base", ...options.map(({ name }) => name)];
  return optionsVerdict(
    { options, currency: "EUR" },
    {
      decision: handMadeDecision(rows),
      study: { replications: 20 } as never,
      variants: names.map((name) => ({ name })) as never,
    },
  );
};

describe("which offer to buy", () => {
  it("is the one that brings most of those that are shown to pay, with payback and minutes", () => {
    const found = of([offer("X", "pays"), offer("Y", "pays", {}, 9000), offer("Z", "not decided", {}, 12_000)], {
      ...{ mean: -720, low: -840, high: -600 },
    });
    expect(found).toMatchObject({ answer: "yes", buy: 1 });
    expect(found.verdict).toBe(
      "Buy “Y”: it pays back in 2.1 to 6.0 years and brings 9\u202f000 EUR a year after price, service and interest; work ends 12 min (10 to 14 min) earlier.",
    );
  });

  it("says which others may be as good, and no minutes that do not matter", () => {
    const rival = offer("Z", "pays", { againstBest: { mayBeBest: true } as never }, 4000);
    const found = of([offer("X", "pays"), rival], { mean: -60, low: -90, high: -30 });
    expect(found.verdict).not.toMatch(/work ends/);
    expect(found.next[0]).toMatch(/^May be as good: “Z”/);
  });

  it("is none where none pays, or all that pay do harm", () => {
    expect(of([offer("X", "does not pay"), offer("Y", "does not pay")])).toMatchObject({
      ...{ answer: "no", buy: null, verdict: "Buy nothing: none of the 2 offers pays within its life." },
    });
    const harm = "it handles 10 fewer heads a day";
    expect(of([offer("X", "pays", { harm })]).verdict).toBe(
      "Buy nothing: the offer does harm (“X”: it handles 10 fewer heads a day).",
    );
    expect(of([offer("X", "pays", { harm }), offer("Y", "does not pay")]).verdict).toBe(
      "Buy nothing: no offer that does no harm pays within its life.",
    );
  });

  it("cannot be told where the days leave it open, and says how many would", () => {
    const found = of([offer("X", "not decided", {}, 500), offer("Y", "does not pay", {}, -9000)]);
    expect(found).toMatchObject({ answer: "undecided", buy: null });
    expect(found.verdict).toBe(
      "Buy nothing yet: whether “X” pays cannot be told (net present value −4\u202f000 to 12\u202f000 EUR).",
    );
    expect(found.next[0]).toMatch(/--replications 80/);
  });

  it("is too small where it brings less than a hundredth of its price a year", () => {
    expect(of([offer("X", "pays", { price: 2_000_000 })])).toMatchObject({
      ...{ answer: "too small", buy: null, verdict: expect.stringMatching(/^Hardly: .*less than a hundredth/) },
    });
  });
});
