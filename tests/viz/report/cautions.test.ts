import { expect, test } from "vitest";
import { CAUTIONS } from "../../../viz/index.ts";

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
