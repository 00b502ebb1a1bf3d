import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";
import { SLOW } from "../support/slowFirst.ts";

it("every test file that is to run first is there", () => {
  expect(SLOW.filter((name) => !existsSync(resolve(import.meta.dirname, "../..", name)))).toEqual([]);
});
