import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pid } from "node:process";
import { expect, it } from "vitest";
import { ownMark } from "../../../../../sim/days/run/journal/processMark.ts";
import { releaseRunLock, takeRunLock } from "../../../../../sim/days/run/journal/runLock.ts";
import { temporaryFolder } from "../../../../support/temporaryFolder.ts";

function folderLockedBy(mark: unknown): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "lock.json"), typeof mark === "string" ? mark : JSON.stringify(mark));
  return folder;
}

it("shuts others out until it is released", () => {
  const folder = join(temporaryFolder(), "run.partial");
  takeRunLock(folder);
  expect(() => takeRunLock(folder)).toThrow(new RegExp(`a run is under way there \\(process ${pid} on `));
  releaseRunLock(folder);
  takeRunLock(folder);
});

it("is taken over from a process that has ended", () => {
  const { pid: ended } = spawnSync(process.execPath, ["-e", ""]);
  const folder = folderLockedBy({ ...ownMark(), pid: ended, began: null });
  takeRunLock(folder);
  expect(JSON.parse(readFileSync(join(folder, "lock.json"), "utf8"))).toEqual(ownMark());
});

it.runIf(ownMark().began !== null)("is taken over from an ended process whose number another one has now", () => {
  takeRunLock(folderLockedBy({ ...ownMark(), began: "1" }));
});

it("is not taken over from another machine, whose processes cannot be seen", () => {
  const folder = folderLockedBy({ ...ownMark(), host: "elsewhere" });
  expect(() => takeRunLock(folder)).toThrow(/a run on another machine holds it \(process \d+ on elsewhere\); .*delete/);
});

it.runIf(ownMark().began !== null)("is not taken over by two at once", () => {
  const folder = folderLockedBy({ ...ownMark(), began: "1" });
  writeFileSync(join(folder, "lock-takeover"), "");
  expect(() => takeRunLock(folder)).toThrow(/another run is just starting there; if none is, delete .*lock-takeover/);
});

it("says what to do about a lock that cannot be read", () => {
  expect(() => takeRunLock(folderLockedBy("{"))).toThrow(/lock\.json: this cannot be read; .*delete it/);
});
