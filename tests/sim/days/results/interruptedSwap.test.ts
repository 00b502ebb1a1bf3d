import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { mendRunFolder, writeRunFolder } from "../../../../sim/days/results/index.ts";
import { workFolders } from "../../../../sim/days/results/interruptedSwap.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

function folderWith(path: string, text: string): void {
  mkdirSync(path, { recursive: true });
  writeFileSync(join(path, "results.json"), text);
}

it("gives an earlier run its name back that a kill left aside, and takes the half-made one away", () => {
  const target = join(temporaryFolder(), "run");
  const { work, aside } = workFolders(target);
  folderWith(aside, "earlier");
  folderWith(work, "half");
  mendRunFolder(target);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("earlier");
  expect(readdirSync(join(target, ".."))).toEqual(["run"]);
});

it("keeps the new run where the kill came after it had its name", () => {
  const target = join(temporaryFolder(), "run");
  folderWith(target, "new");
  folderWith(workFolders(target).aside, "earlier");
  mendRunFolder(target);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("new");
  expect(readdirSync(join(target, ".."))).toEqual(["run"]);
});

it("is done before a folder is written, so that no run is lost to the one after", () => {
  const target = join(temporaryFolder(), "run");
  const { work, aside } = workFolders(target);
  folderWith(aside, "earlier");
  folderWith(work, "half");
  expect(() => writeRunFolder(target, [{ path: "results.json", text: "new" }], false)).toThrow(/already holds a run/);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("earlier");
  writeRunFolder(target, [{ path: "results.json", text: "new" }], true);
  expect(readFileSync(join(target, "results.json"), "utf8")).toBe("new");
  expect(existsSync(aside) || existsSync(work)).toBe(false);
});
