import { resolve } from "node:path";
import { expect, it } from "vitest";
import { licencesOf } from "../../../viz/build/licences.ts";

const ROOT = resolve(import.meta.dirname, "../../..");
const inPackage = (path: string) => resolve(ROOT, "node_modules", path);

it("tells the licence of every package once, with its text, and none of the program's own modules", () => {
  const modules = [
    inPackage("zod/v4/core/core.js"),
    inPackage("zod/v4/core/util.js?commonjs"),
    inPackage("@preact/signals/dist/signals.mjs"),
    resolve(ROOT, "viz/page/main.tsx"),
  ];
  const text = licencesOf(modules);
  expect(text.match(/^[\w@/.-]+ \d+\.\d+\.\d+: .*$/gmu)).toEqual([
    expect.stringMatching(/^@preact\/signals .*: MIT$/u),
    expect.stringMatching(/^zod .*: MIT$/u),
  ]);
  expect(text).toContain("Permission is hereby granted");
});
