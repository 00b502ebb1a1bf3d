import { describe, expect, it } from "vitest";
import type { DecisionRow, Why } from "../../../../sim/days/results/index.ts";
import { type VerdictContext, whyVerdict } from "../../../../sim/questions/why/whyVerdict.ts";
import { estimateOf, gain, handMadeDecision, money } from "../../../support/handMadeDecision.ts";

const PERSON: VerdictContext["changes"][number] = {
  ...{ kind: "person", of: "evisceration", label: "one more person in evisceration", plural: false },
  phrase: "one more person in the crew",
};
const PLACES: VerdictContext["changes"][number] = {
  ...{ kind: "more places", of: "evisceration", label: "20 instead of 5 places before evisceration", plural: true },
  phrase: "20 instead of 5 places before it",
};
const NO_JAMS: VerdictContext["changes"][number] = {
  ...{ kind: "no breakdowns", of: "skinning", label: "no breakdowns at skinning", plural: true },
  phrase: "no breakdowns at all",
};
const WAITS = {
  total: estimateOf(30_000),
  stages: [{ stage: "skinning", share: estimateOf(0.1) }],
  parts: [{ cause: "arrivals", stage: "", detail: "", label: "", seconds: estimateOf(22_320) }],
} as unknown as Why;

function verdictOf(
  tried: readonly [VerdictContext["changes"][number], Partial<DecisionRow>][],
  { shares = [], limits = 1, why = null }: { shares?: number[]; limits?: number; why?: Why | null } = {},
) {
  const decision = handMadeDecision(
    tried.map(([{ label }, row]) => ({ name: label, ...row })),
    shares,
  );
  return whyVerdict(decision, { changes: tried.map(([change]) => change), why, limits });
}

describe("what to change first", () => {
  it("is the change that gains most, with its money", () => {
    const found = verdictOf([[PERSON, { gain: gain("gain", 69), money: money("gain", 40) }]]);
    expect(found).toMatchObject({ answer: "yes", best: 1 });
    expect(found.verdict).toBe(
      "Start with evisceration: one more person in the crew ends work 69 min earlier and saves 40 EUR a day.",
    );
    expect(found.words[0]).toBe(
      "One more person in evisceration: brings about 10\u202f000 EUR a year (250 working days, assumed).",
    );
    expect(found.next.join(" ")).not.toMatch(/no price/);
  });

  it("names what costs nothing where the largest gain costs more than it saves", () => {
    const found = verdictOf([
      [PERSON, { gain: gain("gain", 69), money: money("loss", -115) }],
      [PLACES, { gain: gain("gain", 14), money: money("gain", 23) }],
    ]);
    expect(found).toMatchObject({ answer: "yes", best: 2 });
    expect(found.verdict).toBe(
      "Start with evisceration: one more person in the crew ends work 69 min earlier, but costs 115 EUR a day more than it saves; 20 instead of 5 places before evisceration end work 14 min earlier and save 23 EUR a day.",
    );
    expect(found.next[0]).toMatch(/no price for “20 instead of 5 places before evisceration”/);
  });

  it("is a matter of choice where all that gains costs more than it saves", () => {
    const found = verdictOf([[PERSON, { gain: gain("gain", 69), money: money("loss", -115) }]]);
    expect(found).toMatchObject({ answer: "told", best: null });
    expect(found.verdict).toMatch(/, but costs 115 EUR .*; nothing that was tried gains .* without costing more\.$/);
  });

  it("is nothing that nobody can buy, as long as something else gains", () => {
    const both = verdictOf([
      [NO_JAMS, { gain: gain("gain", 17) }],
      [PLACES, { gain: gain("gain", 14) }],
    ]);
    expect(both.verdict).toMatch(
      /^Start with evisceration: 20 instead of 5 places before it end work 14 min earlier\.$/,
    );
    expect(verdictOf([[NO_JAMS, { gain: gain("gain", 17) }]]).verdict).toMatch(/^Start with skinning: no breakdowns/);
  });

  it("is nothing where no change gains, with what the line waits for instead", () => {
    const found = verdictOf([[PERSON, { gain: gain("no difference", 0) }]], { why: WAITS });
    expect(found).toMatchObject({ answer: "no", best: 0 });
    expect(found.verdict).toBe(
      "No: none of the changes tried, alone or in pairs, ends work earlier; today the line waits for animals (6 h 12 of the day).",
    );
    expect(verdictOf([]).answer).toBe("no");
  });

  it("is too small where it is shown to gain less than matters, unless it is worth its money", () => {
    const small = [PERSON, { gain: gain("too small", 2) }] as const;
    const found = verdictOf([[...small]]);
    expect(found).toMatchObject({ answer: "too small", best: 0 });
    expect(found.verdict).toMatch(/gains 2 min, less than the 5 min that matter\.$/);
    const paying = verdictOf([[PERSON, { ...small[1], money: money("gain", 30) }]]);
    expect(paying).toMatchObject({ answer: "yes", best: 1 });
    expect(paying.verdict).toMatch(
      /^No change tried gains the 5 min that matter, but for money .* saves 30 EUR a day\.$/,
    );
  });

  it("cannot be told where the days leave a gain that matters open", () => {
    const found = verdictOf([[PERSON, { gain: { size: "open", mean: 240, low: -300, high: 780 } }]]);
    expect(found).toMatchObject({ answer: "undecided", best: null });
    expect(found.verdict).toMatch(
      /^It cannot be told yet what to change first: .* with “one more person in evisceration”/,
    );
    expect(found.next[0]).toMatch(/--replications/);
  });

  it("comes after a limit that today's plan breaks, and says what mends it", () => {
    const row = { gain: gain("gain", 69) };
    const found = verdictOf([[PERSON, row]], { shares: [0.087, 0.021] });
    expect(found.verdict).toMatch(
      /^Today's plan already breaks a limit, mend that first: 8\.7 % of the heads are outside 'waiting'\. Start with/,
    );
    expect(found.words[0]).toBe("With “one more person in evisceration” 2.1 % of the heads are outside 'waiting'.");
    expect(verdictOf([[PERSON, row]], { shares: [0.087, 0.087] }).words[0]).toMatch(/^None of the changes tried/);
    expect(verdictOf([[PERSON, row]], { shares: [0.0002, 0] }).verdict).toMatch(/^Start with/);
  });

  it("says that nobody watches where the plan has no limit", () => {
    const row = { gain: gain("gain", 69) };
    expect(verdictOf([[PERSON, row]], { limits: 0 }).next.at(-1)).toMatch(/watches no time limit/);
    expect(verdictOf([[PERSON, row]]).next.join(" ")).not.toMatch(/watches no time limit/);
  });
});
