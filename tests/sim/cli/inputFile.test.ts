import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { BadInput } from "../../../sim/cli/badInput.ts";
import { readInputFile } from "../../../sim/cli/inputFile.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

it("keeps the text as it stands and reads what it says", () => {
  const file = join(temporaryFolder(), "a.json");
  writeFileSync(file, '{ "a" :1 }\n');
  expect(readInputFile(file)).toMatchObject({ text: '{ "a" :1 }\n', json: { a: 1 } });
});

it("takes the files it names from its own folder, wherever the program runs", () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "studies"));
  writeFileSync(join(folder, "times.csv"), "s\n5\n");
  writeFileSync(join(folder, "studies", "a.json"), "{}");
  expect(readInputFile(join(folder, "studies", "a.json")).files.readText("../times.csv")).toBe("s\n5\n");
});

it.each([
  ["absent.json", /no such file/],
  [".", /this is a folder/],
])("calls %s bad input, with the reason", (name, reason) => {
  const path = join(temporaryFolder(), name);
  expect(() => readInputFile(path)).toThrow(BadInput);
  expect(() => readInputFile(path)).toThrow(reason);
});

it("tells where JSON breaks off", () => {
  const file = join(temporaryFolder(), "a.json");
  writeFileSync(file, '{\n  "a": }');
  expect(() => readInputFile(file)).toThrow(/a\.json: line 2, column 8/);
});
