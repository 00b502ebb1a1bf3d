import { beforeAll, expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { bottleneckView } from "../../../viz/pictures/index.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
});

test("the drawn spans cover what the day's shares say", () => {
  const variant = results.variants[1]!;
  const view = bottleneckView(results, variant)!;
  for (const { stage, sole, shifting } of variant.day.binding!.bottleneck.shares) {
    if (sole + shifting < 0.005) continue;
    const covered = (kind: string) =>
      view.spans
        .filter((span) => span.stage === stage && span.kind === kind)
        .reduce((sum, { from, to }) => sum + to - from, 0);
    expect(covered("sole") / variant.day.workFinishSeconds).toBeCloseTo(sole, 9);
    expect(covered("shifting") / variant.day.workFinishSeconds).toBeCloseTo(shifting, 9);
  }
});

test("the words say how it is on this day and over all days", () => {
  expect(bottleneckView(results, results.variants[1]!)!.description).toMatch(
    /^On this day skinning was the bottleneck longest\. .* Over all 4 simulated days skinning comes first: alone [\d.]+ % \(/,
  );
  const day = whyDay();
  expect(bottleneckView(day, day.variants[0]!)!.description).not.toContain("Over all");
});

test("stages that were it for an instant are named, not drawn", () => {
  const variant = results.variants[1]!;
  const { day } = variant;
  const shares = day.binding!.bottleneck.shares.map((share) =>
    share.stage === "stunning" ? { ...share, sole: 0.001, shifting: 0 } : share,
  );
  const binding = { ...day.binding!, bottleneck: { ...day.binding!.bottleneck, shares } };
  const view = bottleneckView(results, { ...variant, day: { ...day, binding } })!;
  expect(view.stages.map(({ name }) => name)).not.toContain("stunning");
  expect(view.footnote).toContain("stunning");
});

test("a day whose course was not recorded has no strip", () => {
  const variant = results.variants[0]!;
  const without = (binding: typeof variant.day.binding) =>
    bottleneckView(results, { ...variant, day: { ...variant.day, binding } });
  expect(without(null)).toBeNull();
  const { binding } = variant.day;
  expect(without({ ...binding!, bottleneck: { ...binding!.bottleneck, spans: null } })).toBeNull();
});
