import { expect, it } from "vitest";
import { spansOfStages } from "../../../viz/pictures/spansOfStages.ts";

it("gives each stage its own spans in their order, and none to a stage without", () => {
  const span = (stage: string, from: number) => ({ stage, from, to: from + 1, kind: "sole" as const });
  const of = spansOfStages({ spans: [span("skinning", 0), span("trim", 1), span("skinning", 2)] });
  expect(of("skinning").map(({ from }) => from)).toEqual([0, 2]);
  expect(of("trim").map(({ from }) => from)).toEqual([1]);
  expect(of("__proto__")).toEqual([]);
});
