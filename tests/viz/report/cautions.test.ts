import { expect, test } from "vitest";
import { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "../../../viz/index.ts";
import { NAMED_DANGERS } from "../../support/dangers.ts";

test("the cautions name what the tool does not set, whom it defers to, and that welfare and safety come first", () => {
  const text = CAUTIONS.join(" ");
  for (const words of [
    "does not set stunning currents, bleeding times, chilling rules, line speeds",
    "official veterinarian",
    "licensed practice",
  ])
    expect(text).toContain(words);
  for (const words of ["Animal welfare and people's safety come before throughput.", "Verify against the real line"])
    expect(text).toContain(words);
});

test.each([
  ["in full", DANGERS],
  ["in short", DANGERS_IN_SHORT],
])(
  "what hurts is named %s: blades, jams, electricity, lifting, cold, hot water, infection, pain; and who decides",
  (_, said) => {
    for (const danger of NAMED_DANGERS) expect(said.join("\n")).toMatch(danger);
  },
);
