import { expect, it } from "vitest";
import { designOf } from "../../../../support/demands.ts";

it("watchesOf stuns a head only when it can be stuck and has a place to bleed, and names the source of every limit", () => {
  const { plan, design } = designOf();
  const sticking = design.stations.find(({ name }) => name === "sticking")!;
  expect(plan.gates.map(({ atMost }) => atMost)).toEqual([sticking.positions, design.dwells[0]!.places]);
  expect(plan.stunned).toMatchObject({ from: "stunning", to: "sticking", hold: true, late: { help: "stick there" } });
  expect(plan.limits.map(({ name }) => name)).toEqual(["stun to stick", "kill to chill"]);
  for (const { source } of plan.limits) expect(source).toMatch(/official veterinarian/);
  const bare = designOf({ steps: { stunning: { leftOut: true }, chilling: { leftOut: true } } }).plan;
  expect([bare.gates, bare.limits, bare.stunned]).toEqual([[], [], null]);
});
