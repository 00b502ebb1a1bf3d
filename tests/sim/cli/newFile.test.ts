import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { BadInput } from "../../../sim/cli/badInput.ts";
import { checkNewFile, writeNewFile } from "../../../sim/cli/newFile.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

describe("checkNewFile", () => {
  it("lets a new file be, and an old one only where it may be replaced", () => {
    const path = join(temporaryFolder(), "plan.json");
    expect(() => checkNewFile(path, false)).not.toThrow();
    writeFileSync(path, "old");
    expect(() => checkNewFile(path, false)).toThrow(BadInput);
    expect(() => checkNewFile(path, true)).not.toThrow();
  });

  it("refuses a folder, and a file in a folder that is not there", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "inside"));
    expect(() => checkNewFile(join(folder, "inside"), true)).toThrow(/this is a folder/);
    expect(() => checkNewFile(join(folder, "nowhere", "plan.json"), true)).toThrow(/there is no folder/);
  });
});

describe("writeNewFile", () => {
  it("leaves the whole file and nothing beside it", () => {
    const folder = temporaryFolder();
    writeNewFile(join(folder, "plan.json"), "whole");
    expect(readFileSync(join(folder, "plan.json"), "utf8")).toBe("whole");
    expect(readdirSync(folder)).toEqual(["plan.json"]);
  });

  it("leaves what was there when it fails", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "plan.json"));
    expect(() => writeNewFile(join(folder, "plan.json"), "text")).toThrow();
    expect(readdirSync(folder)).toEqual(["plan.json"]);
  });
});
