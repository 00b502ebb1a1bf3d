import { expect, it } from "vitest";
import { designOf } from "../../../../support/demands.ts";

it("lineOf writes trim off the line, by-products into vessels of their own, and repairs by the crew that repairs", () => {
  const { plan } = designOf();
  const stage = (name: string) => plan.line.find((each) => each.name === name)!;
  expect(stage("trim")).toMatchObject({ offLine: true, next: "inspection", buffer: Number.POSITIVE_INFINITY });
  expect(stage("inspection").diversions).toEqual([{ to: "trim", share: 0.02 }]);
  expect(stage("skinning").byProducts).toEqual([{ name: "skins", share: 0.15, of: "live weight", vessel: "skins" }]);
  expect(stage("skinning")).toMatchObject({ breakdowns: [{ name: "jam", crew: "maintenance" }] });
  expect(plan.vessels.map(({ name }) => name)).toContain("skins");
  for (const { capacityKg, emptyAtKg } of plan.vessels) expect(emptyAtKg).toBeLessThan(capacityKg);
});
