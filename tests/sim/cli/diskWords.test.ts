import { expect, it } from "vitest";
import { diskWords } from "../../../sim/cli/diskWords.ts";

it("says what a failure of the disk means and what to do, with the path where there is one", () => {
  const error = (code: string, path?: string) => Object.assign(new Error("x"), { code, path });
  expect(diskWords(error("ENOSPC"))).toBe("the disk is full; make room, then run it again.");
  expect(diskWords(error("EACCES", "a/b"))).toBe(
    "a/b: you may not write there; name another folder, then run it again.",
  );
  expect(diskWords(Object.assign(error("ENOENT", "/proc/a"), { syscall: "mkdir" }))).toBe(
    "/proc/a: nothing can be made there; name another folder, then run it again.",
  );
});

it("says of a port that is taken which option names another one", () => {
  expect(diskWords(Object.assign(new Error("x"), { code: "EADDRINUSE" }))).toMatch(/another one with --port/);
});

it("says nothing of other failures", () => {
  expect(diskWords(new Error("x"))).toBeNull();
  expect(diskWords("x")).toBeNull();
});
