import { expect, it } from "vitest";
import type { Located } from "../../../../../sim/asked/plan/rules/located.ts";
import { wholeWay } from "../../../../../sim/asked/plan/rules/wholeWay.ts";

const stage = (name: string, more: Record<string, unknown> = {}): Located => ({ at: [], value: { name, ...more } });
const names = (stages: Located[]) => wholeWay(stages).map(({ value }) => value.name);

it("follows the list past what stands beside the line, or where a stage says, and goes round no ring", () => {
  expect(names([stage("a"), stage("trim", { offLine: true }), stage("b")])).toEqual(["a", "b"]);
  expect(names([stage("a", { next: "c" }), stage("b"), stage("c")])).toEqual(["a", "c"]);
  expect(names([stage("a"), stage("b", { next: "a" })])).toEqual(["a", "b"]);
  expect(names([])).toEqual([]);
});
