import { join } from "node:path";
import { cwd } from "node:process";
import { expect, it } from "vitest";
import { partialFolder } from "../../../../../sim/days/run/journal/index.ts";

it.each([
  ["runs/buffers", "runs/buffers.partial"],
  ["runs/buffers/", "runs/buffers.partial"],
  [join("..", "x"), `${join("..", "x")}.partial`],
  [".", `${cwd()}.partial`],
])("lies beside the folder %j", (folder, beside) => {
  expect(partialFolder(folder)).toBe(beside);
});
