import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");

it("each row of the fault table names a test that is there", () => {
  const text = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8");
  const section = /^## Faults, and what they cost$(.*?)^## /ms.exec(text)![1]!;
  const rows = [...section.matchAll(/\]\((tests\/[^)]+)\): "([^"]+)"/g)].map(([, file, title]) => ({ file, title }));
  expect(rows.length).toBeGreaterThan(20);
  expect(section.split("\n").filter((line) => line.startsWith("| ") && !/^\| (what was|-)/.test(line))).toHaveLength(
    rows.length,
  );
  const missing = rows.filter(({ file, title }) => {
    const path = join(ROOT, file!);
    return !existsSync(path) || !readFileSync(path, "utf8").includes(title!);
  });
  expect(missing).toEqual([]);
});
