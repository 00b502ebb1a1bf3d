import { existsSync } from "node:fs";
import { join } from "node:path";
import { CommanderError } from "commander";
import { expect, it } from "vitest";
import { BadInput, diskWords, explain, PLAN_GUIDE, STUDY_GUIDE, Stopped, shownLines } from "../../../sim/cli/faults.ts";
import { projectRoot } from "../../../sim/cli/project.ts";
import { fakeTerminal } from "../../support/fakeTerminal.ts";

function explained(error: unknown, debug = false): { code: number; said: string[] } {
  const { terminal, said } = fakeTerminal(false);
  return { code: explain(error, terminal, debug), said };
}

it.each([
  [new BadInput(["a: b"]), 2, ["a: b", "1 fault found. Nothing was written."]],
  [new BadInput(["a: b", "c: d"]), 2, ["a: b", "c: d", "2 faults found. Nothing was written."]],
  [new Error("broken"), 1, ["broken"]],
  ["broken", 1, ["broken"]],
  [Object.assign(new Error("x"), { code: "ENOSPC" }), 1, ["the disk is full; make room, then run it again."]],
  [new Stopped("SIGHUP"), 129, ["Stopped. Nothing was written."]],
  [new Stopped("SIGINT"), 130, ["Stopped. Nothing was written."]],
  [new Stopped("SIGTERM"), 143, ["Stopped. Nothing was written."]],
  [new CommanderError(1, "commander.unknownOption", "said"), 2, []],
  [new CommanderError(0, "commander.helpDisplayed", "said"), 0, []],
])("answers %s with exit code %i and words", (error, code, said) => {
  expect(explained(error)).toEqual({ code, said });
});

it("names the documents that say how a file must be", () => {
  const { said } = explained(new BadInput(["a: b"], [PLAN_GUIDE]));
  expect(said).toEqual(["a: b", `Every key, unit and default: ${PLAN_GUIDE}`, "1 fault found. Nothing was written."]);
  for (const guide of [PLAN_GUIDE, STUDY_GUIDE]) expect(existsSync(join(projectRoot(), guide))).toBe(true);
});

it("shows where in the program a failure arose only when asked to", () => {
  expect(explained(new Error("broken")).said.join("\n")).not.toMatch(/ at /);
  expect(explained(new Error("broken"), true).said.join("\n")).toMatch(/ at .*faults\.test\.ts/);
});

it("shows the first two hundred lines and how many there are besides", () => {
  const lines = Array.from({ length: 203 }, (_, index) => `fault ${index}`);
  expect(shownLines(lines.slice(0, 200))).toEqual(lines.slice(0, 200));
  expect(shownLines(lines).at(-1)).toBe("... and 3 more; correct these first.");
});

it("cuts a line that quotes too much", () => {
  expect(shownLines(["x".repeat(5000)])[0]).toBe(`${"x".repeat(1000)}...`);
});

it("says what a failure of the disk means and what to do, with the path where there is one", () => {
  const error = (code: string, path?: string) => Object.assign(new Error("x"), { code, path });
  expect(diskWords(error("ENOSPC"))).toBe("the disk is full; make room, then run it again.");
  expect(diskWords(error("EACCES", "a/b"))).toBe(
    "a/b: you may not write there; name another folder, then run it again.",
  );
  expect(diskWords(Object.assign(error("ENOENT", "/proc/a"), { syscall: "mkdir" }))).toBe(
    "/proc/a: no folder can be made there; name another one, then run it again.",
  );
});

it("says of a port that is taken which option names another one", () => {
  expect(diskWords(Object.assign(new Error("x"), { code: "EADDRINUSE" }))).toMatch(/another one with --port/);
});

it("says nothing of other failures", () => {
  expect(diskWords(new Error("x"))).toBeNull();
  expect(diskWords("x")).toBeNull();
});
