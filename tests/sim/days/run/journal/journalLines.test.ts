import { readFileSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { journalLines } from "../../../../../sim/days/run/journal/journalLines.ts";
import { JournalWriter } from "../../../../../sim/days/run/journal/journalWriter.ts";
import { temporaryFolder } from "../../../../support/temporaryFolder.ts";

it("gives whole lines, also such as are longer than what is read at once, and leaves out a torn one", () => {
  const path = join(temporaryFolder(), "lines");
  const lines = ["a", "", "é".repeat(1_500_000), "b"];
  writeFileSync(path, `${lines.join("\n")}\ntorn`);
  const found = [...journalLines(path)];
  expect(found.map(({ text }) => text)).toEqual(lines);
  expect(found.at(-1)!.endByte).toBe(Buffer.byteLength(lines.join("\n")) + 1);
});

it("gives nothing of an empty file", () => {
  const path = join(temporaryFolder(), "lines");
  writeFileSync(path, "");
  expect([...journalLines(path)]).toEqual([]);
});

it("reads what was written, however many lines were written at once", () => {
  const path = join(temporaryFolder(), "lines");
  const lines = Array.from({ length: 5000 }, (_, i) => `line ${i} ${"x".repeat(i % 300)}`);
  const writer = new JournalWriter(path);
  for (const line of lines) writer.add(line);
  writer.close();
  expect([...journalLines(path)].map(({ text }) => text)).toEqual(lines);
});

it("writes lines out after a while without being told to", async () => {
  const path = join(temporaryFolder(), "lines");
  const writer = new JournalWriter(path);
  writer.add("one");
  await expect.poll(() => [...journalLines(path)].map(({ text }) => text), { timeout: 20_000 }).toEqual(["one"]);
  writer.close();
});

it("gives a file without line breaks up before it fills the memory", () => {
  const path = join(temporaryFolder(), "lines");
  writeFileSync(path, "");
  truncateSync(path, 200_000_000);
  expect(() => [...journalLines(path)]).toThrow(RangeError);
});

it("writes nothing through a link, and nothing more after a failure", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "victim"), "dear");
  symlinkSync(join(folder, "victim"), join(folder, "link"));
  expect(() => new JournalWriter(join(folder, "link"))).toThrow(/ELOOP/);
  expect(readFileSync(join(folder, "victim"), "utf8")).toBe("dear");
});
