import { existsSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { makeFolders } from "../../../../sim/days/results/index.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

it("makes a folder and those above it, and gives the uppermost it made", () => {
  const top = temporaryFolder();
  expect(makeFolders(join(top, "a", "b", "c"))).toBe(join(top, "a"));
  expect(makeFolders(join(top, "a", "b", "d"))).toBe(join(top, "a", "b", "d"));
  expect(makeFolders(join(top, "a", "b", "d"))).toBeUndefined();
  expect(statSync(join(top, "a", "b", "c")).isDirectory()).toBe(true);
});

it("throws what the system says of a file in the way", () => {
  const top = temporaryFolder();
  writeFileSync(join(top, "file"), "");
  expect(() => makeFolders(join(top, "file", "a"))).toThrow(/ENOTDIR/);
});

it.runIf(existsSync("/proc/self"))("comes back from a place in which nothing can be made", () => {
  for (const path of ["/proc/gambrel", "/proc/gambrel/a/b"]) expect(() => makeFolders(path)).toThrow(/ENOENT|EACCES/);
});
