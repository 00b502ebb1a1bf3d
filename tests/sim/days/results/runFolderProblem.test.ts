import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { runFolderProblem, writeRunFolder } from "../../../../sim/days/results/index.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const FILES = [
  { path: "results.json", text: "{}\n" },
  { path: "charts/a.svg", text: "<svg/>" },
];

it("has nothing against a folder that is absent or empty", () => {
  const top = temporaryFolder();
  expect(runFolderProblem(join(top, "absent", "deep"), false)).toBeNull();
  expect(runFolderProblem(top, false)).toBeNull();
});

it("lets an earlier run be replaced only when told to", () => {
  const top = temporaryFolder();
  writeRunFolder(join(top, "one"), FILES, false);
  expect(runFolderProblem(join(top, "one"), false)).toMatch(/add --overwrite/);
  expect(runFolderProblem(join(top, "one"), true)).toBeNull();
});

it("never lets a folder above runs be replaced, and names a few of the files in the way", () => {
  const top = temporaryFolder();
  for (const name of ["d", "c", "b", "a"]) mkdirSync(join(top, name));
  expect(runFolderProblem(top, true)).toMatch(/not of a run \(a, b, c, \.\.\.\)/);
});

it("counts a foreign file among the charts as foreign", () => {
  const top = temporaryFolder();
  writeRunFolder(join(top, "one"), FILES, false);
  writeFileSync(join(top, "one", "charts", "mine.png"), "");
  expect(runFolderProblem(join(top, "one"), true)).toMatch(/charts\/mine\.png/);
});

it("refuses the folder the user stands in", () => {
  expect(runFolderProblem(".", true)).toMatch(/the folder you are in/);
});

it.each(["", "  ", "a\0b"])("refuses the name %j, which stands for no folder", (name) => {
  expect(runFolderProblem(name, true)).toMatch(/name one\.|name another folder\.$/);
});

it("refuses a link that leads nowhere or round in a ring, and what would lie below one", () => {
  const top = temporaryFolder();
  symlinkSync("nowhere", join(top, "dangling"));
  symlinkSync("ring", join(top, "ring"));
  for (const path of ["dangling", "ring", "dangling/run", "ring/a/b"])
    expect(runFolderProblem(join(top, path), true)).toMatch(/is a link that leads nowhere; take it away/);
});

it("refuses a folder below a file", () => {
  const top = temporaryFolder();
  writeFileSync(join(top, "file"), "");
  expect(runFolderProblem(join(top, "file", "a", "b"), true)).toMatch(/file is a file, not a folder; name another/);
});
