import { expect, it } from "vitest";
import type { Variant } from "../../../../sim/asked/study/index.ts";
import { joinBase } from "../../../../sim/asked/study/readStudy.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";

const PLAN = readSmallPlan();
const variant = (name: string, ...levels: number[]): Variant => ({
  name,
  levels,
  set: {},
  insert: [],
  remove: [],
  plan: PLAN,
});
const names = (variants: readonly Variant[]) => variants.map(({ name, levels }) => `${name} ${levels.join()}`);

it("joinBase gives the base's level where a variant kept it, and drops the variant that is the base", () => {
  const drafted = [variant("a", 0, -1), variant("b", 1, -1), variant("c", -1, 2)];
  expect(names(joinBase(variant("base", 1, 0), drafted, { kind: "one at a time" }).variants)).toEqual([
    ...["base 1,0", "a 0,0", "c 1,2"],
  ]);
});

it("joinBase drops a variant that kept a value no level names and has the base's level of the others", () => {
  const drafted = [variant("a", 1, -1), variant("b", 1, 0)];
  expect(names(joinBase(variant("base", 1, -1), drafted, { kind: "one at a time" }).variants)).toEqual([
    ...["base 1,-1", "b 1,0"],
  ]);
});

it("joinBase keeps all variants of a list, which has no factors", () => {
  expect(names(joinBase(variant("base"), [variant("a"), variant("b")], { kind: "list" }).variants)).toHaveLength(3);
});

it("joinBase points trajectories at the variants' new places", () => {
  const drafted = [variant("p", 0, 0), variant("q", 2, 0), variant("r", 2, 2)];
  const design = { kind: "screening", levels: 4, trajectories: [[0, 1, 2]] } as const;
  const joined = joinBase(variant("base", 2, 0), drafted, { ...design, trajectories: [[0, 1, 2]] });
  expect(names(joined.variants)).toEqual(["base 2,0", "p 0,0", "r 2,2"]);
  expect(joined.design).toEqual({ ...design, trajectories: [[1, 0, 2]] });
});
