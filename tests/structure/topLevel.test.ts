import { execFileSync } from "node:child_process";
import { resolve } from "node:path";
import { expect, it } from "vitest";

const ALLOWED = [
  "README.md",
  "DEVELOPERS.md",
  "CHANGELOG.md",
  "LICENSE",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "sim",
  "viz",
  "experiments",
  "tests",
  // Configuration that a tool insists on finding here.
  "tsconfig.build.json",
  "biome.json",
  "vitest.config.ts",
];

it("the top level is the closed set that DEVELOPERS.md names, plus dotfiles", () => {
  const root = resolve(import.meta.dirname, "../..");
  const tracked = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" }).trim().split("\n");
  const top = new Set(tracked.map((path) => path.split("/")[0]!));
  expect([...top].filter((name) => !name.startsWith(".") && !ALLOWED.includes(name))).toEqual([]);
});
