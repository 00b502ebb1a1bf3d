import { expect, it } from "vitest";
import { isRecord } from "../../../../sim/asked/plan/isRecord.ts";

it.each([
  [{}, true],
  [{ a: 1 }, true],
  [[], false],
  [null, false],
  ["a", false],
  [undefined, false],
])("isRecord tells JSON objects from the rest: %j", (value, answer) => {
  expect(isRecord(value)).toBe(answer);
});
