import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { lockRunFolder } from "../../../../../sim/days/run/journal/index.ts";
import { temporaryFolder } from "../../../../support/temporaryFolder.ts";

it("shuts others out of a folder until it is given back, and leaves nothing", () => {
  const folder = join(temporaryFolder(), "run");
  const unlock = lockRunFolder(folder);
  expect(() => lockRunFolder(folder)).toThrow(/a run is under way there/);
  unlock();
  expect(existsSync(`${folder}.partial`)).toBe(false);
  lockRunFolder(folder)();
});

it("leaves the days of an unfinished study where they are", () => {
  const folder = join(temporaryFolder(), "run");
  mkdirSync(`${folder}.partial`);
  writeFileSync(join(`${folder}.partial`, "journal.jsonl"), "");
  lockRunFolder(folder)();
  expect(readdirSync(`${folder}.partial`)).toEqual(["journal.jsonl"]);
});
