import { expect, it } from "vitest";
import { designOf } from "../../../../support/demands.ts";

it("sourcesOf says of every stage and crate step what was given and what was invented, and calls nothing measured", () => {
  const { sources } = designOf({ steps: { skinning: { cycle: "4 s" } } }).plan;
  expect(sources[0]).toMatchObject({ path: "", kind: "invented" });
  const skinning = sources.filter(({ path }) => path === "line.skinning");
  expect(skinning.map(({ kind }) => kind)).toEqual(["assumed", "invented", "invented"]);
  expect(skinning[0]!.note).toBe("As the demand gives it: cycle");
  expect(skinning[2]!.note).toMatch(/^by-products: share of live weight/);
  expect(sources.some(({ path }) => path === "liveHandling.washing")).toBe(true);
  expect(sources.every(({ kind }) => kind !== "measured")).toBe(true);
});

it("sourcesOf calls a figure published in a line of its own, and not where the demand gives another", () => {
  const published = (changes: Record<string, unknown>) =>
    designOf(changes)
      .plan.sources.filter(({ kind }) => kind === "published")
      .map(({ path }) => path);
  const limit = 'limits["stun to stick"].max';
  expect(published({})).toEqual(["supply.loads[0].liveWeight.normal.mean", "line.chilling.chilling.core", limit]);
  expect(published({ animals: { liveWeight: "2.4 kg" }, chilling: { core: "3 degC" } })).toEqual([limit]);
  const noKill = { steps: { stunning: { leftOut: true } } };
  expect(published(noKill)).not.toContain(limit);
});
