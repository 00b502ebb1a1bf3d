import { expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Study } from "../../../../../sim/asked/study/index.ts";
import { daySource } from "../../../../../sim/days/run/index.ts";
import { sourceDigest } from "../../../../../sim/days/run/wire/index.ts";
import { SLOWER_PLAN, threeVariants } from "../../../../support/threeVariants.ts";

function digest(change: Partial<Study> = {}, traces: "none" | "binned" = "binned", check = false): string {
  return sourceDigest(daySource(threeVariants(change), traces, check));
}

it("is the same for the same days: neither their number nor the checking of heads nor names matter", () => {
  expect(digest({ replications: 99, name: "another", question: "?" }, "binned", true)).toBe(digest());
});

it("tells whatever changes a day from the rest", () => {
  const [base, ...others] = threeVariants().variants;
  const digests = [
    digest(),
    digest({ seed: "other" }),
    digest({ responses: ["carcasses", "headsPerHour"] }),
    digest({ procedure: { ...PLAIN_PROCEDURE, antithetic: true } }),
    digest({ variants: [{ ...base!, plan: SLOWER_PLAN }, ...others] }),
    digest({ variants: others }),
    digest({}, "none"),
  ];
  expect(new Set(digests).size).toBe(digests.length);
});
