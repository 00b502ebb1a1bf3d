import { expect, it } from "vitest";
import { designOf } from "../../../support/demands.ts";

it("sourcesOf says of every stage what was given, what is common practice and what was assumed", () => {
  const { sources } = designOf({ steps: { skinning: { cycle: "4 s" } } }).plan;
  expect(sources[0]).toMatchObject({ path: "", kind: "assumed" });
  const skinning = sources.filter(({ path }) => path === 'line["skinning"]');
  expect(skinning.map(({ kind }) => kind)).toEqual(["measured", "assumed", "common practice"]);
  expect(skinning[0]!.note).toBe("As the demand gives it: cycle");
  expect(skinning[2]!.note).toMatch(/^by-products: share of live weight/);
});
