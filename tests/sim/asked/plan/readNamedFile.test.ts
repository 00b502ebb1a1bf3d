import { describe, expect, it } from "vitest";
import { readNamedFile } from "../../../../sim/asked/plan/readNamedFile.ts";

function failing(error: unknown) {
  return {
    readText(): string {
      throw error;
    },
  };
}

describe("readNamedFile", () => {
  it("gives the text without a byte order mark", () => {
    expect(readNamedFile("a", { readText: () => "\uFEFFx" }, "")).toEqual({ value: "x", fault: null });
  });

  it.each([
    [Object.assign(new Error("ENOENT: no such file, open '/private/a'"), { code: "ENOENT" }), "there is no such file"],
    [Object.assign(new Error("x"), { code: "EISDIR" }), "it is a folder"],
    [new Error("the disk is gone"), "the disk is gone"],
  ])("says in plain words why a file cannot be read", (error, reason) => {
    expect(readNamedFile("a", failing(error), "a file").fault).toEqual({
      found: `'a' cannot be read (${reason})`,
      allowed: "a file",
      remedy: "check the path",
    });
  });
});
