import { spawnSync } from "node:child_process";
import { symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readTextFile } from "../../../sim/cli/readTextFile.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

function file(content: string | Uint8Array): string {
  const path = join(temporaryFolder(), "file");
  writeFileSync(path, content);
  return path;
}

describe("readTextFile", () => {
  it("gives the text as it stands, byte order mark included, longer than what is read at once", () => {
    const text = `\uFEFF${"é".repeat(100_000)}\r\n`;
    expect(readTextFile(file(text), 1)).toBe(text);
  });

  it("reads up to the ceiling and no further, and says how to raise it", () => {
    expect(readTextFile(file("x".repeat(1000)), 0.001)).toHaveLength(1000);
    expect(() => readTextFile(file("x".repeat(1001)), 0.001)).toThrow(/larger than 0\.001 MB; .*--ceiling megabytes=/);
  });

  it.runIf(process.platform === "linux")("refuses what has no end or nobody at the other one", () => {
    const pipe = join(temporaryFolder(), "pipe");
    expect(spawnSync("mkfifo", [pipe]).status).toBe(0);
    for (const path of ["/dev/zero", pipe]) expect(() => readTextFile(path, 1)).toThrow(/a pipe or a device; save/);
    const link = join(temporaryFolder(), "link");
    symlinkSync("/dev/zero", link);
    expect(() => readTextFile(link, 1)).toThrow(/a pipe or a device/);
  });

  it("refuses text in another encoding, a folder, and a name with NUL in it", () => {
    expect(() => readTextFile(file(new Uint8Array([0xff, 0xfe, 0x7b, 0])), 1)).toThrow(/not text in UTF-8; save it/);
    for (const bytes of [
      [0x7b, 0],
      [0, 0x7b],
    ])
      expect(() => readTextFile(file(new Uint8Array([...bytes, ...bytes])), 1)).toThrow(/text in UTF-16; save it as/);
    expect(() => readTextFile(temporaryFolder(), 1)).toThrow(/this is a folder; name a file in it/);
    expect(() => readTextFile("a\0b", 1)).toThrow(/cannot hold the character NUL/);
  });
});
