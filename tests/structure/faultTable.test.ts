import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";

const FAULTS = resolve(import.meta.dirname, "../faults");

it("each row of the fault table names a test that is there", () => {
  const text = readFileSync(resolve(FAULTS, "README.md"), "utf8");
  const rows = [...text.matchAll(/\]\(([^)]+\.test\.ts)\): "([^"]+)"/g)].map(([, file, title]) => ({ file, title }));
  expect(rows.length).toBeGreaterThan(20);
  expect(text.split("\n").filter((line) => line.startsWith("| ") && !/^\| (what was|-)/.test(line))).toHaveLength(
    rows.length,
  );
  const missing = rows.filter(({ file, title }) => {
    const path = resolve(FAULTS, file!);
    return !existsSync(path) || !readFileSync(path, "utf8").includes(title!);
  });
  expect(missing).toEqual([]);
});
