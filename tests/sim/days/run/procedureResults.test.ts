import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { stoppingWords } from "../../../../sim/days/run/procedureResults.ts";
import { sequentialState } from "../../../../sim/maths/statistics/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };
const RULE = {
  response: "t",
  halfWidth: { kind: "absolute", value: 2 },
  of: "difference",
  atLeast: 4,
  atMost: 4,
} as const;
const [NARROW, WIDE] = [
  [1, 1, 1, 1.1],
  [1, 9, 1, 9],
].map((values) => sequentialState(values, RULE, 0.95, "amount"));

it("says after how many days every interval was as narrow as asked", () => {
  expect(stoppingWords(threeVariants(), RULE, [null, NARROW!, NARROW!], 4, INFO)).toBe(
    "Precise enough after 4 days of every variant: a half-width of 2 carcasses/h for every difference to today's plan (Throughput, 95 % intervals).",
  );
});

it("names what is not, with the half-width it has", () => {
  const share = { ...RULE, halfWidth: { kind: "relative", value: 0.015 } } as const;
  expect(stoppingWords(threeVariants(), share, [null, WIDE!, NARROW!], 4, INFO)).toBe(
    'Stopped at the most days allowed, 4 of every variant, before a half-width of 1.5 % of its mean for every difference to today\'s plan (Throughput, 95 % intervals). Not reached by "slower" (6.17 carcasses/h).',
  );
});
