import { describe, expect, it } from "vitest";
import type { Point } from "../../../../../sim/asked/plan/index.ts";
import { readPoint } from "../../../../../sim/asked/plan/readPoint.ts";
import { comesAfter, reachedFrom, wayGraph } from "../../../../../sim/asked/plan/rules/wayGraph.ts";
import { wholePlan } from "../../../../support/wholePlan.ts";

const graph = wayGraph(wholePlan());

function canFollow(from: string, to: string): boolean | null {
  return comesAfter(graph, readPoint(from).value as Point, readPoint(to).value as Point);
}

describe("comesAfter", () => {
  it.each([
    ["arrival", "entry to hanging"],
    ["arrival", "leaving the line"],
    ["exit from chilling", "leaving the line"],
    ["entry to stunning", "exit from stunning"],
    ["end of stunning", "start of sticking"],
    ["entry to kill chain", "start of pre-loosening"],
    ["exit from pre-loosening", "exit from kill chain"],
    // by weight, by a breakdown and by a window passed unfinished
    ["entry to skinning machine", "start of hand skinning"],
    ["end of hand skinning", "start of evisceration"],
    // round the ring of inspection and trim
    ["end of inspection", "start of trim"],
    ["end of trim", "start of inspection"],
    ["end of inspection", "start of inspection"],
  ])("from %s a head can come to %s", (from, to) => {
    expect(canFollow(from, to)).toBe(true);
  });

  it.each([
    ["arrival", "arrival"],
    ["leaving the line", "arrival"],
    ["leaving the line", "exit from chilling"],
    ["start of hanging", "arrival"],
    ["end of stunning", "start of stunning"],
    ["start of stunning", "start of stunning"],
    ["end of pre-loosening", "start of sticking"],
    ["exit from kill chain", "end of sticking"],
    ["end of skinning machine", "start of hand skinning"],
    ["end of chilling", "start of trim"],
  ])("from %s none comes to %s", (from, to) => {
    expect(canFollow(from, to)).toBe(false);
  });

  it.each([
    ["end of stuning", "leaving the line"],
    ["arrival", "start of cut-up"],
  ])("says nothing of %s to %s, where a stage is unknown or left out", (from, to) => {
    expect(canFollow(from, to)).toBeNull();
  });
});

describe("reachedFrom", () => {
  it("goes everywhere from the first stage, and counts a place itself only when a ring leads back", () => {
    const reached = reachedFrom(graph, "in hanging");
    expect(reached.has("in hanging")).toBe(false);
    expect([...graph.keys()].filter((node) => !reached.has(node))).toEqual(["in hanging"]);
    expect(reachedFrom(graph, "in trim").has("in trim")).toBe(true);
  });

  it("finds nothing from a place that is not there", () => {
    expect(reachedFrom(graph, "in nowhere").size).toBe(0);
  });
});
