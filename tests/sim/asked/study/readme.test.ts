import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { readStudy } from "../../../../sim/asked/study/index.ts";
import { sampleFiles, samplePlan } from "../plan/samplePlan.ts";

const text = readFileSync(new URL("../../../../sim/asked/study/README.md", import.meta.url), "utf8");
const blocks = [...text.matchAll(/```json\n([\s\S]*?)```/gu)].map(([, json]) => JSON.parse(json as string));
const inline = [...text.matchAll(/^- `("[^`]*)`/gmu)].map(([, json]) =>
  JSON.parse(`{ ${json} }`.replace("…", "headsPerHour")),
);

describe("the examples of the study file's README", () => {
  it("are one study, five designs, and five ways to say how many days", () => {
    expect([blocks.length, inline.length]).toEqual([6, 5]);
  });

  it.each([
    ...blocks.map((block, index) => [index, "design" in block ? block : { design: block }]),
    ...inline.map((keys, index) => [6 + index, { ...keys, design: blocks[1] }]),
  ])("example %i is sound on the sample plan", (_, study) => {
    const { faults } = readStudy({ name: "example", ...study, plan: samplePlan() }, sampleFiles, {
      knownResponses: () => [{ key: "headsPerHour", format: "number", better: "more" }],
    });
    expect(faults.map(formatFault)).toEqual([]);
  });
});
